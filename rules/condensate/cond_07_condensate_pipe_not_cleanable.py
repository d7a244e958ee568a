"""A condensate pipe cannot be cleared without cutting it.

Every condensate pipe stops up some day. If it has to be cut for that, it will be mended with tape. The code wants it laid
so that it can be cleared and maintained.

Show a tee with a cap, a union or a cleanout at the unit, on the unit's side of the trap too.
"""

from checker.case import given
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import drains, drains_a_coil
from checker.rule import Finding, Meets, Rule


def check(drain: CondensateDrain, found: bool) -> Meets | Finding:
    """There must be a way to clear it."""
    if found:
        return Meets()
    return Finding(
        f"the condensate pipe of {drain.name} cannot be cleared without cutting it",
        at="cleanout",
        help="show a capped tee, union or cleanout at the unit",
    )


RULE = Rule(
    code="COND-07", name="condensate-pipe-not-cleanable", severity="correction", since="0.1",
    over=drains, when=drains_a_coil, needs=(given("cleanout"),), cites=("condensate-cleaning",), check=check,
    nothing="no condensate drain is drawn", answers=("J12",),
)  # fmt: skip
