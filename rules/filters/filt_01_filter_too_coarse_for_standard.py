"""The filter of a ducted unit is coarser than ASHRAE 62.2 asks for.

Dust that passes the filter settles on the coil and in the ducts. There it insulates, stays damp and feeds mold.
Where the design is held against ASHRAE 62.2, air that a heating or cooling unit sends through more than 10 ft of
duct passes a filter with a least MERV.

The usual cause is the washable screen that comes with a slim duct unit. Put a rated filter in the return grille
or in a box before the unit, and check that the blower can bear it.
"""

from checker.case import Case
from checker.design.equipment import Equipment
from checker.quantities.ducted_units import best_merv, ducted_units, is_filtered_by_standard
from checker.rule import Finding, Meets, Rule


def through_long_ducts(case: Case, unit: Equipment) -> bool:
    """Its supply ducts are no longer than 10 ft together, or it is an evaporative cooler."""
    return is_filtered_by_standard(case, unit, "filter-efficiency")


def check(unit: Equipment, merv: float, limit: float) -> Meets | Finding:
    """Compare the best filter of the unit with the least MERV."""
    if merv >= limit:
        return Meets()
    return Finding(
        f"the best filter of {unit.name} is MERV {{best_merv}}, less than MERV {{limit}}",
        at="filter",
        help="fit a filter of MERV {limit} or more, with a face large enough for the blower",
    )


RULE = Rule(
    code="FILT-01", name="filter-too-coarse-for-standard", severity="correction", since="0.1",
    over=ducted_units, when=through_long_ducts, needs=(best_merv,), limits=("filter-efficiency",),
    cites=("filter-duct-length",), check=check, nothing="no unit of the design has ducts", answers=("G02",),
)  # fmt: skip
