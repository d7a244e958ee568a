"""An exhaust opening is too close to a window, a door or a passive air intake.

What the fan throws out comes straight back in when the window is open or when the house draws air through the
passive opening: moisture, smells and grease.

The usual cause is a bath fan that is led to the nearest wall, beside the bathroom's own window. Move the
terminal along the wall or lead it through the roof. The 2015 edition counts fixed windows too; from 2024 a
terminal that is a foot above the opening is free. A window counts as one that opens unless it is called a fixed
window or says `operable: no`.
"""

from checker.case import Case, quantity
from checker.design.openings import Opening
from checker.quantities.clearances import (
    Neighbor,
    neighbors,
    numbers_of,
    settled,
    that_open,
    unseen_windows,
)
from checker.quantities.opening_kinds import is_mechanical, kind, known_exhausts
from checker.rule import Finding, Meets, Rule

INTAKES = frozenset({"outdoor air intake", "make-up air intake"})
PASSIVE = frozenset({"door", "combustion air intake"})


@quantity()
def openings_nearby(case: Case, exhaust: Opening) -> list[Neighbor]:
    """Doors, passive intakes, and windows: fixed ones only where the edition counts them."""
    fixed = case.limit("fixed-openings-count") == "yes"
    kinds = PASSIVE | INTAKES | {"window"} | ({"fixed window"} if fixed else set())
    found = neighbors(case, exhaust, kinds, lambda other: not_driven(case, other))
    return found if fixed else that_open(case, exhaust, found)


def not_driven(case: Case, other: Opening) -> bool:
    """Whether air comes in there by itself."""
    return kind(case, other) not in INTAKES or not is_mechanical(case, other)


@quantity()
def windows_not_shown(case: Case, exhaust: Opening) -> list[str]:
    """The path that would say how far windows are, where the file speaks of no window or door at all."""
    return unseen_windows(case, exhaust)


def check(
    _exhaust: Opening, around: list[Neighbor], unseen: list[str], least: float, above: float | None
) -> Meets | Finding:
    """Hold every opening against the distance, or against the height that frees the exhaust."""
    verdict = settled(around, least, drop=above, unplaced=unseen)
    numbers = numbers_of(verdict, least)
    if not verdict.offends:
        return Meets(numbers)
    freed = "" if above is None else f", and this exhaust is {verdict.is_not} {{exhaust_above_opening}} above it"
    return Finding(
        f"{{near}} is {{apart}} from this exhaust, nearer than {{exhaust_to_opening}}{freed}{verdict.also}",
        help="move the terminal {short} farther from the opening, or lead it through the roof",
        numbers=numbers,
    )


RULE = Rule(
    code="OPEN-03", name="exhaust-near-window", severity="correction", since="0.1",
    over=known_exhausts, needs=(openings_nearby, windows_not_shown),
    limits=("exhaust-to-opening", "exhaust-above-opening"), cites=("fixed-openings-count",), check=check,
    nothing="the design has no exhaust opening", answers=("D03",),
)  # fmt: skip
