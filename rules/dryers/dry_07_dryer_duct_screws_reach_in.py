"""Fasteners reach too far into a dryer's exhaust duct.

Every screw tip inside the duct catches lint, and a plug of lint grows from there.

The usual cause is half-inch sheet metal screws. Use rivets, or screws that reach no more than an eighth of an
inch through, and foil tape that is listed for it.
"""

from checker import each
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import duct_field, duct_speaks_of
from checker.rule import Finding, Meets, Rule


def check(_dryer: Dryer, intrusion: float, most: float) -> Meets | Finding:
    """Compare what reaches inside with the most."""
    if intrusion <= most:
        return Meets()
    return Finding(
        "fasteners reach {screw_intrusion} into this dryer's duct, more than {limit}", at="duct.screw_intrusion",
        help="use rivets or shorter screws, and listed foil tape over the joints",
    )  # fmt: skip


RULE = Rule(
    code="DRY-07", name="dryer-duct-screws-reach-in", severity="correction", since="0.1",
    over=each.dryer, when=duct_speaks_of("screw_intrusion"), needs=(duct_field("screw_intrusion", "length"),),
    limits=("dryer-duct-fastener",), check=check, nothing="the design has no clothes dryer", answers=("E04",),
)  # fmt: skip
