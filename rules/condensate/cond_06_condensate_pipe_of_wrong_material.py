"""A condensate pipe is of a material that the code does not list.

Vinyl tubing and garden hose sag, kink, get brittle and cannot be cleaned. The code lists pipe: ABS, cast iron, copper,
PEX, CPVC, galvanized steel, PE-RT, polyethylene, polypropylene and PVC.

Draw one of these from the unit's own short hose to the end. The tube after a pump goes by the pump's instructions.
"""

from checker.case import CannotJudge, Case, quantity
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import drains, drains_a_coil
from checker.rule import Finding, Meets, Rule


@quantity()
def material(case: Case, drain: CondensateDrain) -> str:
    """Material of the pipe. CannotJudge for tubing with a pump, whose tube goes by its maker."""
    stated = str(case.get(drain, "material"))
    if stated not in case.limit("condensate-pipe-materials") and case.maybe(drain, "pump") is not None:
        raise CannotJudge("the tube after a pump goes by the pump's instructions; the pipe before it is judged")
    return stated


def check(drain: CondensateDrain, found: str, listed: list[str]) -> Meets | Finding:
    """The material must be listed."""
    if found in listed:
        return Meets()
    return Finding(
        f"the condensate pipe of {drain.name} is {{material}}, which the code does not list",
        at="material",
        help="use pipe of PVC, CPVC, PEX, polyethylene, copper or another listed material",
    )


RULE = Rule(
    code="COND-06", name="condensate-pipe-of-wrong-material", severity="correction", since="0.1",
    over=drains, when=drains_a_coil, needs=(material,), limits=("condensate-pipe-materials",), check=check,
    nothing="no condensate drain is drawn", answers=("J13",),
)  # fmt: skip
