"""Air properties."""

from math import inf, nan

import pytest
from CoolProp.CoolProp import PropsSI
from fluids import ATMOSPHERE_1976

from checker.physics.air import (
    HEAT_OF_VAPORIZATION,
    SPECIFIC_HEAT_DRY_AIR,
    STANDARD_DENSITY,
    STANDARD_VISCOSITY,
    density,
    latent_heat_factor,
    sensible_heat_factor,
    specific_volume,
    standard_pressure,
    viscosity,
)
from checker.physics.validity import OutOfRange

CFM = 4.719474e-4


@pytest.mark.parametrize("elevation", [-500.0, 0.0, 1000.0, 3000.0, 5000.0])
def test_standard_pressure_against_the_1976_atmosphere(elevation: float) -> None:
    assert standard_pressure(elevation) == pytest.approx(ATMOSPHERE_1976(elevation).P, rel=1e-3)


@pytest.mark.parametrize("elevation", [-500.1, 5000.1])
def test_elevation_out_of_range(elevation: float) -> None:
    with pytest.raises(OutOfRange, match="elevation"):
        standard_pressure(elevation)


@pytest.mark.parametrize("celsius", [-40.0, -10.0, 0.0, 20.0, 40.0, 60.0])
def test_dry_air_against_reference_equations(celsius: float) -> None:
    kelvin = celsius + 273.15
    # The perfect gas is within 0.3 %.
    assert density(kelvin) == pytest.approx(PropsSI("D", "T", kelvin, "P", 101_325, "Air"), rel=3e-3)
    assert viscosity(kelvin) == pytest.approx(PropsSI("V", "T", kelvin, "P", 101_325, "Air"), rel=7e-3)


def test_density_of_moist_air() -> None:
    volume = 287.042 * 293.15 * (1 + 1.607858 * 0.01) / 101_325
    assert specific_volume(293.15, humidity_ratio=0.01) == pytest.approx(volume, rel=1e-12)
    assert density(293.15, humidity_ratio=0.01) == pytest.approx(1.01 / volume, rel=1e-12)


def test_standard_air_is_air_at_20_celsius() -> None:
    assert density(293.15) == pytest.approx(STANDARD_DENSITY, rel=1e-4)
    assert viscosity(293.15) == pytest.approx(STANDARD_VISCOSITY, rel=5e-3)


def test_factor_method_against_enthalpy_for_hot_humid_air() -> None:
    # 100 cfm from 95/75 F to 75 F 50 %: the split factors give up to 7 % less than the enthalpy difference.
    outdoor, indoor = (308.15, 98.46 / 7000), (297.039, 64.65 / 7000)
    flow = 100 * CFM
    split = sensible_heat_factor() * flow * (outdoor[0] - indoor[0])
    split += latent_heat_factor() * flow * (outdoor[1] - indoor[1])
    dry_air = flow / specific_volume(outdoor[0], humidity_ratio=outdoor[1])

    def heat(kelvin: float, ratio: float) -> float:
        celsius = kelvin - 273.15
        return SPECIFIC_HEAT_DRY_AIR * celsius + ratio * (HEAT_OF_VAPORIZATION + 1860 * celsius)

    exact = dry_air * (heat(*outdoor) - heat(*indoor))
    assert split == pytest.approx(exact, rel=0.07)


@pytest.mark.parametrize("temperature", [0.0, -1.0, nan, inf])
def test_impossible_temperature(temperature: float) -> None:
    with pytest.raises(ValueError, match="temperature"):
        density(temperature)


def test_impossible_states() -> None:
    with pytest.raises(ValueError, match="pressure"):
        density(293.15, 0.0)
    with pytest.raises(ValueError, match="humidity"):
        specific_volume(293.15, humidity_ratio=-0.001)
    with pytest.raises(ValueError, match="pressure"):
        sensible_heat_factor(0.0)
    with pytest.raises(OutOfRange, match="temperature"):
        viscosity(500.0)
