"""Sound levels: adding sources, distance, loudness in sones, growth with air velocity.

Units: dB, phon, sone, m.
"""

from __future__ import annotations

from collections.abc import Iterable
from math import log10, pi

from checker.physics.arguments import require_finite, require_positive


def combined_level(levels: Iterable[float]) -> float:
    """Level in dB of several incoherent sources together; ValueError when there are none.

    Source: energy sum, 10 log10 of the sum of 10**(L/10), any acoustics text.
    """
    total = 0.0
    for level in levels:
        require_finite(level=level)
        total += 10.0 ** (level / 10.0)
    if total == 0.0:
        raise ValueError("no level given")
    return 10.0 * log10(total)


def level_at_distance(level: float, distance: float, other_distance: float) -> float:
    """Level in dB at `other_distance` m of a point source in the open whose level at `distance` m is known.

    6 dB less per doubling. Not valid in a room, where reflections hold the level up.
    Source: spherical spreading.
    """
    require_finite(level=level)
    require_positive(distance=distance, other_distance=other_distance)
    return level - 20.0 * log10(other_distance / distance)


def distance_of_level(level: float, distance: float, other_level: float) -> float:
    """Distance in m at which a point source in the open has fallen to `other_level` dB; `level_at_distance` turned round."""
    require_finite(level=level, other_level=other_level)
    require_positive(distance=distance)
    return distance * float(10.0 ** ((level - other_level) / 20.0))


def level_from_power(power_level: float, distance: float) -> float:
    """Sound pressure level in dB at a distance in m from a source on the ground of a sound power level in dB.

    Lw - 10 log10(2 pi r^2), 8 dB less at 1 m: a half sphere in the open. Source: ISO 3744 (reference surface).
    """
    require_finite(power_level=power_level)
    require_positive(distance=distance)
    return power_level - 10.0 * log10(2.0 * pi * distance**2)
