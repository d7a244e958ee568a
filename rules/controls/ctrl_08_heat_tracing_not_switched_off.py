"""Heat tracing that protects a pipe from frost stays on when nothing can freeze.

Tracing on an outdoor pipe or a condensate drain is needed for some weeks a year; plugged in, it takes power for all
of them. From 2024 the energy chapter wants it to go off by itself when it is mild out, or when the fluid is in no
danger.

Show a thermostat with it. Where the pipe can be kept inside or drained, leave the tracing out.
"""

from checker.case import Case
from checker.design.outdoor_heat import OutdoorHeat
from checker.quantities.outdoor_heat import ShutOff, of_kind, tracing_off
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Num, Rule


def tracing(case: Case) -> list[OutdoorHeat]:
    """Heat that keeps pipes from freezing."""
    return of_kind(case, "freeze protection")


def check(node: OutdoorHeat, off: ShutOff | None, mild: float) -> Meets | Finding:
    """By the fluid, or by outdoor temperature."""
    numbers = {"name": Num(node.name)}
    if off is None or off.is_by(mild):
        return Meets(numbers)
    if off.above is not None:
        return Finding(
            "{name} goes off by itself above {set_at} only; it must be off above {limit}",
            at="off_above", help="set its thermostat to {limit} or less",
            numbers={**numbers, "set_at": Num(off.above, "temperature")},
        )  # fmt: skip
    return Finding(
        "{name} goes off by itself neither when it is warmer out than {limit} nor when its fluid cannot freeze",
        at="shutoff", help="show a thermostat that turns it off above {limit}", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="CTRL-08", name="heat-tracing-not-switched-off", severity="correction", since="0.1",
    over=tracing, when=due("shutoff", "off_above", "senses_fluid"), needs=(tracing_off,), limits=("tracing-off",),
    check=check, nothing="no pipe is kept from freezing by heat", answers=("Q07",),
)  # fmt: skip
