"""Condensation on ducts, pipes and walls."""

from math import log

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from checker.physics.condensation import (
    SURFACE_RESISTANCE,
    humidity_at_surface,
    least_insulation,
    pipe_thickness,
    surface_temperature,
    wall_surface_temperature,
)
from checker.physics.psychrometrics import dew_point, humidity_ratio
from checker.physics.validity import NoSolution, OutOfRange

SEA_LEVEL = 101_325.0
R_VALUE = 0.1761102


def from_fahrenheit(fahrenheit: float) -> float:
    return (fahrenheit - 32) / 1.8 + 273.15


def dew(fahrenheit: float, humidity: float) -> float:
    temperature = from_fahrenheit(fahrenheit)
    return dew_point(humidity_ratio(temperature, humidity, SEA_LEVEL), SEA_LEVEL)


def test_room_where_a_bare_duct_hardly_sweats() -> None:
    # At 75 F and 50 % the dew point is 55.1 F.
    bare = least_insulation(
        from_fahrenheit(56), from_fahrenheit(75), dew(75, 0.5), 0.68 * R_VALUE, safety=0.0
    )
    assert bare == 0.0


@given(st.floats(260.0, 285.0), st.floats(290.0, 305.0), st.floats(286.0, 288.0), st.floats(0.0, 2.0))
def test_surface_reaches_the_target_exactly(inside: float, room: float, dew_at: float, safety: float) -> None:
    film = SURFACE_RESISTANCE["still air, dull"]
    if dew_at + safety >= room:
        with pytest.raises(NoSolution):
            least_insulation(inside, room, dew_at, film, safety)
        return
    needed = least_insulation(inside, room, dew_at, film, safety)
    assert surface_temperature(inside, room, needed, film) == pytest.approx(dew_at + safety, abs=1e-6)


def test_thickness_around_a_pipe() -> None:
    outer = brentq(lambda r: r * log(r / 0.011) / 0.036 - 0.48, 0.011, 0.2, xtol=1e-14)
    assert pipe_thickness(0.48, 0.036, 0.011) == pytest.approx(outer - 0.011, abs=1e-9)
    assert pipe_thickness(0.48, 0.036, 0.011) < 0.48 * 0.036
    assert pipe_thickness(0.48, 0.036, 10.0) == pytest.approx(0.48 * 0.036, rel=0.002)
    assert pipe_thickness(0.0, 0.036, 0.011) == 0.0
    with pytest.raises(OutOfRange, match=r"0\.5 m"):
        pipe_thickness(100.0, 0.036, 0.011)


def test_wall_surface() -> None:
    # U 0.5, inner film 0.13, 20 C indoors and -10 C outdoors: the surface is 1.95 K below the room.
    surface = wall_surface_temperature(293.15, 263.15, 0.5, 0.13)
    assert surface == pytest.approx(293.15 - 0.5 * 0.13 * 30)
    humidity = humidity_at_surface(293.15, 0.5, surface)
    assert humidity == pytest.approx(0.5 * 2338.8 / 2073, rel=0.002)
    assert humidity_at_surface(293.15, 0.5, 281.15) > 1.0


def test_refusals() -> None:
    film = SURFACE_RESISTANCE["still air, dull"]
    with pytest.raises(NoSolution, match="too near"):
        least_insulation(285.0, 297.0, 296.5, film)
    with pytest.raises(ValueError, match="above the ambient"):
        least_insulation(285.0, 297.0, 297.5, film)
    with pytest.raises(ValueError, match="film"):
        surface_temperature(285.0, 297.0, 1.0, 0.0)
    with pytest.raises(ValueError, match="do not belong"):
        wall_surface_temperature(293.15, 263.15, 8.0, 0.13)
    with pytest.raises(ValueError, match="conductivity"):
        pipe_thickness(1.0, 0.0, 0.011)
