"""The thermostat of the primary system cannot be set low or high enough.

A house that is left empty is kept just above freezing damage or just below mildew, not at the comfort of people. The
energy chapter wants a thermostat that can hold rooms from 55 to 85 degF.

The usual cause is a thermostat of a heater or a locked range. Choose one with the full range, or unlock it.
"""

from checker.case import Case
from checker.design.controls import ControlPoint
from checker.quantities.thermostats import Span, doubt_which, settable, speaking
from checker.rule import Finding, Meets, Num, Rule

SLACK = 1e-9


def judged(case: Case) -> list[ControlPoint]:
    """Thermostats of the primary system that state what they can be set to."""
    return speaking(case, "lowest_setting", "highest_setting")


def is_sole(case: Case, point: ControlPoint) -> bool:
    """Another thermostat may be that of the primary system."""
    doubt_which(case, point)
    return True


def check(point: ControlPoint, span: Span, low: float, high: float) -> Meets | Finding:
    """Either end of its range."""
    numbers = {"name": Num(point.name)}
    if span.low is not None and span.low > low * (1 + SLACK):
        return Finding(
            "{name} cannot be set below {lowest}; it must be able to hold {thermostat_lowest}",
            at="lowest_setting", help="choose a thermostat that can hold {thermostat_lowest}",
            numbers={**numbers, "lowest": Num(span.low, "temperature")},
        )  # fmt: skip
    if span.high is not None and span.high < high * (1 - SLACK):
        return Finding(
            "{name} cannot be set above {highest}; it must be able to hold {thermostat_highest}",
            at="highest_setting", help="choose a thermostat that can hold {thermostat_highest}",
            numbers={**numbers, "highest": Num(span.high, "temperature")},
        )  # fmt: skip
    return Meets(numbers)


RULE = Rule(
    code="CTRL-02", name="thermostat-range-too-narrow", severity="correction", since="0.1",
    over=judged, when=is_sole, needs=(settable,), limits=("thermostat-lowest", "thermostat-highest"), check=check,
    nothing="no thermostat of the primary system states its range", answers=("Q02",),
)  # fmt: skip
