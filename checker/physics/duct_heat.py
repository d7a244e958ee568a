"""Heat gained or lost by a duct run, and the air it leaks.

Units: K, W, kg/s, m, m2 K/W, m3/s, Pa.
"""

from __future__ import annotations

from math import exp

from checker.physics.arguments import require_not_negative, require_positive

FILM_RESISTANCE = 0.15
"""Inner and outer air film of a duct together, m2 K/W (0.85 h ft2 F/Btu), common practice."""

LEAKAGE_EXPONENT = 0.65
"""Exponent of duct leakage flow, SMACNA HVAC Air Duct Leakage Test Manual."""

LEAKAGE_CLASSES: dict[str, int] = {
    "rectangular metal, seal class C": 24,
    "rectangular metal, seal class B": 12,
    "rectangular metal, seal class A": 6,
    "round metal, seal class C": 12,
    "round metal, seal class B": 6,
    "round metal, seal class A": 3,
    "rectangular metal, unsealed": 48,
    "flexible, unsealed": 30,
    "flexible, sealed": 12,
}
"""Leakage class, cfm per 100 ft2 at 1 in. w.g.: SMACNA HVAC Air Duct Leakage Test Manual, Table 4-1."""

_CLASS_PRESSURE = 249.089  # Pa in 1 in. w.g.
_CLASS_FLOW = 4.719474e-4 / 9.290304  # m3/s per m2 in 1 cfm per 100 ft2


def conductance(perimeter: float, length: float, insulation: float) -> float:
    """Heat conductance of a run in W/K; `perimeter` and `length` m, R of the insulation m2 K/W (0 when bare).

    Source: flat-wall resistance on the given perimeter with the films above, common practice.
    """
    require_positive(perimeter=perimeter)
    require_not_negative(length=length, insulation=insulation)
    return perimeter * length / (insulation + FILM_RESISTANCE)


def exit_temperature(
    entering: float, surroundings: float, conductance_of_run: float, capacity_flow: float
) -> float:
    """Air temperature in K at the end of a run.

    `entering` and `surroundings` K, conductance W/K, `capacity_flow` W/K (mass flow times specific heat). No
    flow: the air takes the temperature of the surroundings.
    Source: ASHRAE Handbook - Fundamentals, chapter 4 "Heat Transfer" (exponential approach).
    """
    require_positive(entering=entering, surroundings=surroundings)
    require_not_negative(conductance=conductance_of_run, capacity_flow=capacity_flow)
    if capacity_flow == 0.0:
        return surroundings
    return surroundings - (surroundings - entering) * exp(-conductance_of_run / capacity_flow)


def leakage_of_class(leakage_class: float, surface: float, pressure: float) -> float:
    """Leakage in m3/s of a duct with this leakage class, `surface` m2, at a `pressure` difference in Pa.

    F = class * p**0.65 in cfm per 100 ft2 and in. w.g. Source: SMACNA HVAC Air Duct Leakage Test Manual.
    """
    require_not_negative(pressure=pressure)
    return leakage_coefficient(leakage_class, surface) * float(pressure**LEAKAGE_EXPONENT)


def leakage_coefficient(leakage_class: float, surface: float) -> float:
    """Leakage in m3/s at 1 Pa of a duct with this class and `surface` m2, for an exponent of 0.65."""
    require_not_negative(leakage_class=leakage_class, surface=surface)
    return leakage_class * surface * _CLASS_FLOW / float(_CLASS_PRESSURE**LEAKAGE_EXPONENT)
