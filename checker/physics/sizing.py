"""Equipment against load: size ratio, airflow for a capacity, temperature rise, altitude.

Units: W, m3/s, K, m, Pa.
"""

from checker.physics.air import STANDARD_PRESSURE, pressure_ratio, sensible_heat_factor
from checker.physics.arguments import require_not_negative, require_positive

ALTITUDE_LOSS = 0.04 / 304.8
"""Share of a gas burner's input lost for each m above sea level: 4 % for 1,000 ft, from memory of NFPA 54."""
ALTITUDE_START = 609.6
"""m (2,000 ft); below it no correction is made."""


def temperature_rise(output: float, airflow: float, elevation: float = 0.0) -> float:
    """Rise in K of `airflow` m3/s of air that takes up `output` W at an elevation in m.

    At sea level the trade writes Btu/h / (1.08 cfm). ValueError for impossible input; OutOfRange as the standard
    atmosphere. Source: heat balance, ASHRAE Handbook - Fundamentals, chapter "Psychrometrics".
    """
    require_not_negative(output=output)
    require_positive(airflow=airflow)
    return output / (sensible_heat_factor(STANDARD_PRESSURE * pressure_ratio(elevation)) * airflow)


def airflow_per_capacity(airflow: float, capacity: float, elevation: float = 0.0) -> float:
    """Airflow in standard air for each watt of cooling, m3/J: 400 cfm per ton is 5.37e-5.

    Thin air at an elevation in m counts by its mass. ValueError for impossible input.
    Source: common practice of the trade.
    """
    require_not_negative(airflow=airflow)
    require_positive(capacity=capacity)
    return airflow * pressure_ratio(elevation) / capacity


def altitude_factor(elevation: float) -> float:
    """Output of a gas burner at an elevation in m over that at sea level; 1 up to 2,000 ft, never below 0.

    Source: rule of thumb of 4 % for each 1,000 ft above sea level, from memory of NFPA 54; the maker's figure rules.
    """
    if elevation <= ALTITUDE_START:
        return 1.0
    return max(0.0, 1.0 - ALTITUDE_LOSS * elevation)
