"""Make-up air: the opening or duct that lets a flow in at an allowed pressure difference.

Units: m, m2, m3/s, Pa, kg/m3, Pa s, K, W.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import pi, sqrt

from checker.physics.air import SPECIFIC_HEAT_DRY_AIR, STANDARD_DENSITY, STANDARD_VISCOSITY
from checker.physics.arguments import require_not_negative, require_positive
from checker.physics.friction import friction_per_meter
from checker.physics.scalar_root import bracketed_root
from checker.physics.validity import OutOfRange

ORIFICE_COEFFICIENT = 0.61
"""Discharge coefficient of a sharp-edged opening (ASHRAE Handbook - Fundamentals 2021, chapter 16)."""

SMOOTH_ROUGHNESS = 0.09e-3
"""m, galvanized steel (ASHRAE Handbook - Fundamentals 2021, chapter 21, Table 1)."""

STOCK_DIAMETERS = tuple(inches * 0.0254 for inches in (3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 24))
"""m, round duct sizes commonly kept in stock (common practice)."""

ELBOW_LOSS_COEFFICIENT = 0.22
"""90-degree smooth elbow, center-line radius equal to the diameter (HVAC Systems - Duct Design (SMACNA), Table 14-10 A)."""


def opening_flow(
    area: float,
    pressure_drop: float,
    discharge_coefficient: float = ORIFICE_COEFFICIENT,
    density: float = STANDARD_DENSITY,
) -> float:
    """Flow in m3/s through a plain opening of free `area` m2 at a pressure difference in Pa.

    ValueError for impossible input. Source: ASHRAE Handbook - Fundamentals 2021, chapter 16 (orifice).
    """
    require_not_negative(area=area, pressure_drop=pressure_drop)
    require_positive(discharge_coefficient=discharge_coefficient, density=density)
    return discharge_coefficient * area * sqrt(2.0 * pressure_drop / density)


def opening_area(
    flow: float,
    pressure_drop: float,
    discharge_coefficient: float = ORIFICE_COEFFICIENT,
    density: float = STANDARD_DENSITY,
) -> float:
    """Free area in m2 that passes `flow` m3/s at a pressure difference in Pa; 0 for no flow.

    ValueError for impossible input. Source: ASHRAE Handbook - Fundamentals 2021, chapter 16 (orifice).
    """
    require_not_negative(flow=flow)
    require_positive(
        pressure_drop=pressure_drop, discharge_coefficient=discharge_coefficient, density=density
    )
    return flow / (discharge_coefficient * sqrt(2.0 * pressure_drop / density))


def gross_area(free_area: float, free_fraction: float) -> float:
    """Face area in m2 of a screened or louverd opening with this free area and free share (0 to 1].

    ValueError for impossible input. Source: common practice (net area over free-area fraction).
    """
    require_not_negative(free_area=free_area)
    require_positive(free_fraction=free_fraction)
    if free_fraction > 1.0:
        raise ValueError(f"free fraction must not exceed 1, got {free_fraction:g}")
    return free_area / free_fraction


def duct_pressure_drop(
    flow: float,
    diameter: float,
    length: float,
    loss_coefficient: float,
    roughness: float = SMOOTH_ROUGHNESS,
    density: float = STANDARD_DENSITY,
    viscosity: float = STANDARD_VISCOSITY,
) -> float:
    """Pressure lost in Pa by `flow` m3/s along a round duct: friction plus local losses.

    `diameter`, `length`, `roughness` m; `loss_coefficient` the sum on the duct's velocity pressure.
    ValueError for impossible input, OutOfRange from the friction equation.
    Source: ASHRAE Handbook - Fundamentals 2021, chapter 21.
    """
    require_not_negative(flow=flow, length=length, loss_coefficient=loss_coefficient)
    require_positive(diameter=diameter, density=density)
    velocity = 4.0 * flow / (pi * diameter * diameter)
    friction = friction_per_meter(flow, diameter, roughness, density, viscosity)
    return friction * length + loss_coefficient * 0.5 * density * velocity * velocity


def duct_flow(
    pressure_drop: float,
    diameter: float,
    length: float,
    loss_coefficient: float,
    roughness: float = SMOOTH_ROUGHNESS,
    density: float = STANDARD_DENSITY,
    viscosity: float = STANDARD_VISCOSITY,
) -> float:
    """Flow in m3/s that a round duct passes at a pressure difference in Pa; inverse of `duct_pressure_drop`.

    ValueError for impossible input or a duct without any loss. Source: as `duct_pressure_drop`.
    """
    require_not_negative(pressure_drop=pressure_drop)
    require_positive(diameter=diameter, density=density)
    if length <= 0.0 and loss_coefficient <= 0.0:
        raise ValueError("a duct needs a length or a loss coefficient to limit its flow")
    if pressure_drop == 0.0:
        return 0.0

    def excess(flow: float) -> float:
        return (
            duct_pressure_drop(flow, diameter, length, loss_coefficient, roughness, density, viscosity)
            - pressure_drop
        )

    high = 0.1 * diameter * diameter
    while excess(high) < 0.0:
        high *= 2.0
    return bracketed_root(excess, 0.0, high, 1e-12, "duct flow")


def duct_diameter(
    flow: float,
    pressure_drop: float,
    length: float,
    loss_coefficient: float,
    roughness: float = SMOOTH_ROUGHNESS,
    density: float = STANDARD_DENSITY,
    viscosity: float = STANDARD_VISCOSITY,
) -> float:
    """Diameter in m at which the duct loses exactly the allowed pressure in Pa at `flow` m3/s.

    Looks from 25 mm to 2 m: ValueError for impossible input, NoSolution outside that.
    Source: as `duct_pressure_drop`, solved for the diameter.
    """
    require_positive(flow=flow, pressure_drop=pressure_drop, density=density, viscosity=viscosity)

    def excess(diameter: float) -> float:
        return (
            duct_pressure_drop(flow, diameter, length, loss_coefficient, roughness, density, viscosity)
            - pressure_drop
        )

    # Below these the friction equation itself has no answer.
    smallest = max(0.025, roughness / 0.049, 4.0 * density * flow / (pi * viscosity * 9.9e6))
    return bracketed_root(excess, smallest, 2.0, 1e-9, "duct diameter")


def stock_diameter(
    diameter: float, flexible: bool = False, sizes: Sequence[float] = STOCK_DIAMETERS
) -> float:
    """Smallest stock diameter in m not below `diameter` m, one size more for flexible duct.

    ValueError for impossible input, OutOfRange beyond the largest size. The step for flexible duct is the
    note of the Minnesota Mechanical Code make-up air table (501.4.2).
    """
    require_positive(diameter=diameter)
    large_enough = [size for size in sorted(sizes) if size >= diameter * (1.0 - 1e-9)]
    steps = 1 if flexible else 0
    if len(large_enough) <= steps:
        raise OutOfRange("stock duct size", f"no stock size for a diameter of {diameter:.3f} m")
    return large_enough[steps]


def tempering_load(
    flow: float,
    outdoor_temperature: float,
    least_temperature: float,
    density: float = STANDARD_DENSITY,
    specific_heat: float = SPECIFIC_HEAT_DRY_AIR,
) -> float:
    """Heat in W that brings make-up air to its least temperature; 0 when outdoor air is warm enough.

    `flow` m3/s at `density` kg/m3, temperatures K, `specific_heat` J/(kg K). ValueError for impossible input.
    Source: sensible heat, ASHRAE Handbook - Fundamentals, chapter "Psychrometrics".
    """
    require_not_negative(flow=flow)
    require_positive(
        outdoor_temperature=outdoor_temperature, least_temperature=least_temperature, density=density
    )
    return flow * density * specific_heat * max(0.0, least_temperature - outdoor_temperature)
