"""Air reaches the core of a recovery unit without a filter.

The narrow passages of a core clog with lint from the house on one side and with pollen and insects on the other.
Then the two airflows drift apart, recovery falls and the core freezes sooner. Makers ask for a filter on both
sides.

Most units hold both filters inside: say so with `both_sides_filtered`. If only the intake has one, add the
other at the stale-air inlet.
"""

from checker.case import Case, Missing, quantity
from checker.design.fans import Fan
from checker.quantities.filters import filters_serving
from checker.rule import Finding, Meets, Rule

INCOMING = frozenset({"outdoor air inlet", "recovery core supply side"})
OUTGOING = frozenset({"exhaust inlet", "recovery core exhaust side"})


def recovery_units(case: Case) -> list[Fan]:
    """Fans that recover heat or moisture."""
    return [fan for fan in case.design.fans.values() if fan.role == "recovery"]


@quantity()
def both_sides(case: Case, fan: Fan) -> bool:
    """Whether both air streams pass a filter before the core."""
    stated = case.maybe(fan.recovery, "both_sides_filtered") if fan.recovery is not None else None
    if stated is not None:
        return bool(stated)
    places = {case.maybe(filter_, "place") for filter_ in filters_serving(case, fan)}
    if places & INCOMING and places & OUTGOING:
        return True
    raise Missing(f"{fan.path}.recovery.both_sides_filtered")


def check(fan: Fan, both: bool) -> Meets | Finding:
    """Both sides have a filter."""
    if both:
        return Meets()
    return Finding(
        f"incoming and outgoing air do not both pass a filter before the core of {fan.name}",
        at="recovery.both_sides_filtered",
        help="show a filter at the outdoor air inlet and one at the stale air inlet of the unit",
    )


RULE = Rule(
    code="FILT-16", name="recovery-core-unfiltered", severity="caution", since="0.1",
    over=recovery_units, needs=(both_sides,), cites=("recovery-core-filters",), check=check,
    nothing="no recovery unit is drawn", answers=("G06",),
)  # fmt: skip
