"""The drop at which a filter is changed is not above its clean drop.

A filter starts at its clean drop and is changed at its final one, usually about twice as high. Fans and ducts are
judged with both: if the final drop is the smaller, one of the two figures is wrong, or they are for different
airflows.

Look both up on the maker's sheet at the same airflow.
"""

from checker import each
from checker.case import Case, given
from checker.design.filters import Filter
from checker.rule import Finding, Meets, Rule


def has_both_drops(case: Case, filter_: Filter) -> bool:
    """Its clean and its final pressure drop are not both stated."""
    return case.maybe(filter_, "drop_clean") is not None and case.maybe(filter_, "drop_final") is not None


def check(filter_: Filter, clean: float, final: float) -> Meets | Finding:
    """The final drop is above the clean one."""
    if final > clean:
        return Meets()
    return Finding(
        f"{filter_.name} drops {{drop_clean}} clean and is changed at {{drop_final}}, which is not more",
        at="drop_final",
        help="state both drops from the maker's sheet at one airflow",
    )


RULE = Rule(
    code="FILT-13", name="final-drop-below-clean", severity="caution", since="0.1",
    over=each.filter, when=has_both_drops, needs=(given("drop_clean"), given("drop_final")), cites=("filter-final-drop",),
    check=check, nothing="no filter is named",
)  # fmt: skip
