"""Slabs, below-grade walls and floors against published values."""

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


@pytest.mark.parametrize(
    ("depth", "insulation", "published"),
    [
        (1.8, 0.0, 1.075), (1.8, 0.88, 0.505), (1.8, 1.76, 0.343), (1.8, 2.64, 0.262), (2.1, 0.0, 0.980),
        (2.1, 0.88, 0.476), (2.1, 1.76, 0.328), (2.1, 2.64, 0.252), (2.4, 0.88, 0.450), (2.4, 1.76, 0.315),
    ],
)  # fmt: skip
def test_below_grade_walls(depth: float, insulation: float, published: float) -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 18, table of below-grade walls."""
    assert below_grade_wall_u(0.0, depth, 0.259 + insulation) == pytest.approx(published, abs=0.003)


@pytest.mark.parametrize(
    ("insulated", "insulation", "published"),
    [
        ("none", 0, 0.73), ("vertical 2 ft", 5, 0.58), ("vertical 2 ft", 10, 0.54), ("vertical 2 ft", 15, 0.52),
        ("vertical 4 ft", 5, 0.54), ("vertical 4 ft", 10, 0.48), ("vertical 4 ft", 15, 0.45),
        ("horizontal 2 ft", 5, 0.70), ("horizontal 2 ft", 15, 0.69), ("horizontal 4 ft", 5, 0.67),
        ("horizontal 4 ft", 10, 0.64), ("horizontal 4 ft", 15, 0.63), ("full", 10, 0.36), ("full", 15, 0.31),
        ("full", 20, 0.26), ("full", 30, 0.21),
    ],
)  # fmt: skip
def test_slab_edges(insulated: str, insulation: float, published: float) -> None:
    """Washington State Energy Code, WAC 51-11C-61061, Table A106.1, Btu/(h ft F)."""
    assert edge_factor(insulated, insulation * R_UNIT) / F_UNIT == pytest.approx(published, abs=1e-6)


def test_heated_slab() -> None:
    """Washington State Energy Code, WAC 51-11C-61061, Table A106.1: 0.84 without insulation."""
    assert edge_factor("none", 0.0, heated=True) / F_UNIT == pytest.approx(0.84)
    with pytest.raises(OutOfRange, match="heated slab"):
        edge_factor("vertical 2 ft", 1.76, heated=True)


def test_between_and_beyond_the_rows() -> None:
    assert edge_factor("vertical 2 ft", 7.5 * R_UNIT) / F_UNIT == pytest.approx(0.56)
    assert edge_factor("vertical 2 ft", 40 * R_UNIT) == edge_factor("vertical 2 ft", 15 * R_UNIT)


def test_basement_edge_of_a_house() -> None:
    """A public note on heat loss to the ground: 0.36 Btu/(h ft F) along 120 ft is 43 Btu/(h F)."""
    per_kelvin = 0.36 * F_UNIT * 120 * 0.3048  # W/K

    assert per_kelvin / (0.2930711 * 1.8) == pytest.approx(43, rel=0.005)


def test_floor_below_grade_loses_less_the_deeper_and_wider() -> None:
    """Form of ASHRAE Handbook - Fundamentals 2021, chapter 18."""
    shallow = below_grade_floor_u(6.0, 1.5, 0.259)

    assert below_grade_floor_u(6.0, 2.4, 0.259) < shallow
    assert below_grade_floor_u(9.0, 1.5, 0.259) < shallow
    # 2 x 1.4 / (pi x 6) x ln[(3 + 0.75 + 0.1154) / (0.75 + 0.1154)], by hand
    assert shallow == pytest.approx(0.2223, abs=5e-4)


def test_covered_slab_in_summer() -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17, example house: -2.34 W/m2 with a cover of 0.21 m2 K/W."""
    assert covered_slab_gain(0.21) == pytest.approx(-2.34, abs=0.005)
    assert covered_slab_gain(3.0) == 0.0


def test_ground_surface() -> None:
    assert ground_surface_temperature(283.15, marine=False) == pytest.approx(273.15)
    assert ground_surface_temperature(283.15, marine=True) == pytest.approx(278.15)


def test_impossible_wall() -> None:
    with pytest.raises(ValueError, match="height must be positive"):
        below_grade_wall_u(2.0, 2.0, 0.259)
