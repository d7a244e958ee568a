"""Air leakage of a house: door-fan test, leakage area, design-hour infiltration and its sum with fans.

Units: m2, m3, m3/s, m, Pa, K, kg/m3.
"""

from __future__ import annotations

from math import sqrt
from typing import Literal

from checker.physics.air import STANDARD_DENSITY
from checker.physics.arguments import require_finite, require_not_negative, require_positive
from checker.physics.validity import OutOfRange

TEST_PRESSURE = 50.0
"""Pa at which door-fan results are stated."""

LEAKAGE_EXPONENT = 0.65
"""Flow exponent of a house envelope when no multi-point test gives one (ASHRAE Handbook - Fundamentals 2021,
chapter 16)."""

REFERENCE_HEIGHT = 2.5
"""m, height at which the height factor of normalized leakage is 1."""

UNIT_LEAKAGE_AREA = {
    "tight": 0.7e-4,
    "good": 1.4e-4,
    "average": 2.8e-4,
    "leaky": 5.6e-4,
    "very leaky": 10.4e-4,
}
"""m2 of leakage area at 4 Pa for each m2 of exposed surface, ASHRAE Handbook - Fundamentals 2021, chapter 17,
Table 3."""

# L/(s cm2), L/(s cm2 m K) for the envelope and for a flue, at 6.7 m/s and 3.4 m/s wind.
_DRIVING_COEFFICIENTS = {"heating": (51.0, 0.35, 0.23), "cooling": (25.0, 0.38, 0.12)}


def flow_at_pressure(leakage_flow: float, pressure: float, exponent: float = LEAKAGE_EXPONENT) -> float:
    """Leakage flow in m3/s at a pressure difference in Pa, from the flow at 50 Pa: Q50 (p / 50)^n.

    ValueError for a negative flow or pressure; OutOfRange for an exponent outside 0.5 to 1.
    Source: ASHRAE Handbook - Fundamentals 2021, chapter 16 (power law).
    """
    require_not_negative(leakage_flow=leakage_flow, pressure=pressure)
    require_flow_exponent(exponent)
    return leakage_flow * float((pressure / TEST_PRESSURE) ** exponent)


def flow_from_air_changes(air_changes: float, volume: float) -> float:
    """Flow in m3/s from air changes per hour and a volume in m3. ValueError for impossible input."""
    require_not_negative(air_changes=air_changes)
    require_positive(volume=volume)
    return air_changes * volume / 3600.0


def air_changes_from_flow(flow: float, volume: float) -> float:
    """Air changes per hour from a flow in m3/s and a volume in m3. ValueError for impossible input."""
    require_not_negative(flow=flow)
    require_positive(volume=volume)
    return 3600.0 * flow / volume


def effective_leakage_area(
    leakage_flow: float, exponent: float = LEAKAGE_EXPONENT, density: float = STANDARD_DENSITY
) -> float:
    """Leakage area in m2 at 4 Pa with a discharge coefficient of 1, from the flow in m3/s at 50 Pa.

    ValueError for impossible input; OutOfRange for an exponent outside 0.5 to 1.
    Source: ASHRAE Handbook - Fundamentals 2021, chapter 16.
    """
    return _leakage_area(leakage_flow, 4.0, 1.0, exponent, density)


def design_infiltration(
    leakage_area: float,
    height: float,
    temperature_difference: float,
    season: Literal["heating", "cooling"],
    flue_area: float = 0.0,
) -> float:
    """Infiltration in m3/s in the design hour: leakage area times the infiltration driving force.

    `leakage_area` m2 at 4 Pa without the flue, `height` mean stack height m, `temperature_difference` K of
    either sign, `flue_area` m2 of open flues. ValueError for impossible input; OutOfRange when the flue
    reaches half the leakage area. Valid for suburban shelter.
    Source: ASHRAE Handbook - Fundamentals 2021, chapter 17, equations 8 to 10.
    """
    require_positive(leakage_area=leakage_area, height=height)
    require_finite(temperature_difference=temperature_difference)
    require_not_negative(flue_area=flue_area)
    if flue_area > 0.0 and flue_area >= leakage_area / 2.0:
        raise OutOfRange("design infiltration", "the flue area is half the leakage area or more")
    wind, stack, flue = _DRIVING_COEFFICIENTS[season]
    drive = wind + height * abs(temperature_difference) * (stack + flue * flue_area / leakage_area)
    return leakage_area * 1e4 * drive * 1e-6


def combined_outdoor_air(infiltration: float, supply: float, exhaust: float, balanced: float = 0.0) -> float:
    """Outdoor air in m3/s of infiltration and fans together: max(U, infiltration + U / 2) + balanced flow.

    U is the difference of unbalanced supply and exhaust (outdoor air only; combustion air is exhaust),
    `balanced` the flow that enters and leaves at the same rate; all m3/s. ValueError for a negative flow.
    Source: ASHRAE Handbook - Fundamentals 2021, chapter 17, equations 12 to 14.
    """
    require_not_negative(infiltration=infiltration, supply=supply, exhaust=exhaust, balanced=balanced)
    unbalanced = abs(supply - exhaust)
    paired = min(supply, exhaust)
    return max(unbalanced, infiltration + 0.5 * unbalanced) + paired + balanced


def require_flow_exponent(exponent: float) -> None:
    """OutOfRange unless the leakage exponent lies between 0.5 (orifice) and 1 (laminar)."""
    require_finite(exponent=exponent)
    if not 0.5 <= exponent <= 1.0:
        raise OutOfRange("leakage power law", f"flow exponent {exponent:g} is outside 0.5 to 1")


def _leakage_area(
    leakage_flow: float, pressure: float, discharge: float, exponent: float, density: float
) -> float:
    require_positive(density=density)
    flow = flow_at_pressure(leakage_flow, pressure, exponent)
    return flow / (discharge * sqrt(2.0 * pressure / density))
