"""A dryer's exhaust duct does not fit into the cavity that it runs in.

Four-inch pipe in a wall of 2x4 studs, three and a half inches deep, is squeezed flat: the dryer works against it
and lint gathers at the narrow place.

The usual cause is a laundry wall that nobody thickened. Use deeper studs or fur the wall out, or lead the duct
where there is room.
"""

from checker import each
from checker.case import Case
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import duct, duct_field, is_ductless
from checker.rule import Finding, Meets, Num, Rule
from checker.sizes import Size

CAVITIES = frozenset({"exterior wall", "chase"})


def in_a_cavity(case: Case, dryer: Dryer) -> bool:
    """The duct is not said to run in a wall or chase, or the dryer has no exhaust."""
    airway = duct(case, dryer)
    if is_ductless(dryer) or airway is None:
        return False
    stated = airway.cavity_depth is not None or f"{airway.path}.cavity_depth" in case.design.tbd
    return stated or bool(CAVITIES & set(airway.location))


def check(_dryer: Dryer, depth: float, size: Size) -> Meets | Finding:
    """The smaller side of the duct must fit."""
    side = min(size.width, size.height)
    numbers = {"side": Num(side, "length"), "short": Num(max(0.0, side - depth), "length")}
    if side <= depth:
        return Meets(numbers)
    return Finding(
        "this dryer's duct is {side} deep and its cavity {cavity_depth}", at="duct.cavity_depth",
        help="deepen the cavity by {short} or more, or lead the duct elsewhere", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="DRY-09", name="dryer-duct-squeezed", severity="correction", since="0.1",
    over=each.dryer, when=in_a_cavity, needs=(duct_field("cavity_depth", "length"), duct_field("size")),
    cites=("dryer-duct-cavity",), check=check, nothing="the design has no clothes dryer", answers=("E05",),
)  # fmt: skip
