"""A dryer's exhaust duct is not 4 in in diameter.

A narrower duct chokes the dryer; it runs hot and long. In a wider one the air is too slow to carry the lint,
which settles and can catch fire.

The usual cause is a 3 in or flat duct in a tight wall, or a 6 in duct that was meant to make up for length. Use
4 in round duct and shorten the way.
"""

from checker import each
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import duct_field, is_vented
from checker.rule import Finding, Meets, Num, Rule
from checker.sizes import Size, show_size

ROUNDING = 1e-9


def check(_dryer: Dryer, size: Size, diameter: float, tolerance: float) -> Meets | Finding:
    """A round duct of the nominal diameter."""
    helpful = "use round duct of {dryer_duct_diameter} all the way"
    if size.shape != "round":
        return Finding(
            "this dryer's duct is {size}, not round of {dryer_duct_diameter}", at="duct.size", help=helpful,
            numbers={"size": Num(show_size(size))},
        )  # fmt: skip
    numbers = {"size": Num(size.width, "diameter")}
    if abs(size.width - diameter) <= tolerance + ROUNDING:
        return Meets(numbers)
    return Finding(
        "this dryer's duct is {size} in diameter, not {dryer_duct_diameter}", at="duct.size", help=helpful,
        numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="DRY-03", name="dryer-duct-size-wrong", severity="correction", since="0.1",
    over=each.dryer, when=is_vented, needs=(duct_field("size"),),
    limits=("dryer-duct-diameter", "dryer-duct-nominal"), check=check,
    nothing="the design has no clothes dryer", answers=("E02",),
)  # fmt: skip
