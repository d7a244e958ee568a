"""A condensate drain ends on the ground right at the foundation.

Through a cooling season hundreds of gallons run out there. They wet the basement wall, wash out the footing and draw
insects.

End it a foot or more away, three feet in clay, on ground that falls away from the house.
"""

from checker.case import Case, given
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import drains
from checker.rule import Finding, Meets, Rule


def ends_on_the_ground(case: Case, drain: CondensateDrain) -> bool:
    """It does not end on the ground outdoors."""
    return bool(case.maybe(drain, "to") == "outdoors at grade")


def check(drain: CondensateDrain, distance: float, limit: float) -> Meets | Finding:
    """Compare the distance with the least one."""
    if distance >= limit:
        return Meets()
    return Finding(
        f"the condensate of {drain.name} ends {{foundation_distance}} from the foundation, nearer than {{limit}}",
        at="foundation_distance",
        help="end it {limit} or more from the foundation, on ground that falls away",
    )


RULE = Rule(
    code="COND-20", name="condensate-drips-at-foundation", severity="note", since="0.1",
    over=drains, when=ends_on_the_ground, needs=(given("foundation_distance"),),
    limits=("condensate-from-foundation",), check=check,
    nothing="no condensate drain is drawn", answers=("J21",),
)  # fmt: skip
