"""A heat pump stops at an outdoor temperature above that of the winter design day, and nothing takes its place.

Below its lowest operating temperature, or a lock-out set by hand, the compressor is off. On the nights for which
the heating is designed there is then no heat at all, unless backup carries the whole load.

Choose a unit that runs down to the design temperature, or show backup for the whole load at that temperature.
"""

from checker.case import Case, Missing, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import Group, all_heating, is_heat_pump
from checker.quantities.heat_pump import backup_capacity, heat_at_design, lowest_operating
from checker.quantities.unit_loads import group_heating_load
from checker.quantities.ventilating_handlers import winter_outdoor
from checker.rule import Finding, Meets, Num, Rule


def by_compressor(case: Case) -> list[Group]:
    """Heating groups with a heat pump whose lowest operating temperature is spoken of."""
    return [
        group
        for group in all_heating(case)
        if any(is_heat_pump(case, unit) and lowest_known(case, unit) for unit in group.units)
    ]


def lowest_known(case: Case, unit: Equipment) -> bool:
    """Whether the file speaks of the lowest temperature at which a unit runs."""
    try:
        return lowest_operating(case, unit) is not None
    except Missing:
        return True


@quantity("temperature")
def lowest_of_group(case: Case, group: Group) -> float:
    """The highest of the lowest operating temperatures of a group's heat pumps."""
    found = [lowest_operating(case, unit) for unit in group.units if is_heat_pump(case, unit)]
    return max(each for each in found if each is not None)


@quantity()
def others_carry(case: Case, group: Group) -> bool:
    """Whether what still runs at the design temperature carries the load; not asked where all keeps running."""
    outdoor = winter_outdoor(case, group)
    if lowest_of_group(case, group) <= outdoor:
        return True
    heat = sum(still_given(case, unit, outdoor) for unit in group.units)
    return heat > 0.0 and heat >= group_heating_load(case, group)


def still_given(case: Case, unit: Equipment, outdoor: float) -> float:
    """Heat of a unit at an outdoor temperature: its backup alone where its compressor is off."""
    lowest = lowest_operating(case, unit) if is_heat_pump(case, unit) else None
    return backup_capacity(case, unit) if lowest is not None and lowest > outdoor else heat_at_design(case, unit)


def check(group: Group, lowest: float, outdoor: float, carried: bool) -> Meets | Finding:
    """Compare the temperatures."""
    if lowest <= outdoor + 1e-9 or carried:
        return Meets()
    return Finding(
        "{unit} stops below {lowest_of_group}; the winter design temperature is {winter_outdoor}, and nothing else "
        "carries the load there",
        at="by_maker.least_outdoor",
        help="choose a unit that heats at {winter_outdoor}, or show backup for the whole load",
        numbers={"unit": Num(group.name)},
    )


RULE = Rule(
    code="EQUIP-12", name="heat-pump-stops-above-design", severity="correction", since="0.1",
    over=by_compressor, needs=(lowest_of_group, winter_outdoor, others_carry), cites=("low-ambient-limit",),
    check=check, nothing="no heat pump states the lowest temperature at which it heats", answers=("H28",),
)  # fmt: skip
