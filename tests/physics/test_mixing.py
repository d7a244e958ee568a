"""Mixing of air streams and tempering."""

import psychrolib
import pytest
from hypothesis import given
from hypothesis import strategies as st

from checker.physics.air import density
from checker.physics.mixing import (
    Stream,
    mix,
    mixed_temperature,
    outdoor_share_for_temperature,
    stream_of_airflow,
    tempering_heat,
)
from checker.physics.psychrometrics import enthalpy, humidity_ratio, relative_humidity

SEA_LEVEL = 101_325.0


def kelvin(celsius: float) -> float:
    return celsius + 273.15


def stream(airflow: float, celsius: float, humidity: float, pressure: float) -> Stream:
    return stream_of_airflow(
        airflow, kelvin(celsius), humidity_ratio(kelvin(celsius), humidity, pressure), pressure
    )


def test_cold_saturated_with_warm_air() -> None:
    # Thermodynamics problem book, example 9.9: 2 m3 at 5 C saturated and 5 m3 at 35 C 40 %.
    mixture = mix([stream(2, 5, 1.0, SEA_LEVEL), stream(5, 35, 0.4, SEA_LEVEL)], SEA_LEVEL)
    assert mixture.humidity_ratio == pytest.approx(0.0113, rel=0.015)
    assert mixture.temperature == pytest.approx(kelvin(26), abs=0.3)
    humidity = relative_humidity(mixture.temperature, mixture.humidity_ratio, SEA_LEVEL)
    assert humidity == pytest.approx(0.55, abs=0.01)
    assert mixture.condensate == 0.0


def test_equal_volumes() -> None:
    # Published worked example: 20 m3/min each of 5 C 90 % and 25 C 50 % at 1 bar; W 0.00736.
    cold, warm = stream(20 / 60, 5, 0.9, 1e5), stream(20 / 60, 25, 0.5, 1e5)
    assert density(kelvin(5), 1e5, cold.humidity_ratio) == pytest.approx(1.249, rel=0.003)
    assert density(kelvin(25), 1e5, warm.humidity_ratio) == pytest.approx(1.162, rel=0.003)
    assert cold.dry_air * cold.humidity_ratio == pytest.approx(2.04e-3, rel=0.003)
    assert warm.dry_air * warm.humidity_ratio == pytest.approx(3.84e-3, rel=0.003)
    mixture = mix([cold, warm], 1e5)
    assert mixture.humidity_ratio == pytest.approx(0.00736, rel=0.003)
    assert mixture.temperature == pytest.approx(kelvin(14.66), abs=0.02)


def test_mixture_by_mass_and_the_misprinted_enthalpy() -> None:
    # Refrigeration, Air Conditioning and Heat Pumps, example 21.3: 21.9 C and 0.0083. The companion solution
    # prints 41.8 kJ/kg because it uses one stream twice; both streams give 43.2.
    streams = [Stream(20, kelvin(21), 0.0079), Stream(3, kelvin(28), 0.0111)]
    mixture = mix(streams, SEA_LEVEL)
    assert mixture.temperature == pytest.approx(kelvin(21.9), abs=0.1)
    assert mixture.humidity_ratio == pytest.approx(0.0083, rel=0.005)
    assert mixture.enthalpy == pytest.approx(43_200, rel=0.002)
    assert mixture.enthalpy != pytest.approx(41_800, rel=0.01)


flows = st.floats(0.01, 2.0)
temperatures = st.floats(-20.0, 40.0)
humidities = st.floats(0.05, 0.95)


@given(flows, flows, temperatures, temperatures, humidities, humidities)
def test_mass_and_heat_are_kept(
    one: float, other: float, first: float, second: float, dry: float, wet: float
) -> None:
    streams = [stream(one, first, dry, SEA_LEVEL), stream(other, second, wet, SEA_LEVEL)]
    mixture = mix(streams, SEA_LEVEL)
    water = sum(s.dry_air * s.humidity_ratio for s in streams)
    assert mixture.dry_air * mixture.humidity_ratio + mixture.condensate == pytest.approx(water, rel=1e-9)
    heat = sum(s.dry_air * enthalpy(s.temperature, s.humidity_ratio) for s in streams)
    if mixture.condensate == 0.0:
        assert mixture.dry_air * mixture.enthalpy == pytest.approx(heat, rel=1e-9, abs=1e-6)
    else:
        assert relative_humidity(mixture.temperature, mixture.humidity_ratio, SEA_LEVEL) == pytest.approx(1.0)


def test_fog() -> None:
    # Saturated air of 30 C and of -10 C: warmer than the mixture without fog, some water falls out.
    mixture = mix([stream(1, 30, 1.0, SEA_LEVEL), stream(1, -10, 1.0, SEA_LEVEL)], SEA_LEVEL)
    assert mixture.condensate > 0.0
    celsius = mixture.temperature - 273.15
    assert mixture.humidity_ratio == pytest.approx(psychrolib_saturation(celsius), rel=1e-9)
    assert mixture.temperature > mixed_temperature([(1 / 0.88, kelvin(30)), (1 / 0.75, kelvin(-10))])
    # Closed heat balance with the liquid's own enthalpy.
    fog = mixture.condensate / mixture.dry_air
    streams = [stream(1, 30, 1.0, SEA_LEVEL), stream(1, -10, 1.0, SEA_LEVEL)]
    heat = sum(s.dry_air * enthalpy(s.temperature, s.humidity_ratio) for s in streams) / mixture.dry_air
    assert mixture.enthalpy + fog * 4186 * celsius == pytest.approx(heat, abs=0.01)


def psychrolib_saturation(celsius: float) -> float:
    psychrolib.SetUnitSystem(psychrolib.SI)
    return float(psychrolib.GetSatHumRatio(celsius, SEA_LEVEL))


def test_outdoor_share_and_tempering() -> None:
    # 0 F outdoors, 68 F return, furnace inlet at least 55 F: (68 - 55) / 68 = 19.1 % outdoor air.
    outdoor, indoor, least = (255.372, 293.150, 285.928)
    share = outdoor_share_for_temperature(outdoor, indoor, least)
    assert share == pytest.approx(13 / 68, rel=1e-3)
    assert mixed_temperature([(share, outdoor), (1 - share, indoor)]) == pytest.approx(least)
    assert outdoor_share_for_temperature(290.0, indoor, least) == 1.0
    assert tempering_heat(0.1, 263.15, 288.15) == pytest.approx(0.1 * 1006 * 25)
    assert tempering_heat(0.1, 293.15, 288.15) == 0.0


def test_impossible_mixtures() -> None:
    with pytest.raises(ValueError, match="total airflow"):
        mix([], SEA_LEVEL)
    with pytest.raises(ValueError, match="dry air flow"):
        mix([Stream(-1, 293.15, 0.005)], SEA_LEVEL)
    with pytest.raises(ValueError, match="total flow"):
        mixed_temperature([(0.0, 293.15)])
    with pytest.raises(ValueError, match="colder than the limit"):
        outdoor_share_for_temperature(263.15, 280.15, 286.15)
    with pytest.raises(ValueError, match="airflow"):
        stream_of_airflow(-0.1, 293.15, 0.005, SEA_LEVEL)
