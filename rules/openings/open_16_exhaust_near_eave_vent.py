"""An exhaust terminal is under the eave, close to soffit vents.

Soffit vents draw air into the attic. Moist exhaust that leaves just below them is drawn in with it, and in winter
it condenses on the roof sheathing.

The usual cause is a short duct to a cap in the soffit. Lead the duct to the wall below or through the roof, or
close the soffit vents beside the terminal.
"""

from checker.case import Case, quantity
from checker.design.openings import Opening
from checker.quantities.clearances import Neighbor, asked_for, neighbors, numbers_of, settled, spoken_of
from checker.quantities.opening_kinds import ROOM_EXHAUSTS, of_kind, stated
from checker.quantities.places import undecided
from checker.rule import Finding, Meets, Rule

EAVE_VENTS = frozenset({"soffit vent"})


@quantity()
def eave_vents(case: Case, exhaust: Opening) -> list[Neighbor]:
    """The soffit vents around an exhaust."""
    return neighbors(case, exhaust, EAVE_VENTS)


@quantity()
def unseen_vents(case: Case, exhaust: Opening) -> list[str]:
    """The path that would say how far soffit vents are, where none is shown and the attic is vented."""
    return [] if spoken_of(case, exhaust, EAVE_VENTS) else [asked_for(case, exhaust, "soffit vent")]


def under_a_vented_eave(case: Case, exhaust: Opening) -> bool:
    """The terminal is on the roof, or no soffit vent is spoken of and it is not in a soffit under a vented attic."""
    face = stated(case, exhaust, "on")
    if face == "roof":
        return False
    house = case.design.house
    vented = house is not None and house.attic == "vented"
    told = bool(undecided(case, exhaust, "clear_of", ["soffit vent"]))
    return (vented and face == "soffit") or told or spoken_of(case, exhaust, EAVE_VENTS)


def exhausts(case: Case) -> list[Opening]:
    """The exhaust terminals of rooms that are shown."""
    return of_kind(case, ROOM_EXHAUSTS)


def check(_exhaust: Opening, around: list[Neighbor], unseen: list[str], least: float) -> Meets | Finding:
    """Hold the soffit vents against the usual distance."""
    verdict = settled(around, least, unplaced=unseen)
    numbers = numbers_of(verdict, least)
    if not verdict.offends:
        return Meets(numbers)
    return Finding(
        f"{{near}} is {{apart}} from this exhaust, nearer than the usual {{limit}}{verdict.also}",
        help="move the terminal {short} farther away, or close the soffit vents beside it",
        numbers=numbers,
    )


RULE = Rule(
    code="OPEN-16", name="exhaust-near-eave-vent", severity="caution", since="0.1",
    over=exhausts, when=under_a_vented_eave, needs=(eave_vents, unseen_vents),
    limits=("exhaust-to-eave-vent",), check=check, nothing="the design shows no exhaust opening", answers=("D14",),
)  # fmt: skip
