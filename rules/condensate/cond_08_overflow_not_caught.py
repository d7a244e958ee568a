"""A coil stands where its overflow would damage the house, and nothing catches it.

The first drain stops up sooner or later. Over a ceiling or a finished floor that means stains, mold and a new ceiling.
The code then wants one of four: a pan with its own drain, a second drain of the unit's pan, a pan with a switch, or a
water-level device that stops the unit.

A switch in the unit's pan is the cheapest of them. Write which with `secondary`.
"""

from checker.case import Case
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import drains, drains_a_coil, methods, would_do_damage
from checker.rule import Finding, Meets, Rule


def could_do_damage(case: Case, drain: CondensateDrain) -> bool:
    """It drains no cooling coil, or its overflow would harm nothing."""
    return drains_a_coil(case, drain) and would_do_damage(case, drain)


def check(drain: CondensateDrain, found: frozenset[str]) -> Meets | Finding:
    """One of the four methods must be there; a pan that can neither drain nor stop the unit is none."""
    if found - {"pan"}:
        return Meets()
    what = "only a pan without drain or switch catches" if found else "nothing catches"
    return Finding(
        f"{what} the water of {drain.name} when its drain stops up, and it would damage the house",
        at="secondary",
        help="show a pan with drain, an overflow drain, or a water-level device that stops the unit",
    )


RULE = Rule(
    code="COND-08", name="overflow-not-caught", severity="correction", since="0.1",
    over=drains, when=could_do_damage, needs=(methods,), cites=("overflow-protection",), check=check,
    nothing="no condensate drain is drawn", answers=("J04",),
)  # fmt: skip
