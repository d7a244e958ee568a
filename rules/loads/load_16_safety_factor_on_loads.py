"""Something was added to the calculated loads for safety.

The method takes an almost coldest hour, no sun, no people, and leaky air: it is on the safe side already. A tenth
on top, then the next larger size, then a spare for later, and the unit ends up at twice what the house needs. It
runs in short spells, is loud, and dries the air badly in summer.

Take the loads as they were worked out. Where more is wanted for a known reason, say so in the papers.
"""

from checker.case import given
from checker.design.controls import LoadsPaper
from checker.quantities.load_paper import stating
from checker.rule import Finding, Meets, Rule


def check(_paper: LoadsPaper, added: float, limit: float) -> Meets | Finding:
    """Anything above the limit is the finding."""
    if added <= limit + 1e-9:
        return Meets()
    return Finding(
        "{safety_factor} was added to the calculated loads for safety",
        at="safety_factor", help="take the loads as they were worked out; the equipment may still be the next size up",
    )


RULE = Rule(
    code="LOAD-16", name="safety-factor-on-loads", severity="caution", since="0.1",
    over=stating("safety_factor"), needs=(given("safety_factor"),), limits=("no-safety-factor",), check=check,
    nothing="the load calculation does not say that anything was added",
)  # fmt: skip
