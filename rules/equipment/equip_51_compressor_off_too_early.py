"""The compressor is switched off in weather in which it still carries the load.

With electric backup every hour below the lock-out of the compressor costs two to three times what the heat pump would
take for the same heat. The factory setting is often made for older units that lost most of their capacity by then.

Lower the lock-out to the lowest temperature at which the maker lets the unit run; it helps even where it no longer
carries the whole load. With a fuel beside it prices decide, which is not judged here.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import Group, all_heating, is_heat_pump
from checker.quantities.heat_pump import Balance, backup_of, balance
from checker.quantities.unit_loads import loads_spoken_of
from checker.rule import Finding, Meets, Num, Rule


def is_locked(case: Case, unit: Equipment) -> bool:
    """Whether a heat pump with electric backup has a lock-out of its compressor."""
    backup = backup_of(case, unit) if is_heat_pump(case, unit) else None
    return backup is not None and backup.kind != "fuel" and case.speaks_of(backup, "compressor_lock_out")


def with_lock_out(case: Case) -> list[Group]:
    """Single heat pumps with electric backup and a lock-out of the compressor."""
    return [group for group in all_heating(case) if len(group.units) == 1 and is_locked(case, group.units[0])]


def has_loads(case: Case, _group: Group) -> bool:
    """The file holds no load at all."""
    return loads_spoken_of(case, "heating_load")


@quantity("temperature")
def compressor_off(case: Case, group: Group) -> float:
    """Outdoor temperature below which the compressor is off."""
    return float(case.get(backup_of(case, group.units[0]), "compressor_lock_out"))


def check(group: Group, off: float, found: Balance) -> Meets | Finding:
    """Compare the lock-out with the balance point."""
    carried = found.temperature
    numbers = {"unit": Num(group.name), "balance": Num(carried, "temperature") if carried is not None else Num("none")}
    if carried is None and found.short_at_design:
        return Meets(numbers)
    if carried is not None and off <= carried + 1e-9:
        return Meets(numbers)
    until = "the heat pump alone carries the load on the coldest day" if carried is None else (
        "down to {balance} it carries the load alone")  # fmt: skip
    return Finding(
        f"the compressor of {{unit}} is switched off below {{compressor_off}}; {until}",
        at="backup.compressor_lock_out",
        help="lower the lock-out to the lowest temperature at which its maker lets it run",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-51", name="compressor-off-too-early", severity="note", since="0.1",
    over=with_lock_out, when=has_loads, needs=(compressor_off, balance), cites=("compressor-runs-while-able",),
    check=check, nothing="no heat pump with electric backup has a lock-out of its compressor", answers=("H28",),
)  # fmt: skip
