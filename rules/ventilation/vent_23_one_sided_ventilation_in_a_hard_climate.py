"""One-sided ventilation moves moist air through the walls in a climate where that does harm.

An exhaust fan alone draws outdoor air in through every crack; where summers are warm and humid, its moisture
condenses behind cooled wallboard. A supply fan alone presses room air out; where winters are very cold, its
moisture freezes in the roof and walls.

Balance the two sides, or turn the direction round. With a tight air barrier and a low flow it may still go
well: this is a note, not a verdict.
"""

from checker import each
from checker.case import Case, NotApplicable, quantity
from checker.design import Design
from checker.quantities.climate import zone
from checker.quantities.whole_house import running
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def one_side(case: Case, design: Design) -> str:
    """The side that runs alone. NotApplicable where both run or none."""
    parts = running(case, design)
    supplies, exhausts = any(part.supplies for part in parts), any(part.exhausts for part in parts)
    if supplies == exhausts:
        raise NotApplicable("supply and exhaust both run" if supplies else "no fan runs all day or by a timer")
    return "supply" if supplies else "exhaust"


@quantity()
def is_hard(case: Case, design: Design) -> bool:
    """Whether the climate zone is one where this side alone does harm."""
    here = zone(case, design)
    if one_side(case, design) == "exhaust":
        return here in case.limit("exhaust-only-zones")
    return here[0] in case.limit("supply-only-zones")


def check(design: Design, side: str, where: str, hard: bool) -> Meets | Finding:
    """The side and the zone."""
    if not hard:
        return Meets()
    harm = "draws moist air into cooled walls" if side == "exhaust" else "presses room moisture into cold walls"
    return Finding(
        f"only {side} runs all day in climate zone {{zone}}, which {harm}",
        at="house.strategy" if design.house is not None and design.house.strategy else "site.climate_zone",
        help="balance supply and exhaust, or run the other side alone",
        numbers={"zone": Num(where)},
    )


RULE = Rule(
    code="VENT-23", name="one-sided-ventilation-in-a-hard-climate", severity="note", since="0.1",
    over=each.design, needs=(one_side, zone, is_hard), cites=("exhaust-only-zones", "supply-only-zones"),
    check=check, answers=("A34",),
)  # fmt: skip
