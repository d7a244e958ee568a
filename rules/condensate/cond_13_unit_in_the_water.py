"""The unit or its insulation stands below the rim of the auxiliary pan.

When the pan fills, what stands in it gets wet: insulation soaks, controls corrode and people may get a shock. The code wants
it above the rim, on supports that water does not harm.

Show feet or rails in the pan, higher than its rim, of plastic or metal, not wood.
"""

from checker.case import given
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import catches_by, drains
from checker.rule import Finding, Meets, Rule


def check(drain: CondensateDrain, above: bool) -> Meets | Finding:
    """Above the rim."""
    if above:
        return Meets()
    return Finding(
        f"the unit of {drain.name} stands below the rim of its auxiliary pan",
        at="pan.unit_above_rim",
        help="raise it above the rim on supports that water does not harm",
    )


RULE = Rule(
    code="COND-13", name="unit-in-the-water", severity="correction", since="0.1",
    over=drains, when=catches_by("pan with drain", "pan with switch", "pan"),
    needs=(given("pan.unit_above_rim"),), cites=("unit-above-pan-rim",), check=check,
    nothing="no condensate drain is drawn", answers=("J11",),
)  # fmt: skip
