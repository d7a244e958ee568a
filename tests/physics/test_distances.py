"""Distances between outdoor openings, against bounded least squares over both rectangles."""

from math import hypot, inf, sqrt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import lsq_linear

from checker.physics.distances import (
    Opening,
    distance,
    horizontal_distance,
    point,
    rectangle_on_wall,
    vertical_gap,
)

FT = 0.3048

coordinate = st.integers(-80, 80).map(lambda n: n / 8)
openings = st.builds(
    lambda e1, n1, e2, n2, z, height: Opening((e1, n1), (e2, n2), z, z + height),
    coordinate,
    coordinate,
    coordinate,
    coordinate,
    coordinate,
    st.integers(0, 24).map(lambda n: n / 8),
)


def _by_least_squares(one: Opening, other: Opening) -> float:
    """Both rectangles are an origin and two edge vectors; the edge shares lie between 0 and 1."""
    edges = [
        (one.right[0] - one.left[0], one.right[1] - one.left[1], 0.0),
        (0.0, 0.0, one.top - one.bottom),
        (other.left[0] - other.right[0], other.left[1] - other.right[1], 0.0),
        (0.0, 0.0, other.bottom - other.top),
    ]
    start = (other.left[0] - one.left[0], other.left[1] - one.left[1], other.bottom - one.bottom)
    matrix = [[edge[axis] for edge in edges] for axis in range(3)]
    return sqrt(2.0 * lsq_linear(matrix, start, bounds=(0.0, 1.0), method="bvls").cost)


@settings(derandomize=True, deadline=None)
@given(openings, openings)
def test_distance_is_the_least_over_both_rectangles(one: Opening, other: Opening) -> None:
    assert distance(one, other) == pytest.approx(_by_least_squares(one, other), abs=1e-6)
    assert distance(one, other) == distance(other, one)


def test_points() -> None:
    assert distance(point(0, 0, 0), point(2, 3, 6)) == pytest.approx(7.0)
    assert horizontal_distance(point(0, 0, 0), point(3, 4, 9)) == pytest.approx(5.0)
    assert vertical_gap(point(0, 0, 2.0), point(0, 0, 5.5)) == pytest.approx(3.5)


def test_a_window_on_a_wall_counts_from_its_nearest_edge() -> None:
    # A window 1.2 m wide and 1.0 m high on a south wall; the terminal 2 m east of its center, as high.
    window = rectangle_on_wall(5.0, 0.0, 1.5, 1.2, 1.0, facing=180.0)
    assert distance(window, point(7.0, 0.0, 1.5)) == pytest.approx(1.4)
    assert distance(window, point(5.0, 0.0, 2.6)) == pytest.approx(0.6)
    assert distance(window, point(7.0, 0.0, 2.6)) == pytest.approx(hypot(1.4, 0.6))


def test_around_a_corner_the_distance_is_straight() -> None:
    east_window = rectangle_on_wall(10.0, 3.0, 1.5, 1.0, 1.0, facing=90.0)
    terminal = point(8.0, 0.0, 1.5)
    assert distance(east_window, terminal) == pytest.approx(hypot(2.0, 2.5))


def test_crossing_on_the_plan_is_no_horizontal_distance() -> None:
    lower = Opening((0.0, 0.0), (2.0, 2.0), 0.0, 1.0)
    upper = Opening((0.0, 2.0), (2.0, 0.0), 4.0, 5.0)
    assert horizontal_distance(lower, upper) == 0.0
    assert distance(lower, upper) == pytest.approx(3.0)


def test_lot_line_at_any_height() -> None:
    line = Opening((-5.0, -20.0), (-5.0, 20.0), -inf, inf)
    assert distance(point(-4.0, 3.0, 6.0), line) == pytest.approx(1.0)


@pytest.mark.parametrize(
    "call",
    [
        lambda: point(float("nan"), 0.0, 0.0),
        lambda: rectangle_on_wall(0, 0, 0, 0.0, 1.0, 90),
    ],
)
def test_impossible_input(call) -> None:
    with pytest.raises(ValueError, match="must"):
        call()
