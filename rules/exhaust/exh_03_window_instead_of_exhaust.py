"""A bath or kitchen has no exhaust and relies on its window.

Windows stay shut in winter, which is when a bath steams most and a kitchen is used most. The code may accept the
window; the walls, the people and ASHRAE 62.2 do not.

The usual cause is an old layout that is kept, or a hood that blows back into the room. Add a quiet fan to
outdoors, or let a recovery unit take its air from this room.
"""

from checker.case import Case, NotApplicable
from checker.design.rooms import Room
from checker.quantities.kitchen_air import spoken_of_elsewhere
from checker.quantities.local_exhaust import RoomExhaust, local_exhaust
from checker.quantities.room_uses import asked_for, room_use
from checker.rule import Finding, Meets, Num, Rule


def baths_and_kitchens(case: Case) -> list[Room]:
    """Bathrooms and kitchens; toilet rooms make little steam."""
    return asked_for(case, "bathroom", "kitchen")


def check(room: Room, use: str, exhaust: RoomExhaust, elsewhere: bool) -> Meets | Finding:
    """Whether anything exhausts the room."""
    if exhaust.present:
        return Meets()
    if elsewhere:
        raise NotApplicable("another rule tells that it has no exhaust")
    if room.window is None and use != "kitchen":
        raise NotApplicable("it has no window to rely on; another rule asks for its exhaust")
    window = "; a window alone stays shut when it is cold" if room.window is not None else ""
    return Finding(
        f"nothing takes air from {{name}} to outdoors{window}",
        help="add an exhaust fan or hood to outdoors, or let a recovery unit draw from this room",
        numbers={"name": Num(room.name)},
    )


RULE = Rule(
    code="EXH-03", name="window-instead-of-exhaust", severity="caution", since="0.1",
    over=baths_and_kitchens, needs=(room_use, local_exhaust, spoken_of_elsewhere), cites=("wet-room-exhaust",), check=check,
    nothing="the design names no bath or kitchen",
)  # fmt: skip
