"""An intake or exhaust would be under the snow that is to be reckoned with.

A buried intake starves the fan and draws in melt water; a buried exhaust stops, or melts a hole whose moisture
goes back into the wall.

The usual cause is a terminal at the rim joist in snow country. Raise it above the snow, with room for drifts, or
move it to a wall that the roof does not shed onto.
"""

from checker.case import Case
from checker.design.openings import Opening
from checker.physics.distances import ROUNDING
from checker.quantities.opening_kinds import OUTDOOR_INTAKES, ROOM_EXHAUSTS, kind, of_kind
from checker.quantities.surroundings import clear_height, snow_depth, speaks_of_height
from checker.rule import Finding, Meets, Num, Rule


def above_ground(case: Case) -> list[Opening]:
    """Intakes and exhausts, without those of dryers."""
    return of_kind(case, OUTDOOR_INTAKES | ROOM_EXHAUSTS)


def height_counts(case: Case, opening: Opening) -> bool:
    """Nothing is said of the height of this exhaust."""
    return kind(case, opening) in OUTDOOR_INTAKES or speaks_of_height(case, opening)


def check(_opening: Opening, snow: float, height: float) -> Meets | Finding:
    """The lower edge must clear the snow."""
    if height >= snow - ROUNDING:
        return Meets()
    return Finding(
        "this opening is {clear_height} above the ground or roof, under {snow_depth} of snow",
        help="raise the opening by {short} or more, with room for drifts",
        numbers={"short": Num(snow - height, "length")},
    )


RULE = Rule(
    code="OPEN-12", name="opening-under-snow", severity="caution", since="0.1",
    over=above_ground, when=height_counts, needs=(snow_depth, clear_height), cites=("opening-above-snow",), check=check,
    nothing="the design shows no outdoor air intake or exhaust", answers=("D10",),
)  # fmt: skip
