"""What ventilation costs in a year: heating and cooling of the air, recovery, fan power, payback.

Units: m3/s, K, K d (degree days), h, W, J; prices in any currency per J.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from math import inf

from checker.physics.air import HEAT_OF_VAPORISATION, SPECIFIC_HEAT_DRY_AIR, STANDARD_DENSITY
from checker.physics.arguments import (
    require_finite,
    require_fraction,
    require_not_negative,
    require_positive,
)
from checker.record import Record

HOURS_OF_YEAR = 8760.0
MEAN_HOURS_OF_YEAR = 8766.0
HIGHEST_UNSCALED_GAP = 0.01
SECONDS_OF_HOUR = 3600.0

DEFROST_THRESHOLD_HRV = 268.15
DEFROST_THRESHOLD_ERV = 263.15
"""K, outdoor temperature below which a recovery core spends part of its time thawing (common practice)."""

DEFROST_AVAILABILITY = 0.9
"""Share of its recovery that a core keeps while it must thaw (common practice)."""


class Bin(Record):
    """`hours` of the year at an outdoor `temperature` in K and `humidity_ratio` in kg/kg."""

    hours: float
    temperature: float
    humidity_ratio: float = 0.0


class CoolingEnergy(Record):
    """Heat in J that cooling must take out of the ventilation air in a year."""

    sensible: float
    latent: float


def degree_day_heating(
    flow: float,
    degree_days: float,
    recovery: float = 0.0,
    lift_above_base: float = 0.0,
    days_below_base: float = 0.0,
    density: float = STANDARD_DENSITY,
) -> float:
    """Heat in J that a year's ventilation air takes: 24 h x capacity flow x (1 - recovery) x degree days.

    `flow` m3/s the year round, `degree_days` K d to a base temperature. Degree days to the house's balance
    point leave out the lift from there to the room: give `lift_above_base` K and `days_below_base` to add it.
    ValueError for impossible input. Source: ASHRAE Handbook - Fundamentals, chapter "Energy Estimating"
    (degree-day method).
    """
    require_not_negative(
        flow=flow,
        degree_days=degree_days,
        lift_above_base=lift_above_base,
        days_below_base=days_below_base,
    )
    require_fraction(recovery=recovery)
    kelvin_days = degree_days + lift_above_base * days_below_base
    return _capacity_flow(flow, density) * (1.0 - recovery) * kelvin_days * 24.0 * SECONDS_OF_HOUR


def bin_heating(
    flow: float,
    bins: Sequence[Bin],
    indoor_temperature: float,
    balance_temperature: float,
    recovery: float = 0.0,
    efficiency: Callable[[float], float] | None = None,
    defrost_threshold: float | None = None,
    defrost_availability: float = DEFROST_AVAILABILITY,
    density: float = STANDARD_DENSITY,
) -> float:
    """Heat in J for ventilation air in the bins colder than the balance point, each paying the full lift.

    Temperatures K. `efficiency` turns outdoor K into heat per purchased energy (a COP); with it the result is
    purchased energy. Below `defrost_threshold` the recovery is cut to `defrost_availability` of itself.
    ValueError for impossible input. Source: ASHRAE Handbook - Fundamentals, chapter "Energy Estimating"
    (bin method); defrost common practice.
    """
    require_not_negative(flow=flow)
    require_positive(indoor_temperature=indoor_temperature, balance_temperature=balance_temperature)
    require_fraction(recovery=recovery, defrost_availability=defrost_availability)
    capacity_flow = _capacity_flow(flow, density)
    energy = 0.0
    for hours, temperature, _ in _checked(bins):
        if temperature >= min(balance_temperature, indoor_temperature):
            continue
        thawing = defrost_threshold is not None and temperature < defrost_threshold
        kept = recovery * (defrost_availability if thawing else 1.0)
        heat = capacity_flow * (1.0 - kept) * (indoor_temperature - temperature) * hours * SECONDS_OF_HOUR
        if efficiency is not None:
            performance = efficiency(temperature)
            require_positive(efficiency=performance)
            heat /= performance
        energy += heat
    return energy


def bin_cooling(
    flow: float,
    bins: Sequence[Bin],
    indoor_temperature: float,
    indoor_humidity_ratio: float,
    sensible_recovery: float = 0.0,
    latent_recovery: float = 0.0,
    density: float = STANDARD_DENSITY,
) -> CoolingEnergy:
    """Sensible and latent heat in J taken out of ventilation air in the bins warmer than the room.

    Temperatures K, humidity ratios kg/kg; air drier than the room counts as no latent load. ValueError for
    impossible input. Source: ASHRAE Handbook - Fundamentals, chapter "Energy Estimating" (bin method).
    """
    require_not_negative(flow=flow, indoor_humidity_ratio=indoor_humidity_ratio)
    require_positive(indoor_temperature=indoor_temperature)
    require_fraction(sensible_recovery=sensible_recovery, latent_recovery=latent_recovery)
    sensible_flow = _capacity_flow(flow, density) * (1.0 - sensible_recovery)
    latent_flow = density * HEAT_OF_VAPORISATION * flow * (1.0 - latent_recovery)
    sensible = latent = 0.0
    for hours, temperature, humidity_ratio in _checked(bins):
        if temperature <= indoor_temperature:
            continue
        seconds = hours * SECONDS_OF_HOUR
        sensible += sensible_flow * (temperature - indoor_temperature) * seconds
        latent += latent_flow * max(0.0, humidity_ratio - indoor_humidity_ratio) * seconds
    return CoolingEnergy(sensible, latent)


def bins_of_whole_year(bins: Sequence[Bin]) -> tuple[tuple[Bin, ...], bool]:
    """The bins scaled to 8,760 h, and whether that was needed (their sum was off by more than 1 %).

    ValueError for no hours or negative ones. Source: common practice.
    """
    total = sum(hours for hours, _, _ in _checked(bins))
    require_positive(hours_of_all_bins=total)
    if abs(total / HOURS_OF_YEAR - 1.0) <= HIGHEST_UNSCALED_GAP:
        return tuple(bins), False
    return tuple(row._replace(hours=row.hours * HOURS_OF_YEAR / total) for row in bins), True


def recovery_with_imbalance(recovery: float, supply: float, exhaust: float) -> float:
    """Recovery of a unit whose two flows in m3/s differ: its recovery times the smaller over the larger.

    The difference enters as infiltration and is charged there. ValueError for impossible input.
    Source: common practice.
    """
    require_fraction(recovery=recovery)
    require_positive(supply=supply, exhaust=exhaust)
    return recovery * min(supply, exhaust) / max(supply, exhaust)


def fan_energy(power: float, hours: float = MEAN_HOURS_OF_YEAR) -> float:
    """Electricity in J of a fan of `power` W over `hours`, a year unless given. ValueError for negatives."""
    require_not_negative(power=power, hours=hours)
    return power * hours * SECONDS_OF_HOUR


def fan_efficacy(airflow: float, power: float) -> float:
    """Airflow for each watt, m3/s per W (the trade's cfm/W). ValueError for impossible input."""
    require_not_negative(airflow=airflow)
    require_positive(power=power)
    return airflow / power


def yearly_cost(
    heat: float, heat_efficiency: float, heat_price: float, electricity: float, electricity_price: float
) -> float:
    """Cost of a year's heat in J by an appliance of this efficiency, and of its electricity in J.

    Prices per J. ValueError for impossible input. Source: arithmetic.
    """
    require_not_negative(
        heat=heat, heat_price=heat_price, electricity=electricity, electricity_price=electricity_price
    )
    require_positive(heat_efficiency=heat_efficiency)
    return heat / heat_efficiency * heat_price + electricity * electricity_price


def simple_payback(extra_cost: float, yearly_saving: float) -> float:
    """Years until the saving has paid the extra cost; inf when there is no saving. ValueError for a bad cost.

    Source: common practice.
    """
    require_not_negative(extra_cost=extra_cost)
    require_finite(yearly_saving=yearly_saving)
    return extra_cost / yearly_saving if yearly_saving > 0.0 else inf


def net_present_value(extra_cost: float, yearly_saving: float, interest_rate: float, years: float) -> float:
    """Present value of the savings over some years at an interest rate (0.03 is 3 %), less the extra cost.

    ValueError for impossible input. Source: present-worth factor, any engineering-economics text.
    """
    require_not_negative(extra_cost=extra_cost, interest_rate=interest_rate, years=years)
    require_finite(yearly_saving=yearly_saving)
    if interest_rate == 0.0:
        return yearly_saving * years - extra_cost
    return yearly_saving * (1.0 - float((1.0 + interest_rate) ** -years)) / interest_rate - extra_cost


def _capacity_flow(flow: float, density: float) -> float:
    require_positive(density=density)
    return density * SPECIFIC_HEAT_DRY_AIR * flow


def _checked(bins: Sequence[Bin]) -> Sequence[Bin]:
    for row in bins:
        require_not_negative(hours=row.hours, humidity_ratio=row.humidity_ratio)
        require_positive(bin_temperature=row.temperature)
    return bins
