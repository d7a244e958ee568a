"""Nothing keeps the backup heat of a heat pump off while the compressor can carry the load.

Electric resistance heat costs two to four times as much as the same heat from the compressor. Without a control
that holds it off, every morning warm-up starts both, and nobody notices except on the bill.

Show an outdoor lock-out or a thermostat that calls the backup only when the heat pump alone does not keep up;
defrost is excepted.
"""

from checker.case import Case, path_of, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import is_heat_pump
from checker.rule import Finding, Meets, Num, Rule


def with_backup(case: Case) -> list[Equipment]:
    """Heat pumps with backup heat."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.backup is not None and (is_heat_pump(case, unit) or unit.kind == "air handler")
    ]


def is_covered(case: Case, unit: Equipment) -> bool:
    """Its backup burns fuel, which only the 2024 edition has held off."""
    fuel = case.maybe(unit.backup, "kind") == "fuel"
    return not fuel or case.codebook.edition == "irc-2024"


@quantity()
def held_off(case: Case, unit: Equipment) -> bool:
    """Whether a control or an outdoor lock-out keeps the backup off."""
    backup = unit.backup
    if case.maybe(backup, "lock_out") is not None:
        return True
    stated = case.maybe(backup, "held_off")
    return bool(case.get(backup, "held_off") if stated is None else stated)


def check(unit: Equipment, held: bool) -> Meets | Finding:
    """Backup that runs with the compressor is the finding."""
    if held:
        return Meets()
    return Finding(
        "nothing keeps the backup heat of {unit} off while its compressor can carry the load",
        at=path_of(unit, "backup").removeprefix(f"{unit.path}."),
        help="show an outdoor lock-out, or a thermostat that holds the backup off until the heat pump falls short",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="EQUIP-13", name="backup-heat-not-held-off", severity="correction", since="0.1",
    over=with_backup, when=is_covered, needs=(held_off,), cites=("backup-lock-out",), check=check,
    nothing="no heat pump has backup heat", answers=("Q03",),
)  # fmt: skip
