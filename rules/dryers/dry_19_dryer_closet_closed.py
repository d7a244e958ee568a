"""A dryer stands in a closet with too little opening for the air that it takes.

A dryer blows out 100 to 200 cfm that must come into the closet first. Behind a tight door it starves, runs hot and
draws air backward out of any flue that is near.

The usual cause is a solid door on a laundry closet. Use a louvered door or grilles with the net free area that
the dryer's instructions ask for, or else 100 square inches.
"""

from checker import each
from checker.case import Case, quantity
from checker.design.hoods import Dryer
from checker.physics.distances import ROUNDING
from checker.quantities.dryer_closet import area_by_maker, closet_area, in_closet
from checker.quantities.dryer_duct import is_connected
from checker.rule import Finding, Meets, Num, Rule


@quantity("small_area")
def opening_area(case: Case, dryer: Dryer) -> float:
    """Net area of the closet's openings."""
    return closet_area(case, dryer)


def stands_in_closet(case: Case, dryer: Dryer) -> bool:
    """The dryer does not stand in a closet, or has no exhaust yet."""
    return is_connected(case, dryer) and in_closet(case, dryer)


def check(_dryer: Dryer, area: float, by_maker: float | None, by_code: float) -> Meets | Finding:
    """Compare with the instructions' area where there is one, else with the code's."""
    least = by_code if by_maker is None else by_maker
    numbers = {"least": Num(least, "small_area"), "short": Num(max(0.0, least - area), "small_area")}
    if area >= least - ROUNDING:
        return Meets(numbers)
    return Finding(
        "the closet of this dryer has {opening_area} of opening, less than {least}", at="closet_opening",
        help="add {short} of net opening, for example a louvered door", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="DRY-19", name="dryer-closet-closed", severity="correction", since="0.1",
    over=each.dryer, when=stands_in_closet, needs=(opening_area, area_by_maker), limits=("dryer-closet-opening",),
    cites=("dryer-closet-opening",),
    check=check, nothing="the design has no clothes dryer", answers=("C11",),
)  # fmt: skip
