"""A condensate pipe falls less than 1/8 in per foot.

Water that stands grows slime, and slime stops the pipe. In a flat run every sag becomes a trap.

Give it 1/8 in per foot (1 percent) or more all the way and support it often, or use a pump where the height is missing.
"""

from checker.case import Case, NotApplicable, quantity
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import drains, drains_a_coil
from checker.rule import Finding, Meets, Rule


@quantity("slope")
def slope(case: Case, drain: CondensateDrain) -> float:
    """Fall of the pipe. Raises NotApplicable for a pumped one that states none."""
    if drain.slope is None and case.maybe(drain, "pump") is not None:
        raise NotApplicable("a pump lifts its water")
    return float(case.get(drain, "slope"))


def check(drain: CondensateDrain, found: float, limit: float) -> Meets | Finding:
    """Compare the fall with the least one."""
    if found >= limit:
        return Meets()
    return Finding(
        f"the condensate pipe of {drain.name} falls {{slope}}, less than {{limit}}",
        at="slope",
        help="give the pipe a fall of 1/8 in/ft or more toward its end",
    )


RULE = Rule(
    code="COND-05", name="condensate-slope-too-flat", severity="correction", since="0.1",
    over=drains, when=drains_a_coil, needs=(slope,), limits=("condensate-slope",), check=check,
    nothing="no condensate drain is drawn", answers=("J01",),
)  # fmt: skip
