"""Condensation inside a duct in the cold: a worked run, its inverse and its limits."""

from math import exp, pi

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checker.physics.duct_condensation import Course, air_at_end, least_insulation_inside, wall_at_end
from checker.physics.validity import NoSolution

R_VALUE = 0.1761102


def from_fahrenheit(fahrenheit: float) -> float:
    return (fahrenheit - 32) / 1.8 + 273.15


def test_cooling_run_of_the_handbook_exercise() -> None:
    # Duct design guide after ASHRAE Handbook - Fundamentals chapter 4: 12 in x 30 ft, R-6, 400 cfm of 55 F air in
    # a 130 F attic leaves at 57.35 F (films 0.85 h ft2 F/Btu together, 0.24 Btu/lb F, 0.075 lb/ft3).
    capacity = 400 * 60 * 0.075 * 0.24 * 0.5275279
    course = Course(from_fahrenheit(55), from_fahrenheit(130), pi * 0.3048, 30 * 0.3048, capacity)
    assert air_at_end(course, 6 * R_VALUE) == pytest.approx(from_fahrenheit(57.35), abs=0.02)


def test_bare_run_in_a_cold_attic() -> None:
    # By hand: 5 in x 20 ft bare, UA = 2.4322 / 0.15 = 16.21 W/K, 28.5 W/K of air from 21 C into -20 C.
    course = Course(294.15, 253.15, pi * 0.127, 6.096, 28.5)
    air = 253.15 + 41 * exp(-16.2147 / 28.5)
    assert air_at_end(course, 0.0) == pytest.approx(air, abs=1e-3)
    assert wall_at_end(course, 0.0) == pytest.approx(air - (air - 253.15) * 0.2, abs=1e-3)


@given(st.floats(255.0, 290.0), st.floats(0.5, 30.0), st.floats(5.0, 200.0))
def test_least_insulation_is_the_inverse(dew_point: float, length: float, capacity: float) -> None:
    course = Course(294.15, 250.0, 0.4, length, capacity)
    try:
        needed = least_insulation_inside(course, dew_point)
    except NoSolution:
        assert wall_at_end(course, 10.0) < dew_point + 1.0
        return
    if needed == 0.0:
        assert wall_at_end(course, 0.0) >= dew_point + 1.0
    else:
        assert wall_at_end(course, needed) == pytest.approx(dew_point + 1.0, abs=1e-6)


def test_saturated_air_condenses_whatever_the_insulation() -> None:
    with pytest.raises(NoSolution):
        least_insulation_inside(Course(294.15, 253.15, 0.4, 6.0, 28.5), 294.0)


def test_no_flow_is_refused() -> None:
    with pytest.raises(ValueError, match="capacity flow"):
        air_at_end(Course(294.15, 253.15, 0.4, 6.0, 0.0), 1.0)
