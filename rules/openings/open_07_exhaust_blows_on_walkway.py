"""An exhaust opening blows onto a walkway.

People who pass get the steam, grease or smell in the face, and in winter the moisture freezes on the path.

The usual cause is a low wall cap beside the entry or the garden path. Turn the terminal to another side, raise
it above head height with its outlet to the side, or lead it through the roof.
"""

from checker.case import Case, given
from checker.design.openings import Opening
from checker.quantities.clearances import spoken_of
from checker.quantities.opening_kinds import EXHAUSTS, of_kind, stated
from checker.rule import Finding, Meets, Rule


def exhausts(case: Case) -> list[Opening]:
    """Every exhaust terminal that is shown, those of dryers included."""
    return of_kind(case, EXHAUSTS)


def near_a_walkway(case: Case, opening: Opening) -> bool:
    """The terminal is on the roof, or no walkway is spoken of."""
    if stated(case, opening, "on") == "roof":
        return False
    return case.speaks_of(opening, "faces_walkway") or spoken_of(case, opening, frozenset({"walkway"}))


def check(_opening: Opening, faces: bool) -> Meets | Finding:
    """A terminal that does not face a walkway is fine."""
    if not faces:
        return Meets()
    return Finding(
        "this exhaust blows onto a walkway", at="faces_walkway",
        help="turn the terminal to another side, or lead the duct through the roof",
    )  # fmt: skip


RULE = Rule(
    code="OPEN-07", name="exhaust-blows-on-walkway", severity="correction", since="0.1",
    over=exhausts, when=near_a_walkway, needs=(given("faces_walkway"),), cites=("exhaust-off-walkway",),
    check=check, nothing="the design shows no exhaust opening", answers=("D06",),
)  # fmt: skip
