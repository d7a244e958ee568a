"""Moisture balance of a house against published figures, a library's psychrometrics and its own inverse."""


import psychrolib
import pytest
from hypothesis import given
from hypothesis import strategies as st

from checker.physics.air import STANDARD_DENSITY
from checker.physics.condensation import humidity_at_surface, wall_surface_temperature
from checker.physics.mixing import Stream, mix
from checker.physics.moisture import (
    clear_room_air,
    exchange_for,
    humidity_ceiling,
    latent_load,
    leaves_frost,
    recovery_for,
    steady_humidity_ratio,
    steady_relative_humidity,
)
from checker.physics.psychrometrics import dew_point, humidity_ratio
from checker.physics.validity import NoSolution, OutOfRange

SEA_LEVEL = 101_325.0
DAY = 86_400.0

psychrolib.SetUnitSystem(psychrolib.SI)


def kelvin(celsius: float) -> float:
    return celsius + 273.15


def test_a_family_of_four() -> None:
    # Household moisture lists: four people give off about 12 kg a day; 35 L/s of air at 0 C 80 %, house at 21 C.
    outdoor = psychrolib.GetHumRatioFromRelHum(0.0, 0.8, SEA_LEVEL)
    exchange = 0.035 * STANDARD_DENSITY
    ratio = steady_humidity_ratio(outdoor, 12 / DAY, exchange)
    assert ratio == pytest.approx(0.00632, rel=0.002)
    humidity = steady_relative_humidity(kelvin(21), outdoor, 12 / DAY, exchange, SEA_LEVEL)
    assert humidity == pytest.approx(0.41, abs=0.005)
    assert humidity == pytest.approx(psychrolib.GetRelHumFromHumRatio(21.0, ratio, SEA_LEVEL), rel=1e-3)


def test_no_exchange_has_no_steady_humidity() -> None:
    with pytest.raises(OutOfRange):
        steady_humidity_ratio(0.003, 1e-4, 0.0)


def test_a_dehumidifier_cannot_take_more_than_there_is() -> None:
    assert steady_humidity_ratio(0.010, -1e-4, 0.05) == pytest.approx(0.008)
    with pytest.raises(NoSolution):
        steady_humidity_ratio(0.001, -1e-4, 0.05)


def test_ceiling_by_glass() -> None:
    # By hand after ISO 13788: U 2.8 W/m2 K, film 0.13: glass at 21 - 0.364 x 31 = 9.716 C in a room at 21 C.
    glass = psychrolib.GetSatVapPres(9.716) / psychrolib.GetSatVapPres(21.0)
    assert humidity_ceiling(kelvin(21), kelvin(-10), 2.8) == pytest.approx(glass, rel=1e-4)
    # At that humidity the dew point of the room air is the temperature of the glass.
    ratio = humidity_ratio(kelvin(21), humidity_ceiling(kelvin(21), kelvin(-10), 2.8), SEA_LEVEL)
    assert dew_point(ratio, SEA_LEVEL) == pytest.approx(kelvin(9.716), abs=1e-6)


def test_ceiling_against_mould() -> None:
    ceiling = humidity_ceiling(kelvin(20), kelvin(-5), 1.0, film=0.25, at_surface=0.8)
    surface = wall_surface_temperature(kelvin(20), kelvin(-5), 1.0, 0.25)
    assert humidity_at_surface(kelvin(20), ceiling, surface) == pytest.approx(0.8)


def test_no_ceiling_where_it_is_warm_outside() -> None:
    assert humidity_ceiling(kelvin(21), kelvin(30), 2.8) == 1.0


def test_latent_load() -> None:
    assert latent_load(0.05, 0.004, 0.009) < 0


@given(
    wanted=st.floats(0.004, 0.012),
    outdoor=st.floats(0.0, 0.0035),
    generation=st.floats(1e-5, 4e-4),
)
def test_exchange_is_the_inverse(wanted: float, outdoor: float, generation: float) -> None:
    exchange = exchange_for(wanted, outdoor, generation)
    assert steady_humidity_ratio(outdoor, generation, exchange) == pytest.approx(wanted)


def test_recovery_that_keeps_a_humidity() -> None:
    share = recovery_for(0.0045, 0.0005, 1e-4, dry_air=0.05, recovered=0.05)
    assert steady_humidity_ratio(0.0005, 1e-4, 0.05 * (1 - share)) == pytest.approx(0.0045)
    assert recovery_for(0.002, 0.0005, 1e-4, dry_air=0.05, recovered=0.05) == 0.0
    with pytest.raises(NoSolution):
        recovery_for(0.0045, 0.0005, 1e-5, dry_air=0.05, recovered=0.04)


def test_humid_outdoor_air_dries_nothing() -> None:
    with pytest.raises(NoSolution):
        exchange_for(0.008, 0.012, 1e-4)


def test_room_air_that_mixes_without_fog() -> None:
    outdoor = Stream(0.03, kelvin(-20), psychrolib.GetHumRatioFromRelHum(-20.0, 0.8, SEA_LEVEL))
    room = Stream(0.01, kelvin(21), psychrolib.GetHumRatioFromRelHum(21.0, 0.5, SEA_LEVEL))
    assert mix([outdoor, room], SEA_LEVEL).condensate > 0.0
    needed = clear_room_air(outdoor, room, SEA_LEVEL)
    clear = mix([outdoor, room._replace(dry_air=needed)], SEA_LEVEL)
    # At that flow the mixture is just saturated, by the library.
    held = psychrolib.GetSatHumRatio(clear.temperature - 273.15, SEA_LEVEL)
    assert clear.humidity_ratio == pytest.approx(held, rel=1e-3)
    assert clear_room_air(outdoor, room._replace(dry_air=2 * needed), SEA_LEVEL) == 2 * needed


def test_frost_in_a_core() -> None:
    # By hand: a core of 75 % in a room of 21 C 35 % lets air at -20 C out at -9.75 C, where air holds 1.6 g/kg.
    room = psychrolib.GetHumRatioFromRelHum(21.0, 0.35, SEA_LEVEL)
    outdoor = psychrolib.GetHumRatioFromRelHum(-20.0, 0.8, SEA_LEVEL)
    leaving = kelvin(21 - 0.75 * 41)
    assert leaves_frost(room, outdoor, leaving, 0.0, SEA_LEVEL)
    assert leaves_frost(room, outdoor, leaving, 0.4, SEA_LEVEL)
    # A core that returns nine tenths of the moisture leaves 1.0 g/kg: no frost.
    assert not leaves_frost(room, outdoor, leaving, 0.9, SEA_LEVEL)
    assert not leaves_frost(room, outdoor, kelvin(1.0), 0.0, SEA_LEVEL)
