"""An outdoor unit has less clear space around it than its maker asks for.

Air that cannot get away is drawn in again: the unit works against its own exhaust, loses capacity on the hottest
and the coldest days, and its compressor ages. Decks, fences and shrubs close in after the drawing is made.

Move the unit, or open what stands too near. The distances are those of its instructions.
"""

from checker.case import Case
from checker.design.equipment import Equipment
from checker.quantities.equipment import outdoor_units
from checker.quantities.outdoor_unit import clearance_gaps, least_clearances
from checker.rule import Finding, Meets, Num, Rule


def with_clearances(case: Case) -> list[Equipment]:
    """Outdoor units whose maker's clearances are stated."""
    return [unit for unit in outdoor_units(case) if least_clearances(case, unit) is not None]


def check(unit: Equipment, gaps: list[tuple[float, float, str]]) -> Meets | Finding:
    """The side that lacks most is the finding."""
    if not gaps:
        return Meets()
    drawn, least, side = gaps[0]
    words = {"front": "in front of", "back": "behind", "above": "above"}.get(side, f"at the {side} of")
    numbers = {
        "unit": Num(unit.name),
        "drawn": Num(drawn, "diameter"),
        "asked": Num(least, "diameter"),
        "short": Num(least - drawn, "diameter"),
        "side": Num(words),
    }
    return Finding(
        "{drawn} are clear {side} {unit}; its instructions ask for {asked}",
        at=f"siting.clearance.{side}",
        help="move {unit} or what stands near it by {short}",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-29", name="outdoor-unit-shut-in", severity="caution", since="0.1",
    over=with_clearances, needs=(clearance_gaps,), cites=("outdoor-unit-clearance",), check=check,
    nothing="no outdoor unit states the clearances of its maker", answers=("I18",),
)  # fmt: skip
