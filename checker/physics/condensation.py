"""Condensation on cold ducts, pipes and room surfaces, and the insulation that prevents it.

Units: K, m2 K/W, W/(m K), m. Source: steady heat balance of the surface as in ASHRAE Handbook - Fundamentals
2021, chapter 23 "Insulation for Mechanical Systems"; margin about 10 % in resistance.
"""

from __future__ import annotations

from math import log

from checker.physics.arguments import require_fraction, require_not_negative, require_positive
from checker.physics.psychrometrics import dew_point, humidity_ratio_of_vapor, saturation_pressure
from checker.physics.scalar_root import bracketed_root
from checker.physics.validity import NoSolution, OutOfRange

SURFACE_RESISTANCE: dict[str, float] = {
    "still air, dull": 0.12,
    "still air, reflective": 0.23,
    "moving air": 0.06,
}
"""Outer film resistance in m2 K/W: 0.68 and 1.32 h ft2 F/Btu in still air; moving air is common practice."""

SAFETY = 1.0
"""K the surface should stay above the dew point, common practice."""

FOAM_CONDUCTIVITY = 0.040
"""W/(m K) of flexible closed-cell pipe foam at most: 0.28 Btu in/(h ft2 F), ASTM C534, from memory."""

THICKEST_INSULATION = 0.5

_METHOD = "condensation"
_ANY_PRESSURE = 101_325.0  # Pa; a dew point depends on the vapor alone


def surface_temperature(inside: float, ambient: float, insulation: float, film: float) -> float:
    """Temperature in K of the outer surface of an insulated flat wall with `inside` K behind it.

    `insulation` m2 K/W (0 when bare), `film` m2 K/W.
    """
    require_positive(inside=inside, ambient=ambient, film=film)
    require_not_negative(insulation=insulation)
    return ambient - (ambient - inside) * film / (film + insulation)


def least_insulation(
    inside: float,
    ambient: float,
    dew_point: float,
    film: float,
    safety: float = SAFETY,
) -> float:
    """Least resistance in m2 K/W that keeps the surface `safety` K above the dew point.

    Temperatures K, `film` m2 K/W; 0 when no insulation is needed. NoSolution when the dew point is within
    `safety` of the ambient temperature: no insulation can help. ValueError when the dew point is
    above the ambient temperature.
    """
    require_positive(inside=inside, ambient=ambient, dew_point=dew_point, film=film)
    require_not_negative(safety=safety)
    if dew_point > ambient:
        raise ValueError(f"dew point {dew_point:g} K is above the ambient temperature {ambient:g} K")
    target = dew_point + safety
    if inside >= target:
        return 0.0
    if target >= ambient:
        raise NoSolution(
            _METHOD, f"the dew point {dew_point:g} K is too near the ambient temperature {ambient:g} K"
        )
    return film * (target - inside) / (ambient - target)


def pipe_thickness(resistance: float, conductivity: float, radius: float) -> float:
    """Thickness in m around a pipe or round duct of outer `radius` m for a resistance on the outer surface.

    Solves r2 * ln(r2 / r) / k = R. OutOfRange when it exceeds 0.5 m.
    """
    require_not_negative(resistance=resistance)
    require_positive(conductivity=conductivity, radius=radius)
    if resistance == 0.0:
        return 0.0

    def surplus(outer: float) -> float:
        return outer * log(outer / radius) / conductivity - resistance

    if surplus(radius + THICKEST_INSULATION) < 0.0:
        raise OutOfRange(_METHOD, "more than 0.5 m of insulation would be needed")
    return bracketed_root(surplus, radius, radius + THICKEST_INSULATION, 1e-10, _METHOD) - radius


def wall_surface_temperature(indoor: float, outdoor: float, transmittance: float, film: float) -> float:
    """Indoor surface temperature in K of a building part of U `transmittance` W/(m2 K).

    `film` is the inner film resistance in m2 K/W, 0.13 for a free wall to 0.25 behind furniture (common
    practice). ValueError when U times the film reaches 1.
    """
    require_positive(indoor=indoor, outdoor=outdoor, film=film)
    require_not_negative(transmittance=transmittance)
    drop = transmittance * film
    if drop >= 1.0:
        raise ValueError(f"U {transmittance:g} and film resistance {film:g} do not belong together")
    return indoor - drop * (indoor - outdoor)


def humidity_at_surface(air: float, relative_humidity: float, surface: float) -> float:
    """Relative humidity in the air touching a surface; above 1 means condensation. Temperatures K."""
    require_fraction(relative_humidity=relative_humidity)
    return relative_humidity * saturation_pressure(air) / saturation_pressure(surface)


def with_film(transmittance: float, film: float, other: float) -> float:
    """U-value in W/(m2 K) of a part once its inner film is `other` in place of `film`, both m2 K/W.

    ValueError when U times the film reaches 1. Source: layers in series (ISO 6946).
    """
    require_positive(transmittance=transmittance, film=film, other=other)
    if transmittance * film >= 1.0:
        raise ValueError(f"U {transmittance:g} and film resistance {film:g} do not belong together")
    return 1.0 / (1.0 / transmittance - film + other)


def temperature_by_factor(indoor: float, outdoor: float, factor: float) -> float:
    """Inner surface temperature in K of a detail with a temperature factor (0 to 1). Source: ISO 13788."""
    require_positive(indoor=indoor, outdoor=outdoor)
    require_fraction(temperature_factor=factor)
    return outdoor + factor * (indoor - outdoor)


def least_temperature_factor(indoor: float, outdoor: float, humidity: float, at_surface: float) -> float:
    """Temperature factor at which the air touching a surface reaches relative humidity `at_surface`, 0 at least.

    Temperatures K, `humidity` of the room air, above 0, and `at_surface` as fractions. NoSolution where the room air
    itself is as humid as that, or where it is not colder outdoors. Source: ISO 13788 (critical surface humidity).
    """
    require_positive(indoor=indoor, outdoor=outdoor, humidity=humidity, at_surface=at_surface)
    require_fraction(humidity=humidity, at_surface=at_surface)
    if outdoor >= indoor:
        raise NoSolution(_METHOD, "it is not colder outdoors than in the room")
    if humidity >= at_surface:
        raise NoSolution(_METHOD, f"the room air of {humidity:.0%} is as humid as the surface may be")
    partial = humidity * saturation_pressure(indoor) / at_surface
    surface = dew_point(humidity_ratio_of_vapor(partial, _ANY_PRESSURE), _ANY_PRESSURE)
    return max(0.0, (surface - outdoor) / (indoor - outdoor))
