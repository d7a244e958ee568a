"""A duct heater can be on while no air moves past it.

Without air its elements glow until a cutout opens, beside insulation, dust and the filter. The code has the heater
wired so that it can only be on while the blower runs.

Show the interlock between blower and heater on the drawing; an electrician wires it by the heater's diagram.
"""

from checker.case import Case, given
from checker.design.equipment import Equipment
from checker.rule import Finding, Meets, Num, Rule


def with_heaters(case: Case) -> list[Equipment]:
    """Equipment with a duct heater."""
    return [unit for unit in case.design.equipment.values() if unit.duct_heater is not None]


def check(unit: Equipment, interlocked: bool) -> Meets | Finding:
    """A heater that does not need the blower is the finding."""
    if interlocked:
        return Meets()
    return Finding(
        "the duct heater of {unit} can be on while its blower is off",
        at="duct_heater.fan_interlock",
        help="show an interlock that lets the heater on only while the blower runs; an electrician wires it",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="EQUIP-25", name="duct-heater-without-fan", severity="correction", since="0.1",
    over=with_heaters, needs=(given("duct_heater.fan_interlock"),), cites=("duct-heater-interlock",), check=check,
    nothing="no equipment has a duct heater", answers=("H26", "Q11"),
)  # fmt: skip
