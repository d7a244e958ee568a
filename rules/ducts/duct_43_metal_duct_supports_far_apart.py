"""Supports of a metal duct are far apart.

Between supports a metal duct bends, and its joints open first. About 10 ft is the usual most for residential
sizes; heavy or lined duct, and joints that are not screwed, want less. The code refers to the SMACNA standards
for field-made metal duct and to the maker's instructions for factory-made duct.

Add hangers, one of them near each fitting.
"""

from checker.case import Case, given, path_of
from checker.design.airway import Run
from checker.quantities.duct_scope import runs
from checker.quantities.duct_sets import METALS
from checker.rule import Finding, Meets, Rule


def supported_runs(case: Case) -> list[Run]:
    """Metal runs whose supports are described, or to be decided."""
    described = [
        run
        for run in runs(case)
        if run.support_spacing is not None or path_of(run, "support_spacing") in case.design.tbd
    ]
    return [run for run in described if run.material in METALS]


def check(run: Run, spacing: float, most: float) -> Meets | Finding:
    """Compare the spacing with the usual most."""
    if spacing <= most:
        return Meets()
    return Finding(
        f"{run.name} is held every {{support_spacing}}, farther apart than {{limit}}",
        at="support_spacing",
        help="hang it at {limit} or less, and near each fitting",
    )


RULE = Rule(
    code="DUCT-43", name="metal-duct-supports-far-apart", severity="note", since="0.1",
    over=supported_runs, needs=(given("support_spacing"),), limits=("metal-duct-support",), check=check,
    nothing="no supports of metal duct are described", answers=("F12",),
)  # fmt: skip
