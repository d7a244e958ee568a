"""An outdoor air opening has no hood or louver against rain and snow.

Rain that enters wets the filter and the duct, and in winter the ice blocks the screen.

The usual cause is a bare pipe end on a sketch. Show a hood, a downward elbow or a weather louver, with enough
free area that the air stays slow enough to leave the drops behind.
"""

from checker.case import Case, given
from checker.design.openings import Opening
from checker.quantities.opening_kinds import EXHAUSTS, OUTDOOR_INTAKES, is_permit_intake, of_kind
from checker.rule import Finding, Meets, Rule


def exposed(case: Case) -> list[Opening]:
    """Intakes and exhausts."""
    return of_kind(case, OUTDOOR_INTAKES | EXHAUSTS)


def asked(case: Case, opening: Opening) -> bool:
    """Nothing is said of a hood or louver."""
    return case.speaks_of(opening, "hooded") or is_permit_intake(case, opening)


def check(_opening: Opening, hooded: bool) -> Meets | Finding:
    """A hood or louver is there or is not."""
    if hooded:
        return Meets()
    return Finding(
        "this opening has no hood or louver against the weather", at="hooded",
        help="provide a hood, a weather louver or a downward elbow",
    )  # fmt: skip


RULE = Rule(
    code="OPEN-09", name="opening-not-weatherproof", severity="correction", since="0.1",
    over=exposed, when=asked, needs=(given("hooded"),), cites=("opening-weather-protection",), check=check,
    nothing="the design shows no outdoor air intake or exhaust", answers=("D07",),
)  # fmt: skip
