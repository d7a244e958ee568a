"""Air properties."""

from math import inf, nan

import pytest
from CoolProp.CoolProp import PropsSI
from fluids import ATMOSPHERE_1976

from checker.physics.air import (
    HEAT_OF_VAPORISATION,
    SPECIFIC_HEAT_DRY_AIR,
    STANDARD_DENSITY,
    STANDARD_VISCOSITY,
    density,
    latent_heat_factor,
    pressure_ratio,
    sensible_heat_factor,
    specific_heat,
    specific_volume,
    standard_pressure,
    viscosity,
)
from checker.physics.validity import OutOfRange

CFM = 4.719474e-4
FOOT = 0.3048
BTU_PER_HOUR = 0.2930711
RANKINE = 5.0 / 9.0
INCH_MERCURY = 3386.389


# System design handbook of the 1960s, table of barometric pressure by elevation.
@pytest.mark.parametrize(
    ("feet", "inches"),
    [
        (1000, 28.86),
        (2000, 27.82),
        (3000, 26.82),
        (4000, 25.84),
        (5000, 24.89),
        (6000, 23.98),
        (7000, 23.09),
        (10000, 20.57),
    ],
)
def test_barometer_by_elevation(feet: float, inches: float) -> None:
    assert standard_pressure(feet * FOOT) / INCH_MERCURY == pytest.approx(inches, abs=0.02)


def test_misprinted_barometer_at_8000_feet_is_not_reproduced() -> None:
    # The same table prints 22.12; its neighbours and the federal guide below give 22.22 to 22.23.
    assert standard_pressure(8000 * FOOT) / INCH_MERCURY == pytest.approx(22.23, abs=0.01)


# Federal HVAC design guide, Table 6a.
@pytest.mark.parametrize(
    ("feet", "ratio", "inches"),
    [(5900, 0.804, 24.07), (6500, 0.786, 23.53), (7000, 0.772, 23.09), (8000, 0.743, 22.23)],
)
def test_relative_density_by_elevation(feet: float, ratio: float, inches: float) -> None:
    assert pressure_ratio(feet * FOOT) == pytest.approx(ratio, rel=1e-3)
    assert standard_pressure(feet * FOOT) / INCH_MERCURY == pytest.approx(inches, abs=0.02)


@pytest.mark.parametrize("elevation", [-500.0, 0.0, 1000.0, 3000.0, 5000.0])
def test_standard_pressure_against_the_1976_atmosphere(elevation: float) -> None:
    assert standard_pressure(elevation) == pytest.approx(ATMOSPHERE_1976(elevation).P, rel=1e-3)


@pytest.mark.parametrize("elevation", [-500.1, 5000.1])
def test_elevation_out_of_range(elevation: float) -> None:
    with pytest.raises(OutOfRange, match="elevation"):
        standard_pressure(elevation)


def test_density_of_dry_air_on_a_high_mountain() -> None:
    # Refrigeration, Air Conditioning and Heat Pumps, example 24.1: 575 mbar and -10 C give 0.76 kg/m3.
    assert density(263.15, 57_500.0) == pytest.approx(0.76, rel=0.005)


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


def test_sensible_factor_in_inch_pound_units() -> None:
    # The trade's 1.08 = 60 x 0.075 x 0.24; our standard air is 0.0752 lb/ft3 and 0.2403 Btu/lb F.
    in_trade_units = sensible_heat_factor() * CFM * RANKINE / BTU_PER_HOUR
    assert in_trade_units == pytest.approx(1.08, rel=0.005)


def test_latent_factor_in_inch_pound_units() -> None:
    # The trade's 4840 = 60 x 0.075 x 1076 Btu/lb, 0.68 per grain with 1061 Btu/lb.
    in_trade_units = latent_heat_factor() * CFM / BTU_PER_HOUR
    assert in_trade_units == pytest.approx(4840, rel=0.005)
    # ASHRAE Handbook - Fundamentals 2021, chapter 17: 3,010 W per m3/s and g/kg.
    assert latent_heat_factor() / 1000 == pytest.approx(3010, rel=0.001)


def test_sensible_heat_at_altitude() -> None:
    # Published worked example: 5,000 cfm warmed from 35 to 70 F at a pressure ratio of 0.832, 157,248 Btu/h.
    heat = sensible_heat_factor(101_325 * 0.832) * 5000 * CFM * 35 * RANKINE / BTU_PER_HOUR
    assert heat == pytest.approx(157_248, rel=0.005)


def test_factor_method_against_enthalpy_for_hot_humid_air() -> None:
    # 100 cfm from 95/75 F to 75 F 50 %: the split factors give up to 7 % less than the enthalpy difference.
    outdoor, indoor = (308.15, 98.46 / 7000), (297.039, 64.65 / 7000)
    flow = 100 * CFM
    split = sensible_heat_factor() * flow * (outdoor[0] - indoor[0])
    split += latent_heat_factor() * flow * (outdoor[1] - indoor[1])
    dry_air = flow / specific_volume(outdoor[0], humidity_ratio=outdoor[1])

    def heat(kelvin: float, ratio: float) -> float:
        celsius = kelvin - 273.15
        return SPECIFIC_HEAT_DRY_AIR * celsius + ratio * (HEAT_OF_VAPORISATION + 1860 * celsius)

    exact = dry_air * (heat(*outdoor) - heat(*indoor))
    assert split == pytest.approx(exact, rel=0.07)


def test_specific_heat_of_moist_air() -> None:
    assert specific_heat() == 1006.0
    assert specific_heat(0.01) == pytest.approx(1024.6)


@pytest.mark.parametrize("temperature", [0.0, -1.0, nan, inf])
def test_impossible_temperature(temperature: float) -> None:
    with pytest.raises(ValueError, match="temperature"):
        density(temperature)


def test_impossible_states() -> None:
    with pytest.raises(ValueError, match="pressure"):
        density(293.15, 0.0)
    with pytest.raises(ValueError, match="humidity"):
        specific_volume(293.15, humidity_ratio=-0.001)
    with pytest.raises(ValueError, match="humidity"):
        specific_heat(-0.001)
    with pytest.raises(ValueError, match="pressure"):
        sensible_heat_factor(0.0)
    with pytest.raises(OutOfRange, match="temperature"):
        viscosity(500.0)
