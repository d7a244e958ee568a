"""The metal of a dryer's exhaust duct is too thin.

Thin pipe dents and its seams open; if lint burns inside, a thin wall holds the fire for less time.

The usual cause is light snap-lock pipe of 30 gage from the shelf. Show 28 gage, 0.0157 in, or heavier.
"""

from checker import each
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import duct_field, duct_speaks_of
from checker.rule import Finding, Meets, Rule

SLACK = 1e-12


def check(_dryer: Dryer, thickness: float, least: float) -> Meets | Finding:
    """Compare the sheet with the least thickness."""
    if thickness >= least - SLACK:
        return Meets()
    return Finding(
        "this dryer's duct is of {thickness} metal, thinner than {limit}", at="duct.thickness",
        help="use pipe of {limit} (28 gage) or heavier",
    )  # fmt: skip


RULE = Rule(
    code="DRY-05", name="dryer-duct-too-thin", severity="correction", since="0.1",
    over=each.dryer, when=duct_speaks_of("thickness"), needs=(duct_field("thickness", "length"),), limits=("dryer-duct-thickness",),
    check=check, nothing="the design has no clothes dryer", answers=("E02",),
)  # fmt: skip
