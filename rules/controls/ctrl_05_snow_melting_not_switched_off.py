"""Snow melting has no control that turns it off when it is not needed.

A heated walk takes as much power as a small house. Left to a switch it runs from November to April. The energy
chapter wants it to go off by itself when the pavement is warm and nothing falls, and to be turned off, by itself or
by hand, when it is mild out.

Show a control with a sensor in the pavement and one for snow, and its settings.
"""

from checker.case import Case
from checker.design.outdoor_heat import OutdoorHeat
from checker.quantities.outdoor_heat import (
    CLOSE,
    Pavement,
    ShutOff,
    kind_of,
    of_kind,
    pavement,
    shut_off_in_mild_weather,
)
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Num, Rule


def snow_melting(case: Case) -> list[OutdoorHeat]:
    """Snow-melting systems, and those that do not say what they are."""
    unknown = [node for node in case.design.outdoor_heat.values() if kind_of(node) is None]
    return of_kind(case, "snow melting") + unknown


def is_known(case: Case, node: OutdoorHeat) -> bool:
    """It is another kind of outdoor heat."""
    return kind_of(node) is not None or case.get(node, "kind") == "snow melting"


def check(node: OutdoorHeat, ground: Pavement, off: ShutOff | None, warm: float, mild: float) -> Meets | Finding:
    """The automatic control by pavement and snow, then the one by outdoor temperature."""
    numbers = {"name": Num(node.name)}
    if ground.above is None or ground.above > warm * (1 + CLOSE):
        set_at = "nothing turns {name} off" if ground.above is None else "{name} goes off above {set_at} of pavement only"
        return Finding(
            f"{set_at}; it must go off by itself above {{snow_melt_pavement}} of pavement while nothing falls",
            at="pavement_sensor" if ground.above is None else "off_above_pavement",
            help="show a pavement sensor that turns it off above {snow_melt_pavement} or less",
            numbers=numbers | ({} if ground.above is None else {"set_at": Num(ground.above, "temperature")}),
        )  # fmt: skip
    if not ground.senses_snow:
        return Finding(
            "{name} does not sense whether anything falls, so it cannot go off by itself while nothing does",
            at="precipitation_sensor", help="show a control with a sensor for snow and rain", numbers=numbers,
        )  # fmt: skip
    if off is None or off.by_hand or off.is_by(mild):
        return Meets(numbers)
    return Finding(
        "no control, automatic or by hand, lets {name} be off when it is warmer out than {snow_melt_outdoor}",
        at="shutoff" if off.above is None else "off_above",
        help="show a switch, or a control that turns it off above {snow_melt_outdoor}", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="CTRL-05", name="snow-melting-not-switched-off", severity="correction", since="0.1",
    over=snow_melting, needs=(pavement, shut_off_in_mild_weather),
    limits=("snow-melt-pavement", "snow-melt-outdoor"), check=check,
    when=due("pavement_sensor", "off_above_pavement", "precipitation_sensor", "shutoff", "off_above", when=is_known),
    nothing="the design has no snow melting", answers=("Q04",),
)  # fmt: skip
