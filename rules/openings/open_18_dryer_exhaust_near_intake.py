"""A dryer's exhaust is close to a fan-driven outdoor air intake.

Lint and moist, scented air go straight into the intake; its filter fills within weeks. From a gas dryer the
exhaust also carries what the flame gives off, carbon monoxide among it.

The usual cause is a laundry on the wall that the intake uses. The code sends dryers to their own section, which
asks for 3 ft from openings; many officials hold them to the 10 ft of other exhausts as well. Move one of the two
unless the official agrees.
"""

from checker.case import Case, quantity
from checker.design.openings import Opening
from checker.quantities.clearances import Neighbor, asked_for, neighbors, numbers_of, settled
from checker.quantities.opening_kinds import THROUGH_THE_SHELL, is_mechanical, known_intakes, of_kind, uses
from checker.rule import Finding, Meets, Rule

DRYERS = frozenset({"dryer exhaust"})


@quantity()
def dryer_exhausts(case: Case, intake: Opening) -> list[Neighbor]:
    """The dryer exhausts around an intake."""
    return neighbors(case, intake, DRYERS)


@quantity()
def unseen_dryers(case: Case, intake: Opening) -> list[str]:
    """Paths that would say where dryers end that no opening shows, for those not led elsewhere than outdoors."""
    placed = {id(use.device) for used in uses(case, case.design).values() for use in used}
    if "dryer exhaust" in intake.clear_of or "exhaust" in intake.clear_of:
        return []
    homeless = [dryer for dryer in case.design.dryers.values()
                if id(dryer) not in placed and dryer.kind in (None, "vented")
                and dryer.to in (None, *THROUGH_THE_SHELL)]  # fmt: skip
    free = [each for each in of_kind(case, DRYERS) if not uses(case, case.design)[each.name]]
    if len(homeless) <= len(free):
        return []
    asked = [f"{dryer.path}.to" if dryer.to is None else asked_for(case, intake, "dryer exhaust") for dryer in homeless]
    return list(dict.fromkeys(asked))


def is_driven(case: Case, intake: Opening) -> bool:
    """No fan draws air in here, or the design has no dryer exhaust."""
    dryers = bool(case.design.dryers) or bool(of_kind(case, DRYERS)) or "dryer exhaust" in intake.clear_of
    return dryers and is_mechanical(case, intake)


def check(
    _intake: Opening, around: list[Neighbor], unseen: list[str], least: float, above: float
) -> Meets | Finding:
    """Hold every dryer exhaust against the distance, or against the height that frees it."""
    verdict = settled(around, least, rise=above, unplaced=unseen)
    numbers = numbers_of(verdict, least)
    if not verdict.offends:
        return Meets(numbers)
    return Finding(
        f"{{near}} is {{apart}} from this intake, nearer than {{dryer_exhaust_to_intake}}, and {verdict.is_not} "
        f"{{dryer_exhaust_above_intake}} or more above it{verdict.also}",
        help="move one of them {short} farther away, or have the official agree to less",
        numbers=numbers,
    )


RULE = Rule(
    code="OPEN-18", name="dryer-exhaust-near-intake", severity="caution", since="0.1",
    over=known_intakes, when=is_driven, needs=(dryer_exhausts, unseen_dryers),
    limits=("dryer-exhaust-to-intake", "dryer-exhaust-above-intake"), check=check,
    nothing="the design has no outdoor air intake", answers=("D04",),
)  # fmt: skip
