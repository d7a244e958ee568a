"""Mixing of moist air streams and the heat to temper outdoor air.

Units: m3/s, kg/s of dry air, K, kg/kg, Pa, W.
Source: ASHRAE Handbook - Fundamentals 2021, chapter 1 "Psychrometrics" (adiabatic mixing).
"""

from __future__ import annotations

from collections.abc import Sequence

from checker.physics.air import specific_volume
from checker.physics.arguments import require_not_negative, require_positive
from checker.physics.psychrometrics import (
    FREEZING,
    LOWEST_TEMPERATURE,
    enthalpy,
    humidity_ratio,
    temperature_from_enthalpy,
)
from checker.physics.scalar_root import bracketed_root
from checker.record import Record


class Stream(Record):
    """A stream of moist air: dry-air mass flow in kg/s, dry bulb in K, humidity ratio in kg/kg."""

    dry_air: float
    temperature: float
    humidity_ratio: float


class Mixture(Record):
    """The mixed stream, its enthalpy in J per kg dry air and the fog that drops out in kg/s (often zero)."""

    dry_air: float
    temperature: float
    humidity_ratio: float
    enthalpy: float
    condensate: float


def stream_of_airflow(airflow: float, temperature: float, humidity: float, pressure: float) -> Stream:
    """The stream of an actual airflow in m3/s at `temperature` K, humidity ratio `humidity`, `pressure` Pa.

    ValueError for a negative airflow or an impossible state.
    """
    require_not_negative(airflow=airflow)
    return Stream(airflow / specific_volume(temperature, pressure, humidity), temperature, humidity)


def mix(streams: Sequence[Stream], pressure: float) -> Mixture:
    """Adiabatic mixture of streams at `pressure` Pa.

    ValueError when no air flows or a mass flow is negative. When the mixture is above saturation the fog is
    returned as condensate, at the temperature of the mixture.
    """
    for stream in streams:
        require_not_negative(dry_air_flow=stream.dry_air)
    total = sum(stream.dry_air for stream in streams)
    require_positive(total_airflow=total)
    heat = sum(s.dry_air * enthalpy(s.temperature, s.humidity_ratio) for s in streams) / total
    moisture = sum(s.dry_air * s.humidity_ratio for s in streams) / total
    temperature = temperature_from_enthalpy(heat, moisture)
    if moisture <= humidity_ratio(temperature, 1.0, pressure):
        return Mixture(total, temperature, moisture, heat, 0.0)
    warmest = max(stream.temperature for stream in streams)

    def surplus(trial: float) -> float:
        saturated = humidity_ratio(trial, 1.0, pressure)
        return enthalpy(trial, saturated) + (moisture - saturated) * _water_enthalpy(trial) - heat

    settled = bracketed_root(surplus, LOWEST_TEMPERATURE, warmest, 1e-9, "fog mixture")
    left = humidity_ratio(settled, 1.0, pressure)
    return Mixture(total, settled, left, enthalpy(settled, left), total * (moisture - left))


def mixed_temperature(flows: Sequence[tuple[float, float]]) -> float:
    """Temperature in K of a mixture of dry streams, each (mass flow or flow of equal density, temperature K).

    ValueError when a flow is negative or nothing flows.
    """
    for flow, temperature in flows:
        require_not_negative(flow=flow)
        require_positive(temperature=temperature)
    total = sum(flow for flow, _ in flows)
    require_positive(total_flow=total)
    return sum(flow * temperature for flow, temperature in flows) / total


def outdoor_share_for_temperature(outdoor: float, indoor: float, least_mixed: float) -> float:
    """Largest share of outdoor air (0 to 1) that keeps the mixture at or above `least_mixed`, all K.

    ValueError when the indoor air itself is colder than `least_mixed`.
    """
    require_positive(outdoor=outdoor, indoor=indoor, least_mixed=least_mixed)
    if indoor < least_mixed:
        raise ValueError(f"indoor air at {indoor:g} K is colder than the limit {least_mixed:g} K")
    if outdoor >= least_mixed:
        return 1.0
    return (indoor - least_mixed) / (indoor - outdoor)


def _water_enthalpy(temperature: float) -> float:
    celsius = temperature - FREEZING
    # Liquid water, or ice below freezing: J/kg, constants of the handbook's chapter, from memory.
    return 4186.0 * celsius if celsius >= 0.0 else -333.4e3 + 2100.0 * celsius
