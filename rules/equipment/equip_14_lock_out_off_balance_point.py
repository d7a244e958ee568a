"""The lock-out of backup heat lies far from the balance point of heat pump and house.

Above the balance point the heat pump carries the load alone. A lock-out set well above it lets costly heat run for
nothing; one set below it leaves the house short between the two, because the backup may not help where it must.

Set the outdoor lock-out a few degrees above the balance point. That point is where the maker's capacity line
crosses the load line of the house, which here falls to nothing at 65 degF.
"""

from checker.case import Case, Missing, path_of, quantity
from checker.design.performance import Backup
from checker.quantities.equipment import Group, all_heating
from checker.quantities.heat_pump import Balance, backup_of, balance
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class Locked(Record):
    """A heating group whose backup has an outdoor lock-out; `path` is where that stands, at its outdoor unit or its own."""

    path: str
    group: Group
    backup: Backup


def locked_backup(case: Case, group: Group) -> Backup | None:
    """The first backup in a group that has an outdoor lock-out; one that is to be decided has none yet."""
    for unit in group.units:
        try:
            backup = backup_of(case, unit)
        except Missing:
            continue
        if backup is not None and case.speaks_of(backup, "lock_out"):
            return backup
    return None


def with_lock_out(case: Case) -> list[Locked]:
    """Heating groups whose backup has an outdoor lock-out."""
    pairs = [(group, locked_backup(case, group)) for group in all_heating(case)]
    return [Locked(path_of(backup, "lock_out"), group, backup) for group, backup in pairs if backup is not None]


@quantity("temperature")
def lock_out(case: Case, locked: Locked) -> float:
    """Outdoor temperature above which the backup is locked out."""
    return float(case.get(locked.backup, "lock_out"))


@quantity()
def balance_point(case: Case, locked: Locked) -> Balance:
    """Where capacity and load of the group are equal."""
    return balance(case, locked.group)


def check(locked: Locked, lock: float, found: Balance, margin: float) -> Meets | Finding:
    """Compare the lock-out with the balance point."""
    if found.temperature is None:
        return Meets()
    numbers = {
        "unit": Num(locked.group.name),
        "balance": Num(found.temperature, "temperature"),
        "wanted": Num(found.temperature + margin / 3.0, "temperature"),
    }
    if lock < found.temperature - 1.7 and found.short_at_design:
        return Finding(
            "the backup of {unit} is locked out above {lock_out}; below {balance} the heat pump alone falls short, and "
            "between the two nothing helps it",
            help="set the lock-out near {wanted}",
            numbers=numbers,
        )
    if lock > found.temperature + margin * (1 + 1e-9):
        return Finding(
            "the backup of {unit} is allowed up to {lock_out}; down to {balance} the heat pump carries the load alone",
            help="set the lock-out near {wanted}",
            numbers=numbers,
        )
    return Meets(numbers)


RULE = Rule(
    code="EQUIP-14", name="lock-out-off-balance-point", severity="caution", since="0.1",
    over=with_lock_out, needs=(lock_out, balance_point), limits=("lock-out-margin",), cites=("no-load-temperature",),
    check=check, nothing="no backup heat has an outdoor lock-out", answers=("H28",),
)  # fmt: skip
