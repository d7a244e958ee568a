"""Fan curves and laws."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.interpolate import PchipInterpolator
from scipy.optimize import brentq

from checker.physics.fan import (
    FanCurve,
    efficiency,
)
from checker.physics.friction import friction_per_meter, round_area, velocity_pressure
from checker.physics.validity import NoSolution, OutOfRange

CFM = 4.719474e-4
INCH_WATER = 249.089
# Fluid Mechanics: Fundamentals and Applications, table 14-1.
CATALOGUE = [(0, 0.90), (250, 0.95), (500, 0.90), (750, 0.75), (1000, 0.40), (1200, 0.0)]
CURVE = FanCurve([(cfm * CFM, inches * INCH_WATER) for cfm, inches in CATALOGUE], "total")


def required(flow: float) -> float:
    # Same book, example 14-1: 9.06 in. duct, 44 ft, fittings 1.3 + 5 x 0.21 + 1.8, exit 1.05, air of 25 C.
    rho, nu, diameter = 1.184, 1.562e-5, 0.230
    friction = 13.4 * friction_per_meter(flow, diameter, 0.15e-3, rho, rho * nu)
    return friction + (1.3 + 5 * 0.21 + 1.8 + 1.05) * velocity_pressure(flow / round_area(diameter), rho)


def test_straight_lines_are_within_two_percent_of_a_smooth_curve() -> None:
    smooth = PchipInterpolator([q * CFM for q, _ in CATALOGUE], [p * INCH_WATER for _, p in CATALOGUE])
    linear = brentq(lambda q: CURVE.pressure(q) - required(q), 300 * CFM, 1100 * CFM)
    cubic = brentq(lambda q: float(smooth(q)) - required(q), 300 * CFM, 1100 * CFM)
    assert linear == pytest.approx(cubic, rel=0.02)


def test_required_pressure_at_600_cfm() -> None:
    # The example's system curve at 600 cfm, worked independently: 0.71 in. w.g.
    assert required(600 * CFM) / INCH_WATER == pytest.approx(0.7098, rel=0.005)


@given(st.floats(0.0, 1200 * CFM))
def test_interpolation_is_numpys(flow: float) -> None:
    expected = np.interp(flow, [q * CFM for q, _ in CATALOGUE], [p * INCH_WATER for _, p in CATALOGUE])
    assert CURVE.pressure(flow) == pytest.approx(float(expected), abs=1e-9)


def test_stall_side_is_refused() -> None:
    assert CURVE.lowest_stable_flow == pytest.approx(250 * CFM)
    with pytest.raises(OutOfRange, match="left of the stable"):
        CURVE.check_operation(200 * CFM)
    with pytest.raises(OutOfRange, match="free airflow"):
        CURVE.check_operation(1201 * CFM)
    CURVE.check_operation(250 * CFM)
    assert CURVE.stable_pressure(100 * CFM) == (pytest.approx(0.95 * INCH_WATER), 0.0)
    with pytest.raises(NoSolution, match="above the stable"):
        CURVE.airflow(0.96 * INCH_WATER)


@given(st.floats(0.001, 0.94))
def test_airflow_inverts_pressure(inches: float) -> None:
    flow = CURVE.airflow(inches * INCH_WATER)
    assert CURVE.pressure(flow) == pytest.approx(inches * INCH_WATER, rel=1e-9)
    assert flow >= CURVE.lowest_stable_flow


def test_last_slope_carries_on_to_zero_pressure() -> None:
    curve = FanCurve([(0.1, 125.0), (0.2, 100.0), (0.3, 50.0)], "static")
    assert curve.free_flow == pytest.approx(0.4)
    assert curve.pressure(0.35) == pytest.approx(25.0)
    assert curve.airflow(25.0) == pytest.approx(0.35)
    assert curve.is_extrapolated(0.35)
    assert not curve.is_extrapolated(0.3)
    for outside in (0.09, 0.41):
        with pytest.raises(OutOfRange, match="airflow"):
            curve.pressure(outside)


def test_speed_law() -> None:
    faster = CURVE.scaled(speed_ratio=1.25)
    assert faster.pressure(1.25 * 600 * CFM) == pytest.approx(1.25**2 * CURVE.pressure(600 * CFM))


def test_density_law() -> None:
    # Published statement of the fan laws: flow constant, pressure and power proportional to density.
    thin = CURVE.scaled(density_ratio=0.83)
    assert thin.flows == CURVE.flows
    assert thin.pressure(600 * CFM) == pytest.approx(0.83 * CURVE.pressure(600 * CFM))


def test_efficiency() -> None:
    assert efficiency(0.3, 200.0, 150.0) == pytest.approx(0.4)
    with pytest.raises(ValueError, match="power"):
        efficiency(0.3, 200.0, 0.0)


@pytest.mark.parametrize(
    ("points", "complaint"),
    [
        ([(0.1, 100.0), (0.2, 50.0)], "three points"),
        ([(0.1, 100.0), (0.1, 80.0), (0.2, 50.0)], "rise in airflow"),
        ([(0.1, 100.0), (0.2, 50.0), (0.3, 50.0)], "fall at its end"),
        ([(-0.1, 100.0), (0.2, 50.0), (0.3, 40.0)], "not be negative"),
    ],
)
def test_refused_curves(points: list[tuple[float, float]], complaint: str) -> None:
    with pytest.raises(ValueError, match=complaint):
        FanCurve(points, "total")


def test_refused_basis() -> None:
    with pytest.raises(ValueError, match="basis"):
        FanCurve([(0.1, 100.0), (0.2, 50.0), (0.3, 40.0)], "dynamic")
