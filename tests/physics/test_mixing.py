"""Mixing of air streams and tempering."""

import psychrolib
import pytest
from hypothesis import given
from hypothesis import strategies as st

from checker.physics.mixing import (
    Stream,
    mix,
    mixed_temperature,
    outdoor_share_for_temperature,
    stream_of_airflow,
)
from checker.physics.psychrometrics import enthalpy, humidity_ratio, relative_humidity

SEA_LEVEL = 101_325.0


def kelvin(celsius: float) -> float:
    return celsius + 273.15


def stream(airflow: float, celsius: float, humidity: float, pressure: float) -> Stream:
    return stream_of_airflow(
        airflow, kelvin(celsius), humidity_ratio(kelvin(celsius), humidity, pressure), pressure
    )


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


def test_outdoor_share() -> None:
    # 0 F outdoors, 68 F return, furnace inlet at least 55 F: (68 - 55) / 68 = 19.1 % outdoor air.
    outdoor, indoor, least = (255.372, 293.150, 285.928)
    share = outdoor_share_for_temperature(outdoor, indoor, least)
    assert share == pytest.approx(13 / 68, rel=1e-3)
    assert mixed_temperature([(share, outdoor), (1 - share, indoor)]) == pytest.approx(least)
    assert outdoor_share_for_temperature(290.0, indoor, least) == 1.0


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
