"""Heat that rooms lose to the ground: slabs on grade by their edge, walls and floors below grade.

Units: m, m2, K, m2 K/W, W/(m2 K), W/(m K).
"""

from __future__ import annotations

from itertools import pairwise
from math import log, pi

from checker.physics.arguments import require_not_negative, require_positive
from checker.physics.assemblies import R_UNIT
from checker.physics.validity import OutOfRange

SOIL_CONDUCTIVITY = 1.4
"""W/(m K), the value of ASHRAE Handbook - Fundamentals 2021, chapter 18; real soils 0.5 to 2.5."""

WALL_RESISTANCE = 0.259
"""m2 K/W of an uninsulated concrete wall with its inside film, same chapter."""

FLOOR_RESISTANCE = 0.259
"""m2 K/W of an uninsulated concrete floor with its film, taken like the wall (from memory)."""

AMPLITUDE = {"continental": 10.0, "marine": 5.0}
"""K by which the ground surface swings about the yearly mean, from memory."""

F_UNIT = 1.730735
"""W/(m K) in one Btu/(h ft F)."""

# Btu/(h ft F) by R in h ft2 F/Btu; Washington State Energy Code, WAC 51-11C-61061, Table A106.1
_EDGE_FACTORS: dict[str, tuple[tuple[float, float], ...]] = {
    "vertical 2 ft": ((0.0, 0.73), (5.0, 0.58), (10.0, 0.54), (15.0, 0.52)),
    "vertical 4 ft": ((0.0, 0.73), (5.0, 0.54), (10.0, 0.48), (15.0, 0.45)),
    "horizontal 2 ft": ((0.0, 0.73), (5.0, 0.70), (10.0, 0.70), (15.0, 0.69)),
    "horizontal 4 ft": ((0.0, 0.73), (5.0, 0.67), (10.0, 0.64), (15.0, 0.63)),
    "full": ((0.0, 0.73), (10.0, 0.36), (15.0, 0.31), (20.0, 0.26), (30.0, 0.21)),
}
_HEATED_FACTORS = ((0.0, 0.84), (5.0, 0.74), (10.0, 0.55), (15.0, 0.44), (20.0, 0.39), (30.0, 0.32))


def edge_factor(insulated: str, insulation: float, heated: bool = False) -> float:
    """Heat loss of a slab on grade for each m of its edge and kelvin, W/(m K).

    `insulated` is `none` or a key of the table, `insulation` m2 K/W, linear between the rows and held beyond
    the last. A slab with heating pipes is known here without insulation or with it under the whole of it and at
    the edge (`full`); OutOfRange otherwise.
    Source: Washington State Energy Code, WAC 51-11C-61061, Table A106.1.
    """
    require_not_negative(insulation=insulation)
    bare = insulated == "none" or insulation == 0.0
    if heated and not bare and insulated != "full":
        raise OutOfRange("slab edge factor", "no figure is held for a heated slab that is insulated at its edge only")
    if bare:
        return (_HEATED_FACTORS[0][1] if heated else 0.73) * F_UNIT
    rows = _HEATED_FACTORS if heated else _EDGE_FACTORS[insulated]
    wanted = insulation / R_UNIT
    for (low, at_low), (high, at_high) in pairwise(rows):
        if wanted <= high:
            return (at_low + (at_high - at_low) * (wanted - low) / (high - low)) * F_UNIT
    return rows[-1][1] * F_UNIT


def below_grade_wall_u(
    top: float, foot: float, resistance: float, conductivity: float = SOIL_CONDUCTIVITY
) -> float:
    """Mean U-value in W/(m2 K) of a wall between two depths below grade, soil included.

    `top`, `foot` m below grade; `resistance` of wall, insulation and film, m2 K/W. ValueError for impossible
    input. Source: ASHRAE Handbook - Fundamentals 2021, chapter 18, below-grade walls.
    """
    require_not_negative(top=top)
    require_positive(height=foot - top, resistance=resistance, conductivity=conductivity)
    shift = 2.0 * conductivity * resistance / pi
    return 2.0 * conductivity / (pi * (foot - top)) * log((foot + shift) / (top + shift))


def below_grade_floor_u(
    width: float, depth: float, resistance: float, conductivity: float = SOIL_CONDUCTIVITY
) -> float:
    """Mean U-value in W/(m2 K) of a floor below grade, soil included.

    `width` shorter side m, `depth` m below grade, `resistance` of floor, insulation and film, m2 K/W.
    ValueError for impossible input. Source: ASHRAE Handbook - Fundamentals 2021, chapter 18.
    """
    require_positive(width=width, resistance=resistance, conductivity=conductivity)
    require_not_negative(depth=depth)
    shift = conductivity * resistance / pi
    start = depth / 2.0 + shift
    return 2.0 * conductivity / (pi * width) * log((width / 2.0 + start) / start)


def ground_surface_temperature(annual_mean: float, marine: bool) -> float:
    """Winter temperature in K of the ground surface: the mean of the year less its amplitude (from memory).

    Source of the form: ASHRAE Handbook - Fundamentals 2021, chapter 17 and 18.
    """
    require_positive(annual_mean=annual_mean)
    return annual_mean - AMPLITUDE["marine" if marine else "continental"]


def covered_slab_gain(covering: float) -> float:
    """Cooling load of a slab floor in W/m2, never above zero: 1.9 - 1.4 / (covering + 0.12).

    `covering` m2 K/W. Source: ASHRAE Handbook - Fundamentals 2021, chapter 17, equations 22 and 23.
    """
    require_not_negative(covering=covering)
    return min(0.0, 1.9 - 1.4 / (covering + 0.12))
