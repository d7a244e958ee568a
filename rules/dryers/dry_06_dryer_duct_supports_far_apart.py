"""A dryer's exhaust duct is supported too seldom.

A duct that hangs through opens at its joints, and lint and water gather at the low point.

The usual cause is a long run through an attic that only rests on the insulation. Strap it at least every 12 ft;
some places ask for every 4 ft. A run that is itself no longer than that is held by its ends.
"""

from checker import each
from checker.case import Case, Missing, quantity
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import duct_says, duct_speaks_of, the_duct
from checker.quantities.opening_kinds import stated
from checker.rule import Finding, Meets, Rule


@quantity("length")
def unsupported_length(case: Case, dryer: Dryer) -> float:
    """Greatest length of the duct between supports, m; a short duct is held by its ends."""
    airway = the_duct(case, dryer, "support_spacing")
    spacing = stated(case, airway, "support_spacing")
    length = duct_says(case, dryer, "length")
    if spacing is None and isinstance(length, float) and length <= case.limit("dryer-duct-support"):
        return length
    if not isinstance(spacing, float):
        raise Missing(f"{airway.path}.support_spacing")
    return spacing


def check(_dryer: Dryer, spacing: float, most: float) -> Meets | Finding:
    """Compare the spacing of supports with the greatest."""
    if spacing <= most:
        return Meets()
    return Finding(
        "this dryer's duct is supported every {unsupported_length}, farther apart than {limit}",
        at="duct.support_spacing", help="support the duct at least every {limit}",
    )  # fmt: skip


RULE = Rule(
    code="DRY-06", name="dryer-duct-supports-far-apart", severity="correction", since="0.1",
    over=each.dryer, when=duct_speaks_of("support_spacing"), needs=(unsupported_length,),
    limits=("dryer-duct-support",), check=check, nothing="the design has no clothes dryer", answers=("E03",),
)  # fmt: skip
