"""An outdoor unit cannot heat all of its zones at once on the winter design day.

Each head may be large enough for its own room, and the outdoor unit still too small for the sum: in the cold every
zone calls at the same time. The heads' labels add up; the compressor's capacity at that temperature is what there is.

Take the outdoor unit's capacity at the winter design temperature from its table, and choose a larger one, add backup
heat, or put some rooms on a unit of their own.
"""

from functools import partial

from checker.case import Case, gather, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import Group, all_heating, indoor_units
from checker.quantities.heat_pump import backup_capacity, compressor_capacity, heat_at_design, stops_at_design
from checker.quantities.unit_loads import group_heating_load, loads_spoken_of
from checker.rule import Finding, Meets, Num, Rule


def of_several_zones(case: Case) -> list[Equipment]:
    """Outdoor units with two or more indoor units that heat."""
    heads = {unit.name for group in all_heating(case) for unit in group.units}
    return [
        unit
        for unit in case.design.equipment.values()
        if len([each for each in indoor_units(case, unit) if each.name in heads]) > 1
    ]


def runs_at_design(case: Case, outdoor: Equipment) -> bool:
    """It stops above the winter design temperature, which is judged by itself, or the file holds no load at all."""
    if not loads_spoken_of(case, "heating_load"):
        return False
    own = outdoor.by_maker is not None or outdoor.backup is not None
    return not own or not stops_at_design(case, outdoor)


def groups_of(case: Case, outdoor: Equipment) -> list[Group]:
    """The heating groups that its indoor units belong to."""
    names = {unit.name for unit in indoor_units(case, outdoor)}
    return [group for group in all_heating(case) if any(unit.name in names for unit in group.units)]


@quantity("heat_rate", "sum over the rooms of its indoor units")
def zones_load(case: Case, outdoor: Equipment) -> float:
    """Heating load of all rooms that its indoor units serve."""
    return sum(gather([partial(group_heating_load, case, group) for group in groups_of(case, outdoor)]))


@quantity("heat_rate", "capacity at design, backup and other heat of the same rooms")
def heat_for_zones(case: Case, outdoor: Equipment) -> float:
    """Heat that the outdoor unit and what else heats those rooms deliver on the winter design day."""
    joined = indoor_units(case, outdoor)
    others = [unit for group in groups_of(case, outdoor) for unit in group.units if unit not in joined]
    routes = [partial(compressor_capacity, case, outdoor), partial(backup_capacity, case, outdoor)]
    routes += [partial(backup_capacity, case, unit) for unit in joined]
    routes += [partial(heat_at_design, case, unit) for unit in others]
    return sum(gather(routes))


def check(outdoor: Equipment, heat: float, load: float) -> Meets | Finding:
    """Compare the two sums."""
    numbers = {"unit": Num(outdoor.name), "short": Num(max(0.0, load - heat), "heat_rate")}
    if heat >= load * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "{unit} has {heat_for_zones} on the winter design day for zones that lose {zones_load} together",
        at="heating",
        help="show {short} more at the winter design temperature: a larger outdoor unit or backup heat",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-10", name="outdoor-unit-below-rooms", severity="caution", since="0.1",
    over=of_several_zones, when=runs_at_design, needs=(heat_for_zones, zones_load), cites=("capacity-at-design",),
    check=check, nothing="no outdoor unit serves several indoor units that heat", answers=("H28", "H30"),
)  # fmt: skip
