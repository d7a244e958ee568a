"""Temperature factors of cold surfaces, against a library's psychrometrics and their own inverse."""

import psychrolib
import pytest
from hypothesis import given
from hypothesis import strategies as st

from checker.physics.condensation import (
    humidity_at_surface,
    least_temperature_factor,
    temperature_by_factor,
    with_film,
)
from checker.physics.validity import NoSolution

psychrolib.SetUnitSystem(psychrolib.SI)


def kelvin(celsius: float) -> float:
    return celsius + 273.15


@pytest.mark.parametrize(
    ("room", "outdoor", "humidity"), [(20.0, 0.0, 0.5), (21.1, -6.7, 0.4), (20.0, -5.0, 0.5), (22.0, 5.0, 0.6)]
)
def test_least_factor_as_by_the_library(room: float, outdoor: float, humidity: float) -> None:
    critical = psychrolib.GetTDewPointFromVapPres(room, humidity * psychrolib.GetSatVapPres(room) / 0.8)
    by_library = (critical - outdoor) / (room - outdoor)
    assert least_temperature_factor(kelvin(room), kelvin(outdoor), humidity, 0.8) == pytest.approx(by_library, abs=1e-5)


def test_the_usual_aim_of_dwellings() -> None:
    # 20 C and 50 % indoors, -5 C outdoors (the boundary conditions of German practice, from memory): 12.6 C, 0.70.
    factor = least_temperature_factor(kelvin(20), kelvin(-5), 0.5, 0.8)
    assert factor == pytest.approx(0.70, abs=0.01)
    assert temperature_by_factor(kelvin(20), kelvin(-5), factor) == pytest.approx(kelvin(12.6), abs=0.05)


@given(st.floats(258.0, 283.0), st.floats(0.2, 0.75), st.floats(0.76, 1.0))
def test_the_surface_is_as_humid_as_asked(outdoor: float, humidity: float, wanted: float) -> None:
    room = 294.0
    factor = least_temperature_factor(room, outdoor, humidity, wanted)
    if factor > 0.0:
        surface = temperature_by_factor(room, outdoor, factor)
        assert humidity_at_surface(room, humidity, surface) == pytest.approx(wanted, rel=1e-6)


@given(st.floats(0.05, 3.0))
def test_another_film_and_back(transmittance: float) -> None:
    slower = with_film(transmittance, 0.12, 0.25)
    assert slower < transmittance
    assert with_film(slower, 0.25, 0.12) == pytest.approx(transmittance, rel=1e-9)


def test_a_bare_wall_by_hand() -> None:
    # U 2.0 with a film of 0.12: resistance 0.5, with 0.25 it is 0.63; the surface keeps 1 - 0.25 / 0.63 = 0.603.
    assert 1 - 0.25 * with_film(2.0, 0.12, 0.25) == pytest.approx(0.6032, abs=1e-4)


def test_refusals() -> None:
    with pytest.raises(NoSolution, match="not colder"):
        least_temperature_factor(293.0, 295.0, 0.5, 0.8)
    with pytest.raises(NoSolution, match="as humid"):
        least_temperature_factor(293.0, 273.0, 0.85, 0.8)
    with pytest.raises(ValueError, match="temperature factor"):
        temperature_by_factor(293.0, 273.0, 1.2)
    with pytest.raises(ValueError, match="belong together"):
        with_film(9.0, 0.12, 0.25)
