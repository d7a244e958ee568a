"""The floor area on the load calculation is not that of the house.

Internal gains, ventilation and every cross-check of a load calculation go by the floor area. When a room is added
or the basement is finished, the sheet is easily left behind.

Bring the sheet up to date, and have the loads worked out again: the walls and windows of the added room count too.
"""

from checker.case import given
from checker.design.controls import LoadsPaper
from checker.quantities.load_paper import design_floor_area, stating
from checker.rule import Finding, Meets, Num, Rule


def check(_paper: LoadsPaper, stated: float, own: float, tolerance: float) -> Meets | Finding:
    """Apart by more than the tolerance of the design's figure."""
    numbers = {"apart": Num(abs(stated / own - 1.0) if own > 0 else 1.0, "share")}
    if abs(stated - own) <= tolerance * own * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "the load calculation counts {floor_area} of floor area; the design has {design_floor_area}, {apart} apart",
        at="floor_area", help="bring the load calculation up to the floor area of the drawings", numbers=numbers,
    )


RULE = Rule(
    code="LOAD-07", name="load-paper-floor-area-off", severity="caution", since="0.1",
    over=stating("floor_area"), needs=(given("floor_area"), design_floor_area), limits=("paper-area-tolerance",),
    check=check, answers=("H16",), nothing="the load calculation states no floor area",
)  # fmt: skip
