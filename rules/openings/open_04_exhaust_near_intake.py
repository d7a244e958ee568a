"""An exhaust opening is too close to a fan-driven outdoor air intake.

The intake draws what the exhaust throws out: the fresh-air system then spreads the smells of bath and kitchen
through the bedrooms. On one wall, wind drives the plume along it.

The usual cause is that intake, bath exhaust and hood exhaust all go to the same gable because the attic leads
there. Put the intake on another wall, move it along, or raise the exhaust well above it. Where both hoods of a
recovery unit are close together by design, a combined terminal that is listed for it may be allowed. Where only the
distance is told, the height counts for nothing: show it with `at`, `height_over_grade` or `above`.
"""

from checker.case import Case, quantity
from checker.design.fans import Fan
from checker.design.hoods import Hood
from checker.design.openings import Opening
from checker.quantities.clearances import Neighbor, asked_for, neighbors, numbers_of, settled
from checker.quantities.opening_kinds import ROOM_EXHAUSTS, is_mechanical, known_intakes, unplaced_exhausts
from checker.rule import Finding, Meets, Rule


@quantity()
def exhausts_nearby(case: Case, intake: Opening) -> list[Neighbor]:
    """The bath, kitchen and other exhausts around an intake."""
    return neighbors(case, intake, ROOM_EXHAUSTS)


@quantity()
def unseen_exhausts(case: Case, intake: Opening) -> list[str]:
    """Paths that would place exhausts that no opening shows, unless the nearest of all is stated."""
    if "exhaust" in intake.clear_of:
        return []
    devices: list[Fan | Hood] = [*case.design.fans.values(), *case.design.hoods.values()]
    led_out = {f"{device.path}.to" for device in devices if device.to}
    nearest = asked_for(case, intake, "exhaust")
    return list(dict.fromkeys(nearest if path in led_out else path for path in unplaced_exhausts(case)))


def is_driven(case: Case, intake: Opening) -> bool:
    """No fan draws air in here; the distance from passive openings counts."""
    return is_mechanical(case, intake)


def check(
    _intake: Opening, around: list[Neighbor], unseen: list[str], least: float, above: float
) -> Meets | Finding:
    """Hold every exhaust against the distance, or against the height that frees it."""
    verdict = settled(around, least, rise=above, unplaced=unseen)
    numbers = numbers_of(verdict, least)
    if not verdict.offends:
        return Meets(numbers)
    return Finding(
        f"{{near}} is {{apart}} from this intake, nearer than {{exhaust_to_intake}}, and {verdict.is_not} "
        f"{{exhaust_above_intake}} or more above it{verdict.also}",
        help="move one of them {short} farther away, or raise the exhaust to {exhaust_above_intake} above the intake",
        numbers=numbers,
    )


RULE = Rule(
    code="OPEN-04", name="exhaust-near-intake", severity="correction", since="0.1",
    over=known_intakes, when=is_driven, needs=(exhausts_nearby, unseen_exhausts),
    limits=("exhaust-to-intake", "exhaust-above-intake"), check=check,
    nothing="the design has no outdoor air intake", answers=("D04",),
)  # fmt: skip
