"""A condensate pipe is smaller than 3/4 in.

Slime grows in condensate pipes. A thin pipe stops up in a season, and the pan runs over. The code wants 3/4 in nominal
from the pan to the end, whatever hose the unit comes with.

Usual cause: the unit's own thin hose is drawn all the way. Lead it into a 3/4 in pipe near the unit. The tube after a pump
goes by the pump's instructions.
"""

from checker.case import CannotJudge, Case, quantity
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import drains, drains_a_coil
from checker.rule import Finding, Meets, Rule


@quantity("length")
def size(case: Case, drain: CondensateDrain) -> float:
    """Nominal size of the pipe. CannotJudge for a thin one with a pump, whose tube goes by its maker."""
    stated = float(case.get(drain, "size"))
    if stated < float(case.codebook.compared("condensate-pipe-size")) and case.maybe(drain, "pump") is not None:
        raise CannotJudge("the tube after a pump goes by the pump's instructions; the pipe before it is judged")
    return stated


def check(drain: CondensateDrain, found: float, limit: float) -> Meets | Finding:
    """Compare the pipe with the least size."""
    if found >= limit:
        return Meets()
    return Finding(
        f"the condensate pipe of {drain.name} is {{size}}, less than {{limit}}",
        at="size",
        help="lead the condensate in a pipe of {limit} or more from the pan to its end",
    )


RULE = Rule(
    code="COND-04", name="condensate-pipe-too-small", severity="correction", since="0.1",
    over=drains, when=drains_a_coil, needs=(size,), limits=("condensate-pipe-size",), check=check,
    nothing="no condensate drain is drawn", answers=("J02",),
)  # fmt: skip
