"""A recovery unit in a cold climate has no condensate drain.

In winter the outgoing air cools below its dew point in the core, and water collects in the unit. Without a drain it runs
out at the casing or freezes in the core. Cores that return moisture to the incoming air often need none; the maker says.

Give the unit a trapped drain to a floor drain, sump or sink with an air gap, inside the warm space all the way.
"""

from checker.case import Case, NotApplicable, quantity
from checker.design.fans import Fan
from checker.quantities.cold_climate import is_cold
from checker.quantities.condensate import drain_of, must_be_drained, recovery_units
from checker.rule import Finding, Meets, Rule


def collects_water(case: Case, fan: Fan) -> bool:
    """Its core returns moisture; the maker says whether it needs a drain."""
    moisture = None if fan.recovery is None else case.maybe(fan.recovery, "moisture")
    return not moisture


@quantity()
def drained(case: Case, fan: Fan) -> bool:
    """Whether a drain is drawn for it; asked only in a cold climate."""
    if drain_of(case, fan) is None and not is_cold(case, fan):
        raise NotApplicable("the climate is mild")
    return must_be_drained(case, fan)


def check(fan: Fan, found: bool) -> Meets | Finding:
    """A drain must be there."""
    if found:
        return Meets()
    return Finding(
        f"{fan.name} recovers heat in a cold climate, and the design has no condensate drain",
        help="show a trapped condensate drain for the unit, or state the moisture that its core returns",
    )


RULE = Rule(
    code="COND-02", name="recovery-unit-without-drain", severity="caution", since="0.1",
    over=recovery_units, when=collects_water, needs=(drained,), cites=("recovery-unit-drain",), check=check,
    nothing="no recovery unit is drawn", answers=("J20",),
)  # fmt: skip
