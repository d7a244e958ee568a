"""All filters of a unit sit after its coil.

A filter at the supply outlets protects the rooms but not the coil, which then catches the dust of the house and
stays damp. Filters after a cooling coil also get wet, and wet filters grow mold and sag.

Move the filter to the return grille or to a box before the unit. A finer second filter after the coil may stay
if it keeps dry.
"""

from checker.case import Case, NotApplicable, quantity
from checker.design.equipment import Equipment
from checker.quantities.ducted_units import ducted_units
from checker.quantities.filters import filters_serving, holders
from checker.rule import Finding, Meets, Num, Rule

AFTER = ("downstream of coil", "supply outlet")


@quantity()
def places(case: Case, unit: Equipment) -> tuple[str, ...]:
    """Where the filters of a unit sit."""
    filters = filters_serving(case, unit)
    if not filters or case.maybe(unit, "internal_filter"):
        raise NotApplicable("no filter is named for it, or it has its own before the coil")
    found = []
    for each in filters:
        kinds = {outlet.kind for outlet in holders(case, each)}
        held = "return grille" if kinds & {"return grille", "filter grille"} else ""
        found.append(held or str(case.get(each, "place")))
    return tuple(found)


def check(unit: Equipment, found: tuple[str, ...]) -> Meets | Finding:
    """At least one filter is before the coil."""
    if any(place not in AFTER for place in found):
        return Meets()
    return Finding(
        f"every filter of {unit.name} sits after its coil: {{where}}",
        at="filter",
        help="move the filter to the return grille or to a box before the unit",
        numbers={"where": Num(", ".join(dict.fromkeys(found)))},
    )


RULE = Rule(
    code="FILT-05", name="filter-after-the-coil", severity="caution", since="0.1",
    over=ducted_units, needs=(places,), cites=("filter-before-coil",), check=check,
    nothing="no unit of the design has ducts", answers=("G03",),
)  # fmt: skip
