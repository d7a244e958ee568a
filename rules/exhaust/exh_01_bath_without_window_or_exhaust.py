"""A bath or toilet room has neither an exhaust nor a window that is large enough.

Steam and smells then stay in the house, and what stays wet grows mold. The code asks each bath, toilet
compartment and similar room for a window of which half opens, or for artificial light and an exhaust.

The usual cause is an inner bath whose fan was never drawn, or a fan that is drawn but not said to take its air
from this room. Give the room an exhaust fan, or name the room at the fan or recovery unit that serves it.
"""


from checker.case import Case, Missing, quantity
from checker.design.fields import Area
from checker.design.rooms import Room
from checker.quantities.local_exhaust import local_exhaust
from checker.quantities.room_uses import BATH_USES, asked_for, glazed_area, openable_area, room_use
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class WaysOut(Record):
    """How moist air may leave: exhausted or not, glazed and openable area of the windows in m2."""

    exhausted: bool
    glazed: Area = 0.0
    openable: Area = 0.0


def baths(case: Case) -> list[Room]:
    """Bathrooms and toilet rooms, and rooms that may be one."""
    return asked_for(case, *BATH_USES)


@quantity()
def ways_out(case: Case, room: Room) -> WaysOut:
    """Exhaust first: with one, nobody asks for the window."""
    room_use(case, room)
    gap: Missing | None = None
    try:
        if local_exhaust(case, room).present:
            return WaysOut(True)
    except Missing as missing:
        gap = missing
    try:
        openable = openable_area(case, room)
        glazed = window_area(case, room, openable)
    except Missing as missing:
        raise gap or missing from None
    if gap is not None and (
        glazed < case.limit("bath-window") or openable < case.limit("bath-window-openable")
    ):
        raise gap
    return WaysOut(False, glazed, openable)


def window_area(case: Case, room: Room, openable: float) -> float:
    """Glazed area; where only what opens is stated, that is enough if it reaches the least."""
    glazed = glazed_area(case, room)
    if glazed is None and openable < case.limit("bath-window"):
        raise Missing(f"{room.path}.window.glazed_area")
    return openable if glazed is None else glazed


def check(room: Room, ways: WaysOut, glazed: float, openable: float) -> Meets | Finding:
    """An exhaust of any size will do here; another rule looks at its flow."""
    if ways.exhausted:
        return Meets()
    numbers = {
        "name": Num(room.name), "glazed": Num(ways.glazed, "area"), "opens": Num(ways.openable, "area"),
    }  # fmt: skip
    if ways.glazed >= glazed and ways.openable >= openable:
        return Meets(numbers)
    message = "nothing exhausts {name}, and it has no window"
    if ways.glazed > 0:
        message = (
            "nothing exhausts {name}, and of its {glazed} of window {opens} opens; without exhaust "
            "{bath_window} are asked for, {bath_window_openable} of them openable"
        )
    return Finding(
        message, help="give the room an exhaust fan to outdoors, or a window of that size", numbers=numbers
    )


RULE = Rule(
    code="EXH-01", name="bath-without-window-or-exhaust", severity="correction", since="0.1",
    over=baths, needs=(ways_out,), limits=("bath-window", "bath-window-openable"), check=check,
    nothing="the design names no bath or toilet room", answers=("B05",),
)  # fmt: skip
