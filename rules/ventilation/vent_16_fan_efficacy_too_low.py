"""A whole-house fan moves too little air for its power.

A fan that runs 8,760 hours a year is one of the larger motors of a house. The energy chapter sets the airflow
per watt by the kind of fan: recovery unit, range hood, in-line fan, and other exhaust fans by their airflow.
The edition of 2021 raised the figures. One stated point that reaches the figure is enough.

Usual causes are an old motor, a duct too small for the fan, or a power at the highest speed beside the airflow
of the lowest. Take both from the same line of the fan's table, at the setting or under `rating`.
"""

from checker.case import Case
from checker.design.fans import Fan
from checker.design.hoods import Hood
from checker.quantities.fan_efficacy import efficacy, wanted_efficacy
from checker.quantities.ventilation import SLACK
from checker.quantities.whole_house import whole_house
from checker.rule import Finding, Meets, Rule


def whole_house_fans(case: Case) -> list[Fan | Hood]:
    """Fans and hoods that ventilate the whole house."""
    return [part.device for part in whole_house(case, case.design) if isinstance(part.device, Fan | Hood)]


def check(device: Fan | Hood, shown: float, wanted: float) -> Meets | Finding:
    """Airflow per watt against the table."""
    if shown >= wanted * (1 - SLACK):
        return Meets()
    return Finding(
        f"{device.name} moves {{efficacy}}, below the {{wanted_efficacy}} asked of such a fan",
        help="choose a fan with at least {wanted_efficacy}, or show a rated point that reaches it",
    )


RULE = Rule(
    code="VENT-16", name="fan-efficacy-too-low", severity="correction", since="0.1",
    over=whole_house_fans, needs=(efficacy, wanted_efficacy), cites=("fan-efficacy",), check=check,
    nothing="no fan ventilates the whole house", answers=("A13", "A14", "A15"),
)  # fmt: skip
