"""Moisture balance of a house: steady and changing humidity, the ceiling set by cold surfaces, latent load.

Units: kg/s of water and of dry air, kg water per kg dry air, K, Pa, W, s; relative humidity as a fraction.
"""

from __future__ import annotations

from checker.physics.air import HEAT_OF_VAPORIZATION
from checker.physics.arguments import require_finite, require_fraction, require_not_negative, require_positive
from checker.physics.condensation import wall_surface_temperature
from checker.physics.mixing import Stream, mix
from checker.physics.psychrometrics import FREEZING, relative_humidity, saturation_pressure
from checker.physics.psychrometrics import humidity_ratio as saturated_at
from checker.physics.scalar_root import bracketed_root
from checker.physics.validity import NoSolution, OutOfRange

GLASS_FILM = 0.13
"""Inner film resistance at a window in m2 K/W, ISO 6946 (horizontal heat flow)."""

_METHOD = "moisture balance"


def steady_humidity_ratio(outdoor: float, generation: float, exchange: float) -> float:
    """Humidity ratio indoors once what is given off equals what the air carries out.

    `outdoor` kg/kg, `generation` kg/s of water less what a coil or dehumidifier takes (so it may be negative),
    `exchange` kg/s of dry air as from `moisture_exchange`. OutOfRange without any exchange; NoSolution when more
    is taken out than the air brings.
    Source: steady mass balance, ASHRAE Handbook - Fundamentals 2021, chapter 25 "Heat, Air, and Moisture Control".
    """
    require_not_negative(outdoor=outdoor, exchange=exchange)
    require_finite(generation=generation)
    if exchange == 0.0:
        raise OutOfRange(_METHOD, "without air exchange the humidity has no steady value")
    ratio = outdoor + generation / exchange
    if ratio < 0.0:
        raise NoSolution(_METHOD, "more water is taken out than the air brings in")
    return ratio


def exchange_for(humidity_ratio: float, outdoor: float, generation: float) -> float:
    """Dry air in kg/s that keeps the indoor air at `humidity_ratio`; the inverse of `steady_humidity_ratio`.

    Ratios kg/kg, `generation` kg/s. NoSolution when the outdoor air is not drier than that.
    Source: as `steady_humidity_ratio`.
    """
    require_not_negative(humidity_ratio=humidity_ratio, outdoor=outdoor, generation=generation)
    if humidity_ratio <= outdoor:
        raise NoSolution(_METHOD, "outdoor air is not drier than the indoor air that is wanted")
    return generation / (humidity_ratio - outdoor)


def recovery_for(humidity_ratio: float, outdoor: float, generation: float, dry_air: float, recovered: float) -> float:
    """Moisture recovery (0 to 1) of a core that keeps the indoor air at `humidity_ratio`; 0 when none is needed.

    `dry_air` kg/s of all outdoor air, `recovered` the part through the core. NoSolution when even full recovery
    is too little. Source: as `moisture_exchange`.
    """
    require_positive(dry_air=dry_air, recovered=recovered)
    share = (dry_air - exchange_for(humidity_ratio, outdoor, generation)) / recovered
    if share > 1.0:
        raise NoSolution(_METHOD, "no core returns that much moisture")
    return max(0.0, share)


def humidity_ceiling(
    indoor: float, outdoor: float, transmittance: float, film: float = GLASS_FILM, at_surface: float = 1.0
) -> float:
    """Highest indoor relative humidity at which the air touching a part stays at or below `at_surface`.

    Temperatures K, `transmittance` W/(m2 K) of the glass or wall, `film` its inner film in m2 K/W; `at_surface` 1
    keeps glass clear, 0.8 keeps mold off a wall. Never above 1; ValueError for impossible input.
    Source: ISO 13788 (surface temperature and surface humidity), steady state.
    """
    require_fraction(at_surface=at_surface)
    surface = wall_surface_temperature(indoor, outdoor, transmittance, film)
    return min(1.0, at_surface * saturation_pressure(surface) / saturation_pressure(indoor))


def steady_relative_humidity(
    temperature: float, outdoor: float, generation: float, exchange: float, pressure: float
) -> float:
    """Steady indoor relative humidity at `temperature` K and `pressure` Pa; above 1 the house drips.

    Other arguments, errors and source as `steady_humidity_ratio`.
    """
    return relative_humidity(temperature, steady_humidity_ratio(outdoor, generation, exchange), pressure)


def latent_load(exchange: float, outdoor: float, indoor: float) -> float:
    """Latent load in W that outdoor air brings in; negative when it dries the house.

    `exchange` kg/s of dry air as from `moisture_exchange`, humidity ratios kg/kg.
    Source: ASHRAE Handbook - Fundamentals 2021, chapter 17 "Residential Cooling and Heating Load Calculations".
    """
    require_not_negative(exchange=exchange, outdoor=outdoor, indoor=indoor)
    return exchange * HEAT_OF_VAPORIZATION * (outdoor - indoor)


def clear_room_air(outdoor: Stream, room: Stream, pressure: float) -> float:
    """Dry air in kg/s of room air, at least that of `room`, with which the outdoor air mixes without fog.

    `pressure` Pa. NoSolution where a hundred times the outdoor air is not enough.
    Source: adiabatic mixing, ASHRAE Handbook - Fundamentals 2021, chapter 1 "Psychrometrics".
    """
    require_positive(outdoor_air=outdoor.dry_air, room_air=room.dry_air)

    def surplus(dry_air: float) -> float:
        mixture = mix([outdoor, room._replace(dry_air=dry_air)], pressure)
        if mixture.condensate > 0.0:
            return mixture.condensate / mixture.dry_air
        return mixture.humidity_ratio - saturated_at(mixture.temperature, 1.0, pressure)

    if surplus(room.dry_air) <= 0.0:
        return room.dry_air
    return bracketed_root(surplus, room.dry_air, 100.0 * outdoor.dry_air + room.dry_air, 1e-9, _METHOD)


def leaves_frost(room: float, outdoor: float, leaving: float, moisture_recovery: float, pressure: float) -> bool:
    """Whether the outgoing air leaves a recovery core below freezing with more water than it can hold there.

    `room` and `outdoor` humidity ratios kg/kg, `leaving` K, `moisture_recovery` 0 to 1, `pressure` Pa.
    Source: moisture balance of the core at equal flows, ASHRAE 84 (transfer ratio).
    """
    require_not_negative(room=room, outdoor=outdoor)
    require_fraction(moisture_recovery=moisture_recovery)
    left = room - moisture_recovery * (room - outdoor)
    return leaving < FREEZING and left > saturated_at(leaving, 1.0, pressure)
