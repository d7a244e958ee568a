"""The closet that a dryer stands in, and the opening that lets air into it."""

from checker.case import Case, quantity
from checker.design.hoods import Dryer


@quantity()
def in_closet(case: Case, dryer: Dryer) -> bool:
    """Whether a dryer stands in a closet: as said, or because its room is one."""
    room = case.design.rooms.get(dryer.room or "")
    if dryer.in_closet is None and room is not None and room.use == "closet":
        return True
    return bool(case.get(dryer, "in_closet"))


@quantity("small_area")
def closet_area(case: Case, dryer: Dryer) -> float:
    """Net area of the openings into the closet."""
    return float(case.get(dryer, "closet_opening"))


@quantity("small_area")
def area_by_maker(case: Case, dryer: Dryer) -> float | None:
    """Net area that the dryer's instructions ask for; None where only the code counts."""
    area = None if dryer.by_maker is None else case.maybe(dryer.by_maker, "closet_opening")
    return None if area is None else float(area)
