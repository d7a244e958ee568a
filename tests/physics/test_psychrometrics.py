"""Moist air against published tables, the handbook's formulas in a library, and real-gas properties."""

import psychrolib
import pytest
from CoolProp.HumidAirProp import HAPropsSI
from hypothesis import assume, given
from hypothesis import strategies as st

from checker.physics.air import specific_volume
from checker.physics.psychrometrics import (
    dew_point,
    enthalpy,
    humidity_ratio,
    humidity_ratio_from_dew_point,
    humidity_ratio_from_wet_bulb,
    humidity_ratio_of_vapor,
    relative_humidity,
    saturation_pressure,
    temperature_from_enthalpy,
    wet_bulb,
)
from checker.physics.validity import OutOfRange

SEA_LEVEL = 101_325.0
GRAIN = 1 / 7000
BTU_PER_LB = 2326.0

psychrolib.SetUnitSystem(psychrolib.SI)


def kelvin(celsius: float) -> float:
    return celsius + 273.15


def from_fahrenheit(fahrenheit: float) -> float:
    return (fahrenheit - 32) / 1.8 + 273.15


def to_fahrenheit(temperature: float) -> float:
    return (temperature - 273.15) * 1.8 + 32


def test_humidity_ratio_at_saturation_where_real_air_rounds_up() -> None:
    # The same table prints 0.0077 at 10 C, the rounded value of real air; the perfect gas is 0.5 % below it.
    real = HAPropsSI("W", "T", kelvin(10), "P", SEA_LEVEL, "R", 1.0)
    assert round(real, 4) == 0.0077
    assert humidity_ratio(kelvin(10), 1.0, SEA_LEVEL) == pytest.approx(real, rel=0.005)


# ASHRAE Handbook - Fundamentals, chapter 1, Table 2 (real air), from memory and confirmed by CoolProp.
@pytest.mark.parametrize(("celsius", "ratio"), [(20, 0.014758), (25, 0.020170)])
def test_handbook_humidity_ratio_at_saturation(celsius: float, ratio: float) -> None:
    assert humidity_ratio(kelvin(celsius), 1.0, SEA_LEVEL) == pytest.approx(ratio, rel=0.005)
    assert HAPropsSI("W", "T", kelvin(celsius), "P", SEA_LEVEL, "R", 1.0) == pytest.approx(ratio, rel=0.001)


def test_design_states_in_grains() -> None:
    # 75 F 50 %: 64.6 gr/lb, dew point 55.1 F, 28.1 Btu/lb; 95/75 F: 98.5 gr/lb, 38.3 Btu/lb.
    indoor = humidity_ratio(from_fahrenheit(75), 0.5, SEA_LEVEL)
    outdoor = humidity_ratio_from_wet_bulb(from_fahrenheit(95), from_fahrenheit(75), SEA_LEVEL)
    assert indoor / GRAIN == pytest.approx(64.65, rel=0.003)
    assert to_fahrenheit(dew_point(indoor, SEA_LEVEL)) == pytest.approx(55.12, abs=0.02)
    assert outdoor / GRAIN == pytest.approx(98.46, rel=0.003)
    # Btu/lb counts from 0 F: subtract the 7.686 Btu/lb between 0 F and 0 C for dry air.
    assert enthalpy(from_fahrenheit(75), indoor) / BTU_PER_LB + 7.686 == pytest.approx(28.11, rel=0.005)
    assert enthalpy(from_fahrenheit(95), outdoor) / BTU_PER_LB + 7.686 == pytest.approx(38.32, rel=0.005)


states = st.tuples(st.floats(-30.0, 60.0), st.floats(0.02, 1.0), st.floats(61_000.0, 108_000.0))


@given(states)
def test_formulas_against_psychrolib(state: tuple[float, float, float]) -> None:
    celsius, humidity, pressure = state
    ratio = humidity_ratio(kelvin(celsius), humidity, pressure)
    assert ratio == pytest.approx(psychrolib.GetHumRatioFromRelHum(celsius, humidity, pressure), rel=1e-9)
    assert relative_humidity(kelvin(celsius), ratio, pressure) == pytest.approx(humidity, rel=1e-12)
    assert enthalpy(kelvin(celsius), ratio) == pytest.approx(
        psychrolib.GetMoistAirEnthalpy(celsius, ratio), abs=1e-6
    )
    assert specific_volume(kelvin(celsius), pressure, ratio) == pytest.approx(
        psychrolib.GetMoistAirVolume(celsius, ratio, pressure), rel=1e-9
    )
    assert dew_point(ratio, pressure) - 273.15 == pytest.approx(
        psychrolib.GetTDewPointFromHumRatio(celsius, ratio, pressure), abs=0.002
    )


@given(states)
def test_wet_bulb_against_psychrolib(state: tuple[float, float, float]) -> None:
    celsius, humidity, pressure = state
    ratio = humidity_ratio(kelvin(celsius), humidity, pressure)
    ours = wet_bulb(kelvin(celsius), ratio, pressure)
    # Around freezing water and ice both solve the equations and the library takes either.
    assume(not -1.2 < ours - 273.15 < 1.2)
    assert ours - 273.15 == pytest.approx(
        psychrolib.GetTWetBulbFromHumRatio(celsius, ratio, pressure), abs=0.002
    )


@given(states)
def test_wet_bulb_returns_to_the_humidity_ratio(state: tuple[float, float, float]) -> None:
    celsius, humidity, pressure = state
    ratio = humidity_ratio(kelvin(celsius), humidity, pressure)
    bulb = wet_bulb(kelvin(celsius), ratio, pressure)
    assert dew_point(ratio, pressure) - 1e-6 <= bulb <= kelvin(celsius)
    assert humidity_ratio_from_wet_bulb(kelvin(celsius), bulb, pressure) == pytest.approx(ratio, abs=2e-7)


@given(states)
def test_dew_point_and_enthalpy_return(state: tuple[float, float, float]) -> None:
    celsius, humidity, pressure = state
    ratio = humidity_ratio(kelvin(celsius), humidity, pressure)
    assert humidity_ratio_from_dew_point(dew_point(ratio, pressure), pressure) == pytest.approx(
        ratio, rel=1e-8
    )
    heat = enthalpy(kelvin(celsius), ratio)
    assert temperature_from_enthalpy(heat, ratio) == pytest.approx(kelvin(celsius), abs=1e-9)


# The handbook's chapter 1 gives the error of the perfect gas as below 0.7 % from -50 to 50 C.
@pytest.mark.parametrize("celsius", [-20.0, 0.0, 20.0, 35.0, 50.0])
@pytest.mark.parametrize("humidity", [0.3, 0.7])
def test_perfect_gas_against_real_air(celsius: float, humidity: float) -> None:
    temperature = kelvin(celsius)
    ratio = humidity_ratio(temperature, humidity, SEA_LEVEL)
    real = HAPropsSI("W", "T", temperature, "P", SEA_LEVEL, "R", humidity)
    assert ratio == pytest.approx(real, rel=0.007)
    heat = HAPropsSI("H", "T", temperature, "P", SEA_LEVEL, "W", ratio)
    assert enthalpy(temperature, ratio) == pytest.approx(heat, rel=0.007, abs=100.0)


def test_impossible_states() -> None:
    with pytest.raises(ValueError, match="between 0 and 1"):
        humidity_ratio(293.15, 1.01, SEA_LEVEL)
    with pytest.raises(ValueError, match="not below the air pressure"):
        humidity_ratio_of_vapor(SEA_LEVEL, SEA_LEVEL)
    with pytest.raises(ValueError, match="above the dry bulb"):
        humidity_ratio_from_wet_bulb(293.15, 294.15, SEA_LEVEL)
    with pytest.raises(ValueError, match="below that of dry air"):
        humidity_ratio_from_wet_bulb(313.15, 278.15, SEA_LEVEL)
    with pytest.raises(ValueError, match="above saturation"):
        wet_bulb(293.15, 0.02, SEA_LEVEL)
    with pytest.raises(ValueError, match="humidity ratio"):
        enthalpy(293.15, -0.001)


def test_out_of_range() -> None:
    with pytest.raises(OutOfRange, match="temperature"):
        saturation_pressure(364.0)
    with pytest.raises(OutOfRange, match="pressure"):
        humidity_ratio(293.15, 0.5, 40_000)
    with pytest.raises(OutOfRange, match="no dew point"):
        dew_point(0.0, SEA_LEVEL)
    with pytest.raises(OutOfRange, match="temperature"):
        temperature_from_enthalpy(1e6, 0.01)
