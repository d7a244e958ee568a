"""The power ventilator in a dryer's exhaust duct is not one listed for dryers.

A fan that is not made for lint clogs, overheats and can set the lint on fire. Those listed to UL 705 for dryers
start with the dryer and tell when the duct is blocked.

The usual cause is an in-line bath fan used to make up for length. Show a dryer exhaust duct power ventilator
listed to UL 705, with the length that its instructions allow; an electrician wires it.
"""

from checker import each
from checker.case import given
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import has_power_ventilator
from checker.rule import Finding, Meets, Rule

STANDARD = "705"


def check(_dryer: Dryer, listing: str) -> Meets | Finding:
    """The listing must name the standard."""
    if STANDARD in listing:
        return Meets()
    return Finding(
        "the power ventilator of this dryer is given as `{power_ventilator}`, not as listed to UL 705",
        at="power_ventilator", help="use a dryer exhaust duct power ventilator that is listed to UL 705",
    )  # fmt: skip


RULE = Rule(
    code="DRY-15", name="dryer-ventilator-unlisted", severity="correction", since="0.1",
    over=each.dryer, when=has_power_ventilator, needs=(given("power_ventilator"),),
    cites=("dryer-power-ventilator",), check=check, nothing="the design has no clothes dryer", answers=("E13",),
)  # fmt: skip
