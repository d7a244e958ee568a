"""Heating performance points for several temperatures of the entering air, read at that of the house.

Units: K, W.
"""

from collections.abc import Sequence

from checker.physics.arguments import require_positive
from checker.physics.cooling_table import between
from checker.physics.heat_pump import PerformancePoint
from checker.physics.validity import OutOfRange

FURTHEST_INDOORS = 5.0 / 1.8
"""K; how far beyond the entering temperatures of a table it is carried on."""


def mixed(column: list[tuple[float, PerformancePoint]], indoor: float) -> PerformancePoint:
    """One point out of those of one outdoor temperature, in straight lines between the entering temperatures."""
    if len(column) == 1:
        return column[0][1]

    def of(values: list[float]) -> float:
        return between(list(zip((entering for entering, _ in column), values, strict=True)), indoor)

    points = [point for _, point in column]
    leasts = [point.least for point in points if point.least is not None]
    return PerformancePoint(
        points[0].temperature,
        max(0.0, of([point.capacity for point in points])),
        max(0.0, of([point.power for point in points])),
        max(0.0, of(leasts)) if len(leasts) == len(points) else None,
    )


def at_entering(rows: Sequence[tuple[float | None, PerformancePoint]], indoor: float) -> list[PerformancePoint]:
    """The points of a table at an entering temperature in K, one for each outdoor temperature.

    Rows: (entering temperature or None, point). At most 5 F beyond the entering temperatures of the table;
    OutOfRange further away. ValueError where two points stand at the same temperatures.
    Source: common practice (linear interpolation of makers' tables).
    """
    require_positive(indoor_temperature=indoor)
    known = [entering for entering, _ in rows if entering is not None]
    if known and not min(known) - FURTHEST_INDOORS - 1e-9 <= indoor <= max(known) + FURTHEST_INDOORS + 1e-9:
        raise OutOfRange("heat-pump capacity", "the indoor temperature is more than 5 F beyond those of the table")
    found = []
    for outdoor in sorted({point.temperature for _, point in rows}):
        here = [(entering, point) for entering, point in rows if point.temperature == outdoor]
        column = sorted(
            [(indoor if entering is None else entering, point) for entering, point in here], key=lambda each: each[0]
        )
        if len({entering for entering, _ in column}) < len(column):
            raise ValueError("two performance points at one outdoor and entering temperature")
        found.append(mixed(column, indoor))
    return found
