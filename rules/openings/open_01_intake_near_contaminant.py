"""An outdoor air intake is near a plumbing vent, chimney, fuel vent, street or parking.

Whatever leaves those openings can be drawn in and spread through every room: sewer gas, flue gas with carbon
monoxide, exhaust of cars. The intake keeps its distance, or lies well below the source.

The usual cause is a plumbing vent or flue that the mechanical sketch does not show because another trade draws
it. Move the intake, or have the plumber or the gas fitter move the vent. A fuel vent must also keep to its own
rules and to its maker's instructions: only a qualified person may change it. Bath and kitchen exhausts of the
same dwelling and driveways are judged elsewhere. Where only the distance is told, the height counts for nothing: show it with `at`,
`height_over_grade` or `above`.
"""

from checker.case import Case, quantity
from checker.design.openings import Opening
from checker.quantities.clearances import Neighbor, asked_for, neighbors, numbers_of, settled, spoken_of
from checker.quantities.opening_kinds import SEALED_DRAFTS, known_intakes, uses
from checker.rule import Finding, Meets, Rule

FUEL_VENTS = frozenset({"combustion vent", "chimney"})
SOURCES = FUEL_VENTS | {"plumbing vent", "street", "parking", "radon vent"}


@quantity()
def sources(case: Case, intake: Opening) -> list[Neighbor]:
    """The contaminant sources around an intake."""
    return neighbors(case, intake, SOURCES)


@quantity()
def unseen_sources(case: Case, intake: Opening) -> list[str]:
    """Paths of sources that the house must have but the file does not show: plumbing vents, terminals of flues."""
    absent = []
    if not spoken_of(case, intake, frozenset({"plumbing vent"})):
        absent.append(asked_for(case, intake, "plumbing vent"))
    placed = {id(use.device) for used in uses(case, case.design).values() for use in used}
    if not spoken_of(case, intake, FUEL_VENTS):
        absent += [
            f"{burner.path}.terminal"
            for burner in case.design.combustion.values()
            if burner.draft not in SEALED_DRAFTS | {"unvented"} and id(burner) not in placed
            and burner.kind not in ("range", "dryer")
        ]  # fmt: skip
    return absent


def check(
    _intake: Opening, around: list[Neighbor], unseen: list[str], least: float, below: float
) -> Meets | Finding:
    """Hold every source against the distance, or against the height that frees it."""
    verdict = settled(around, least, rise=below, unplaced=unseen)
    numbers = numbers_of(verdict, least)
    if not verdict.offends:
        return Meets(numbers)
    return Finding(
        f"{{near}} is {{apart}} from this intake, nearer than {{intake_to_contaminant}}, and {verdict.is_not} "
        f"{{intake_below_contaminant}} or more above it{verdict.also}",
        help="move the intake {short} farther away, or to at least {intake_below_contaminant} below the source",
        numbers=numbers,
    )


RULE = Rule(
    code="OPEN-01", name="intake-near-contaminant", severity="correction", since="0.1",
    over=known_intakes, needs=(sources, unseen_sources),
    limits=("intake-to-contaminant", "intake-below-contaminant"), cites=("fuel-vent-above-intake",),
    check=check, nothing="the design has no outdoor air intake", answers=("D01", "D08"),
)  # fmt: skip
