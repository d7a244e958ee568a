"""Heating cable on a roof or in a gutter stays on when nothing can freeze there.

A self-regulating cable takes less power when it is warm, but never none. From 2024 the energy chapter wants deicing
to go off by itself in mild weather, and also while nothing is wet or through the night.

Show an outdoor thermostat and a moisture sensor. Better still, find out why ice forms at the eaves: mostly warm air
leaks into the attic.
"""

from checker.case import Case
from checker.design.outdoor_heat import OutdoorHeat
from checker.quantities.outdoor_heat import ShutOff, of_kind, rests_when_dry_or_dark, shut_off
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Num, Rule


def deicing(case: Case) -> list[OutdoorHeat]:
    """Roof and gutter deicing."""
    return of_kind(case, "roof deicing")


def check(node: OutdoorHeat, off: ShutOff, rests: bool, mild: float) -> Meets | Finding:
    """By outdoor temperature, then by moisture or daylight."""
    numbers = {"name": Num(node.name)}
    if not off.is_by(mild):
        return Finding(
            "{name} does not go off by itself when it is warmer out than {limit}",
            at="shutoff" if off.above is None else "off_above",
            help="show an outdoor thermostat that turns it off above {limit}", numbers=numbers,
        )  # fmt: skip
    if not rests:
        return Finding(
            "{name} goes off neither while nothing is wet nor from sunset to sunrise",
            at="moisture_sensor", help="show a moisture sensor or a daylight control for it", numbers=numbers,
        )  # fmt: skip
    return Meets(numbers)


RULE = Rule(
    code="CTRL-07", name="roof-deicing-not-switched-off", severity="correction", since="0.1",
    over=deicing, when=due("shutoff", "off_above", "moisture_sensor", "daylight_control"),
    needs=(shut_off, rests_when_dry_or_dark), limits=("deicing-off",), check=check,
    nothing="no roof or gutter is kept free of ice by heat", answers=("Q06",),
)  # fmt: skip
