"""Pressure drop of devices in the air path: filters, coils, grilles, heat-recovery cores.

Units: m3/s, Pa, -. Exponents are common practice, recalled from makers' curves in general (from memory).
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from itertools import pairwise
from math import exp, log

from checker.physics.arguments import require_finite, require_positive
from checker.physics.validity import OutOfRange

EXPONENTS: dict[str, float] = {
    "filter": 1.3,
    "wet coil": 1.7,
    "dry coil": 1.8,
    "grille": 2.0,
    "register": 2.0,
    "louver": 2.0,
    "heat recovery core": 1.1,
}
"""Exponent of the airflow by kind of device, from memory."""

LOWEST_EXPONENT = 1.0
HIGHEST_EXPONENT = 1.9
"""Sensitivity bounds for a filter of unknown exponent, from memory."""

LOWEST_FLOW_RATIO = 0.5
HIGHEST_FLOW_RATIO = 1.5

SIZE_ALLOWANCE = 0.0127
"""How much smaller than its nominal size a filter is, m each way, common practice."""

_SLACK = 1e-9
_METHOD = "device pressure drop"


def drop_from_rating(
    airflow: float, rated_drop: float, rated_airflow: float, exponent: float, density_ratio: float = 1.0
) -> float:
    """Pressure drop in Pa at `airflow` m3/s from one rated point (Pa, m3/s), signed like the airflow.

    drop = rated * (Q/Qr)**n * (density/rated density)**(n - 1): friction through a medium (n = 1) does not
    feel the density, turbulent loss (n = 2) is proportional to it. ValueError for non-positive ratings or an
    exponent outside 1 to 2. Never carry a rating from one filter model to another.
    """
    require_finite(airflow=airflow)
    require_positive(rated_drop=rated_drop, rated_airflow=rated_airflow, density_ratio=density_ratio)
    check_exponent(exponent)
    size = rated_drop * float((abs(airflow) / rated_airflow) ** exponent * density_ratio ** (exponent - 1.0))
    return size if airflow >= 0.0 else -size


def drop_from_points(airflow: float, points: Sequence[tuple[float, float]]) -> float:
    """Pressure drop in Pa at `airflow` m3/s from two or more points (m3/s, Pa), log-log between them.

    The end slopes carry on to half the first and one and a half times the last airflow, OutOfRange beyond.
    ValueError when the points do not rise in airflow and drop.
    """
    check_points(points)
    require_positive(airflow=airflow)
    low, high = LOWEST_FLOW_RATIO * points[0][0], HIGHEST_FLOW_RATIO * points[-1][0]
    if not low * (1.0 - _SLACK) <= airflow <= high * (1.0 + _SLACK):
        raise OutOfRange(_METHOD, f"airflow {airflow:.4g} m3/s is outside {low:.4g} to {high:.4g} m3/s")
    coefficient, exponent = power_law_at(airflow, points)
    return coefficient * float(airflow**exponent)


def power_law_at(airflow: float, points: Sequence[tuple[float, float]]) -> tuple[float, float]:
    """Coefficient and exponent of the power law through the two points that enclose or lie nearest `airflow`.

    `points` as accepted by `check_points`; no range is enforced.
    """
    index = bisect_right([flow for flow, _ in points], airflow)
    index = min(max(index, 1), len(points) - 1)
    (flow_1, drop_1), (flow_2, drop_2) = points[index - 1], points[index]
    exponent = log(drop_2 / drop_1) / log(flow_2 / flow_1)
    return exp(log(drop_1) - exponent * log(flow_1)), exponent


def filter_face_area(nominal_width: float, nominal_height: float) -> float:
    """Face area in m2 of a filter from its nominal sides in m; the real sides are about 13 mm less.

    ValueError when a side is not above that. Source: common practice (1/2 in. under the nominal size).
    """
    require_positive(width=nominal_width - SIZE_ALLOWANCE, height=nominal_height - SIZE_ALLOWANCE)
    return (nominal_width - SIZE_ALLOWANCE) * (nominal_height - SIZE_ALLOWANCE)


def check_points(points: Sequence[tuple[float, float]]) -> None:
    """ValueError unless there are two points or more, positive and rising in both airflow and drop."""
    if len(points) < 2:
        raise ValueError("a device curve needs two points or more")
    for flow, drop in points:
        require_positive(airflow=flow, drop=drop)
    for (flow_1, drop_1), (flow_2, drop_2) in pairwise(points):
        if flow_2 <= flow_1 or drop_2 <= drop_1:
            raise ValueError("the points of a device curve must rise in airflow and in drop")


def check_exponent(exponent: float) -> None:
    """ValueError unless the exponent lies between 1 (laminar) and 2 (turbulent)."""
    require_finite(exponent=exponent)
    if not 1.0 <= exponent <= 2.0:
        raise ValueError(f"exponent must lie between 1 and 2, got {exponent:g}")
