"""The filter of heating or cooling equipment cannot be reached to be changed.

A filter that takes a ladder, a screwdriver and a crawl over the joists is not changed. It loads up until the
blower no longer gets air through it, or until it tears. The code asks that equipment is placed so that its filters
can be replaced.

Put the filter where people stand: in the return grille of the hall, or in a box with a door beside the unit.
"""

from checker.case import Case, given
from checker.design.equipment import Equipment
from checker.design.filters import Filter
from checker.quantities.filters import served_filters
from checker.rule import Finding, Meets, Rule


def unit_filters(case: Case) -> list[Filter]:
    """Filters of heating and cooling equipment."""
    return [filter_ for filter_, served in served_filters(case) if any(isinstance(mover, Equipment) for mover in served)]


def check(filter_: Filter, access: bool) -> Meets | Finding:
    """Whether people can reach it."""
    if access:
        return Meets()
    return Finding(
        f"{filter_.name} cannot be reached to be changed",
        at="access",
        help="move it to the return grille, or give its box a door that people reach without tools",
    )


RULE = Rule(
    code="FILT-06", name="unit-filter-out-of-reach", severity="correction", since="0.1",
    over=unit_filters, needs=(given("access"),), cites=("filter-access",), check=check,
    nothing="no filter is named for heating or cooling equipment", answers=("G10", "G03"),
)  # fmt: skip
