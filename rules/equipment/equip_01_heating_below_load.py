"""On the winter design day the equipment delivers less heat than its rooms lose.

What counts is the capacity at the outdoor temperature of the design day, not the figure in the model number: a
heat pump that gives 12,000 Btu/h at 47 degF may give 8,000 at -4. The rooms are taken at the 68 degF that the code
asks heating to hold; units that share rooms are added up, backup heat included.
The code speaks of habitable rooms: a heater of baths and halls alone is not judged here.

Usual causes are a rated capacity taken for the one at design, rooms added to a unit that was chosen for fewer, and
a load that left out ventilation. Choose more capacity at the design temperature, add backup heat, or lower the load.
What is said here is sure: parts of the load that rest on recalled coefficients are left out, and between the points of
a maker's table the greater one counts.
"""

from checker.case import Case
from checker.quantities.equipment import Group
from checker.quantities.heat_pump import group_heat
from checker.quantities.sure_heat import (
    SLACK,
    greatest_heat,
    heats_habitable,
    is_open,
    least_heat,
    stops_somewhere,
    surely_asked,
    with_loads,
)
from checker.quantities.unit_loads import group_heating_load
from checker.rule import Finding, Meets, Num, Rule


def is_judged(case: Case, group: Group) -> bool:
    """It heats no habitable room, its heat pump stops above the winter design temperature, or what is recalled decides."""
    return heats_habitable(case, group) and not stops_somewhere(case, group) and not is_open(case, group)


def check(
    group: Group, heat: float, load: float, least: float, most: float, sure: float, _held: float
) -> Meets | Finding:
    """Compare the most heat with what is surely asked for at the code's temperature."""
    numbers = {"unit": Num(group.name), "short": Num(max(0.0, load - heat), "heat_rate")}
    if most >= sure * (1 - SLACK):
        return Meets(numbers)
    rests = "; {surely_asked} of that rests on published figures" if sure < least * (1 - SLACK) else ""
    return Finding(
        "{unit} delivers {group_heat} on the winter design day; the rooms that it serves lose {group_heating_load}, "
        f"and {{least_heat}} even at {{limit}}{rests}",
        at="heating",
        help="show {short} more at the winter design temperature: a larger unit, backup heat, or less load",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-01", name="heating-below-load", severity="correction", since="0.1",
    over=with_loads, when=is_judged, needs=(group_heat, group_heating_load, least_heat, greatest_heat, surely_asked),
    limits=("required-heating",), check=check, nothing="no equipment is said to heat rooms", answers=("H05", "H28"),
)  # fmt: skip
