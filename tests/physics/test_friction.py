"""Duct friction."""

from math import nan, pi

import pytest
from fluids.friction import Colebrook
from hypothesis import given
from hypothesis import strategies as st

from checker.physics.friction import (
    ROUGHNESS_BY_MATERIAL,
    friction_factor,
    friction_factor_and_slope,
    friction_per_meter,
    round_area,
)
from checker.physics.validity import OutOfRange
from checker.sizes import Size, equivalent_diameter

FOOT = 0.3048
INCH = 0.0254
SMOOTH = 0.09e-3


@given(re=st.floats(4000.0, 1e7), roughness=st.floats(0.0, 0.05))
def test_friction_factor_solves_colebrook(re: float, roughness: float) -> None:
    assert friction_factor(re, roughness) == pytest.approx(Colebrook(re, roughness), rel=1e-11)


@given(re=st.floats(500.0, 9.9e6), roughness=st.floats(0.0, 0.05))
def test_slope_of_the_friction_factor(re: float, roughness: float) -> None:
    step = 1e-6
    if abs(re - 2000) < 1 or abs(re - 4000) < 1:
        return
    above = friction_factor(re * (1 + step), roughness)
    below = friction_factor(re * (1 - step), roughness)
    factor, slope = friction_factor_and_slope(re, roughness)
    assert slope == pytest.approx((above - below) / (2 * step * factor), abs=1e-5)


# ASHVE Guide 1956, chapter 32, Table 1.
@pytest.mark.parametrize(
    ("width", "height", "equivalent"),
    [
        (12, 8, 10.7),
        (10, 10, 10.9),
        (12, 12, 13.1),
        (16, 8, 12.2),
        (10, 6, 8.4),
        (14, 8, 11.5),
        (18, 8, 12.9),
        (16, 10, 13.7),
    ],
)
def test_rectangular_equivalent_diameters(width: float, height: float, equivalent: float) -> None:
    ours = equivalent_diameter(Size("rectangular", width * INCH, height * INCH))
    assert ours / INCH == pytest.approx(equivalent, abs=0.06)
    assert equivalent_diameter(Size("rectangular", height * INCH, width * INCH)) == pytest.approx(ours, rel=1e-12)


def test_a_round_oval_is_a_circle() -> None:
    assert Size("oval", 0.2, 0.2).area == pytest.approx(round_area(0.2))
    assert equivalent_diameter(Size("oval", 0.2, 0.2)) == pytest.approx(0.2, rel=0.005)
    assert Size("oval", 0.2, 0.3).area == Size("oval", 0.3, 0.2).area == pytest.approx(pi * 0.01 + 0.2 * 0.1)


@given(st.floats(-0.5, 0.5), st.floats(-0.5, 0.5))
def test_friction_rises_with_the_flow_and_is_odd(one: float, other: float) -> None:
    low, high = sorted((one, other))
    first, second = (friction_per_meter(flow, 0.15, SMOOTH) for flow in (low, high))
    assert first <= second
    assert friction_per_meter(-high, 0.15, SMOOTH) == -second


def test_laminar_flow_is_poiseuille() -> None:
    flow, diameter, mu = 1e-4, 0.1, 1.8205e-5
    assert friction_per_meter(flow, diameter, SMOOTH) == pytest.approx(
        128 * mu * flow / (pi * diameter**4), rel=1e-9
    )
    assert friction_per_meter(0.0, diameter, SMOOTH) == 0.0


def test_roughness_table_orders_materials() -> None:
    rough = {name: entry.value for name, entry in ROUGHNESS_BY_MATERIAL.items()}
    # ASHRAE Handbook - Fundamentals 2021, chapter 21, Table 1.
    assert rough["galvanized steel"] == pytest.approx(0.0003 * FOOT, rel=0.02)
    assert rough["fibrous liner"] == 3.0e-3
    assert all(entry.source for entry in ROUGHNESS_BY_MATERIAL.values())


def test_out_of_range_and_impossible() -> None:
    with pytest.raises(OutOfRange, match="1e7"):
        friction_factor(1.1e7, 0.001)
    with pytest.raises(OutOfRange, match=r"above 0\.05"):
        friction_per_meter(0.1, 0.05, 3e-3)
    for bad in (0.0, -0.1, nan):
        with pytest.raises(ValueError, match="diameter"):
            friction_per_meter(0.1, bad, SMOOTH)
    with pytest.raises(ValueError, match="roughness"):
        friction_per_meter(0.1, 0.1, -1e-4)
    with pytest.raises(ValueError, match="airflow"):
        friction_per_meter(nan, 0.1, SMOOTH)
    with pytest.raises(ValueError, match="density"):
        friction_per_meter(0.1, 0.1, SMOOTH, density=0.0)
