"""The cooling coil stands upstream of the furnace.

Air that left the coil cold and wet then passes the heat exchanger and the burner box. Water condenses in and on
them in summer; they rust through, and flue gas can get into the house.

Put the coil downstream of the heat exchanger, on the supply side. Only a furnace that is listed for a coil upstream
may have it there.
"""

from checker.case import Case, given, quantity
from checker.design.equipment import Equipment
from checker.rule import Finding, Meets, Num, Rule


def with_coils(case: Case) -> list[Equipment]:
    """Furnaces with a cooling coil."""
    return [unit for unit in case.design.equipment.values() if unit.kind == "furnace" and unit.coil is not None]


@quantity()
def is_listed_upstream(case: Case, unit: Equipment) -> bool:
    """Whether the furnace is listed for a coil upstream; asked only where the coil stands there."""
    if case.get(unit.coil, "position") == "downstream":
        return False
    return bool(case.get(unit.coil, "listed_upstream"))


def check(unit: Equipment, position: str, listed: bool) -> Meets | Finding:
    """A coil upstream without that listing is the finding."""
    if position == "downstream" or listed:
        return Meets()
    return Finding(
        "the cooling coil stands upstream of {unit}, which is not listed for it",
        at="coil.position",
        help="put the coil on the supply side, downstream of the heat exchanger",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="EQUIP-22", name="cooling-coil-upstream", severity="correction", since="0.1",
    over=with_coils, needs=(given("coil.position"), is_listed_upstream), cites=("coil-downstream",), check=check,
    nothing="no furnace has a cooling coil", answers=("H24",),
)  # fmt: skip
