"""The window area on the load calculation is not that of the envelope.

Windows are the largest single part of most cooling loads, and the part that changes most between revisions. A
calculation made before a window was added, or by a guess of so much glass for each floor area, gives loads of
another house.

Count the windows again on the drawings, by the way they face, and have the loads worked out with them.
"""

from checker.case import given
from checker.design.controls import LoadsPaper
from checker.quantities.load_paper import design_window_area, stating
from checker.rule import Finding, Meets, Num, Rule


def check(_paper: LoadsPaper, stated: float, own: float, tolerance: float) -> Meets | Finding:
    """Apart by more than the tolerance of the design's figure."""
    numbers = {"apart": Num(abs(stated / own - 1.0) if own > 0 else 1.0, "share")}
    if abs(stated - own) <= tolerance * own * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "the load calculation counts {window_area} of window area; the design has {design_window_area}, {apart} apart",
        at="window_area", help="count the windows of the drawings again, and work the loads out with them", numbers=numbers,
    )


RULE = Rule(
    code="LOAD-08", name="load-paper-window-area-off", severity="caution", since="0.1",
    over=stating("window_area"), needs=(given("window_area"), design_window_area), limits=("paper-area-tolerance",),
    check=check, answers=("H16",), nothing="the load calculation states no window area",
)  # fmt: skip
