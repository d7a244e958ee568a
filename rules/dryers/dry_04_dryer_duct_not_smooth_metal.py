"""A dryer's exhaust duct is not smooth metal.

Lint catches on the ribs of flexible duct, and plastic burns. Where such a duct is hidden in a wall, the fire
starts unseen.

The usual cause is a length of flexible duct that saves two elbows. Use smooth galvanized steel or aluminum pipe;
only the short transition behind the dryer may be flexible, and it is a product listed for that.
"""

from checker import each
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import duct_field, is_vented
from checker.rule import Finding, Meets, Rule

SMOOTH_METAL = frozenset({"galvanized steel", "stainless steel", "copper", "aluminum", "unknown metal"})


def check(_dryer: Dryer, material: str) -> Meets | Finding:
    """Only smooth metal will do."""
    if material in SMOOTH_METAL:
        return Meets()
    return Finding(
        "this dryer's duct is of {material}, not of smooth metal", at="duct.material",
        help="use smooth galvanized steel or aluminum pipe, elbows included",
    )  # fmt: skip


RULE = Rule(
    code="DRY-04", name="dryer-duct-not-smooth-metal", severity="correction", since="0.1",
    over=each.dryer, when=is_vented, needs=(duct_field("material"),), cites=("dryer-duct-smooth-metal",),
    check=check, nothing="the design has no clothes dryer", answers=("E02",),
)  # fmt: skip
