"""The electric backup of a heat pump is much larger than what the heat pump lacks.

Backup has to fill the gap between load and capacity at the design temperature. Strips far above that make the air
scalding, ask for a larger service and wire, and hide a heat pump that has failed. Backup for the whole load of the
house, so that it stays warm with a failed compressor, is a choice some make.

Choose the strip for the gap, in stages if it is to carry the whole load in an emergency.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import Group, all_heating, is_heat_pump
from checker.quantities.heat_pump import backup_capacity, compressor_capacity
from checker.quantities.unit_loads import group_heating_load, loads_spoken_of
from checker.rule import Finding, Meets, Num, Rule


def strips_of(case: Case, group: Group) -> list[Equipment]:
    """Heat pumps of a group with electric backup."""
    return [
        unit
        for unit in group.units
        if is_heat_pump(case, unit) and unit.backup is not None and unit.backup.kind != "fuel"
    ]


def with_strips(case: Case) -> list[Group]:
    """Single heat pumps with electric backup."""
    return [group for group in all_heating(case) if len(group.units) == 1 and strips_of(case, group)]


def has_loads(case: Case, _group: Group) -> bool:
    """The file holds no load at all."""
    return loads_spoken_of(case, "heating_load")


@quantity("heat_rate", "load - capacity of the compressor at design")
def shortfall(case: Case, group: Group) -> float:
    """Heat that the compressor lacks at the winter design temperature."""
    return max(0.0, group_heating_load(case, group) - compressor_capacity(case, group.units[0]))


@quantity("power")
def strip_power(case: Case, group: Group) -> float:
    """Heat of the electric backup."""
    return backup_capacity(case, group.units[0])


def check(group: Group, power: float, gap: float, load: float, factor: float) -> Meets | Finding:
    """Compare the backup with the gap, and with the whole load."""
    most = max(factor * gap, load)
    numbers = {"unit": Num(group.name), "wanted": Num(factor * gap, "power"), "whole": Num(load, "power")}
    if power <= most * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{unit} has {strip_power} of backup; at design its heat pump lacks {shortfall} of a load of {group_heating_load}",
        at="backup.power",
        help="choose backup of {wanted} or a little more; {whole} would carry the house without the heat pump",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-15", name="backup-heat-too-large", severity="note", since="0.1",
    over=with_strips, when=has_loads, needs=(strip_power, shortfall, group_heating_load), limits=("backup-size",), check=check,
    nothing="no single heat pump has electric backup", answers=("H15",),
)  # fmt: skip
