"""Local losses of fittings: loss coefficients by kind and shape.

A coefficient C belongs to one cross-section: loss = C * density * velocity**2 / 2 with the velocity there,
and which section is stated beside each value. Coefficients without a book beside them are from memory of the
handbook's fitting database and the sheet-metal trade's tables; margin about 20 %.
"""

from __future__ import annotations

from itertools import pairwise

from checker.physics.arguments import require_finite, require_positive
from checker.physics.validity import OutOfRange
from checker.record import Record

_MEMORY = "from memory"
_SHEET_METAL = "HVAC Systems - Duct Design (SMACNA), Table 14-10"
_PRINCIPLES = "Principles of HVAC, 9th edition, fitting table supplement"
_HANDBOOK_ELBOW = "ASHRAE duct fitting database, fitting CD3-10"


class LossCoefficient(Record):
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

_SMOOTH_ELBOW = ((0.5, 0.71), (0.75, 0.33), (1.0, 0.22), (1.5, 0.15), (2.0, 0.13), (2.5, 0.12))
_GORED_ELBOWS = {
    3: ((0.5, 0.98), (0.75, 0.54), (1.0, 0.42), (1.5, 0.34), (2.0, 0.33)),
    4: ((0.75, 0.50), (1.0, 0.37), (1.5, 0.27), (2.0, 0.24)),
    5: ((0.75, 0.46), (1.0, 0.33), (1.5, 0.24), (2.0, 0.19)),
}
_ASPECTS = (0.25, 0.5, 0.75, 1.0, 1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0)
_RECTANGULAR_ELBOW = {
    0.5: (1.53, 1.38, 1.29, 1.18, 1.06, 1.00, 1.00, 1.06, 1.12, 1.16, 1.18),
    0.75: (0.57, 0.52, 0.48, 0.44, 0.40, 0.39, 0.39, 0.40, 0.42, 0.43, 0.44),
    1.0: (0.27, 0.25, 0.23, 0.21, 0.19, 0.18, 0.18, 0.19, 0.20, 0.21, 0.21),
    1.5: (0.22, 0.20, 0.19, 0.17, 0.15, 0.14, 0.14, 0.15, 0.16, 0.17, 0.17),
    2.0: (0.20, 0.18, 0.16, 0.15, 0.14, 0.13, 0.13, 0.14, 0.14, 0.15, 0.15),
}
_ANGLES = (
    (0.0, 0.0), (20.0, 0.31), (30.0, 0.45), (45.0, 0.60), (60.0, 0.78), (75.0, 0.90), (90.0, 1.00), (110.0, 1.13),
    (130.0, 1.20), (150.0, 1.28), (180.0, 1.40),
)  # fmt: skip


def smooth_elbow_coefficient(radius_ratio: float) -> LossCoefficient:
    """C of a round smooth (die-stamped) 90 degree elbow from centerline radius over diameter, valid 0.5 to 2.5.

    OutOfRange beyond. Source: HVAC Systems - Duct Design (SMACNA), Table 14-10 A.
    """
    return LossCoefficient(_interpolate("smooth elbow", radius_ratio, _SMOOTH_ELBOW), "duct", _SHEET_METAL)


def gored_elbow_coefficient(radius_ratio: float, gores: int = 5) -> LossCoefficient:
    """C of a round 90 degree elbow of 3 to 5 pieces from centerline radius over diameter, valid 0.75 to 2.0.

    OutOfRange beyond (three pieces: below 0.5). Source: HVAC Systems - Duct Design (SMACNA), Table 14-10 B.
    """
    if gores not in _GORED_ELBOWS:
        raise OutOfRange("gored elbow", f"{gores} pieces are not 3 to 5")
    return LossCoefficient(_interpolate("gored elbow", radius_ratio, _GORED_ELBOWS[gores]), "duct", _SHEET_METAL)


def rectangular_elbow_coefficient(radius_ratio: float, aspect: float) -> LossCoefficient:
    """C of a rectangular smooth radius 90 degree elbow without vanes.

    `radius_ratio` centerline radius over the side in the plane of the bend, valid 0.5 to 2.0; `aspect` the other side
    over that one, 0.25 to 8. OutOfRange beyond. Holds for Reynolds numbers of 2e5 and more; up to 1.8 times at 2e4.
    Source: HVAC Systems - Duct Design (SMACNA), Table 14-10 F.
    """
    rows = tuple(
        (ratio, _interpolate("rectangular elbow", aspect, tuple(zip(_ASPECTS, row, strict=True))))
        for ratio, row in _RECTANGULAR_ELBOW.items()
    )
    return LossCoefficient(_interpolate("rectangular elbow", radius_ratio, rows), "duct", _SHEET_METAL)


def elbow_angle_factor(angle: float) -> float:
    """Factor on the 90 degree coefficient for another angle in degrees, 0 to 180.

    OutOfRange beyond. Source: HVAC Systems - Duct Design (SMACNA), Table 14-10, note 1.
    """
    return _interpolate("elbow angle", angle, _ANGLES)


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


def _interpolate(method: str, value: float, table: tuple[tuple[float, float], ...]) -> float:
    require_finite(value=value)
    if not table[0][0] <= value <= table[-1][0]:
        raise OutOfRange(method, f"{value:g} is outside {table[0][0]:g} to {table[-1][0]:g}")
    for (low, at_low), (high, at_high) in pairwise(table):
        if value <= high:
            return at_low + (at_high - at_low) * (value - low) / (high - low)
    return table[-1][1]
