"""Heat transmission of walls, ceilings, roofs and floors: layers in series, framing in parallel, air films.

Units: m, m2 K/W, W/(m2 K), shares 0 to 1.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from checker.physics.arguments import require_fraction, require_not_negative, require_positive

R_UNIT = 0.17611018368230588
"""m2 K/W in one h ft2 F/Btu."""

FILM_OUTSIDE = 0.17 * R_UNIT
"""Outdoor film in wind, m2 K/W: Washington State Energy Code, WAC 51-11-0526."""

FILM_INSIDE = {"wall": 0.68 * R_UNIT, "up": 0.61 * R_UNIT, "down": 0.92 * R_UNIT}
"""Still-air film by direction of the heat, m2 K/W: Washington State Energy Code, WAC 51-11-0526."""

WOOD_PER_METER = 1.25 * R_UNIT / 0.0254
"""Resistance of softwood framing for each m along the heat flow, m K/W (R-1.25 per inch): ASHRAE 90.1,
appendix A."""

WALL_FRAMING_SHARE = 0.23
"""Studs and headers of a wall framed at 16 in: Washington State Energy Code, WAC 51-11-1005 (0.19 + 0.04)."""

JOIST_FRAMING_SHARE = 0.10
"""Rafters or joists of a roof or floor: ASHRAE 90.1, appendix A (single-rafter roofs)."""

MEMBER_DEPTH = {"2x4": 0.0889, "2x6": 0.1397, "2x8": 0.18415, "2x10": 0.23495, "2x12": 0.28575}
"""Actual depth of framing lumber, m."""

USUAL_BOARDS = {"wall": 1.66 * R_UNIT, "roof": 0.56 * R_UNIT, "ceiling": 0.45 * R_UNIT, "floor": 1.23 * R_UNIT}
"""Siding, sheathing, gypsum board or floor boards where no layer is given, m2 K/W, from memory."""

_CEILINGS = ((30.0, 0.035), (38.0, 0.030), (49.0, 0.026), (60.0, 0.024))
"""R of a ceiling's insulation in h ft2 F/Btu and the U-factor that the code sets equal to it: IRC 2018, 2021 and 2024,
Tables N1102.1.2 and N1102.1.3 (2018: N1102.1.4 and N1102.1.2)."""

_ACROSS_CEILING = 0.45 + 2 * 0.61
"""Gypsum board and still air on both sides, h ft2 F/Btu."""


def u_of_layers(resistances: Sequence[float]) -> float:
    """U-value in W/(m2 K) of layers in series with their films, each m2 K/W. ValueError for a sum of zero."""
    for resistance in resistances:
        require_not_negative(resistance=resistance)
    total = sum(resistances)
    require_positive(total_resistance=total)
    return 1.0 / total


def u_parallel(paths: Sequence[tuple[float, float]]) -> float:
    """U-value of heat paths side by side, given as (share of the area, resistance m2 K/W); shares sum to 1.

    Not for metal framing, whose flanges spread the heat. ValueError for impossible input.
    Source: ASHRAE Handbook - Fundamentals 2021, chapter 27 (parallel-path method).
    """
    if not paths or abs(sum(share for share, _ in paths) - 1.0) > 1e-6:
        raise ValueError("shares of parallel paths must sum to 1")
    total = 0.0
    for share, resistance in paths:
        require_fraction(share=share)
        require_positive(resistance=resistance)
        total += share / resistance
    return total


def u_framed(cavity: float, depth: float, share: float, across: float) -> float:
    """U-value of a wood-framed assembly in W/(m2 K).

    `cavity` resistance between the members, m2 K/W; `depth` of the members, m; `share` of framing; `across`
    resistance of everything that runs across, films included, m2 K/W. ValueError for impossible input. Source
    as `u_parallel`.
    """
    require_not_negative(cavity=cavity, across=across, depth=depth)
    require_fraction(share=share)
    return u_parallel([(1.0 - share, cavity + across), (share, depth * WOOD_PER_METER + across)])


def counted_fill(fill: float) -> float:
    """Resistance in m2 K/W that counts of a ceiling's insulation over the joists, which thins out at the outer walls.

    `fill` its resistance in the middle, m2 K/W; linear between the rows, in proportion below the first and beyond the
    last. ValueError below zero. Source: what is left of the code's U-factors of ceilings without board and films.
    """
    require_not_negative(fill=fill)
    wanted = fill / R_UNIT
    rows = [(0.0, 0.0), *((row, 1.0 / u - _ACROSS_CEILING) for row, u in _CEILINGS)]
    for (low, at_low), (high, at_high) in pairwise(rows):
        if wanted <= high:
            return (at_low + (at_high - at_low) * (wanted - low) / (high - low)) * R_UNIT
    return wanted * rows[-1][1] / rows[-1][0] * R_UNIT


def greatest_cavity(depth: float) -> float:
    """Highest resistance in m2 K/W that usual insulation gives in a depth in m: R-7 per inch, closed-cell foam.

    Source: common practice (the most of products on the market).
    """
    require_positive(depth=depth)
    return 7.0 * R_UNIT / 0.0254 * depth
