"""What airs a kitchen beside a hood that blows back into it, which kitchens cook with gas, and who tells of it."""

from checker.case import Case, Missing, quantity
from checker.design.hoods import Hood
from checker.design.rooms import Room
from checker.quantities.local_exhaust import local_exhaust, room_of_hood
from checker.quantities.room_uses import BATH_USES, kitchens, openable_area, room_use

GASES = ("gas", "propane")


@quantity()
def other_ventilation(case: Case, hood: Hood) -> str:
    """What else airs the kitchen of a recirculating hood; an empty text where nothing does."""
    if any(fan.whole_house for fan in case.design.fans.values()):
        return "whole-house ventilation"
    room = room_of_hood(case, hood)
    if local_exhaust(case, room).present:
        return "another exhaust"
    window = openable_area(case, room)
    if window <= 0.0:
        return ""
    least = case.limit("natural-ventilation-share") * case.get(room, "floor_area")
    return "a window" if window >= least * (1 - 1e-9) else ""


def gas_kitchens(case: Case) -> list[Room]:
    """Kitchens with gas cooking, by the hood above it or by the list of what burns."""
    names = set()
    for hood in case.design.hoods.values():
        if hood.cooking is not None and hood.cooking.fuel in GASES:
            try:
                names.add(room_of_hood(case, hood).name)
            except Missing:
                continue
    ranges = [each for each in case.design.combustion.values() if each.kind == "range" and each.fuel in GASES]
    names |= {each.location for each in ranges if each.location is not None}
    found = kitchens(case)
    if ranges and len(found) == 1 and all(each.location in (None, "conditioned") for each in ranges):
        names.add(found[0].name)
    return [room for room in found if room.name in names]


@quantity()
def spoken_of_elsewhere(case: Case, room: Room) -> bool:
    """Whether another rule tells of a room without exhaust already.

    Of a bath: one with a window that is too small. Of a kitchen: gas cooking, or a recirculating hood without other air.
    """
    if room.window is not None and room_use(case, room) in BATH_USES:
        window = room.window
        areas = ((window.openable_area, "bath-window-openable"), (window.glazed_area, "bath-window"))
        return any(area is not None and area < case.limit(key) for area, key in areas)
    if room in gas_kitchens(case):
        return True
    for hood in case.design.hoods.values():
        try:
            if hood.recirculating and room_of_hood(case, hood) is room and not other_ventilation(case, hood):
                return True
        except Missing:
            continue
    return False
