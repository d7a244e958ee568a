"""The slot or box of a filter is not sealed.

The filter box is under the strongest suction of the whole duct system. An open slot in an attic or closet draws
in dusty, hot, cold or damp air past the filter. The code seals ducts, air handlers and filter boxes alike.

Show a box with a gasketed door, or a cover over the slot.
"""

from checker import each
from checker.case import Case, given
from checker.design.equipment import Equipment
from checker.design.filters import Filter
from checker.quantities.filters import holders, movers_served
from checker.rule import Finding, Meets, Rule


def in_a_box(case: Case, filter_: Filter) -> bool:
    """It sits in a grille, or belongs to no heating or cooling equipment."""
    grille = case.maybe(filter_, "place") == "return grille" or bool(holders(case, filter_))
    if grille and case.maybe(filter_, "box_sealed") is None:
        return False
    return any(isinstance(mover, Equipment) for mover in movers_served(case, filter_))


def check(filter_: Filter, sealed: bool) -> Meets | Finding:
    """Whether the box is sealed."""
    if sealed:
        return Meets()
    return Finding(
        f"the box of {filter_.name} is not sealed",
        at="box_sealed",
        help="show a filter box with a gasketed door or a cover over the slot",
    )


RULE = Rule(
    code="FILT-11", name="filter-slot-unsealed", severity="correction", since="0.1",
    over=each.filter, when=in_a_box, needs=(given("box_sealed"),), cites=("filter-box-sealing",), check=check,
    nothing="no filter is named", answers=("G11",),
)  # fmt: skip
