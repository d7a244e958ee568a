"""Slabs, below-grade walls and floors; published values are in tests/published."""

import pytest

from checker.physics.assemblies import R_UNIT
from checker.physics.ground import (
    F_UNIT,
    below_grade_floor_u,
    below_grade_wall_u,
    covered_slab_gain,
    edge_factor,
    ground_surface_temperature,
)
from checker.physics.validity import OutOfRange


def test_heated_slab() -> None:
    assert edge_factor("none", 0.0, heated=True) > edge_factor("none", 0.0)
    with pytest.raises(OutOfRange, match="heated slab"):
        edge_factor("vertical 2 ft", 1.76, heated=True)


def test_between_and_beyond_the_rows() -> None:
    assert edge_factor("vertical 2 ft", 7.5 * R_UNIT) / F_UNIT == pytest.approx(0.56)
    assert edge_factor("vertical 2 ft", 40 * R_UNIT) == edge_factor("vertical 2 ft", 15 * R_UNIT)


def test_floor_below_grade_loses_less_the_deeper_and_wider() -> None:
    """Form of ASHRAE Handbook - Fundamentals 2021, chapter 18."""
    shallow = below_grade_floor_u(6.0, 1.5, 0.259)

    assert below_grade_floor_u(6.0, 2.4, 0.259) < shallow
    assert below_grade_floor_u(9.0, 1.5, 0.259) < shallow
    # 2 x 1.4 / (pi x 6) x ln[(3 + 0.75 + 0.1154) / (0.75 + 0.1154)], by hand
    assert shallow == pytest.approx(0.2223, abs=5e-4)


def test_covered_slab_in_summer() -> None:
    assert covered_slab_gain(3.0) == 0.0


def test_ground_surface() -> None:
    assert ground_surface_temperature(283.15, marine=False) == pytest.approx(273.15)
    assert ground_surface_temperature(283.15, marine=True) == pytest.approx(278.15)


def test_impossible_wall() -> None:
    with pytest.raises(ValueError, match="height must be positive"):
        below_grade_wall_u(2.0, 2.0, 0.259)
