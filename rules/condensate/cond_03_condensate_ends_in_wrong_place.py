"""A condensate drain ends where its water does harm.

Water on a walk or street freezes or grows slime, and people fall. In a crawl space or attic it rots the house and feeds
mold. The code wants an approved place and forbids streets, alleys and other places where it is a nuisance.

Lead it to a floor drain, a standpipe with an air gap, a dry well, or the ground away from walks and foundation, as the
local authority accepts.
"""

from checker.case import given
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import drains, drains_a_coil
from checker.rule import Finding, Meets, Rule

WRONG = ("street", "walkway", "crawl space", "attic")


def check(drain: CondensateDrain, end: str) -> Meets | Finding:
    """The end must not be one of the places where water does harm."""
    if end not in WRONG:
        return Meets()
    where = {"street": "in the street or alley", "walkway": "on a walkway"}.get(end, f"in the {end}")
    return Finding(
        f"the condensate of {drain.name} ends {where}",
        at="to",
        help="lead it to an accepted place, such as a floor drain, standpipe, dry well or planted ground",
    )


RULE = Rule(
    code="COND-03", name="condensate-ends-in-wrong-place", severity="correction", since="0.1",
    over=drains, when=drains_a_coil, needs=(given("to"),), cites=("condensate-disposal",), check=check,
    nothing="no condensate drain is drawn", answers=("J03",),
)  # fmt: skip
