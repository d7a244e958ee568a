"""The electric backup of a heat pump is much larger than what the heat pump lacks.

Backup has to fill the gap between load and capacity at the design temperature. Strips far above that make the air
scalding, ask for a larger service and wire, and hide a heat pump that has failed. Backup for the whole load of the
house, so that it stays warm with a failed compressor, is a choice some make.

Choose the strip for the gap, in stages if it is to carry the whole load in an emergency.
"""


from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import Group, all_heating, is_heat_pump
from checker.quantities.heat_pump import backup_capacity, backup_of, compressor_capacity, joined_alone
from checker.quantities.unit_loads import group_heating_load, loads_spoken_of
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class Strips(Record):
    """Electric backup of a heat pump that heats its rooms alone; `path` is where its power stands."""

    path: str
    group: Group


def place_of_strips(case: Case, unit: Equipment) -> str | None:
    """Path of the electric backup: its own, its outdoor unit's, or a heater in its duct; None where it has none."""
    backup = backup_of(case, unit)
    if backup is None:
        return None if unit.duct_heater is None else f"{unit.path}.duct_heater.power"
    outdoor = joined_alone(case, unit)
    holder = unit if unit.backup is not None or outdoor is None else outdoor
    return None if backup.kind == "fuel" else f"{holder.path}.backup.power"


def with_strips(case: Case) -> list[Strips]:
    """Single heat pumps with electric backup."""
    found = []
    for group in all_heating(case):
        if len(group.units) == 1 and is_heat_pump(case, group.units[0]):
            place = place_of_strips(case, group.units[0])
            found += [] if place is None else [Strips(place, group)]
    return found


def has_loads(case: Case, _strips: Strips) -> bool:
    """The file holds no load at all."""
    return loads_spoken_of(case, "heating_load")


@quantity("heat_rate")
def load_of_rooms(case: Case, strips: Strips) -> float:
    """Heating load of the rooms that the heat pump serves."""
    return group_heating_load(case, strips.group)


@quantity("heat_rate", "load - capacity of the compressor at design")
def shortfall(case: Case, strips: Strips) -> float:
    """Heat that the compressor lacks at the winter design temperature."""
    return max(0.0, load_of_rooms(case, strips) - compressor_capacity(case, strips.group.units[0]))


@quantity("power")
def strip_power(case: Case, strips: Strips) -> float:
    """Heat of the electric backup."""
    return backup_capacity(case, strips.group.units[0])


def check(
    strips: Strips, power: float, gap: float, load: float, factor: float, step: float
) -> Meets | Finding:
    """Compare the backup with the gap, and with the whole load."""
    most = max(factor * gap, load, step)
    numbers = {"unit": Num(strips.group.name), "wanted": Num(factor * gap, "power"), "whole": Num(load, "power")}
    if power <= most * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{unit} has {strip_power} of backup; at design its heat pump lacks {shortfall} of a load of {load_of_rooms}",
        help=("choose backup of {wanted} or a little more; " if gap > 0.0 else "leave it out, or choose the smallest; ")
        + "{whole} would carry the house without the heat pump",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-15", name="backup-heat-too-large", severity="note", since="0.1",
    over=with_strips, when=has_loads, needs=(strip_power, shortfall, load_of_rooms),
    limits=("backup-size", "backup-step"), check=check, nothing="no single heat pump has electric backup", answers=("H15",),
)  # fmt: skip
