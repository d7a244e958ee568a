"""A deep night setback of a heat pump brings its electric backup on every morning.

A heat pump that is sized to the load needs hours to win back a few degrees. A plain thermostat sees that it does not
keep up and calls the backup, which spends in an hour what the night has saved.

Lower heating by less, or use a thermostat that starts early and holds the backup off while the heat pump recovers.
"""

from checker.case import Case, given, quantity
from checker.design.controls import ControlPoint
from checker.quantities.thermostats import thermostats_of, with_electric_backup
from checker.rule import Finding, Meets, Num, Rule


def set_back(case: Case) -> list[ControlPoint]:
    """Thermostats of heat pumps with electric backup that state a setback."""
    return [
        point
        for point in thermostats_of(case)
        if case.speaks_of(point, "setback") and with_electric_backup(case, point)
    ]


@quantity()
def holds_off(case: Case, point: ControlPoint) -> bool:
    """Whether the thermostat recovers early without backup. Asked only where the setback is deep."""
    if case.get(point, "setback") <= case.limit("heat-pump-setback") + 1e-6:
        return True
    return bool(case.get(point, "recovers_early"))


def check(point: ControlPoint, lowered: float, held: bool, most: float) -> Meets | Finding:
    """A small setback, or one that recovers without backup."""
    numbers = {"name": Num(point.name)}
    if held or lowered <= most + 1e-6:
        return Meets(numbers)
    return Finding(
        "{name} lowers heating by {setback} and recovers at once, so that the electric backup comes on",
        at="setback", help="lower it by {limit} or less, or choose a thermostat that starts early without backup",
        numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="CTRL-17", name="setback-brings-backup-on", severity="note", since="0.1",
    over=set_back, needs=(given("setback"), holds_off), limits=("heat-pump-setback",), check=check,
    nothing="no thermostat of a heat pump with electric backup states a setback",
)  # fmt: skip
