"""A dryer's terminal is too close to an opening into the building.

Moist air and lint go back in through the window, the crawl space vent or the soffit vent; from a gas dryer carbon
monoxide comes along.

The usual cause is a terminal beside the laundry's own window, or under the eave. Move it along the wall, away
from windows, doors and vents. Where the dryer's instructions give a distance, it counts.
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
from checker.quantities.dryer_duct import dryers_of, terminals
from checker.quantities.opening_kinds import OUTDOOR_INTAKES
from checker.rule import Finding, Meets, Num, Rule

WAYS_IN = OUTDOOR_INTAKES | {
    "window", "door", "combustion air intake", "foundation vent", "gable vent", "attic vent",
}  # fmt: skip


@quantity()
def ways_in(case: Case, terminal: Opening) -> list[Neighbor]:
    """Openings into the building around a dryer's terminal; soffit vents where the edition counts them."""
    soffits = case.limit("dryer-terminal-soffits") == "yes"
    kinds = WAYS_IN | {"soffit vent"} if soffits else WAYS_IN
    return that_open(case, terminal, neighbors(case, terminal, frozenset(kinds)))


@quantity()
def windows_not_shown(case: Case, terminal: Opening) -> list[str]:
    """The path that would say how far windows are, where the file speaks of no window or door at all."""
    return unseen_windows(case, terminal)


@quantity("length")
def clearance_by_maker(case: Case, terminal: Opening) -> float | None:
    """Distance by the dryer's instructions; None where only the code counts."""
    makers = [dryer.by_maker for dryer in dryers_of(case, terminal) if dryer.by_maker is not None]
    said = [case.maybe(maker, "terminal_clearance") for maker in makers]
    return max((float(each) for each in said if each is not None), default=None)


def check(
    _terminal: Opening, around: list[Neighbor], unseen: list[str], by_maker: float | None, by_code: float
) -> Meets | Finding:
    """Hold every opening against the instructions' distance, else the code's."""
    least = by_code if by_maker is None else by_maker
    verdict = settled(around, least, unplaced=unseen)
    numbers = {**numbers_of(verdict, least), "least": Num(least, "length")}
    if not verdict.offends:
        return Meets(numbers)
    return Finding(
        f"{{near}} is {{apart}} from this dryer's terminal, nearer than {{least}}{verdict.also}",
        help="move the terminal {short} farther from the opening",
        numbers=numbers,
    )


RULE = Rule(
    code="DRY-22", name="dryer-terminal-near-opening", severity="correction", since="0.1",
    over=terminals, needs=(ways_in, windows_not_shown, clearance_by_maker), limits=("dryer-terminal-clearance",),
    cites=("dryer-terminal-soffits",), check=check, nothing="the design has no dryer terminal", answers=("E17",),
)  # fmt: skip
