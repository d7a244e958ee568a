"""Air supplied to a room cannot get back when its door is closed.

The air that a register blows into a bedroom has to return to the air handler. With the door closed and no return, transfer
grille, jumper duct or undercut large enough, the room swells, gets less air, and is hot in summer and cold in winter;
the rest of the house is drawn down, which pulls outdoor air, and flue gas, in.

A grille needs about half a square inch of free area for each cfm at 3 Pa; an inch under a 30 in door passes about
55 cfm. Add a return in the room, a transfer grille, a jumper duct, or a higher undercut above the finished floor.
"""

from checker.case import Case
from checker.design.rooms import Room
from checker.physics.transfer import transfer_area as area_for
from checker.quantities.transfer import room_pressure, supplied_rooms, transfer_area, transfer_flow
from checker.rule import Finding, Meets, Num, Rule


def has_air_to_give_back(case: Case, room: Room) -> bool:
    """As much air returns from the room as is supplied to it."""
    return transfer_flow(case, room) > 1e-9


def check(
    room: Room, flow: float, area: float, pressure: float, most: float, fastest: float
) -> Meets | Finding:
    """Compare the pressure of the closed room, and the velocity in its way out, with the limits."""
    more = area_for(flow, most, area)
    numbers = {"more": Num(max(more, flow / fastest - area), "small_area")}
    if area <= 0.0:
        return Finding(
            f"{{transfer_flow}} are supplied to {room.name}, and no way back is shown when its door is closed",
            at="door",
            help="show {more} of free area by a transfer grille, jumper duct or undercut, or a return in the room",
            numbers=numbers,
        )
    velocity = flow / area
    numbers["velocity"] = Num(velocity, "velocity")
    excess = []
    if pressure > most * (1 + 1e-9):
        excess.append("{room_pressure}, more than {closed_door_pressure}")
    if velocity > fastest * (1 + 1e-9):
        excess.append("{velocity}, more than {transfer_velocity}")
    if not excess:
        return Meets(numbers)
    return Finding(
        f"{{transfer_flow}} must leave {room.name} through {{transfer_area}} when its door is closed: "
        + ", and ".join(excess),
        at="door",
        help="show {more} more free area by a transfer grille, jumper duct or higher undercut, or a return in the room",
        numbers=numbers,
    )


RULE = Rule(
    code="PRES-19", name="no-way-back-from-closed-room", severity="caution", since="0.1",
    over=supplied_rooms, when=has_air_to_give_back, needs=(transfer_flow, transfer_area, room_pressure),
    limits=("closed-door-pressure", "transfer-velocity"), cites=("return-path",), check=check,
    nothing="no room that can be closed has supply air", answers=("C18", "C19", "C20", "C21"),
)  # fmt: skip
