"""Between two lock-outs neither the heat pump nor its backup may run.

A compressor lock-out stops the heat pump below one outdoor temperature, a backup lock-out keeps the backup off above
another. Where the first lies above the second, nothing heats in the weather between them.

The usual cause is a change of one setting without the other. Set the lock-out of the backup at or above that of the
compressor.
"""

from checker.case import Case, given
from checker.design.equipment import Equipment
from checker.rule import Finding, Meets, Num, Rule


def with_both(case: Case) -> list[Equipment]:
    """Units with a lock-out of the compressor and one of the backup."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.backup is not None
        and case.speaks_of(unit.backup, "lock_out")
        and case.speaks_of(unit.backup, "compressor_lock_out")
    ]


def check(unit: Equipment, compressor: float, backup: float) -> Meets | Finding:
    """Compare the temperatures."""
    numbers = {"unit": Num(unit.name)}
    if compressor <= backup + 1e-9:
        return Meets(numbers)
    return Finding(
        "the compressor of {unit} is off below {compressor_lock_out} and its backup above {lock_out}: between the two "
        "nothing heats",
        at="backup.compressor_lock_out",
        help="set the lock-out of the backup at {compressor_lock_out} or above",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-37", name="lock-outs-leave-a-gap", severity="caution", since="0.1",
    over=with_both, needs=(given("backup.compressor_lock_out"), given("backup.lock_out")), cites=("lock-outs-meet",),
    check=check, nothing="no heat pump has a lock-out of the compressor and one of the backup",
)  # fmt: skip
