"""Local losses of fittings: loss coefficients, and their exchange with equivalent length.

A coefficient C belongs to one cross-section: loss = C * density * velocity**2 / 2 with the velocity there,
and which section is stated beside each value. Coefficients without a book beside them are from memory of the
handbook's fitting database and the sheet-metal trade's tables; margin about 20 %.
"""

from __future__ import annotations

from itertools import pairwise
from typing import NamedTuple

from checker.physics.air import STANDARD_DENSITY, STANDARD_VISCOSITY
from checker.physics.arguments import require_finite, require_not_negative, require_positive
from checker.physics.friction import (
    friction_factor,
    reynolds_number,
    round_area,
    velocity,
    velocity_pressure,
)
from checker.physics.validity import OutOfRange

_MEMORY = "from memory"
_PRINCIPLES = "Principles of HVAC, 9th edition, fitting table supplement"
_HANDBOOK_ELBOW = "ASHRAE duct fitting database, fitting CD3-10"
LOWEST_COEFFICIENT = -0.5


class LossCoefficient(NamedTuple):
    """A loss coefficient, the section whose velocity it refers to, and its source."""

    value: float
    section: str
    source: str


COEFFICIENTS: dict[str, LossCoefficient] = {
    "elbow, round, mitred, 90 degrees": LossCoefficient(1.2, "duct", _MEMORY),
    "elbow, round, 7 gores, r/D 2.5, 90 degrees": LossCoefficient(0.11, "duct", _HANDBOOK_ELBOW),
    "elbow, rectangular, mitred, 90 degrees": LossCoefficient(1.3, "duct", _MEMORY),
    "elbow, rectangular, mitred, turning vanes": LossCoefficient(0.33, "duct", _MEMORY),
    "elbow, flexible, r/D at least 1, 90 degrees": LossCoefficient(1.0, "duct", _MEMORY),
    "tee, to the branch, 90 degrees": LossCoefficient(1.2, "branch", _MEMORY),
    "take-off, to the branch, 45 degrees": LossCoefficient(0.5, "branch", _MEMORY),
    "tee, straight through": LossCoefficient(0.05, "upstream", _MEMORY),
    "entry, flush with a wall": LossCoefficient(0.50, "duct", _PRINCIPLES),
    "entry, sharp projecting duct": LossCoefficient(1.0, "duct", _PRINCIPLES),
    "entry, bellmouth, r/D 0.2": LossCoefficient(0.03, "duct", _PRINCIPLES),
    "exit to a room": LossCoefficient(1.0, "duct", _MEMORY),
    "damper, open": LossCoefficient(0.2, "duct", _MEMORY),
}
"""Coefficients by kind; where recollection gives a range, its unfavourable end."""

_SMOOTH_ELBOW = ((0.75, 0.33), (1.0, 0.22), (1.5, 0.15), (2.0, 0.13))
_GORED_ELBOW = ((1.0, 0.33), (1.5, 0.24))


def smooth_elbow_coefficient(radius_ratio: float) -> LossCoefficient:
    """C of a round smooth 90 degree elbow from centreline radius over diameter, valid 0.75 to 2.0.

    OutOfRange beyond. Source: from memory of the handbook's fitting database.
    """
    return LossCoefficient(_interpolate("smooth elbow", radius_ratio, _SMOOTH_ELBOW), "duct", _MEMORY)


def gored_elbow_coefficient(radius_ratio: float) -> LossCoefficient:
    """C of a round 5-piece 90 degree elbow from centreline radius over diameter, valid 1.0 to 1.5.

    OutOfRange beyond. Source: from memory of the handbook's fitting database.
    """
    return LossCoefficient(_interpolate("gored elbow", radius_ratio, _GORED_ELBOW), "duct", _MEMORY)


def elbow_angle_factor(angle: float) -> float:
    """Factor on the 90 degree coefficient for another angle in degrees: 0.6 at 45, 1 at 90, linear between.

    OutOfRange outside 45 to 90. Source: from memory of the handbook's fitting database.
    """
    return _interpolate("elbow angle", angle, ((45.0, 0.6), (90.0, 1.0)))


def expansion_coefficient(upstream_area: float, downstream_area: float) -> LossCoefficient:
    """C of an abrupt expansion, on the upstream velocity; areas m2 (any one unit).

    ValueError when the duct narrows. Source: Borda-Carnot, any fluid-mechanics text.
    """
    require_positive(upstream_area=upstream_area, downstream_area=downstream_area)
    if upstream_area > downstream_area:
        raise ValueError("an expansion needs a downstream area not below the upstream area")
    value = (1.0 - upstream_area / downstream_area) ** 2
    return LossCoefficient(value, "upstream", "momentum theory (Borda-Carnot)")


def contraction_coefficient(upstream_area: float, downstream_area: float) -> LossCoefficient:
    """C of an abrupt contraction, on the downstream velocity; areas m2 (any one unit).

    ValueError when the duct widens. Source: fluid-mechanics textbooks, from memory.
    """
    require_positive(upstream_area=upstream_area, downstream_area=downstream_area)
    if downstream_area > upstream_area:
        raise ValueError("a contraction needs a downstream area not above the upstream area")
    return LossCoefficient(0.5 * (1.0 - downstream_area / upstream_area), "downstream", _MEMORY)


def opening_coefficient(discharge: float) -> float:
    """C, on the velocity through the free area, of an opening with this discharge coefficient (0 to 1].

    Source: orifice equation, Q = Cd * A * sqrt(2 * dp / density).
    """
    require_positive(discharge_coefficient=discharge)
    if discharge > 1.0:
        raise ValueError(f"discharge coefficient must not exceed 1, got {discharge:g}")
    return 1.0 / (discharge * discharge)


def on_other_section(coefficient: float, reference_area: float, other_area: float) -> float:
    """The same loss as a coefficient on the velocity in another section of the same airflow; areas m2."""
    require_finite(coefficient=coefficient)
    require_positive(reference_area=reference_area, other_area=other_area)
    return coefficient * (other_area / reference_area) ** 2


def fitting_loss(coefficient: float, airflow: float, area: float, density: float = STANDARD_DENSITY) -> float:
    """Loss in Pa, signed like the airflow; `airflow` m3/s, `area` m2 of the coefficient's own section.

    A negative coefficient (static regain) is allowed down to -0.5, ValueError below.
    """
    require_finite(coefficient=coefficient)
    if coefficient < LOWEST_COEFFICIENT:
        raise ValueError(f"loss coefficient {coefficient:g} is below {LOWEST_COEFFICIENT:g}")
    speed = velocity(airflow, area)
    loss = coefficient * velocity_pressure(speed, density)
    return loss if airflow >= 0.0 else -loss


def coefficient_of_length(
    equivalent_length: float,
    airflow: float,
    diameter: float,
    roughness: float,
    density: float = STANDARD_DENSITY,
    viscosity: float = STANDARD_VISCOSITY,
) -> float:
    """Loss coefficient with the loss of this many m of straight round duct at this airflow; C = f * L / D.

    `airflow` m3/s, `diameter` and `roughness` m. Valid at that airflow only.
    Source: ASHRAE Handbook - Fundamentals 2021, chapter 21 "Duct Design".
    """
    require_not_negative(equivalent_length=equivalent_length)
    factor = _factor(airflow, diameter, roughness, density, viscosity)
    return factor * equivalent_length / diameter


def length_of_coefficient(
    coefficient: float,
    airflow: float,
    diameter: float,
    roughness: float,
    density: float = STANDARD_DENSITY,
    viscosity: float = STANDARD_VISCOSITY,
) -> float:
    """Equivalent length in m of straight round duct, C * D / f; the inverse of `coefficient_of_length`."""
    require_not_negative(coefficient=coefficient)
    return coefficient * diameter / _factor(airflow, diameter, roughness, density, viscosity)


def _factor(airflow: float, diameter: float, roughness: float, density: float, viscosity: float) -> float:
    speed = velocity(airflow, round_area(diameter))
    require_positive(airflow=abs(speed))
    return friction_factor(reynolds_number(speed, diameter, density, viscosity), roughness / diameter)


def _interpolate(method: str, value: float, table: tuple[tuple[float, float], ...]) -> float:
    require_finite(value=value)
    if not table[0][0] <= value <= table[-1][0]:
        raise OutOfRange(method, f"{value:g} is outside {table[0][0]:g} to {table[-1][0]:g}")
    for (low, at_low), (high, at_high) in pairwise(table):
        if value <= high:
            return at_low + (at_high - at_low) * (value - low) / (high - low)
    return table[-1][1]
