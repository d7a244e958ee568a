"""Duct friction."""

from math import nan, pi

import pytest
from fluids.friction import Colebrook
from hypothesis import given
from hypothesis import strategies as st

from checker.physics.air import density, standard_pressure, viscosity
from checker.physics.friction import (
    ROUGHNESS_BY_MATERIAL,
    friction_factor,
    friction_factor_and_slope,
    friction_per_metre,
    oval_area,
    oval_equivalent_diameter,
    rectangular_equivalent_diameter,
    reynolds_number,
    round_area,
    velocity,
    velocity_pressure,
)
from checker.physics.validity import OutOfRange

CFM = 4.719474e-4
FOOT = 0.3048
INCH = 0.0254
INCH_WATER = 249.089
FPM = 0.00508
SMOOTH = 0.09e-3
JOINTED = 0.15e-3


def per_100_feet(cfm: float, inches: float, roughness: float) -> float:
    return friction_per_metre(cfm * CFM, inches * INCH, roughness) * 30.48 / INCH_WATER


def test_friction_factor_of_a_worked_example() -> None:
    # Published worked example (applied fluids, HVAC systems): Re 337,000, roughness 0.0036/28, f = 0.01545.
    assert friction_factor(337_000, 0.0036 / 28) == pytest.approx(0.01545, rel=0.002)


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


def test_run_of_28_inch_duct() -> None:
    # Same worked example: 6,000 cfm in 28 in., 1,400 fpm, 0.08 in. w.g. per 100 ft, 0.064 in. for 80 ft.
    assert velocity(6000 * CFM, round_area(28 * INCH)) / FPM == pytest.approx(1400, rel=0.03)
    friction = per_100_feet(6000, 28, 0.0036 * INCH)
    assert friction == pytest.approx(0.08, rel=0.03)
    assert 0.8 * friction == pytest.approx(0.064, rel=0.03)


def test_velocity_pressure_is_square_in_the_velocity() -> None:
    # The same example is typeset with (V/4005) to the first power; its own number uses the square.
    in_inches = velocity_pressure(1400 * FPM) / INCH_WATER
    assert in_inches == pytest.approx((1400 / 4005) ** 2, rel=0.005)
    assert in_inches != pytest.approx(1400 / 4005, rel=0.5)


def test_velocity_for_one_inch_is_4005_not_4000() -> None:
    # Some textbook solutions round 4005 fpm (air of 0.075 lb/ft3, water of 20 C) to 4000.
    inch_of_water_at_20_celsius = 998.2 * 9.80665 * INCH
    in_inches = velocity_pressure(4005 * FPM, 0.075 * 16.018463) / inch_of_water_at_20_celsius
    assert in_inches == pytest.approx(1.0, abs=0.0005)
    off = velocity_pressure(4000 * FPM, 0.075 * 16.018463) / inch_of_water_at_20_celsius
    assert off == pytest.approx(0.9975, abs=0.0005)


# Published friction charts, older ones with the roughness of many joints.
@pytest.mark.parametrize(
    ("cfm", "inches", "published", "tolerance"),
    [
        (4000, 20, 0.23, 0.15),
        (100_000, 60, 0.4, 0.06),
        (400, 10, 0.09, 0.06),
        (280, 9, 0.08, 0.08),
        (120, 6, 0.12, 0.05),
    ],
)
def test_chart_readings(cfm: float, inches: float, published: float, tolerance: float) -> None:
    assert per_100_feet(cfm, inches, SMOOTH) == pytest.approx(published, rel=tolerance)


def test_metric_chart_reading() -> None:
    # Published SI friction chart: 1 m3/s in 500 mm, 0.55 Pa/m and 5 m/s.
    assert friction_per_metre(1.0, 0.5, SMOOTH) == pytest.approx(0.55, rel=0.03)
    assert friction_per_metre(1.0, 0.5, JOINTED) == pytest.approx(0.55, rel=0.03)
    assert velocity(1.0, round_area(0.5)) == pytest.approx(5.0, rel=0.03)


def test_handbook_spiral_pipe() -> None:
    # ASHRAE Handbook - Fundamentals 2021, chapter 21, example 6: 1.8 m of 250 mm at 470 L/s, 7.7 Pa.
    assert 1.8 * friction_per_metre(0.470, 0.250, 0.12e-3, 1.204) == pytest.approx(7.7, rel=0.03)


def test_reynolds_number_shortcut() -> None:
    # SMACNA HVAC Systems Duct Design, Table 14-10: Re = 8.56 D V (in., fpm), 66.4 D V (mm, m/s).
    assert reynolds_number(1000 * FPM, 10 * INCH) == pytest.approx(8.56 * 10 * 1000, rel=0.01)
    assert reynolds_number(5.0, 0.250) == pytest.approx(66.4 * 250 * 5, rel=0.01)


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
    ours = rectangular_equivalent_diameter(width * INCH, height * INCH)
    assert ours / INCH == pytest.approx(equivalent, abs=0.06)
    assert rectangular_equivalent_diameter(height * INCH, width * INCH) == ours


def test_equivalent_diameters_of_a_worked_example() -> None:
    # Published worked example (applied fluids, HVAC systems): ovals 30x24 and 30x26 in., rectangle 22x30 in.
    assert oval_equivalent_diameter(30 * INCH, 24 * INCH) / INCH == pytest.approx(27.5, abs=0.1)
    assert oval_equivalent_diameter(30 * INCH, 26 * INCH) / INCH == pytest.approx(28.4, abs=0.1)
    # The example uses the oval's form for the rectangle too, which gives 28.07.
    rectangle = rectangular_equivalent_diameter(22 * INCH, 30 * INCH) / INCH
    assert rectangle == pytest.approx(28.1, rel=0.005)
    by_oval_form = 1.55 * 660**0.625 / 104**0.25
    assert by_oval_form == pytest.approx(28.1, abs=0.05)


def test_a_round_oval_is_a_circle() -> None:
    assert oval_area(0.2, 0.2) == pytest.approx(round_area(0.2))
    assert oval_equivalent_diameter(0.2, 0.2) == pytest.approx(0.2, rel=0.005)
    assert oval_area(0.2, 0.3) == oval_area(0.3, 0.2) == pytest.approx(pi * 0.01 + 0.2 * 0.1)


@pytest.mark.parametrize(("feet", "corrected"), [(5000, 0.8475), (7000, 0.792)])
def test_friction_at_elevation(feet: float, corrected: float) -> None:
    # Published correction for chart friction, (1 - 6.8754e-6 z)**4.73 with z in ft, within 2.5 % of ours.
    pressure = standard_pressure(feet * FOOT)
    thin = friction_per_metre(400 * CFM, 10 * INCH, SMOOTH, density(293.15, pressure), viscosity(293.15))
    assert (1 - 6.8754e-6 * feet) ** 4.73 == pytest.approx(corrected, abs=0.0005)
    assert thin / friction_per_metre(400 * CFM, 10 * INCH, SMOOTH) == pytest.approx(corrected, rel=0.025)


def test_exhaust_duct_table_cells_by_friction() -> None:
    # IRC exhaust duct table (fan rated at 0.25 in. w.g.): 4 in. smooth at 50 cfm 114 ft, flexible 56 ft.
    for roughness, printed in ((0.00038 * FOOT, 114), (0.0055 * FOOT, 56)):
        friction = per_100_feet(50, 4, roughness)
        assert 100 * 0.25 / friction - 30 == pytest.approx(printed, abs=1)


@given(st.floats(-0.5, 0.5), st.floats(-0.5, 0.5))
def test_friction_rises_with_the_flow_and_is_odd(one: float, other: float) -> None:
    low, high = sorted((one, other))
    first, second = (friction_per_metre(flow, 0.15, SMOOTH) for flow in (low, high))
    assert first <= second
    assert friction_per_metre(-high, 0.15, SMOOTH) == -second


def test_laminar_flow_is_poiseuille() -> None:
    flow, diameter, mu = 1e-4, 0.1, 1.8205e-5
    assert friction_per_metre(flow, diameter, SMOOTH) == pytest.approx(
        128 * mu * flow / (pi * diameter**4), rel=1e-9
    )
    assert friction_per_metre(0.0, diameter, SMOOTH) == 0.0


def test_roughness_table_orders_materials() -> None:
    rough = {name: entry.value for name, entry in ROUGHNESS_BY_MATERIAL.items()}
    # ASHRAE Handbook - Fundamentals 2021, chapter 21, Table 1.
    assert rough["galvanised steel"] == pytest.approx(0.0003 * FOOT, rel=0.02)
    assert rough["fibrous liner"] == 3.0e-3
    assert all(entry.source for entry in ROUGHNESS_BY_MATERIAL.values())


def test_out_of_range_and_impossible() -> None:
    with pytest.raises(OutOfRange, match="1e7"):
        friction_factor(1.1e7, 0.001)
    with pytest.raises(OutOfRange, match=r"above 0\.05"):
        friction_per_metre(0.1, 0.05, 3e-3)
    with pytest.raises(OutOfRange, match="aspect ratio"):
        rectangular_equivalent_diameter(0.9, 0.1)
    with pytest.raises(OutOfRange, match="aspect ratio"):
        oval_equivalent_diameter(0.1, 0.9)
    for bad in (0.0, -0.1, nan):
        with pytest.raises(ValueError, match="diameter"):
            friction_per_metre(0.1, bad, SMOOTH)
    with pytest.raises(ValueError, match="roughness"):
        friction_per_metre(0.1, 0.1, -1e-4)
    with pytest.raises(ValueError, match="airflow"):
        friction_per_metre(nan, 0.1, SMOOTH)
    with pytest.raises(ValueError, match="density"):
        friction_per_metre(0.1, 0.1, SMOOTH, density=0.0)
