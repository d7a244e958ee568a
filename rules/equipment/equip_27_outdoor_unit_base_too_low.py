"""An outdoor unit stands in or too near the ground.

Soil, leaves and water rot its base and block the drain holes; in winter the defrost water freezes around it. The
code asks for a support that lifts it above the ground.

Set it on a level pad or stand of the stated height.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.outdoor_unit import base_height, on_the_ground, siting_of
from checker.rule import Finding, Meets, Num, Rule


def sited(case: Case) -> list[Equipment]:
    """Outdoor units on the ground whose siting is spoken of."""
    return [unit for unit in on_the_ground(case) if case.speaks_of(unit, "siting")]


@quantity("length", "base height; nothing for a unit that is set in the soil")
def support_height(case: Case, unit: Equipment) -> float:
    """Height of the support above the ground."""
    siting = siting_of(unit)
    if case.maybe(siting, "support") == "soil" and siting.base_height is None:
        return 0.0
    return base_height(case, unit)


def check(unit: Equipment, height: float, least: float) -> Meets | Finding:
    """Compare with the least height."""
    if height >= least * (1 - 1e-9):
        return Meets()
    return Finding(
        "the base of {unit} is {support_height} above the ground, less than {limit}",
        at="siting.base_height",
        help="set {unit} on a pad or stand that lifts it {limit} or more above the ground",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="EQUIP-27", name="outdoor-unit-base-too-low", severity="correction", since="0.1",
    over=sited, needs=(support_height,), limits=("outdoor-unit-base",), check=check,
    nothing="nothing says how an outdoor unit stands", answers=("H34", "I07"),
)  # fmt: skip
