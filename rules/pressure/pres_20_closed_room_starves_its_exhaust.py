"""A closed bath or laundry lets too little air in for its exhaust.

A bath fan is rated at about 0.1 in w.c. Where more than half of that is lost under the door, the fan moves clearly less than its
label says, and the mirror stays wet. A dryer in a closed laundry takes longer and wastes energy.

Raise the undercut above the finished floor, or show a transfer grille; a dryer in a closet has an opening of its own.
"""

from checker.case import Case, Missing
from checker.design.rooms import Room
from checker.physics.transfer import closed_door_pressure
from checker.physics.transfer import transfer_area as area_for
from checker.quantities.transfer import (
    exhausted_rooms,
    replacement_flow,
    room_pressure,
    supplied_rooms,
    transfer_area,
    transfer_flow,
)
from checker.rule import Finding, Meets, Num, Rule


def takes_air_out(case: Case, room: Room) -> bool:
    """No more air is taken out of the room than is supplied to it, or its door is too tight for its supply already."""
    return replacement_flow(case, room) > 1e-9 and not swells(case, room)


def swells(case: Case, room: Room) -> bool:
    """Whether the air supplied to the room cannot leave it, which says more."""
    if room not in supplied_rooms(case):
        return False
    try:
        out, pressure = transfer_flow(case, room), room_pressure(case, room)
    except Missing:
        return False
    return out > 1e-9 and pressure > case.limit("closed-door-pressure") * (1 + 1e-9)


def check(room: Room, flow: float, area: float, limit: float) -> Meets | Finding:
    """Compare the pressure lost in the way in with the limit."""
    numbers = {"more": Num(area_for(flow, limit, area), "small_area")}
    if area <= 0.0:
        return Finding(
            f"{{replacement_flow}} are taken out of {room.name}, and no way in is shown when its door is closed",
            at="door", help="show {more} of free area by an undercut or a transfer grille", numbers=numbers,
        )  # fmt: skip
    pressure = closed_door_pressure(flow, area)
    numbers["pressure"] = Num(pressure, "house_pressure")
    if pressure <= limit * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        f"{{replacement_flow}} must enter {room.name} through {{transfer_area}} when its door is closed: {{pressure}}, more "
        "than {limit}",
        at="door", help="show {more} more free area by a higher undercut or a transfer grille", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="PRES-20", name="closed-room-starves-its-exhaust", severity="note", since="0.1",
    over=exhausted_rooms, when=takes_air_out, needs=(replacement_flow, transfer_area), limits=("closed-room-exhaust",),
    check=check, nothing="no bath or laundry with a described door", answers=("C21",),
)  # fmt: skip
