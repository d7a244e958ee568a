"""The blower of a furnace with a cooling coil is rated for too little static pressure.

A wet coil takes 0.2 to 0.3 in w.c. of what the blower offers, besides filter and ducts. A furnace that was rated
for less than 0.5 in w.c. was never meant to drive one, unless its listing says so.

Choose a furnace whose blower is rated for 0.5 in w.c. or more, or one that is listed for use with a cooling coil.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.rule import Finding, Meets, Num, Rule


def with_coils(case: Case) -> list[Equipment]:
    """Furnaces with a cooling coil."""
    return [unit for unit in case.design.equipment.values() if unit.kind == "furnace" and unit.coil is not None]


def is_not_listed(case: Case, unit: Equipment) -> bool:
    """The furnace is listed for use with a cooling coil."""
    return case.maybe(unit.coil, "blower_listed") is not True


@quantity("pressure")
def blower_static(case: Case, unit: Equipment) -> float:
    """External static pressure that the blower is rated for."""
    return float(case.get(unit, "available_static"))


def check(unit: Equipment, static: float, least: float) -> Meets | Finding:
    """Compare with the least static pressure."""
    if static >= least * (1 - 1e-9):
        return Meets()
    return Finding(
        "the blower of {unit} is rated for {blower_static}; with a cooling coil it must be for {limit} or more",
        at="available_static",
        help="choose a furnace rated for {limit}, or one listed for use with a cooling coil",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="EQUIP-23", name="blower-too-weak-for-coil", severity="correction", since="0.1",
    over=with_coils, when=is_not_listed, needs=(blower_static,), limits=("coil-blower-static",), check=check,
    nothing="no furnace has a cooling coil", answers=("H24",),
)  # fmt: skip
