"""Rooms that must be aired by what opens to outdoors, because no fans ventilate them."""

from checker.case import Case, Missing, NotApplicable, quantity
from checker.design.rooms import Room
from checker.quantities.local_exhaust import local_exhaust
from checker.quantities.room_uses import rooms_used_as
from checker.quantities.ventilation import SLACK
from checker.quantities.whole_house import is_ventilated

HABITABLE = ("bedroom", "living", "dining", "office")


def rooms_to_air(case: Case) -> list[Room]:
    """Habitable rooms that need openable windows; kitchens by the edition's own exception."""
    ventilated = is_ventilated(case, case.design)
    if not ventilated and not case.stated("rooms"):
        raise Missing("rooms")
    kitchens = rooms_used_as(case, "kitchen")
    found = [] if ventilated else rooms_used_as(case, *HABITABLE)
    try:
        case.codebook.require("kitchen-window-waiver")
    except (NotApplicable, Missing):
        return found if ventilated else [*found, *kitchens]
    return [*found, *(room for room in kitchens if not may_have_exhaust(case, room))]


def may_have_exhaust(case: Case, room: Room) -> bool:
    """Whether something exhausts a kitchen; where the file leaves that open, another rule asks for it."""
    try:
        return local_exhaust(case, room).present
    except Missing:
        return True


@quantity("area")
def openable_area(case: Case, room: Room) -> float:
    """Area that opens to outdoors: of the room's windows."""
    if room.window is None:
        if f"{room.path}.window" in case.design.stated_none:
            return 0.0
        raise Missing(f"{room.path}.window.openable_area")
    return float(case.get(room.window, "openable_area"))


def airs_itself(case: Case, room: Room) -> bool:
    """Whether a room's own windows are enough. Raises Missing."""
    share = float(case.limit("natural-ventilation-share"))
    return openable_area(case, room) >= share * float(case.get(room, "floor_area")) * (1 - SLACK)
