"""A bath fan that runs on demand has no control that turns it off by itself.

From 2024 the energy chapter asks for a timer or occupancy sensor with a delay of 30 minutes or less, a humidity
control, or a contaminant control. A switch that somebody has to turn off does not count, however it is labeled.

The usual cause is a plain switch beside the light. Show a countdown timer, a sensor with a delay, or a humidity
control. A fan that belongs to the whole-house ventilation or runs all day is exempt.
"""


from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.design.fans import Control, Fan
from checker.design.fields import Ratio
from checker.quantities.exhaust_end import bath_fans, takes_out
from checker.quantities.movers import is_continuous
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule

BY_DELAY = ("timer", "occupancy", "delay off", "programmable")


class TurnsOff(Record):
    """What turns the fan off, and its shortest delay in minutes where there is one."""

    by: str
    minutes: Ratio | None
    humidity: tuple[float, float] | None


@quantity()
def turns_off(case: Case, fan: Fan) -> TurnsOff:
    """The control with what the code asks of its kind."""
    if case.maybe(fan, "whole_house"):
        raise NotApplicable("it belongs to the whole-house ventilation")
    if any(is_continuous(case, setting) for setting in case.get(fan, "settings").values()):
        raise NotApplicable("it runs all day")
    control = fan.control
    if control is None:
        raise Missing(path_of(fan, "control"))
    by = str(case.get(control, "by"))
    return TurnsOff(
        by, shortest_delay(case, control) if by in BY_DELAY else None,
        (case.get(control, "humidity_low"), case.get(control, "humidity_high")) if by == "humidity" else None,
    )  # fmt: skip


def shortest_delay(case: Case, control: Control) -> float:
    """The shortest delay; the longest will do where it is short enough."""
    longest, shortest = case.maybe(control, "delay"), case.maybe(control, "shortest_delay")
    if shortest is not None:
        return float(shortest)
    if longest is None:
        raise Missing(path_of(control, "delay"))
    if longest > case.limit("bath-fan-delay"):
        raise Missing(path_of(control, "shortest_delay"))
    return float(longest)


def check(fan: Fan, off: TurnsOff, delay: float, low: float, high: float) -> Meets | Finding:
    """By kind of control."""
    numbers = {"name": Num(fan.name), "by": Num(off.by)}
    change = "show a timer or sensor with a delay of {bath_fan_delay} minutes or less, or a humidity control"
    if off.minutes is not None:
        numbers["minutes"] = Num(off.minutes)
        if off.minutes <= delay:
            return Meets(numbers)
        message = "the shortest delay of {name} is {minutes} minutes, longer than {bath_fan_delay} minutes"
        return Finding(message, at="control", help=change, numbers=numbers)
    if off.humidity is not None:
        numbers |= {"from": Num(off.humidity[0], "relative_humidity"), "to": Num(off.humidity[1], "relative_humidity")}
        if off.humidity[0] >= low - 1e-9 and off.humidity[1] <= high + 1e-9:
            return Meets(numbers)
        message = (
            "the humidity control of {name} ranges from {from} to {to}, beyond {bath_fan_humidity_low} to "
            "{bath_fan_humidity_high}"
        )
        return Finding(message, at="control", help="show a humidity control with set points in that range", numbers=numbers)
    if off.by == "contaminant":
        return Meets(numbers)
    return Finding("nothing turns {name} off by itself; its control is `{by}`", at="control", help=change, numbers=numbers)


RULE = Rule(
    code="EXH-30", name="bath-fan-without-automatic-off", severity="correction", since="0.1",
    over=bath_fans, when=takes_out, needs=(turns_off,),
    limits=("bath-fan-delay", "bath-fan-humidity-low", "bath-fan-humidity-high"), check=check,
    nothing="the design has no bath fan", answers=("B31",),
)  # fmt: skip
