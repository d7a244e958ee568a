"""The thermostat comes with set points that heat or cool more than they may.

Many people never change what the thermostat came with. The energy chapter therefore limits the set points that its
maker programs: heating no higher than 70 degF, cooling no lower than 78 degF. What people choose later is theirs.

Have it programmed to these before it is handed over, or choose another one.
"""

from checker.case import Case
from checker.design.controls import ControlPoint
from checker.quantities.thermostats import Span, doubt_which, presets, speaking
from checker.rule import Finding, Meets, Num, Rule

SLACK = 1e-9


def judged(case: Case) -> list[ControlPoint]:
    """Thermostats of the primary system whose first set points are stated."""
    return speaking(case, "heating_preset", "cooling_preset")


def is_sole(case: Case, point: ControlPoint) -> bool:
    """Another thermostat may be that of the primary system."""
    doubt_which(case, point)
    return True


def check(point: ControlPoint, preset: Span, heating: float, cooling: float) -> Meets | Finding:
    """Heating and cooling each by its own limit."""
    numbers = {"name": Num(point.name)}
    if preset.low is not None and preset.low > heating * (1 + SLACK):
        return Finding(
            "{name} comes set to heat to {preset}; it may come with {heating_preset} at most",
            at="heating_preset", help="have it programmed to {heating_preset} or less",
            numbers={**numbers, "preset": Num(preset.low, "temperature")},
        )  # fmt: skip
    if preset.high is not None and preset.high < cooling * (1 - SLACK):
        return Finding(
            "{name} comes set to cool to {preset}; it must come with {cooling_preset} at least",
            at="cooling_preset", help="have it programmed to {cooling_preset} or more",
            numbers={**numbers, "preset": Num(preset.high, "temperature")},
        )  # fmt: skip
    return Meets(numbers)


RULE = Rule(
    code="CTRL-03", name="thermostat-preset-wasteful", severity="correction", since="0.1",
    over=judged, when=is_sole, needs=(presets,), limits=("heating-preset", "cooling-preset"), check=check,
    nothing="no thermostat of the primary system states the set points that it comes with", answers=("Q02",),
)  # fmt: skip
