"""The overflow drain is thinner than 3/4 in or falls less than 1/8 in per foot.

It stays dry for years and has to work at once. A thin or flat pipe, with an insect nest in it, does not.

Draw it like the main drain: 3/4 in nominal, 1/8 in per foot or more.
"""

from checker.case import given
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import catches_by, drains
from checker.rule import Finding, Meets, Num, Rule


def check(
    drain: CondensateDrain, size: float, slope: float, least_size: float, least_slope: float
) -> Meets | Finding:
    """Size and fall."""
    if size < least_size:
        return Finding(
            f"the overflow drain of {drain.name} is {{found}}, less than {{secondary_drain_size}}",
            at="overflow_drain.size",
            help="lead it in a pipe of {secondary_drain_size} or more",
            numbers={"found": Num(size, "length")},
        )
    if slope < least_slope:
        return Finding(
            f"the overflow drain of {drain.name} falls {{slope}}, less than {{secondary_drain_slope}}",
            at="overflow_drain.slope",
            help="give it a fall of 1/8 in/ft or more",
        )
    return Meets()


RULE = Rule(
    code="COND-11", name="overflow-drain-too-small-or-flat", severity="correction", since="0.1",
    over=drains, when=catches_by("pan with drain", "overflow drain"),
    needs=(given("overflow_drain.size"), given("overflow_drain.slope")),
    limits=("secondary-drain-size", "secondary-drain-slope"), check=check,
    nothing="no condensate drain is drawn", answers=("J10",),
)  # fmt: skip
