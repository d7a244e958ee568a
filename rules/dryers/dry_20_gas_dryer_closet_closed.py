"""A gas dryer stands in a closet with too little opening for air.

The flame needs air as well as the drum. Behind a tight door it burns badly and gives off carbon monoxide, which
leaks into the house.

The usual cause is a solid door on a laundry closet. Use a louvered door or grilles with the net free area that
the dryer's instructions ask for, or else 100 square inches, and have carbon monoxide alarms where people sleep.
The gas connection is for a qualified person.
"""

from checker import each
from checker.case import Case, quantity
from checker.design.hoods import Dryer
from checker.physics.distances import ROUNDING
from checker.quantities.dryer_closet import area_by_maker, closet_area, in_closet
from checker.quantities.dryer_duct import burns_gas, is_connected
from checker.rule import Finding, Meets, Num, Rule


@quantity("small_area")
def opening_area(case: Case, dryer: Dryer) -> float:
    """Net area of the closet's openings."""
    return closet_area(case, dryer)


def gas_in_closet(case: Case, dryer: Dryer) -> bool:
    """The dryer burns no gas, or does not stand in a closet."""
    electric = dryer.fuel is not None and not burns_gas(dryer)
    if electric or not is_connected(case, dryer) or not in_closet(case, dryer):
        return False
    return case.get(dryer, "fuel") is not None and burns_gas(dryer)


def check(_dryer: Dryer, area: float, by_maker: float | None, by_code: float) -> Meets | Finding:
    """Compare with the instructions' area where there is one, else with the code's."""
    least = by_code if by_maker is None else by_maker
    numbers = {"least": Num(least, "small_area"), "short": Num(max(0.0, least - area), "small_area")}
    if area >= least - ROUNDING:
        return Meets(numbers)
    return Finding(
        "the closet of this gas dryer has {opening_area} of opening, less than {least}", at="closet_opening",
        help="add {short} of net opening before the dryer is used", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="DRY-20", name="gas-dryer-closet-closed", severity="caution", since="0.1",
    over=each.dryer, when=gas_in_closet, needs=(opening_area, area_by_maker), limits=("gas-dryer-closet-opening",),
    cites=("gas-dryer-closet-opening",),
    check=check, nothing="the design has no clothes dryer", answers=("C11", "E22"),
)  # fmt: skip
