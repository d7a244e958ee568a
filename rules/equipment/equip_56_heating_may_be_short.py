"""The heat seems short of the load on the winter design day, by figures that are recalled or interpolated.

The load counts parts whose coefficients stand in no published table at hand: usual boards of a wall whose layers are not
stated, or ground beside a basement. Or the capacity lies between two points of the maker's table, and the better of
the two would do. So this is a question rather than a fault.

State the layers or the U-value of the walls, the load of your own calculation, or the capacity at the winter design
temperature; or choose more heat.
"""

from checker.case import Case
from checker.quantities.equipment import Group, outdoor_of
from checker.quantities.heat_pump import group_heat
from checker.quantities.sure_heat import (
    SLACK,
    greatest_heat,
    heats_habitable,
    least_heat,
    surely_asked,
    with_loads,
)
from checker.quantities.unit_loads import group_heating_load
from checker.rule import Finding, Meets, Num, Rule


def rests_on_memory(case: Case, group: Group) -> bool:
    """It heats no habitable room, or published figures alone tell whether its heat is enough."""
    units = [each for unit in group.units for each in (unit, outdoor_of(case, unit)) if each is not None]
    tabled = any(unit.heating is not None and unit.heating.points for unit in units)
    if (case.design.envelope is None and not tabled) or not heats_habitable(case, group):
        return False
    least, sure = least_heat(case, group), surely_asked(case, group)
    heat, most = group_heat(case, group), greatest_heat(case, group)
    return most >= sure * (1 - SLACK) and (sure < least * (1 - SLACK) or heat < most * (1 - SLACK))


def check(
    group: Group, heat: float, load: float, least: float, most: float, sure: float, _held: float
) -> Meets | Finding:
    """Compare the heat with the whole load."""
    numbers = {"unit": Num(group.name), "short": Num(max(0.0, load - heat), "heat_rate")}
    if heat >= least * (1 - SLACK):
        return Meets(numbers)
    why = []
    if sure < least * (1 - SLACK):
        why.append("only {surely_asked} of that rests on published figures")
    if heat < most * (1 - SLACK):
        why.append("the better of two points in the maker's table gives {greatest_heat}")
    return Finding(
        "{unit} delivers {group_heat} on the winter design day; its rooms lose {group_heating_load}, and {least_heat} even at "
        f"{{limit}}; {', and '.join(why)}",
        at="heating",
        help="state what is recalled (layers of the walls, the load, the capacity at design), or show {short} more",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-56", name="heating-may-be-short", severity="caution", since="0.1",
    over=with_loads, when=rests_on_memory,
    needs=(group_heat, group_heating_load, least_heat, greatest_heat, surely_asked), limits=("required-heating",),
    cites=("heat-by-recalled-figures",), check=check, nothing="no equipment is said to heat rooms", answers=("H05", "H28"),
)  # fmt: skip
