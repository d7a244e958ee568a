"""A heat pump stops at an outdoor temperature above that of the winter design day, and nothing takes its place.

Below its lowest operating temperature, or a lock-out set by hand, the compressor is off. On the nights for which
the heating is designed there is then no heat at all, unless backup carries the whole load. Parts of the load that rest on
recalled coefficients are left out here.

Choose a unit that runs down to the design temperature, or show backup for the whole load at that temperature.
"""

from checker.case import Case, Missing, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import Group, all_heating, burns, indoor_units, is_heat_pump
from checker.quantities.heat_pump import backup_capacity, lowest_operating
from checker.quantities.sure_heat import greatest_of_unit, sure_load
from checker.quantities.ventilating_handlers import winter_outdoor
from checker.rule import Finding, Meets, Num, Rule


def with_limit(case: Case) -> list[Equipment]:
    """Heat pumps, or the outdoor units of several, that speak of the lowest temperature at which they heat."""
    return [unit for unit in case.design.equipment.values() if groups_of(case, unit) and says_lowest(case, unit)]


def groups_of(case: Case, unit: Equipment) -> list[Group]:
    """The heating groups that a unit, or its indoor units, belong to."""
    members = {unit.name, *(each.name for each in indoor_units(case, unit))}
    return [
        group
        for group in all_heating(case)
        if any(each.name in members and is_heat_pump(case, each) for each in group.units)
    ]


def says_lowest(case: Case, unit: Equipment) -> bool:
    """Whether a unit itself speaks of a limit or a lock-out of its compressor."""
    limit = unit.by_maker is not None and case.speaks_of(unit.by_maker, "least_outdoor")
    return limit or (unit.backup is not None and case.speaks_of(unit.backup, "compressor_lock_out"))


@quantity("temperature")
def lowest_of_unit(case: Case, unit: Equipment) -> float:
    """Outdoor temperature below which the compressor of a unit is off."""
    lowest = lowest_operating(case, unit)
    if lowest is None:
        raise Missing(f"{unit.path}.by_maker.least_outdoor")
    return lowest


@quantity()
def others_carry(case: Case, unit: Equipment) -> bool:
    """Whether what still runs at the design temperature may carry the load; not asked where all keeps running."""
    outdoor = winter_outdoor(case, unit)
    if lowest_of_unit(case, unit) <= outdoor:
        return True
    for group in groups_of(case, unit):
        heat = sum(still_given(case, each, outdoor) for each in group.units)
        if heat <= 0.0 or heat < sure_load(case, group):
            return False
    return True


def still_given(case: Case, unit: Equipment, outdoor: float) -> float:
    """The most heat of a unit at an outdoor temperature: its backup alone where its compressor is off."""
    by_compressor = is_heat_pump(case, unit) and not burns(unit)
    lowest = lowest_operating(case, unit) if by_compressor else None
    return backup_capacity(case, unit) if lowest is not None and lowest > outdoor else greatest_of_unit(case, unit)


def check(unit: Equipment, lowest: float, outdoor: float, carried: bool) -> Meets | Finding:
    """Compare the temperatures."""
    if lowest <= outdoor + 1e-9 or carried:
        return Meets()
    by_lock = unit.backup is not None and unit.backup.compressor_lock_out == lowest
    return Finding(
        "{unit} stops below {lowest_of_unit}; the winter design temperature is {winter_outdoor}, and nothing else "
        "carries the load there",
        at="backup.compressor_lock_out" if by_lock else "by_maker.least_outdoor",
        help="choose a unit that heats at {winter_outdoor}, or show backup for the whole load",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="EQUIP-12", name="heat-pump-stops-above-design", severity="correction", since="0.1",
    over=with_limit, needs=(lowest_of_unit, winter_outdoor, others_carry), cites=("low-ambient-limit",),
    check=check, nothing="no heat pump states the lowest temperature at which it heats", answers=("H28",),
)  # fmt: skip
