"""Equipment is sized by floor area alone.

So many square feet for each ton was a fair guess for leaky houses of the past. A new house may need a third of
it, and two houses of one size differ by their windows alone. The code wants loads, worked out for this house.

Work the loads out and choose the equipment by them. The floor area may stay on the sheet as a cross-check.
"""

from checker.case import given
from checker.design.controls import LoadsPaper
from checker.quantities.load_paper import stating
from checker.rule import Finding, Meets, Rule


def check(_paper: LoadsPaper, by_area: bool) -> Meets | Finding:
    """A yes is the finding."""
    if not by_area:
        return Meets()
    return Finding(
        "the equipment is sized by floor area alone, without loads",
        at="sized_by_area", help="work the loads out by ACCA Manual J, and select the equipment by them",
    )


RULE = Rule(
    code="LOAD-03", name="sized-by-floor-area", severity="correction", since="0.1",
    over=stating("sized_by_area"), needs=(given("sized_by_area"),), cites=("load-calculation-method",), check=check,
    answers=("H01",), nothing="the papers do not say that anything was sized by floor area",
)  # fmt: skip
