"""Cooling capacity from a maker's table, by outdoor temperature and wet bulb of the entering air.

Units: K, W.
"""

from collections.abc import Sequence
from itertools import pairwise

from checker.physics.arguments import require_positive
from checker.physics.validity import OutOfRange
from checker.record import Record

FURTHEST_ABOVE = 5.0 / 1.8
"""K; how far above its hottest outdoor temperature a table is carried on."""
FURTHEST_WET_BULB = 2.0 / 1.8
"""K; how far beyond its wet bulbs a table is carried on."""
_METHOD = "cooling capacity"


class CoolingPoint(Record):
    """Total capacity and its sensible part in W, outdoors at `temperature` K, entering air of `wet_bulb` K."""

    temperature: float
    total: float
    sensible: float | None = None
    wet_bulb: float | None = None


class CoolingCapacity(Record):
    """Total and sensible capacity in W; the sensible part None where the table does not give it."""

    total: float
    sensible: float | None


def between(table: Sequence[tuple[float, float]], at: float) -> float:
    """A table of (place, value) in order, read at a place in straight lines; the end lines are carried on."""
    place = next((each for each in range(1, len(table)) if at <= table[each][0]), len(table) - 1)
    (low, first), (high, second) = table[place - 1], table[place]
    return first + (second - first) * (at - low) / (high - low)


def by_outdoors(table: list[tuple[float, float]], temperature: float) -> float:
    """A table of (K outdoors, W) at a temperature: at most 5 F beyond its hottest, held below its coolest.

    Held below means too little rather than too much: cooling capacity grows as the outdoor air gets cooler.
    OutOfRange beyond, and for a single temperature that is more than 1 K away.
    """
    table = sorted(table)
    if any(one[0] == other[0] for one, other in pairwise(table)):
        raise ValueError("two performance points at one outdoor temperature and wet bulb")
    if temperature > table[-1][0] + FURTHEST_ABOVE + 1e-9:
        raise OutOfRange(_METHOD, "the outdoor temperature is more than 5 F above the hottest performance point")
    if len(table) == 1:
        if abs(temperature - table[0][0]) > 1.0:
            raise OutOfRange(_METHOD, "one performance point says nothing about other temperatures")
        return table[0][1]
    return between(table, max(temperature, table[0][0]))


def value_at(points: Sequence[tuple[float, float | None, float]], temperature: float, wet_bulb: float) -> float:
    """A table of (K outdoors, K wet bulb, W) read at both. Points without a wet bulb hold for any.

    Straight lines outdoors, then between the wet bulbs; at most 2 F beyond these. OutOfRange further away.
    Source: common practice (linear interpolation of makers' tables).
    """
    require_positive(temperature=temperature, wet_bulb=wet_bulb)
    wets = sorted({wet for _, wet, _ in points if wet is not None})
    if not wets:
        return by_outdoors([(outdoor, value) for outdoor, _, value in points], temperature)
    if not wets[0] - FURTHEST_WET_BULB - 1e-9 <= wet_bulb <= wets[-1] + FURTHEST_WET_BULB + 1e-9:
        raise OutOfRange(_METHOD, "the entering wet bulb is more than 2 F beyond those of the performance points")
    columns = [(wet, by_outdoors([(t, value) for t, each, value in points if each == wet], temperature)) for wet in wets]
    return columns[0][1] if len(columns) == 1 else between(columns, wet_bulb)


def cooling_at(points: Sequence[CoolingPoint], temperature: float, wet_bulb: float) -> CoolingCapacity:
    """Total and sensible capacity at an outdoor temperature and entering wet bulb in K. Errors as `value_at`."""
    if not points:
        raise ValueError("no performance point given")
    total = value_at([(each.temperature, each.wet_bulb, each.total) for each in points], temperature, wet_bulb)
    parts = [(each.temperature, each.wet_bulb, each.sensible) for each in points if each.sensible is not None]
    sensible = value_at(parts, temperature, wet_bulb) if len(parts) == len(points) else None
    return CoolingCapacity(max(0.0, total), None if sensible is None else max(0.0, min(total, sensible)))
