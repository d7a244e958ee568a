"""The friction rate that ducts are to be sized at lies outside the usual window.

The friction rate is the static pressure left for the ducts, spread over the longest supply and return run with
their fittings. Below about 0.06 in w.c. per 100 ft the ducts come out too large to build, or, sized as usual,
starve the far rooms. Above about 0.18 they come out small, fast and loud.

Too low: shorten the longest run, use fittings with less loss, a filter and grilles with less drop, or a blower
with more static pressure. Too high: choose a slower blower setting. Where the ducts already have sizes, their
own static pressure decides instead.
"""

from checker.case import Case
from checker.design.ducts import DuctSystem
from checker.quantities.duct_scope import comfort_systems
from checker.quantities.duct_sheet import Rate, friction_rate
from checker.rule import Finding, Meets, Num, Rule


def with_runs_or_rate(case: Case) -> list[DuctSystem]:
    """Systems of equipment with runs or a declared friction rate."""
    return [each for each in comfort_systems(case) if each.runs or each.declared_friction_rate is not None]


def check(system: DuctSystem, rate: Rate, window: list[float]) -> Meets | Finding:
    """Compare with the window; a computed rate is an upper bound, so only too low says something."""
    low, high = window
    numbers = {
        "system": Num(system.name),
        "rate": Num(rate.value, "friction_rate"),
        "least": Num(low, "friction_rate"),
        "most": Num(high, "friction_rate"),
    }
    at = "declared_friction_rate" if rate.is_declared and system.declared_friction_rate is not None else ""
    if rate.value < low:
        whose = "the declared friction rate" if rate.is_declared else "what is left for the ducts"
        return Finding(
            f"{whose} of {{system}} is {{rate}}, below the usual window from {{least}}",
            at=at,
            help="shorten the longest run, lower the drop of filter, coil and grilles, or offer more static pressure",
            numbers=numbers,
        )
    if rate.is_declared and rate.value > high:
        return Finding(
            "the declared friction rate of {system} is {rate}, above the usual window up to {most}",
            at=at,
            help="size the ducts at {most} or less, or run the blower at a slower setting",
            numbers=numbers,
        )
    return Meets(numbers)


RULE = Rule(
    code="DUCT-04", name="friction-rate-outside-window", severity="caution", since="0.1",
    over=with_runs_or_rate, needs=(friction_rate,), limits=("friction-rate-window",), check=check, answers=("F43",),
    nothing="no duct system of heating or cooling equipment is described",
)  # fmt: skip
