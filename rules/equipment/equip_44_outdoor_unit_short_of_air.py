"""An outdoor unit stands so close to something that it draws its own air in again.

Where the maker's distances are not stated, the usual ones serve: an arm's length where it blows, a hand's breadth at
the other sides, and open sky above. Below a deck or stairs the cold or hot air stays and comes round again.

State the distances of its instructions, which decide, or move the unit.
"""


from checker.case import Case, Missing, quantity
from checker.design.equipment import Equipment
from checker.design.fields import Length
from checker.quantities.equipment import outdoor_units
from checker.quantities.outdoor_unit import SIDES, least_clearances, siting_of
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule
from checker.units import parse

ROOFED = ("deck", "stairs", "another unit")


class Near(Record):
    """The side that lacks most: distance drawn and usual, m."""

    side: str
    drawn: Length
    usual: Length


def drawn(case: Case) -> list[Equipment]:
    """Outdoor units with distances or a cover drawn, whose maker's distances are not stated."""
    return [
        unit
        for unit in outdoor_units(case)
        if least_clearances(case, unit) is None
        and unit.siting is not None
        and (unit.siting.clearance is not None or unit.siting.below in ROOFED)
    ]


@quantity()
def nearest(case: Case, unit: Equipment) -> Near | None:
    """The side that lacks most of the usual distance, None where none does. Raises Missing below a deck."""
    shown, usual = siting_of(unit).clearance, case.limit("usual-clearances")
    found = []
    for side in SIDES:
        apart = None if shown is None else case.maybe(shown, side)
        least = parse(usual[side], "length")
        if apart is not None and apart < least * (1 - 1e-9):
            found.append(Near(side, float(apart), least))
        if side == "above" and apart is None and siting_of(unit).below in ROOFED and not found:
            raise Missing(f"{siting_of(unit).path}.clearance.above")
    return min(found, key=lambda each: each.drawn - each.usual) if found else None


def check(unit: Equipment, near: Near | None) -> Meets | Finding:
    """A side nearer than usual is the finding."""
    numbers = {"unit": Num(unit.name)}
    if near is None:
        return Meets(numbers)
    words = {"front": "in front of", "back": "behind", "above": "above"}.get(near.side, f"at the {near.side} of")
    return Finding(
        "{drawn} are clear {side} {unit}, less than the usual {usual}: it draws its own air in again",
        at=f"siting.clearance.{near.side}",
        help="move {unit} or what stands near it, or state the distances of its maker",
        numbers={
            **numbers,
            "drawn": Num(near.drawn, "diameter"),
            "usual": Num(near.usual, "diameter"),
            "side": Num(words),
        },
    )


RULE = Rule(
    code="EQUIP-44", name="outdoor-unit-short-of-air", severity="note", since="0.1",
    over=drawn, needs=(nearest,), cites=("usual-clearances",), check=check,
    nothing="no outdoor unit has distances drawn, or its maker's are stated", answers=("I18",),
)  # fmt: skip
