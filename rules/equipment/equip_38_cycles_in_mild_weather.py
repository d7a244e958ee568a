"""A heat pump that follows the load can do so only in the coldest weather.

Most hours of a heating season are far milder than the design day. A unit whose least capacity is more than half the
load of that day starts and stops through nearly all of them: it wears, hums, and misses the efficiency of its rating.

Look for the least capacity at 47 degF in the maker's table, and choose the unit that turns down further; the load
falls in a straight line to nothing at 65 degF here.
"""

from checker.case import CannotJudge, Case, NotApplicable, quantity
from checker.quantities.equipment import Group, gives
from checker.quantities.mild_weather import Steady, steady, turning_down
from checker.quantities.unit_loads import (
    group_cooling_sensible,
    group_heating_load,
    loads_spoken_of,
    speaks_of_rooms,
)
from checker.rule import Finding, Meets, Num, Rule


def has_load(case: Case, group: Group) -> bool:
    """The file holds no load at all, or its rooms need more cooling than heating, which decides the size of the unit."""
    if not loads_spoken_of(case, "heating_load"):
        return False
    if not gives(case, group.units[0], "cooling") or not speaks_of_rooms(case, group, "cooling_load"):
        return True
    try:
        return group_heating_load(case, group) >= group_cooling_sensible(case, group)
    except (CannotJudge, NotApplicable):
        return True


@quantity("temperature")
def steady_below(case: Case, group: Group) -> float:
    """Outdoor temperature below which the heat pump runs without a stop."""
    return steady(case, group).temperature


def check(group: Group, found: Steady, _below: float, _load: float, most: float) -> Meets | Finding:
    """Compare the share of the design load with its limit."""
    numbers = {"unit": Num(group.name), "least": Num(found.least, "heat_rate"), "most": Num(most, "share")}
    if found.share <= most * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{unit} runs steadily only below {steady_below}: there its least capacity of {least} is all that the rooms lose, "
        "of {group_heating_load} on the coldest day",
        at="heating.least",
        help="choose a unit whose least capacity is {most} of the load on the coldest day or less",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-38", name="cycles-in-mild-weather", severity="note", since="0.1",
    over=turning_down, when=has_load, needs=(steady, steady_below, group_heating_load), limits=("steady-share",),
    check=check, nothing="no single heat pump states its least heating capacity", answers=("H20",),
)  # fmt: skip
