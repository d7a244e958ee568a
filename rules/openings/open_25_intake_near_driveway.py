"""An outdoor air intake is near a driveway or carport.

A car that starts or idles beside the intake sends its exhaust, carbon monoxide with it, into every room. The code
keeps intakes from streets, alleys, parking lots and loading docks; a private driveway it does not name, and an official
may read it either way.

The usual cause is a low intake on the wall beside the garage. Move it to another wall, or up on the gable.
"""

from checker.case import Case, quantity
from checker.design.openings import Opening
from checker.quantities.clearances import Neighbor, neighbors, numbers_of, settled, spoken_of
from checker.quantities.opening_kinds import known_intakes
from checker.rule import Finding, Meets, Rule

DRIVEWAYS = frozenset({"driveway"})


@quantity()
def driveways(case: Case, intake: Opening) -> list[Neighbor]:
    """The driveways around an intake."""
    return neighbors(case, intake, DRIVEWAYS)


def is_spoken_of(case: Case, intake: Opening) -> bool:
    """The design shows no driveway."""
    return spoken_of(case, intake, DRIVEWAYS)


def check(_intake: Opening, around: list[Neighbor], least: float) -> Meets | Finding:
    """Hold every driveway against the distance."""
    verdict = settled(around, least)
    numbers = numbers_of(verdict, least)
    if not verdict.offends:
        return Meets(numbers)
    return Finding(
        f"{{near}} is {{apart}} from this intake, nearer than {{limit}}{verdict.also}",
        help="move the intake {short} farther from where cars run, to another wall or higher up",
        numbers=numbers,
    )


RULE = Rule(
    code="OPEN-25", name="intake-near-driveway", severity="caution", since="0.1",
    over=known_intakes, when=is_spoken_of, needs=(driveways,), limits=("intake-to-driveway",), check=check,
    nothing="the design has no outdoor air intake", answers=("D01",),
)  # fmt: skip
