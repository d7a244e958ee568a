"""How long an exhaust duct may be for a fan rated at 0.25 in. w.g.: the equation behind the code's table.

Units: m, m3/s, Pa.
"""

from __future__ import annotations

from math import floor, inf

from checker.physics.air import STANDARD_DENSITY, STANDARD_VISCOSITY
from checker.physics.arguments import require_positive
from checker.physics.friction import friction_per_meter

FOOT = 0.3048

RATING_PRESSURE = 0.25 * 249.089
"""Pa, static pressure at which the fan's airflow is rated (0.25 in. w.g.)."""

SMOOTH_ROUGHNESS = 0.00038 * FOOT
"""m, the roughness that reproduces the table's smooth ducts."""

FLEX_ROUGHNESS = 0.0055 * FOOT
"""m, the roughness that reproduces the table's flexible ducts; rougher than the 0.003 ft often quoted."""

TERMINAL_ALLOWANCE = 30.0 * FOOT
"""m of duct that the table keeps back in every cell, as much as two of its elbows."""

NO_LIMIT_ABOVE = 200.0 * FOOT
"""m above which the table prints "no limit"; its printed cells put the step between 198 and 242 ft."""


def allowed_length(
    airflow: float,
    diameter: float,
    roughness: float,
    available_pressure: float = RATING_PRESSURE,
    density: float = STANDARD_DENSITY,
    viscosity: float = STANDARD_VISCOSITY,
) -> float:
    """Straight length in m whose friction uses up the available pressure, less 30 ft; 0 when none is left.

    `airflow` m3/s, `diameter` and `roughness` m, `available_pressure` Pa. ValueError for impossible input,
    OutOfRange from the friction equation.
    Source: reproduces IRC Table M1506.2 (2015), M1504.2 (2018 to 2024) and ASHRAE 62.2, exhaust duct table,
    to 1 ft; the equation itself is not printed there (common practice).
    """
    require_positive(
        airflow=airflow, diameter=diameter, roughness=roughness, available_pressure=available_pressure
    )
    friction = friction_per_meter(airflow, diameter, roughness, density, viscosity)
    return max(0.0, available_pressure / friction - TERMINAL_ALLOWANCE)


def tabulated_length(airflow: float, diameter: float, roughness: float) -> float:
    """Length in m as the code's table prints it: whole feet, inf for "no limit", 0 for "not allowed".

    `airflow` m3/s, `diameter` and `roughness` m. Errors and source as `allowed_length`.
    """
    length = allowed_length(airflow, diameter, roughness)
    if length > NO_LIMIT_ABOVE:
        return inf
    return floor(length / FOOT + 0.5) * FOOT
