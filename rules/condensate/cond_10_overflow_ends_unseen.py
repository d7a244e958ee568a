"""The overflow drain ends where nobody notices the drip, or leaves the pan too low.

The second drain is an alarm: water from it says that the first is stopped. Over a window or a door people see it; into the
first drain or a vent they do not. From the unit's own pan it must leave above the first drain, or it carries water every
day and says nothing.

End it in a conspicuous place, such as over a window, and mark it.
"""

from checker.case import Case, given, quantity
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import catches_by, drains, methods
from checker.rule import Finding, Meets, Rule


@quantity()
def leaves_above(case: Case, drain: CondensateDrain) -> bool:
    """Whether it leaves the unit's pan above the first drain; asked only for one from that pan."""
    if "overflow drain" not in methods(case, drain):
        return True
    return bool(case.get(drain.overflow_drain, "above_primary")) if drain.overflow_drain else False


def check(drain: CondensateDrain, seen: bool, above: bool) -> Meets | Finding:
    """Seen, and above the first drain."""
    if seen and above:
        return Meets()
    if not seen:
        return Finding(
            f"the overflow drain of {drain.name} ends where nobody notices the drip",
            at="overflow_drain.conspicuous",
            help="end it in a conspicuous place, such as over a window, and mark it",
        )
    return Finding(
        f"the overflow drain of {drain.name} does not leave the pan above the main drain",
        at="overflow_drain.above_primary",
        help="connect it to the pan above the main drain",
    )


RULE = Rule(
    code="COND-10", name="overflow-ends-unseen", severity="correction", since="0.1",
    over=drains, when=catches_by("pan with drain", "overflow drain"),
    needs=(given("overflow_drain.conspicuous"), leaves_above), cites=("overflow-seen",), check=check,
    nothing="no condensate drain is drawn", answers=("J05", "J06"),
)  # fmt: skip
