"""A long dryer duct has no label that states its length.

Whoever buys the next dryer must know how long the hidden duct is, or may buy one that cannot push through it.

The usual cause is that the label is left to the trades. Note on the drawing: a permanent label with the length,
within 6 ft of the connection, where the duct counts more than 35 ft.
"""

from checker import each
from checker.case import Case, Missing, NotApplicable, quantity
from checker.design.hoods import Dryer
from checker.physics.distances import ROUNDING
from checker.quantities.dryer_duct import is_vented, length_with_fittings
from checker.quantities.places import Span
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def long_duct(case: Case, dryer: Dryer) -> Span:
    """Length of a duct that needs a label."""
    length = length_with_fittings(case, dryer)
    most = float(case.limit("dryer-duct-length"))
    if length.high <= most + ROUNDING:
        raise NotApplicable("the duct is short enough to need no label")
    if length.low <= most + ROUNDING:
        raise Missing(*length.missing)
    return length


@quantity()
def label(case: Case, dryer: Dryer) -> bool:
    """Whether a label is shown."""
    long_duct(case, dryer)
    return bool(case.get(dryer, "length_label"))


def check(_dryer: Dryer, length: Span, labelled: bool, most: float) -> Meets | Finding:
    """A long duct has its label."""
    numbers = {"length": Num(length.low, "length")}
    if labelled:
        return Meets(numbers)
    return Finding(
        "this dryer's duct counts {length}, more than {limit}, and no label states its length", at="length_label",
        help="show a permanent label with the length within 6 ft of the connection", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="DRY-17", name="dryer-length-not-marked", severity="correction", since="0.1",
    over=each.dryer, when=is_vented, needs=(long_duct, label), limits=("dryer-duct-length",),
    cites=("dryer-length-label",), check=check, nothing="the design has no clothes dryer", answers=("E15",),
)  # fmt: skip
