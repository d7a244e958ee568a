"""A year of weather as ventilation air feels it, the energy it takes with and without recovery, and what that is worth.

Units: m3/s, K, K s (degree days in seconds), kg/kg, J; money in any currency. All is linear in the weather and in
the prices, so that what a change of either does follows without working the year out again.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Annotated

from checker.physics.air import HEAT_OF_VAPORIZATION, SPECIFIC_HEAT_DRY_AIR, STANDARD_DENSITY
from checker.physics.arguments import require_finite, require_fraction, require_not_negative, require_positive
from checker.physics.ventilation_energy import DEFROST_AVAILABILITY, SECONDS_OF_HOUR, simple_payback
from checker.record import Record

if TYPE_CHECKING:
    from checker.physics.ventilation_energy import Bin


class AirYear(Record):
    """What a year asks of each unit of outdoor air.

    `heating` K s below the room in heating hours, `thawing` the part of it in which a core must thaw; `cooling` K s above
    the room, `moisture` s of excess humidity ratio; the last two None where the year's warm part is not known.
    """

    heating: Annotated[float, "degree_days"]
    thawing: Annotated[float, "degree_days"]
    cooling: Annotated[float, "degree_days"] | None
    moisture: Annotated[float, "time"] | None


class AirEnergy(Record):
    """Heat in J that heating must add, and sensible and latent heat that cooling must take out, in a year."""

    heating: Annotated[float, "energy"]
    cooling: Annotated[float, "energy"]
    moisture: Annotated[float, "energy"]


class Worth(Record):
    """What recovery saves in a year: less energy for the air, against more for the fans, and upkeep; in money."""

    air: Annotated[float, "money"]
    fans: Annotated[float, "money"]
    upkeep: Annotated[float, "money"]

    def saving(self, prices: float = 1.0, weather: float = 1.0) -> float:
        """Saving of a year at so many times the prices of energy and so many times the degree days."""
        return prices * (weather * self.air - self.fans) - self.upkeep

    def payback(self, cost: float, prices: float = 1.0, weather: float = 1.0) -> float:
        """Years until the extra cost has come back; inf where it never does. ValueError for a bad cost."""
        return simple_payback(cost, self.saving(prices, weather))

    def first_cost(self, years: float, prices: float = 1.0, weather: float = 1.0) -> float:
        """Greatest extra cost that comes back in so many years. ValueError for impossible years."""
        require_positive(years=years)
        return max(0.0, self.saving(prices, weather)) * years


def year_of_bins(
    bins: Sequence[Bin],
    winter_room: float,
    heated_below: float,
    summer_room: float | None = None,
    summer_ratio: float | None = None,
    thaws_below: float | None = None,
) -> AirYear:
    """The year of hourly bins: heating pays the full lift to the room in every bin below `heated_below` K.

    Without `summer_room` K the warm part is left out, without `summer_ratio` kg/kg its moisture; air drier than the
    room asks for nothing. ValueError for impossible input.
    Source: ASHRAE Handbook - Fundamentals, chapter "Energy Estimating" (bin method); thawing common practice.
    """
    require_positive(winter_room=winter_room, heated_below=heated_below)
    heating = thawing = cooling = moisture = 0.0
    for hours, temperature, ratio in bins:
        require_not_negative(hours=hours, humidity_ratio=ratio)
        require_positive(bin_temperature=temperature)
        seconds = hours * SECONDS_OF_HOUR
        if temperature < min(heated_below, winter_room):
            lift = (winter_room - temperature) * seconds
            heating += lift
            thawing += lift if thaws_below is not None and temperature < thaws_below else 0.0
        if summer_room is not None and temperature > summer_room:
            cooling += (temperature - summer_room) * seconds
            moisture += max(0.0, ratio - (summer_ratio or 0.0)) * seconds
    return AirYear(
        heating,
        thawing,
        None if summer_room is None else cooling,
        None if summer_room is None or summer_ratio is None else moisture,
    )


def warm_part_of_degree_days(
    degree_days: float, base: float, warm_time: float, room: float, excess_ratio: float
) -> tuple[float, float]:
    """(K s above the room, s of excess humidity ratio) of cooling degree days in K s to `base` K.

    `warm_time` s is the time above the base. What the air is below the room in part of that time counts against the
    rest, so that the sum is rather too low; it is never below zero. ValueError for impossible input.
    Source: ASHRAE Handbook - Fundamentals, chapter "Energy Estimating" (degree days to another base).
    """
    require_not_negative(degree_days=degree_days, warm_time=warm_time)
    require_finite(excess_ratio=excess_ratio)
    require_positive(base=base, room=room)
    return max(0.0, degree_days - (room - base) * warm_time), max(0.0, excess_ratio) * warm_time


def air_energy(
    flow: float,
    year: AirYear,
    sensible: float = 0.0,
    moisture: float = 0.0,
    availability: float = DEFROST_AVAILABILITY,
    density: float = STANDARD_DENSITY,
) -> AirEnergy:
    """Energy that `flow` m3/s of outdoor air takes in a year behind a core of this sensible and moisture recovery.

    While it thaws, a core keeps `availability` of its recovery. The warm part counts as nothing where it is not known.
    ValueError for impossible input. Source: as the year's.
    """
    require_not_negative(flow=flow)
    require_fraction(sensible_recovery=sensible, moisture_recovery=moisture, availability=availability)
    require_positive(density=density)
    heat = density * SPECIFIC_HEAT_DRY_AIR * flow
    kept = sensible * (year.heating - (1.0 - availability) * year.thawing)
    return AirEnergy(
        heat * (year.heating - kept),
        heat * (1.0 - sensible) * (year.cooling or 0.0),
        density * HEAT_OF_VAPORIZATION * flow * (1.0 - moisture) * (year.moisture or 0.0),
    )


def air_cost(
    energy: AirEnergy, heating_efficiency: float, heating_price: float, cooling_efficiency: float, cooling_price: float
) -> float:
    """Cost of a year's energy of the air, in the money of the prices (per J bought). ValueError for impossible input."""
    require_not_negative(heating_price=heating_price, cooling_price=cooling_price)
    require_positive(heating_efficiency=heating_efficiency, cooling_efficiency=cooling_efficiency)
    heat = energy.heating / heating_efficiency * heating_price
    return heat + (energy.cooling + energy.moisture) / cooling_efficiency * cooling_price
