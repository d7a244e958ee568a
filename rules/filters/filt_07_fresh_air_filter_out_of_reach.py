"""The filter of a ventilation fan cannot be reached to be changed.

Outdoor air is dirtier than room air, so this filter loads fast, often within a season. If it sits where nobody
goes, the fan that keeps the house ventilated slowly stops moving air and nobody notices.

The usual cause is a filter box in the attic beside the fan. Put the box where people reach it, or bring the
filter down to a grille.
"""

from checker.case import Case, given
from checker.design.fans import Fan
from checker.design.filters import Filter
from checker.quantities.filters import served_filters
from checker.rule import Finding, Meets, Rule


def fan_filters(case: Case) -> list[Filter]:
    """Filters of fans alone."""
    return [filter_ for filter_, served in served_filters(case) if all(isinstance(mover, Fan) for mover in served)]


def check(filter_: Filter, access: bool) -> Meets | Finding:
    """Whether people can reach it."""
    if access:
        return Meets()
    return Finding(
        f"{filter_.name} cannot be reached to be changed",
        at="access",
        help="put its box where people reach it without tools, or bring the filter down to a grille",
    )


RULE = Rule(
    code="FILT-07", name="fresh-air-filter-out-of-reach", severity="caution", since="0.1",
    over=fan_filters, needs=(given("access"),), cites=("fresh-air-filter-access",), check=check,
    nothing="no filter is named for a fan", answers=("G03",),
)  # fmt: skip
