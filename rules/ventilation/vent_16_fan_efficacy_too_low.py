"""A whole-house fan moves too little air for its power.

A fan that runs 8,760 hours a year is one of the larger motors of a house. The energy chapter sets the airflow
per watt by the kind of fan: recovery unit, range hood, in-line fan, and other exhaust fans by their airflow.
The edition of 2021 raised the figures and added the air handler that brings in outdoor air, by its outdoor air for
the power of its blower. One stated point that reaches the figure is enough.

Usual causes are an old motor, a duct too small for the fan, or a power at the highest speed beside the airflow
of the lowest. Take both from the same line of the fan's table, at the setting or under `rating`.
"""

from checker.case import Case
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.design.hoods import Hood
from checker.quantities.fan_efficacy import Ventilator, efficacy, wanted_efficacy
from checker.quantities.ventilation import SLACK
from checker.quantities.whole_house import whole_house
from checker.rule import Finding, Meets, Rule


def whole_house_fans(case: Case) -> list[Ventilator]:
    """Fans, hoods and air handlers that ventilate the whole house."""
    devices = [part.device for part in whole_house(case, case.design)]
    return [device for device in devices if isinstance(device, Fan | Hood | Equipment)]


def check(device: Ventilator, shown: float, wanted: float) -> Meets | Finding:
    """Airflow per watt against the table."""
    if shown >= wanted * (1 - SLACK):
        return Meets()
    if isinstance(device, Equipment):
        return Finding(
            f"{device.name} brings in {{efficacy}} of outdoor air, below the {{wanted_efficacy}} asked of an air handler",
            help="let a small fan of its own bring the outdoor air in, or run the blower slower while it ventilates",
        )
    return Finding(
        f"{device.name} moves {{efficacy}}, below the {{wanted_efficacy}} asked of such a fan",
        help="choose a fan with at least {wanted_efficacy}, or show a rated point that reaches it",
    )


RULE = Rule(
    code="VENT-16", name="fan-efficacy-too-low", severity="correction", since="0.1",
    over=whole_house_fans, needs=(efficacy, wanted_efficacy), cites=("fan-efficacy",), check=check,
    nothing="no fan ventilates the whole house", answers=("A13", "A14", "A15"),
)  # fmt: skip
