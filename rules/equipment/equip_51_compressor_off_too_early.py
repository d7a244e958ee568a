"""The compressor is switched off in weather in which it still carries the load.

With electric backup every hour below the lock-out of the compressor costs two to three times what the heat pump would
take for the same heat. The factory setting is often made for older units that lost most of their capacity by then.

Lower the lock-out to the lowest temperature at which the maker lets the unit run; it helps even where it no longer
carries the whole load. With a fuel beside it prices decide, which is not judged here.
"""

from checker.case import Case, path_of, quantity
from checker.design.equipment import Equipment
from checker.design.performance import Backup
from checker.quantities.equipment import Group, all_heating, is_heat_pump
from checker.quantities.heat_pump import Balance, backup_of, balance
from checker.quantities.unit_loads import loads_spoken_of
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


def locked_backup(case: Case, unit: Equipment) -> Backup | None:
    """The electric backup of a heat pump, its own or its outdoor unit's, that has a lock-out of the compressor."""
    backup = backup_of(case, unit) if is_heat_pump(case, unit) else None
    is_one = backup is not None and backup.kind != "fuel" and case.speaks_of(backup, "compressor_lock_out")
    return backup if is_one else None


class Locked(Record):
    """A heat pump whose backup states a lock-out of the compressor; `path` is where that stands."""

    path: str
    group: Group
    backup: Backup


def with_lock_out(case: Case) -> list[Locked]:
    """Single heat pumps with electric backup and a lock-out of the compressor."""
    found = []
    for group in all_heating(case):
        backup = locked_backup(case, group.units[0]) if len(group.units) == 1 else None
        found += [] if backup is None else [Locked(path_of(backup, "compressor_lock_out"), group, backup)]
    return found


def has_loads(case: Case, _locked: Locked) -> bool:
    """The file holds no load at all."""
    return loads_spoken_of(case, "heating_load")


@quantity("temperature")
def compressor_off(case: Case, locked: Locked) -> float:
    """Outdoor temperature below which the compressor is off."""
    return float(case.get(locked.backup, "compressor_lock_out"))


@quantity()
def balance_point(case: Case, locked: Locked) -> Balance:
    """Where capacity and load of the heat pump are equal."""
    return balance(case, locked.group)


def check(locked: Locked, off: float, found: Balance) -> Meets | Finding:
    """Compare the lock-out with the balance point."""
    carried = found.temperature
    numbers = {"unit": Num(locked.group.name), "balance": Num(carried, "temperature") if carried is not None else Num("none")}
    if carried is None and found.short_at_design:
        return Meets(numbers)
    if carried is not None and off <= carried + 1e-9:
        return Meets(numbers)
    until = "the heat pump alone carries the load on the coldest day" if carried is None else (
        "down to {balance} it carries the load alone")  # fmt: skip
    return Finding(
        f"the compressor of {{unit}} is switched off below {{compressor_off}}; {until}",
        help="lower the lock-out to the lowest temperature at which its maker lets it run",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-51", name="compressor-off-too-early", severity="note", since="0.1",
    over=with_lock_out, when=has_loads, needs=(compressor_off, balance_point), cites=("compressor-runs-while-able",),
    check=check, nothing="no heat pump with electric backup has a lock-out of its compressor", answers=("H28",),
)  # fmt: skip
