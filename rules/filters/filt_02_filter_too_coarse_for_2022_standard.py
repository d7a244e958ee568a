"""The filter of a ducted unit is coarser than the 2022 edition of ASHRAE 62.2 asks for.

Dust that passes the filter settles on the coil and in the ducts. There it insulates, stays damp and feeds mold.
The 2022 edition of ASHRAE 62.2 raised the least MERV for air that a heating or cooling unit sends through more
than 10 ft of duct, for the sake of the people and not only of the coil.

The usual cause is the washable screen that comes with a slim duct unit. Put a rated filter in the return grille
or in a box before the unit, and check that the blower can bear it.
"""

from checker.case import Case
from checker.design.equipment import Equipment
from checker.quantities.ducted_units import best_merv, ducted_units, is_filtered_by_standard
from checker.rule import Finding, Meets, Rule


def through_long_ducts(case: Case, unit: Equipment) -> bool:
    """Its supply ducts are no longer than 10 ft together, or it is an evaporative cooler."""
    return is_filtered_by_standard(case, unit, "filter-efficiency-2022")


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
    code="FILT-02", name="filter-too-coarse-for-2022-standard", severity="caution", since="0.1",
    over=ducted_units, when=through_long_ducts, needs=(best_merv,), limits=("filter-efficiency-2022",),
    cites=("filter-duct-length",), check=check, nothing="no unit of the design has ducts", answers=("G02",),
)  # fmt: skip
