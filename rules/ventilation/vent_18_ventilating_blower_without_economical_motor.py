"""A heating blower that also moves the ventilation air has an ordinary motor.

A furnace blower that runs for ventilation runs thousands of hours more each year. Where the whole-house
ventilation is part of the air handler, the editions of 2015 and 2018 ask for an electronically commutated
motor (ECM), which takes a fraction of the power at low speed.

State the motor under the equipment, or ventilate by a small fan of its own.
"""

import re

from checker.case import Case
from checker.design.equipment import Equipment
from checker.design.fields import fold
from checker.quantities.ventilating_handlers import motor, with_outdoor_air
from checker.rule import Finding, Meets, Num, Rule

ECONOMICAL = re.compile(r"\b(ecm|ecms|ec|electronically commutated|brushless|bldc|x13|variable speed)\b")


def handlers(case: Case) -> list[Equipment]:
    """Air handlers with an outdoor-air duct."""
    return with_outdoor_air(case)


def check(unit: Equipment, stated: str) -> Meets | Finding:
    """The words for such a motor."""
    if ECONOMICAL.search(fold(stated)):
        return Meets()
    return Finding(
        f"the blower of {unit.name} moves ventilation air by a `{{motor}}` motor, not an electronically commutated one",
        at="motor",
        help="choose an electronically commutated motor (ECM), or ventilate by a fan of its own",
        numbers={"motor": Num(stated)},
    )


RULE = Rule(
    code="VENT-18", name="ventilating-blower-without-economical-motor", severity="correction", since="0.1",
    over=handlers, needs=(motor,), cites=("blower-motor",), check=check,
    nothing="no air handler has an outdoor-air duct", answers=("A13",),
)  # fmt: skip
