"""Friction in flexible duct, which depends on how far it is stretched.

Source: ASHRAE Handbook - Fundamentals 2021, chapter 21 "Duct Design", equations 22 and 23. Compression is a
fraction: 1 minus the installed length over the fully stretched length. Margin of the method about 30 %.
"""

from __future__ import annotations

from math import exp

from checker.physics.air import STANDARD_DENSITY, STANDARD_VISCOSITY
from checker.physics.arguments import require_not_negative, require_positive
from checker.physics.friction import friction_per_meter
from checker.physics.validity import OutOfRange
from checker.record import Record

STRETCHED_ROUGHNESS = 0.9e-3
"""Roughness in m of fully stretched non-metallic flexible duct, same chapter, Table 1."""

EXHAUST_TABLE_ROUGHNESS = 1.68e-3
"""Roughness in m (0.0055 ft) that reproduces the flexible columns of the exhaust duct table in the IRC
(Table M1504.2) and ASHRAE 62.2 (Table 5.3): worked back from those tables."""

SMALLEST_DIAMETER = 0.1524
LARGEST_DIAMETER = 0.3048
LARGEST_COMPRESSION = 0.30
CARELESS_COMPRESSION = 0.15
LARGE_DUCT_FACTOR = 4.0
ALLOWED_SAG = 0.042

_SLACK = 1e-9


class FrictionBounds(Record):
    """Friction in Pa/m at best and at careless installation; `extrapolated` when a factor left its range."""

    lower: float
    upper: float
    extrapolated: bool


def with_sag(compression: float, sag: float) -> float:
    """Compression to reckon with when the duct sags `sag` m per m between supports.

    Sag beyond 42 mm per m (1/2 in. per ft) counts as 5 points more. Source: support rule of the flexible
    duct trade, from memory; the 5 points are common practice.
    """
    require_not_negative(compression=compression, sag=sag)
    return compression + 0.05 if sag > ALLOWED_SAG else compression


def compression_factor(diameter: float, compression: float) -> float:
    """Pressure drop over that of the fully stretched duct, -; `diameter` m, `compression` fraction.

    Valid for 152 to 305 mm (6 to 12 in.) and compression up to 0.30, OutOfRange beyond. Equation 23.
    """
    require_positive(diameter=diameter)
    require_not_negative(compression=compression)
    method = "flexible duct compression factor"
    if not SMALLEST_DIAMETER - _SLACK <= diameter <= LARGEST_DIAMETER + _SLACK:
        raise OutOfRange(method, f"diameter {diameter * 1e3:.0f} mm is outside 152 to 305 mm")
    if compression > LARGEST_COMPRESSION + _SLACK:
        raise OutOfRange(method, f"compression {compression:.0%} is above 30 %")
    return _compression_equation(diameter, compression)


def flexible_friction_bounds(
    airflow: float,
    diameter: float,
    density: float = STANDARD_DENSITY,
    viscosity: float = STANDARD_VISCOSITY,
) -> FrictionBounds:
    """Friction bounds in Pa/m when nothing is known of the installation.

    Lower: the roughness of the code's exhaust duct table (nearly stretched). Upper: 15 % compression. Above
    305 mm the equation understates, so a factor of 4 stands in; below 152 mm the equation is extrapolated.
    Source: as the module; the choice of 15 % is common practice.
    """
    lower = friction_per_meter(airflow, diameter, EXHAUST_TABLE_ROUGHNESS, density, viscosity)
    stretched = friction_per_meter(airflow, diameter, STRETCHED_ROUGHNESS, density, viscosity)
    if diameter > LARGEST_DIAMETER + _SLACK:
        return FrictionBounds(lower, stretched * LARGE_DUCT_FACTOR, True)
    factor = _compression_equation(diameter, CARELESS_COMPRESSION)
    return FrictionBounds(lower, stretched * factor, diameter < SMALLEST_DIAMETER - _SLACK)


def _compression_equation(diameter: float, compression: float) -> float:
    return 1.0 + 0.58 * 100.0 * compression * exp(-4.96 * diameter)
