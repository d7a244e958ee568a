"""A ducted heating or cooling unit has no filter.

Without a filter the coil catches the dust of the house. It clogs within a few years, airflow falls, and the wet
side of the coil grows mold. Cleaning means opening the unit, often in an attic.

The usual cause is a slim duct unit or air handler whose filter was left to somebody else. Show a filter in the
return grille or in a box before the unit, and name it under the unit or with `serves`.
"""

from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.design.equipment import Equipment
from checker.quantities.ducted_units import ducted_units, lacks_filter
from checker.quantities.filters import filters_serving
from checker.rule import Finding, Meets, Rule


@quantity()
def filters_of_unit(case: Case, unit: Equipment) -> int:
    """How many filters clean the air of a unit. Raises Missing where the file doesn't tell."""
    if case.maybe(unit, "internal_filter"):
        return 1
    found = len(filters_serving(case, unit))
    if not found and unit.kind == "evaporative cooler":
        raise NotApplicable("an evaporative cooler wets and washes its air")
    if not found and not lacks_filter(case, unit):
        raise Missing(path_of(unit, "filter"))
    return found


def check(unit: Equipment, filters: int) -> Meets | Finding:
    """Any filter will do here."""
    if filters:
        return Meets()
    return Finding(
        f"the filters of the design are listed, and none of them cleans the air of {unit.name}",
        at="filter",
        help="show a filter in the return grille or before the unit, or say `internal_filter: yes` if it has its own",
    )


RULE = Rule(
    code="FILT-03", name="ducted-unit-without-filter", severity="caution", since="0.1",
    over=ducted_units, needs=(filters_of_unit,), cites=("unit-filter",), check=check,
    nothing="no unit of the design has ducts", answers=("G03",),
)  # fmt: skip
