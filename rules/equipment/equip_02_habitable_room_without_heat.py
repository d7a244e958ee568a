"""A habitable room has no heat: no equipment is said to serve it, and it is not open to a room that is served.

Bedrooms, living rooms, dining rooms, kitchens and studies must be kept warm on the winter design day. In a tight
house with one or two wall units the room at the end of the hall is easily left out.

The usual cause is a list of served rooms that was not brought up to date. Name the room under the equipment that
heats it, or give it a heater of its own.
"""

from checker.case import Case, Missing, quantity
from checker.design.rooms import Room
from checker.quantities.distribution import spaces
from checker.quantities.equipment import HABITABLE, all_heating, heated_rooms
from checker.quantities.room_uses import room_use
from checker.rule import Finding, Meets, Num, Rule


def habitable(case: Case) -> list[Room]:
    """Rooms to live, sleep, cook or eat in, where any equipment heats the house."""
    if not all_heating(case):
        return []
    found = []
    for room in heated_rooms(case):
        try:
            use = room_use(case, room)
        except Missing:
            continue
        if use in HABITABLE:
            found.append(room)
    return found


@quantity()
def is_heated(case: Case, room: Room) -> bool:
    """Whether some equipment serves the room or one that it is open to. Raises Missing where one may."""
    groups = all_heating(case)
    served = {name for group in groups for name in group.rooms}
    if spaces(case, case.design)[room.name] & served:
        return True
    open_ended = [path for group in groups for path in group.lacking]
    if open_ended:
        raise Missing(*open_ended)
    return False


def check(room: Room, heated: bool, _held: float) -> Meets | Finding:
    """A room without heat is the finding."""
    if heated:
        return Meets()
    return Finding(
        "no equipment is said to heat {room}, which must be held at {limit} on the winter design day",
        help="name {room} under `serves` of the equipment that heats it, or show a heater of its own",
        numbers={"room": Num(room.name)},
    )


RULE = Rule(
    code="EQUIP-02", name="habitable-room-without-heat", severity="correction", since="0.1",
    over=habitable, needs=(is_heated,), limits=("required-heating",), check=check,
    nothing="no habitable room, or no heating equipment, is shown", answers=("H05",),
)  # fmt: skip
