"""The working space in front of an outdoor unit's service side is too small.

Someone must kneel there with tools, gauges and a meter on live parts. The code asks for a level space of 30 by 30
inches in front of the control side of every appliance.

Turn the unit so that its service panel faces open ground, or move it away from the fence or wall.
"""

from checker.case import Case, given
from checker.design.equipment import Equipment
from checker.quantities.equipment import outdoor_units
from checker.quantities.outdoor_unit import siting_of
from checker.rule import Finding, Meets, Num, Rule


def with_service_space(case: Case) -> list[Equipment]:
    """Outdoor units whose service space is spoken of."""
    return [
        unit
        for unit in outdoor_units(case)
        if unit.siting is not None and case.speaks_of(siting_of(unit), "service_space")
    ]


def check(unit: Equipment, space: float, least: float) -> Meets | Finding:
    """Compare with the least space."""
    if space >= least * (1 - 1e-9):
        return Meets()
    return Finding(
        "{service_space} are clear in front of the service side of {unit}, less than {limit}",
        at="siting.service_space",
        help="turn or move {unit} so that {limit} by {limit} are clear in front of its service side",
        numbers={
            "unit": Num(unit.name),
            "service_space": Num(space, "diameter"),
            "limit": Num(least, "diameter"),
        },
    )


RULE = Rule(
    code="EQUIP-30", name="service-space-too-small", severity="correction", since="0.1",
    over=with_service_space, needs=(given("siting.service_space"),), limits=("service-space",), check=check,
    nothing="no outdoor unit states its service space", answers=("I18",),
)  # fmt: skip
