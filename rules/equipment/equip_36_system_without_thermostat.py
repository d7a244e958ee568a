"""A heating or cooling system has no thermostat of its own.

Every separate system must be controlled by its own thermostat, so that one part of the house is not heated because
another is cold. Heads of a heat pump usually have theirs in the remote control; the drawing then says so.

Show a thermostat for each system under the controls, and name the equipment that it switches.
"""

from checker.case import Case, Missing, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import gives, indoor_units, outdoor_of
from checker.quantities.thermostats import CENTRAL, thermostats_of
from checker.rule import Finding, Meets, Num, Rule


def systems(case: Case) -> list[Equipment]:
    """Equipment that heats or cools rooms, where any thermostat is shown; heads and heaters have theirs built in."""
    if not thermostats_of(case):
        return []
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.kind in CENTRAL and (gives(case, unit, "heating") or gives(case, unit, "cooling"))
    ]


def partners(case: Case, unit: Equipment) -> set[str]:
    """A unit, its outdoor unit, and the one blower that an outdoor unit without indoor units must belong to."""
    outdoor = outdoor_of(case, unit)
    names = {str(unit.name)} | ({str(outdoor.name)} if outdoor is not None else set())
    units = case.design.equipment.values()
    lone = [each for each in units if each.kind in ("air conditioner", "heat pump") and not indoor_units(case, each)]
    blowers = [each for each in units if each.kind in ("furnace", "air handler")]
    if len(lone) == len(blowers) == 1 and blowers[0].outdoor_unit is None and unit in (*lone, *blowers):
        names |= {str(lone[0].name), str(blowers[0].name)}
    return names


@quantity()
def thermostats(case: Case, unit: Equipment) -> list[str]:
    """Names of the thermostats that switch a unit or its outdoor unit."""
    names = partners(case, unit)
    found = [f"control of {unit.name}"] if case.maybe(unit, "control") is not None else []
    open_ended = []
    for point in thermostats_of(case):
        if not point.switches:
            open_ended.append(f"{point.path}.switches")
        elif names & {each.partition(".")[0] for each in point.switches}:
            found.append(str(point.name))
    if not found and open_ended:
        raise Missing(*open_ended)
    return found


def check(unit: Equipment, found: list[str]) -> Meets | Finding:
    """A system without one is the finding."""
    if found:
        return Meets()
    return Finding(
        "no thermostat among the controls switches {unit}",
        help="show a thermostat whose `switches` names {unit}",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="EQUIP-36", name="system-without-thermostat", severity="correction", since="0.1",
    over=systems, needs=(thermostats,), cites=("thermostat-for-each-system",), check=check,
    nothing="no thermostat is shown at all, or nothing heats or cools", answers=("Q01",),
)  # fmt: skip
