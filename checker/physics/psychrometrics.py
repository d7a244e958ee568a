"""Moist air: saturation, humidity ratio, dew point, wet bulb, enthalpy.

Units: K, Pa, kg water per kg dry air, J per kg dry air, relative humidity as a fraction.
Source throughout: ASHRAE Handbook - Fundamentals 2021, chapter 1 "Psychrometrics" (perfect gas; against real
moist air the humidity ratio is within 0.5 % and the enthalpy within 0.35 %).
"""

from __future__ import annotations

from math import exp, log

from checker.physics.air import HEAT_OF_VAPORIZATION, SPECIFIC_HEAT_DRY_AIR, SPECIFIC_HEAT_VAPOR
from checker.physics.arguments import require_finite, require_fraction, require_not_negative, require_positive
from checker.physics.scalar_root import bracketed_root
from checker.physics.validity import OutOfRange

FREEZING = 273.15
TRIPLE_POINT = 273.16
LOWEST_TEMPERATURE = 183.15
HIGHEST_TEMPERATURE = 363.15
LOWEST_PRESSURE = 50_000.0
HIGHEST_PRESSURE = 110_000.0

_MASS_RATIO = 0.621945
_TOLERANCE = 1e-9  # K
_METHOD = "psychrometrics"


def saturation_pressure(temperature: float) -> float:
    """Saturation pressure of water vapor in Pa, over water above the triple point, over ice below.

    `temperature` K, valid 183.15 to 363.15 K (OutOfRange beyond). Equations 5 and 6.
    """
    _check_temperature(temperature)
    return exp(_log_saturation_pressure(temperature))


def vapor_pressure(humidity_ratio: float, pressure: float) -> float:
    """Partial pressure of water vapor in Pa of air with this humidity ratio at `pressure` Pa."""
    require_not_negative(humidity_ratio=humidity_ratio)
    _check_pressure(pressure)
    return pressure * humidity_ratio / (_MASS_RATIO + humidity_ratio)


def humidity_ratio_of_vapor(partial_pressure: float, pressure: float) -> float:
    """Humidity ratio of air whose vapor has `partial_pressure` Pa; ValueError when it reaches `pressure`."""
    require_not_negative(partial_pressure=partial_pressure)
    _check_pressure(pressure)
    if partial_pressure >= pressure:
        raise ValueError(
            f"vapor pressure {partial_pressure:g} Pa is not below the air pressure {pressure:g} Pa"
        )
    return _MASS_RATIO * partial_pressure / (pressure - partial_pressure)


def humidity_ratio(temperature: float, relative_humidity: float, pressure: float) -> float:
    """Humidity ratio from the dry bulb in K and the relative humidity (0 to 1) at `pressure` Pa.

    ValueError for a relative humidity outside 0 to 1; OutOfRange as `saturation_pressure`.
    """
    require_fraction(relative_humidity=relative_humidity)
    return humidity_ratio_of_vapor(relative_humidity * saturation_pressure(temperature), pressure)


def humidity_ratio_from_dew_point(dew_point: float, pressure: float) -> float:
    """Humidity ratio of air with this dew (or frost) point in K at `pressure` Pa."""
    return humidity_ratio_of_vapor(saturation_pressure(dew_point), pressure)


def humidity_ratio_from_wet_bulb(temperature: float, wet_bulb: float, pressure: float) -> float:
    """Humidity ratio from dry bulb and thermodynamic wet bulb in K at `pressure` Pa. Equations 33 and 35.

    ValueError when the wet bulb is above the dry bulb or too low for the dry bulb (negative moisture).
    """
    _check_temperature(temperature)
    if wet_bulb > temperature:
        raise ValueError(f"wet bulb {wet_bulb:g} K is above the dry bulb {temperature:g} K")
    ratio = _ratio_at_wet_bulb(temperature, wet_bulb, pressure)
    if ratio < 0.0:
        raise ValueError(f"wet bulb {wet_bulb:g} K is below that of dry air at {temperature:g} K")
    return ratio


def relative_humidity(temperature: float, ratio: float, pressure: float) -> float:
    """Relative humidity, above 1 when the air is a fog; `temperature` K, `ratio` kg/kg, `pressure` Pa."""
    return vapor_pressure(ratio, pressure) / saturation_pressure(temperature)


def dew_point(ratio: float, pressure: float) -> float:
    """Dew point in K (frost point below freezing) of air with humidity `ratio` at `pressure` Pa.

    OutOfRange when the dew point lies below 183.15 K or above 363.15 K (dry air has none).
    """
    partial = vapor_pressure(ratio, pressure)
    if not saturation_pressure(LOWEST_TEMPERATURE) <= partial <= saturation_pressure(HIGHEST_TEMPERATURE):
        raise OutOfRange(_METHOD, f"humidity ratio {ratio:g} has no dew point between 183 K and 363 K")
    target = log(partial)
    return bracketed_root(
        lambda t: _log_saturation_pressure(t) - target,
        LOWEST_TEMPERATURE,
        HIGHEST_TEMPERATURE,
        _TOLERANCE,
        "dew point",
    )


def wet_bulb(temperature: float, ratio: float, pressure: float) -> float:
    """Thermodynamic wet-bulb temperature in K of air at `temperature` K with humidity `ratio`.

    ValueError when the ratio is above saturation; OutOfRange for air drier than a dew point of 183.15 K.
    Dry air just above freezing can hold a wet bulb coated with water or, up to 1 K lower, with ice: water is
    taken wherever it is possible.
    """
    if ratio > humidity_ratio(temperature, 1.0, pressure) * (1.0 + 1e-9):
        raise ValueError(f"humidity ratio {ratio:g} is above saturation at {temperature:g} K")
    low = dew_point(ratio, pressure)

    def excess(trial: float) -> float:
        return _ratio_at_wet_bulb(temperature, trial, pressure) - ratio

    if low >= temperature or excess(temperature) <= 0.0:
        return temperature
    if excess(low) >= 0.0:
        return low
    # The bulb's coat changes from ice to water at freezing, so the search stays on one side of it.
    if low < FREEZING < temperature:
        if excess(FREEZING) >= 0.0:
            return bracketed_root(excess, low, FREEZING, _TOLERANCE, "wet bulb")
        low = FREEZING
    return bracketed_root(excess, low, temperature, _TOLERANCE, "wet bulb")


def enthalpy(temperature: float, ratio: float) -> float:
    """Enthalpy of moist air in J per kg dry air (zero for dry air at 0 C); `temperature` K, `ratio` kg/kg."""
    _check_temperature(temperature)
    require_not_negative(humidity_ratio=ratio)
    celsius = temperature - FREEZING
    return SPECIFIC_HEAT_DRY_AIR * celsius + ratio * (HEAT_OF_VAPORIZATION + SPECIFIC_HEAT_VAPOR * celsius)


def temperature_from_enthalpy(enthalpy_of_air: float, ratio: float) -> float:
    """Dry bulb in K of air with this enthalpy in J/kg and this humidity `ratio`.

    OutOfRange outside 183.15 to 363.15 K, ValueError for a negative ratio.
    """
    require_finite(enthalpy=enthalpy_of_air)
    require_not_negative(humidity_ratio=ratio)
    celsius = (enthalpy_of_air - HEAT_OF_VAPORIZATION * ratio) / (
        SPECIFIC_HEAT_DRY_AIR + SPECIFIC_HEAT_VAPOR * ratio
    )
    _check_temperature(celsius + FREEZING)
    return celsius + FREEZING


def _ratio_at_wet_bulb(temperature: float, trial: float, pressure: float) -> float:
    saturated = humidity_ratio_from_dew_point(trial, pressure)
    dry, wet = temperature - FREEZING, trial - FREEZING
    if wet >= 0.0:
        return ((2501.0 - 2.326 * wet) * saturated - 1.006 * (dry - wet)) / (
            2501.0 + 1.86 * dry - 4.186 * wet
        )
    return ((2830.0 - 0.24 * wet) * saturated - 1.006 * (dry - wet)) / (2830.0 + 1.86 * dry - 2.1 * wet)


def _log_saturation_pressure(t: float) -> float:
    if t <= TRIPLE_POINT:
        return (
            -5.6745359e3 / t
            + 6.3925247
            + t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - 9.484024e-13 * t)))
            + 4.1635019 * log(t)
        )
    return (
        -5.8002206e3 / t
        + 1.3914993
        + t * (-4.8640239e-2 + t * (4.1764768e-5 - 1.4452093e-8 * t))
        + 6.5459673 * log(t)
    )


def _check_temperature(temperature: float) -> None:
    require_positive(temperature=temperature)
    if not LOWEST_TEMPERATURE <= temperature <= HIGHEST_TEMPERATURE:
        raise OutOfRange(_METHOD, f"temperature {temperature:g} K is outside 183.15 to 363.15 K")


def _check_pressure(pressure: float) -> None:
    require_positive(pressure=pressure)
    if not LOWEST_PRESSURE <= pressure <= HIGHEST_PRESSURE:
        raise OutOfRange(_METHOD, f"pressure {pressure:g} Pa is outside 50,000 to 110,000 Pa")
