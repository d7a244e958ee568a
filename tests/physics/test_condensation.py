"""Condensation on ducts, pipes and walls."""

from math import log

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import brentq

from checker.physics.condensation import (
    SURFACE_RESISTANCE,
    flat_thickness,
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


# Duct insulation bulletin, R = Rs (Tdp - Top) / (Tdb - Tdp), with Rs 0.68 dull or 1.32 reflective still air.
@pytest.mark.parametrize(
    ("room", "humidity", "duct", "film", "resistance", "tolerance"),
    [
        (90, 0.80, 55, 0.68, 2.71, 0.01),
        (90, 0.80, 55, 1.32, 5.27, 0.01),
        (80, 0.70, 55, 0.68, 0.91, 0.01),
        (85, 0.90, 50, 0.68, 6.60, 0.01),
        (70, 0.40, 0, 0.68, 1.19, 0.01),
    ],
)
def test_least_insulation(
    room: float, humidity: float, duct: float, film: float, resistance: float, tolerance: float
) -> None:
    ours = least_insulation(
        from_fahrenheit(duct), from_fahrenheit(room), dew(room, humidity), film * R_VALUE, safety=0.0
    )
    assert ours / R_VALUE == pytest.approx(resistance, rel=tolerance)


def test_dew_point_of_the_hot_room() -> None:
    # Same bulletin's case, 90 F 80 %: dew point 82.99 F.
    assert (dew(90, 0.80) - 273.15) * 1.8 + 32 == pytest.approx(82.99, abs=0.02)


def test_room_where_a_bare_duct_hardly_sweats() -> None:
    # Same bulletin, 75 F 50 %: dew point 55.1 F, so a 55 F duct needs next to nothing.
    assert (dew(75, 0.5) - 273.15) * 1.8 + 32 == pytest.approx(55.1, abs=0.1)
    needed = least_insulation(
        from_fahrenheit(55), from_fahrenheit(75), dew(75, 0.5), 0.68 * R_VALUE, safety=0.0
    )
    assert needed / R_VALUE == pytest.approx(0.004, abs=0.0005)
    bare = least_insulation(
        from_fahrenheit(56), from_fahrenheit(75), dew(75, 0.5), 0.68 * R_VALUE, safety=0.0
    )
    assert bare == 0.0


def test_condensate_of_a_coil() -> None:
    # Published relation gpm = cfm dW / (8.33 v): 1,200 cfm, dW 0.0025, v 13.7 ft3/lb, 1.58 gal/h.
    litres_per_hour = 1200 * 4.719474e-4 / (13.7 / 16.018463) * 0.0025 * 3600
    assert litres_per_hour / 3.785412 == pytest.approx(1.58, rel=0.005)


@given(st.floats(260.0, 285.0), st.floats(290.0, 305.0), st.floats(286.0, 288.0), st.floats(0.0, 2.0))
def test_surface_reaches_the_target_exactly(inside: float, room: float, dew_at: float, safety: float) -> None:
    film = SURFACE_RESISTANCE["still air, dull"]
    if dew_at + safety >= room:
        with pytest.raises(NoSolution):
            least_insulation(inside, room, dew_at, film, safety)
        return
    needed = least_insulation(inside, room, dew_at, film, safety)
    assert surface_temperature(inside, room, needed, film) == pytest.approx(dew_at + safety, abs=1e-6)


def test_films() -> None:
    assert SURFACE_RESISTANCE["still air, dull"] == pytest.approx(0.68 * R_VALUE, abs=0.001)
    assert SURFACE_RESISTANCE["still air, reflective"] == pytest.approx(1.32 * R_VALUE, abs=0.003)


def test_thickness_around_a_pipe() -> None:
    outer = brentq(lambda r: r * log(r / 0.011) / 0.036 - 0.48, 0.011, 0.2, xtol=1e-14)
    assert pipe_thickness(0.48, 0.036, 0.011) == pytest.approx(outer - 0.011, abs=1e-9)
    assert pipe_thickness(0.48, 0.036, 0.011) < flat_thickness(0.48, 0.036)
    assert pipe_thickness(0.48, 0.036, 10.0) == pytest.approx(flat_thickness(0.48, 0.036), rel=0.002)
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
        flat_thickness(1.0, 0.0)
