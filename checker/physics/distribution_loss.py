"""Heat that ducts outside the insulated shell lose or gain, as a share of the load of the building.

Source: ASHRAE Handbook - Fundamentals 2021, chapter 17, Table 6. Units: m2 K/W, shares 0 to 1.
"""

from __future__ import annotations

from itertools import pairwise
from typing import Literal

from checker.physics.arguments import require_fraction, require_not_negative

Use = Literal["cooling", "furnace", "heat pump"]

INSULATION_STEPS = (0.0, 0.7, 1.4)
TIGHT_LEAKAGE, USUAL_LEAKAGE = 0.05, 0.11

# by stories, place, use: m2 K/W at 11 % leakage of each side, then the same at 5 %
_FACTORS: dict[tuple[bool, str, Use], tuple[float, ...]] = {
    (False, "attic", "cooling"): (1.26, 0.71, 0.63, 0.68, 0.33, 0.27),
    (False, "attic", "furnace"): (0.49, 0.29, 0.25, 0.34, 0.16, 0.13),
    (False, "attic", "heat pump"): (0.56, 0.37, 0.34, 0.34, 0.19, 0.16),
    (False, "basement", "cooling"): (0.12, 0.09, 0.09, 0.07, 0.05, 0.04),
    (False, "basement", "furnace"): (0.28, 0.18, 0.16, 0.19, 0.10, 0.08),
    (False, "basement", "heat pump"): (0.23, 0.17, 0.16, 0.14, 0.09, 0.08),
    (False, "crawl space", "cooling"): (0.16, 0.12, 0.11, 0.10, 0.06, 0.05),
    (False, "crawl space", "furnace"): (0.49, 0.29, 0.25, 0.34, 0.16, 0.13),
    (False, "crawl space", "heat pump"): (0.56, 0.37, 0.34, 0.34, 0.19, 0.16),
    (True, "attic", "cooling"): (1.02, 0.66, 0.60, 0.53, 0.29, 0.25),
    (True, "attic", "furnace"): (0.41, 0.26, 0.24, 0.27, 0.14, 0.12),
    (True, "attic", "heat pump"): (0.49, 0.35, 0.33, 0.28, 0.17, 0.15),
    (True, "basement", "cooling"): (0.11, 0.09, 0.09, 0.06, 0.04, 0.04),
    (True, "basement", "furnace"): (0.24, 0.17, 0.15, 0.16, 0.09, 0.08),
    (True, "basement", "heat pump"): (0.20, 0.16, 0.15, 0.12, 0.08, 0.07),
    (True, "crawl space", "cooling"): (0.14, 0.12, 0.11, 0.08, 0.06, 0.05),
    (True, "crawl space", "furnace"): (0.41, 0.26, 0.24, 0.27, 0.14, 0.12),
    (True, "crawl space", "heat pump"): (0.49, 0.35, 0.33, 0.28, 0.17, 0.15),
}


def distribution_loss_factor(
    place: str, use: Use, stories: float, insulation: float, leakage: float = USUAL_LEAKAGE
) -> float:
    """Loss of the ducts over the load of what they serve, - (multiply the load with it and add).

    `place` attic, basement or crawl space; `insulation` m2 K/W, linear between the steps and held above the
    last; `leakage` share of each side, linear from 5 % to 11 %, held below and above. ValueError for
    impossible input. Guidance for whole systems in one place; sensible heat only.
    """
    require_not_negative(insulation=insulation)
    require_fraction(leakage=leakage)
    row = _FACTORS[(stories >= 2.0, place, use)]
    usual, tight = _between(row[:3], insulation), _between(row[3:], insulation)
    share = min(1.0, max(0.0, (leakage - TIGHT_LEAKAGE) / (USUAL_LEAKAGE - TIGHT_LEAKAGE)))
    return tight + (usual - tight) * share


def _between(values: tuple[float, ...], insulation: float) -> float:
    steps = list(zip(INSULATION_STEPS, values, strict=True))
    for (low, at_low), (high, at_high) in pairwise(steps):
        if insulation <= high:
            return at_low + (at_high - at_low) * (insulation - low) / (high - low)
    return values[-1]
