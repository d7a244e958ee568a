"""The place of a filter shows neither its design airflow nor the clean drop that it may have.

Whoever buys the next filter sees only its size. A finer filter of the same size may halve the airflow. Where the
design is held against ASHRAE 62.2, the filter's place carries a label with the design airflow and the greatest
clean pressure drop.

Add the label to the drawing's notes and have it stuck beside the filter.
"""

from checker import each
from checker.case import Case, given
from checker.design.equipment import Equipment
from checker.design.filters import Filter
from checker.quantities.filters import movers_served
from checker.rule import Finding, Meets, Rule


def of_equipment(case: Case, filter_: Filter) -> bool:
    """It belongs to no heating or cooling equipment."""
    return any(isinstance(mover, Equipment) for mover in movers_served(case, filter_))


def check(filter_: Filter, label: bool) -> Meets | Finding:
    """Whether there is a label."""
    if label:
        return Meets()
    return Finding(
        f"no label beside {filter_.name} shows the design airflow and the greatest clean drop",
        at="label",
        help="note a label with the design airflow and the greatest clean pressure drop beside the filter",
    )


RULE = Rule(
    code="FILT-10", name="filter-label-missing", severity="note", since="0.1",
    over=each.filter, when=of_equipment, needs=(given("label"),), cites=("filter-label",), check=check,
    nothing="no filter is named", answers=("G14",),
)  # fmt: skip
