"""An intake or exhaust hood looks straight at a wall, fence or unit that stands close in front of it.

Air that is blown at a wall comes back along the siding and into the next intake, and a hood that cannot be reached is
never cleaned of lint, grease and leaves.

The usual cause is a fence, an outdoor unit or a stair that was drawn on another sheet. Keep the space in front clear, or
move the opening along the wall.
"""

from checker.case import Case, given, path_of
from checker.design.openings import Opening
from checker.rule import Finding, Meets, Num, Rule

HOODS = frozenset(
    {"outdoor air intake", "make-up air intake", "combustion air intake", "exhaust", "kitchen exhaust", "dryer exhaust",
     "combined intake and exhaust"}
)  # fmt: skip


def spoken_of(case: Case) -> list[Opening]:
    """Intakes and exhausts of which the drawing tells the space in front, or says that it is open."""
    return [
        opening
        for opening in case.design.openings.values()
        if opening.kind in HOODS
        and (opening.clear_in_front is not None or path_of(opening, "clear_in_front") in case.design.tbd)
    ]


def check(opening: Opening, clear: float, least: float) -> Meets | Finding:
    """Compare the space with the usual least."""
    if clear >= least:
        return Meets()
    return Finding(
        "{opening} has {clear_in_front} clear in front of it, less than {limit}",
        at="clear_in_front",
        help="keep {limit} or more clear in front, or move it along the wall",
        numbers={"opening": Num(opening.name)},
    )


RULE = Rule(
    code="OPEN-23", name="no-clear-space-in-front", severity="caution", since="0.1",
    over=spoken_of, needs=(given("clear_in_front"),), limits=("clear-space-in-front",), check=check,
    nothing="the drawing tells of no space in front of openings",
)  # fmt: skip
