"""A radon vent ends close to a window, door or intake that is not well below it.

The pipe carries soil gas with radon from under the slab. Where it ends beside an opening, what was taken from the
ground comes into the rooms above, where it raises the risk of lung cancer over the years.

The usual cause is a pipe led out through the gable instead of the roof. End it above the roof, away from
openings; those of adjacent buildings count too.
"""

from checker.case import Case, quantity
from checker.design.openings import Opening
from checker.quantities.clearances import Neighbor, neighbors, numbers_of, settled, unseen_windows
from checker.quantities.opening_kinds import OUTDOOR_INTAKES, of_kind, stated
from checker.rule import Finding, Meets, Rule

WAYS_IN = OUTDOOR_INTAKES | {"window", "door"}


@quantity()
def ways_in(case: Case, vent: Opening) -> list[Neighbor]:
    """Windows that open, doors and intakes around a radon vent."""
    return neighbors(case, vent, WAYS_IN, lambda other: stated(case, other, "operable") is not False)


@quantity()
def windows_not_shown(case: Case, vent: Opening) -> list[str]:
    """The path that would say how far windows are, where none is shown."""
    return unseen_windows(case, vent)


def radon_vents(case: Case) -> list[Opening]:
    """Radon vents."""
    return of_kind(case, frozenset({"radon vent"}))


def check(
    _vent: Opening, around: list[Neighbor], unseen: list[str], least: float, above: float
) -> Meets | Finding:
    """Hold every way in against the distance, or against the height that frees the vent."""
    verdict = settled(around, least, drop=above, unplaced=unseen)
    numbers = numbers_of(verdict, least)
    if not verdict.offends:
        return Meets(numbers)
    return Finding(
        f"{{near}} is {{apart}} from this radon vent, nearer than {{radon_vent_to_opening}}, and {verdict.is_not} "
        f"{{radon_vent_above_opening}} below it{verdict.also}",
        help="end the radon pipe above the roof, {short} farther from the opening",
        numbers=numbers,
    )


RULE = Rule(
    code="OPEN-19", name="radon-vent-near-opening", severity="caution", since="0.1",
    over=radon_vents, needs=(ways_in, windows_not_shown),
    limits=("radon-vent-to-opening", "radon-vent-above-opening"), check=check,
    nothing="the design shows no radon vent", answers=("S16",),
)  # fmt: skip
