"""Distances between outdoor openings: terminals, intakes, windows, doors, lot lines.

Units: m; positions are east, north and up of any common origin; bearings in degrees clockwise from north.
Distances are straight through the air, not around the building, so they never overstate the separation.
"""

from __future__ import annotations

from math import cos, hypot, radians, sin

from checker.physics.arguments import require_finite, require_positive
from checker.record import Record

ROUNDING = 1e-9
"""m; a distance short of its limit by no more than this is rounding, not a shortfall."""

Ground = tuple[float, float]


class Opening(Record):
    """An upright rectangle: its two ends on the plan (east, north), its lower and upper edge (up).

    A point has like ends and edges; a lot line reaches from -inf to inf.
    """

    left: Ground
    right: Ground
    bottom: float
    top: float


def point(east: float, north: float, up: float) -> Opening:
    """A terminal small enough to be a point. ValueError for a coordinate that is not finite."""
    require_finite(east=east, north=north, up=up)
    return Opening((east, north), (east, north), up, up)


def rectangle_on_wall(
    east: float, north: float, up: float, width: float, height: float, facing: float
) -> Opening:
    """An opening in an upright wall by its center, size in m, and the bearing its wall faces.

    ValueError for impossible input.
    """
    require_finite(east=east, north=north, up=up, facing=facing)
    require_positive(width=width, height=height)
    along_east, along_north = cos(radians(facing)), -sin(radians(facing))
    half = width / 2.0
    return Opening(
        (east - half * along_east, north - half * along_north),
        (east + half * along_east, north + half * along_north),
        up - height / 2.0,
        up + height / 2.0,
    )


def distance(one: Opening, other: Opening) -> float:
    """Shortest straight distance in m between two openings; 0 when they touch.

    Source: geometry (both are a stretch on the plan times a stretch of height, so the parts combine).
    """
    return hypot(horizontal_distance(one, other), vertical_gap(one, other))


def horizontal_distance(one: Opening, other: Opening) -> float:
    """Shortest distance in m on the plan between two openings; 0 when one lies above the other."""
    if _cross(one.left, one.right, other.left, other.right):
        return 0.0
    return min(
        _to_segment(one.left, other),
        _to_segment(one.right, other),
        _to_segment(other.left, one),
        _to_segment(other.right, one),
    )


def vertical_gap(one: Opening, other: Opening) -> float:
    """Height in m between the nearer edges of two openings; 0 when they overlap in height."""
    return max(0.0, one.bottom - other.top, other.bottom - one.top)


def _to_segment(place: Ground, segment: Opening) -> float:
    (east, north), (to_east, to_north) = segment.left, segment.right
    run_east, run_north = to_east - east, to_north - north
    squared = run_east * run_east + run_north * run_north
    share = 0.0
    if squared > 0.0:
        share = ((place[0] - east) * run_east + (place[1] - north) * run_north) / squared
        share = min(1.0, max(0.0, share))
    return hypot(place[0] - east - share * run_east, place[1] - north - share * run_north)


def _cross(start: Ground, end: Ground, other_start: Ground, other_end: Ground) -> bool:
    one_side = _side(other_start, other_end, start) * _side(other_start, other_end, end)
    other_side = _side(start, end, other_start) * _side(start, end, other_end)
    return one_side < 0.0 and other_side < 0.0


def _side(start: Ground, end: Ground, place: Ground) -> float:
    run_east, run_north = end[0] - start[0], end[1] - start[1]
    return run_east * (place[1] - start[1]) - run_north * (place[0] - start[0])
