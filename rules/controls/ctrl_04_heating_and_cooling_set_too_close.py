"""Heating and cooling of the same rooms are set so close that they work against each other.

With set points a degree apart a system that can do both swings from one to the other within the hour, and two
systems with thermostats of their own heat and cool the same air at once. It is seen only on the bill.

Set cooling a few degrees above heating, or let one thermostat command both.
"""

from checker.quantities.thermostats import Pair, pairs, set_points_apart
from checker.rule import Finding, Meets, Num, Rule


def check(pair: Pair, apart: float, least: float) -> Meets | Finding:
    """The difference of the set points."""
    numbers = {"name": Num(pair.name)}
    if apart >= least - 1e-6:
        return Meets(numbers)
    if apart < 0:
        return Finding(
            "{name}: cooling is set {below} below heating, so that both run at once",
            help="set cooling at least {limit} above heating",
            numbers={**numbers, "below": Num(-apart, "temperature_difference")},
        )
    return Finding(
        "{name}: cooling is set {set_points_apart} above heating, closer than the usual {limit}",
        help="set cooling at least {limit} above heating",
        numbers=numbers,
    )


RULE = Rule(
    code="CTRL-04", name="heating-and-cooling-set-too-close", severity="caution", since="0.1",
    over=pairs, needs=(set_points_apart,), limits=("set-points-apart",), check=check,
    nothing="no thermostat states set points for heating and for cooling",
)  # fmt: skip
