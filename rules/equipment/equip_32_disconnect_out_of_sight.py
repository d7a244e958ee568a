"""The disconnect of an outdoor unit is not within sight of it, or hides behind it.

Whoever works on the unit must be able to switch it off and see that it stays off. A breaker in the basement can be
switched on again by someone else: people have been killed that way.

Show a disconnect on the wall beside the unit, where one need not reach over or behind it. An electrician installs it.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.equipment import outdoor_units
from checker.quantities.outdoor_unit import electrical_of
from checker.rule import Finding, Meets, Num, Rule


def with_electrics(case: Case) -> list[Equipment]:
    """Outdoor units whose electrics are spoken of."""
    return [unit for unit in outdoor_units(case) if case.speaks_of(unit, "electrical")]


@quantity()
def is_behind(case: Case, unit: Equipment) -> bool:
    """Whether one must reach behind the unit to it; not said counts as no."""
    return bool(case.maybe(electrical_of(unit), "disconnect_behind_it"))


@quantity()
def in_sight(case: Case, unit: Equipment) -> bool:
    """Whether the disconnect is within sight."""
    return bool(case.get(electrical_of(unit), "disconnect_in_sight"))


def check(unit: Equipment, seen: bool, behind: bool) -> Meets | Finding:
    """Out of sight or behind the unit is the finding."""
    if seen and not behind:
        return Meets()
    where = "behind it" if seen else "not within sight of it"
    return Finding(
        "the disconnect of {unit} is {where}",
        at=f"electrical.{'disconnect_behind_it' if seen else 'disconnect_in_sight'}",
        help="show the disconnect on the wall beside {unit}, in sight and in reach; an electrician installs it",
        numbers={"unit": Num(unit.name), "where": Num(where)},
    )


RULE = Rule(
    code="EQUIP-32", name="disconnect-out-of-sight", severity="correction", since="0.1",
    over=with_electrics, needs=(in_sight, is_behind), cites=("disconnect-in-sight",), check=check,
    nothing="nothing says how an outdoor unit is fed", answers=("I17",),
)  # fmt: skip
