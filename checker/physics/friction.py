"""Friction in rigid ducts: Darcy-Weisbach with the Colebrook friction factor.

Units: m, m3/s, m/s, Pa/m; roughness in m.
"""

from __future__ import annotations

from math import log10, pi

from checker.physics.air import STANDARD_DENSITY, STANDARD_VISCOSITY
from checker.physics.arguments import require_finite, require_not_negative, require_positive
from checker.physics.validity import OutOfRange
from checker.record import Record

LAMINAR_LIMIT = 2000.0
TURBULENT_LIMIT = 4000.0
HIGHEST_REYNOLDS = 1e7
HIGHEST_RELATIVE_ROUGHNESS = 0.05

_METHOD = "Colebrook friction"
_TWO_OVER_LN_10 = 0.8685889638065036
_HANDBOOK = 'ASHRAE Handbook - Fundamentals 2021, chapter 21 "Duct Design", Table 1'


class Roughness(Record):
    """Absolute roughness in m of a duct material and where the figure comes from."""

    value: float
    source: str


ROUGHNESS_BY_MATERIAL: dict[str, Roughness] = {
    "pvc": Roughness(0.03e-3, _HANDBOOK),
    "drawn aluminum": Roughness(0.03e-3, _HANDBOOK),
    "galvanized steel": Roughness(0.09e-3, _HANDBOOK),
    "galvanized steel, many joints": Roughness(0.15e-3, _HANDBOOK),
    "rigid duct board": Roughness(0.9e-3, "common practice"),
    "fibrous liner, faced": Roughness(1.5e-3, _HANDBOOK),
    "fibrous liner": Roughness(3.0e-3, _HANDBOOK),
    "fibrous liner, sprayed": Roughness(4.6e-3, _HANDBOOK),
    "metallic corrugated flexible": Roughness(2.1e-3, _HANDBOOK),
    "non-metallic flexible, stretched": Roughness(0.9e-3, _HANDBOOK),
}
"""Roughness by material; metallic corrugated flexible duct is 1.2 to 2.1 mm, the upper value is used."""


def round_area(diameter: float) -> float:
    """Free area in m2 of a round duct; `diameter` m. ValueError when it is not positive."""
    require_positive(diameter=diameter)
    return pi * diameter * diameter / 4.0


def velocity(airflow: float, area: float) -> float:
    """Mean velocity in m/s; `airflow` m3/s (signed), `area` m2. ValueError when the area is not positive."""
    require_finite(airflow=airflow)
    require_positive(area=area)
    return airflow / area


def velocity_pressure(speed: float, density: float = STANDARD_DENSITY) -> float:
    """Velocity pressure in Pa: half the density in kg/m3 times the square of the speed in m/s.

    ValueError when the density is not positive. Source: any fluid-mechanics text (Bernoulli).
    """
    require_positive(density=density)
    return 0.5 * density * speed * speed


def reynolds_number(
    speed: float, diameter: float, density: float = STANDARD_DENSITY, viscosity: float = STANDARD_VISCOSITY
) -> float:
    """Reynolds number, -; `speed` m/s, `diameter` m, `density` kg/m3, `viscosity` Pa s."""
    require_positive(density=density, viscosity=viscosity, diameter=diameter)
    return density * abs(speed) * diameter / viscosity


def friction_factor(reynolds: float, relative_roughness: float) -> float:
    """Darcy friction factor, -, of a flow with this Reynolds number and roughness over diameter.

    Laminar below 2,000, Colebrook above 4,000, a straight line between them so that the pressure drop
    rises with the flow. ValueError for a non-positive Reynolds number or negative roughness; OutOfRange
    above 1e7 or a relative roughness above 0.05.
    Source: Colebrook, "Turbulent flow in pipes", 1939; ASHRAE Handbook - Fundamentals 2021, chapter 21.
    """
    return friction_factor_and_slope(reynolds, relative_roughness)[0]


def friction_factor_and_slope(reynolds: float, relative_roughness: float) -> tuple[float, float]:
    """Darcy friction factor and d ln(factor) / d ln(Reynolds number), both -. As `friction_factor`."""
    require_positive(reynolds_number=reynolds)
    require_not_negative(roughness=relative_roughness)
    if reynolds > HIGHEST_REYNOLDS:
        raise OutOfRange(_METHOD, f"Reynolds number {reynolds:.3g} is above 1e7")
    if relative_roughness > HIGHEST_RELATIVE_ROUGHNESS:
        raise OutOfRange(_METHOD, f"roughness over diameter {relative_roughness:.3g} is above 0.05")
    if reynolds <= LAMINAR_LIMIT:
        return 64.0 / reynolds, -1.0
    if reynolds >= TURBULENT_LIMIT:
        return colebrook(reynolds, relative_roughness)
    laminar = 64.0 / LAMINAR_LIMIT
    turbulent, _ = colebrook(TURBULENT_LIMIT, relative_roughness)
    rise = (turbulent - laminar) / (TURBULENT_LIMIT - LAMINAR_LIMIT)
    factor = laminar + rise * (reynolds - LAMINAR_LIMIT)
    return factor, rise * reynolds / factor


def friction_per_meter(
    airflow: float,
    diameter: float,
    roughness: float,
    density: float = STANDARD_DENSITY,
    viscosity: float = STANDARD_VISCOSITY,
) -> float:
    """Friction in Pa per m of straight round duct, signed like the airflow.

    `airflow` m3/s, `diameter` and `roughness` m, `density` kg/m3, `viscosity` Pa s. Zero flow gives zero.
    ValueError for impossible input, OutOfRange as `friction_factor`.
    Source: ASHRAE Handbook - Fundamentals 2021, chapter 21 (Darcy-Weisbach and Colebrook).
    """
    speed = velocity(airflow, round_area(diameter))
    return friction_at_speed(speed, diameter, roughness, density, viscosity)


def friction_at_speed(
    speed: float,
    diameter: float,
    roughness: float,
    density: float = STANDARD_DENSITY,
    viscosity: float = STANDARD_VISCOSITY,
) -> float:
    """Friction in Pa per m from a mean speed in m/s and a diameter in m, signed like the speed.

    Units, errors and source as `friction_per_meter`.
    """
    reynolds = reynolds_number(speed, diameter, density, viscosity)
    require_not_negative(roughness=roughness)
    if reynolds <= LAMINAR_LIMIT:
        # The same as 64 / Re, without dividing by a speed that may be zero.
        return 32.0 * viscosity * speed / (diameter * diameter)
    factor = friction_factor(reynolds, roughness / diameter)
    return factor / diameter * 0.5 * density * speed * abs(speed)


def colebrook(reynolds: float, relative_roughness: float) -> tuple[float, float]:
    """`friction_factor_and_slope` of turbulent flow, for a caller that has checked both numbers itself."""
    rough_part = relative_roughness / 3.7
    smooth_part = 2.51 / reynolds
    # The explicit start is within 3 %, so Newton on x = 1/sqrt(factor) settles in two or three steps.
    x = -2.0 * log10(rough_part + 5.74 / reynolds**0.9)
    for _ in range(20):
        argument = rough_part + smooth_part * x
        share = _TWO_OVER_LN_10 * smooth_part / argument
        step = (x + 2.0 * log10(argument)) / (1.0 + share)
        x -= step
        if abs(step) < 1e-12 * x:
            break
    return 1.0 / (x * x), -2.0 * share / (1.0 + share)
