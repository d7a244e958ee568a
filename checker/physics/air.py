"""Air: standard atmosphere, density, viscosity, specific heat and the sensible and latent factors.

Units: m, K, Pa, kg/m3, Pa s, J/(kg K); humidity ratio in kg water per kg dry air.
"""

from __future__ import annotations

from checker.physics.arguments import require_not_negative, require_positive
from checker.physics.validity import OutOfRange

STANDARD_PRESSURE = 101_325.0
"""Sea-level pressure of the standard atmosphere, Pa."""

STANDARD_DENSITY = 1.2041
"""Density of dry air at 20 C and 101,325 Pa, kg/m3 (the trade's "standard air")."""

STANDARD_VISCOSITY = 1.8205e-5
"""Dynamic viscosity of air at 20 C, Pa s."""

SPECIFIC_HEAT_DRY_AIR = 1006.0
"""J/(kg K), ASHRAE Handbook - Fundamentals, chapter "Psychrometrics"."""

SPECIFIC_HEAT_VAPOR = 1860.0
"""J/(kg K), same chapter."""

HEAT_OF_VAPORIZATION = 2.501e6
"""Enthalpy of saturated water vapor at 0 C, J/kg, same chapter."""

GAS_CONSTANT_DRY_AIR = 287.042
"""J/(kg K), same chapter."""

_VAPOR_VOLUME_FACTOR = 1.607858  # 1 / 0.621945, ratio of the molar masses of air and water


def standard_pressure(elevation: float) -> float:
    """Barometric pressure in Pa at an elevation in m above sea level.

    Valid from -500 m to 5,000 m (OutOfRange beyond); above 3,000 m treat as an extrapolation for houses.
    Source: ASHRAE Handbook - Fundamentals, chapter "Psychrometrics" (standard atmosphere).
    """
    if not -500.0 <= elevation <= 5000.0:
        raise OutOfRange("standard atmosphere", f"elevation {elevation:g} m is outside -500 to 5000 m")
    return STANDARD_PRESSURE * float((1.0 - 2.25577e-5 * elevation) ** 5.2559)


def pressure_ratio(elevation: float) -> float:
    """Standard pressure at an elevation in m over the sea-level pressure, -. Errors as standard_pressure."""
    return standard_pressure(elevation) / STANDARD_PRESSURE


def density(temperature: float, pressure: float = STANDARD_PRESSURE, humidity_ratio: float = 0.0) -> float:
    """Density of moist air in kg/m3 (mass of the mixture per volume of the mixture).

    `temperature` K, `pressure` Pa, `humidity_ratio` kg/kg. ValueError for a non-positive temperature or
    pressure or a negative humidity ratio; OutOfRange outside 183 to 473 K.
    Source: ASHRAE Handbook - Fundamentals, chapter "Psychrometrics" (perfect gas, error below 0.7 %).
    """
    _check_state(temperature, pressure, humidity_ratio)
    volume_per_dry_air = specific_volume(temperature, pressure, humidity_ratio)
    return (1.0 + humidity_ratio) / volume_per_dry_air


def specific_volume(
    temperature: float, pressure: float = STANDARD_PRESSURE, humidity_ratio: float = 0.0
) -> float:
    """Volume of moist air per mass of dry air in m3/kg. Units, errors and source as `density`."""
    _check_state(temperature, pressure, humidity_ratio)
    dry = GAS_CONSTANT_DRY_AIR * temperature / pressure
    return dry * (1.0 + _VAPOR_VOLUME_FACTOR * humidity_ratio)


def viscosity(temperature: float) -> float:
    """Dynamic viscosity of air in Pa s at a temperature in K (Sutherland's law, about 0.5 %).

    ValueError for a non-positive temperature; OutOfRange outside 183 to 473 K.
    Source: Sutherland's law with the constants of fluid-mechanics textbooks, from memory.
    """
    _check_state(temperature, STANDARD_PRESSURE, 0.0)
    ratio = temperature / 273.15
    return 1.716e-5 * float(ratio**1.5) * (273.15 + 110.4) / (temperature + 110.4)


def sensible_heat_factor(pressure: float = STANDARD_PRESSURE) -> float:
    """Watts of sensible heat per m3/s of air and kelvin: standard density times specific heat times p/p0.

    `pressure` Pa; ValueError when it is not positive. The inch-pound form is 1.08 Btu/h per cfm and F.
    Source: ASHRAE Handbook - Fundamentals, chapter "Residential Cooling and Heating Load Calculations".
    """
    require_positive(pressure=pressure)
    return STANDARD_DENSITY * SPECIFIC_HEAT_DRY_AIR * pressure / STANDARD_PRESSURE


def latent_heat_factor(pressure: float = STANDARD_PRESSURE) -> float:
    """Watts of latent heat per m3/s of air and kg/kg of humidity ratio difference.

    `pressure` Pa; ValueError when it is not positive. About 3,010 W per m3/s and g/kg at sea level.
    Source: ASHRAE Handbook - Fundamentals, chapter "Residential Cooling and Heating Load Calculations".
    """
    require_positive(pressure=pressure)
    return STANDARD_DENSITY * HEAT_OF_VAPORIZATION * pressure / STANDARD_PRESSURE


def _check_state(temperature: float, pressure: float, humidity_ratio: float) -> None:
    require_positive(temperature=temperature, pressure=pressure)
    require_not_negative(humidity_ratio=humidity_ratio)
    if not 183.15 <= temperature <= 473.15:
        raise OutOfRange("air properties", f"temperature {temperature:g} K is outside 183 to 473 K")
