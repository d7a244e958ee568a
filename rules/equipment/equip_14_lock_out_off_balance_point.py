"""The lock-out of backup heat lies far from the balance point of heat pump and house.

Above the balance point the heat pump carries the load alone. A lock-out set well above it lets costly heat run for
nothing; one set below it leaves the house short between the two, because the backup may not help where it must.

Set the outdoor lock-out a few degrees above the balance point. That point is where the maker's capacity line
crosses the load line of the house, which here falls to nothing at 65 degF.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import Group, all_heating
from checker.quantities.heat_pump import Balance, balance
from checker.rule import Finding, Meets, Num, Rule


def locked_unit(case: Case, group: Group) -> Equipment | None:
    """The unit of a group whose backup has an outdoor lock-out."""
    locked = (u for u in group.units if u.backup is not None and case.speaks_of(u.backup, "lock_out"))
    return next(locked, None)


def with_lock_out(case: Case) -> list[Group]:
    """Heating groups whose backup has an outdoor lock-out."""
    return [group for group in all_heating(case) if locked_unit(case, group) is not None]


@quantity("temperature")
def lock_out(case: Case, group: Group) -> float:
    """Outdoor temperature above which the backup is locked out."""
    unit = locked_unit(case, group)
    assert unit is not None
    return float(case.get(unit.backup, "lock_out"))


def check(group: Group, lock: float, found: Balance, margin: float) -> Meets | Finding:
    """Compare the lock-out with the balance point."""
    if found.temperature is None:
        return Meets()
    numbers = {
        "unit": Num(group.name),
        "balance": Num(found.temperature, "temperature"),
        "wanted": Num(found.temperature + margin / 3.0, "temperature"),
    }
    if lock < found.temperature - 1.7 and found.short_at_design:
        return Finding(
            "the backup of {unit} is locked out above {lock_out}; below {balance} the heat pump alone falls short, and "
            "between the two nothing helps it",
            at="backup.lock_out",
            help="set the lock-out near {wanted}",
            numbers=numbers,
        )
    if lock > found.temperature + margin * (1 + 1e-9):
        return Finding(
            "the backup of {unit} is allowed up to {lock_out}; down to {balance} the heat pump carries the load alone",
            at="backup.lock_out",
            help="set the lock-out near {wanted}",
            numbers=numbers,
        )
    return Meets(numbers)


RULE = Rule(
    code="EQUIP-14", name="lock-out-off-balance-point", severity="caution", since="0.1",
    over=with_lock_out, needs=(lock_out, balance), limits=("lock-out-margin",), cites=("no-load-temperature",),
    check=check, nothing="no backup heat has an outdoor lock-out", answers=("H28",),
)  # fmt: skip
