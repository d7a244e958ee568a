"""The screen or grille of an outdoor air opening does not resist corrosion.

A plain steel screen rusts through in a few wet winters; moist exhaust and sea air are faster. Then the screen is
gone, or its rust clogs it.

The usual cause is hardware cloth from the shelf. Choose stainless steel, aluminum, bronze or well galvanized
mesh, and show it on the drawing.
"""

from checker.case import Case, given
from checker.design.openings import Opening
from checker.quantities.opening_kinds import OUTDOOR_INTAKES, ROOM_EXHAUSTS, of_kind
from checker.rule import Finding, Meets, Rule


def screened(case: Case) -> list[Opening]:
    """Intakes and exhausts, without those of dryers."""
    return of_kind(case, OUTDOOR_INTAKES | ROOM_EXHAUSTS)


def material_is_told(case: Case, opening: Opening) -> bool:
    """Nothing is said of what its screen is made of."""
    return case.speaks_of(opening, "corrosion_resistant")


def check(_opening: Opening, resists: bool) -> Meets | Finding:
    """It resists corrosion or does not."""
    if resists:
        return Meets()
    return Finding(
        "the screen of this opening does not resist corrosion", at="corrosion_resistant",
        help="use stainless steel, aluminum, bronze or well galvanized mesh",
    )  # fmt: skip


RULE = Rule(
    code="OPEN-10", name="screen-can-rust", severity="correction", since="0.1",
    over=screened, when=material_is_told, needs=(given("corrosion_resistant"),), cites=("screen-resists-corrosion",),
    check=check, nothing="the design shows no outdoor air intake or exhaust", answers=("D07",),
)  # fmt: skip
