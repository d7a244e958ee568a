"""An outdoor air opening has no screen, or one with a mesh that is too fine or too coarse.

Without a screen, or with a coarse one, birds and mice nest in the duct. A finer one than a quarter inch fills
with fluff and pollen, and the fan starves.

The usual cause is insect mesh left in the wall cap. Use a screen, louver or grille with openings between a
quarter and half an inch, where it can be reached for cleaning. Dryer terminals are the exception: they may have
no screen at all.
"""

from checker.case import Case, given
from checker.design.openings import Opening
from checker.quantities.opening_kinds import OUTDOOR_INTAKES, ROOM_EXHAUSTS, is_permit_intake, of_kind
from checker.rule import Finding, Meets, Rule


def screened(case: Case) -> list[Opening]:
    """Intakes and exhausts, without those of dryers."""
    return of_kind(case, OUTDOOR_INTAKES | ROOM_EXHAUSTS)


def asked(case: Case, opening: Opening) -> bool:
    """Nothing is said of its screen."""
    return case.speaks_of(opening, "screen") or is_permit_intake(case, opening)


def check(_opening: Opening, mesh: float, least: float, most: float) -> Meets | Finding:
    """Compare the mesh opening with its range."""
    if least <= mesh <= most:
        return Meets()
    helpful = "fit a corrosion-resistant screen, louver or grille with openings of {screen_least} to {screen_most}"
    if mesh <= 0.0:
        message = "this opening has no screen; openings of {screen_least} to {screen_most} are asked for"
        return Finding(message, at="screen", help=helpful)
    if mesh < least:
        return Finding("the screen's openings are {screen}, finer than {screen_least}", at="screen", help=helpful)
    return Finding("the screen's openings are {screen}, coarser than {screen_most}", at="screen", help=helpful)


RULE = Rule(
    code="OPEN-08", name="screen-mesh-unfit", severity="correction", since="0.1",
    over=screened, when=asked, needs=(given("screen"),), limits=("screen-least", "screen-most"), check=check,
    nothing="the design shows no outdoor air intake or exhaust", answers=("D07",),
)  # fmt: skip
