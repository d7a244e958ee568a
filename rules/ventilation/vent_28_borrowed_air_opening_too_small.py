"""A room borrows its air from the next one through too small an opening.

A room without enough window of its own may count as part of the room that it is open to, if at least half of
the common wall is open and the opening is at least a tenth of the inner room's floor area and 25 ft2. A door
is no such opening.

Widen the opening, give the room its own openable window, or ventilate by fans.
"""

from checker.case import Case, Missing, given
from checker.design.rooms import Room
from checker.quantities.natural_ventilation import airs_itself, rooms_to_air
from checker.quantities.ventilation import SLACK
from checker.rule import Finding, Meets, Num, Rule


def borrows(case: Case, room: Room) -> bool:
    """The room has windows enough of its own, or is not open to another."""
    if not room.open_to:
        return False
    try:
        return not airs_itself(case, room)
    except Missing:
        if room.window is None and room.opening_area is not None:
            return True
        raise


def check(
    room: Room, opening: float, floor: float, wall: str, share: float, least: float
) -> Meets | Finding:
    """Half of the wall, a tenth of the floor, and 25 ft2."""
    wanted = max(share * floor, least)
    numbers = {"wanted": Num(wanted, "area")}
    if opening < wanted * (1 - SLACK):
        return Finding(
            f"{room.name} is open to {room.open_to[0]} by {{opening_area}}, below {{wanted}}, and has too little "
            "window of its own",
            at="opening_area",
            help="open at least {wanted} and half of the common wall, provide an openable window, or ventilate by fans",
            numbers=numbers,
        )
    if wall != "half or more":
        return Finding(
            f"less than half of the wall between {room.name} and {room.open_to[0]} is open, so that it cannot borrow air",
            at="common_wall_open",
            help="open at least half of the common wall, provide an openable window, or ventilate by fans",
        )
    return Meets(numbers)


RULE = Rule(
    code="VENT-28", name="borrowed-air-opening-too-small", severity="correction", since="0.1",
    over=rooms_to_air, when=borrows,
    needs=(given("opening_area"), given("floor_area"), given("common_wall_open")),
    limits=("borrowed-opening-share", "borrowed-opening-area"), check=check,
    nothing="mechanical ventilation waives openable windows", answers=("A32",),
)  # fmt: skip
