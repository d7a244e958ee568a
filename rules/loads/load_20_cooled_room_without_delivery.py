"""A room has a cooling load, and no cool air reaches it.

In a house with one or two wall units the bedroom with the west window stays hot: cool air does not go through a
closed door by itself. The load is on the sheet, but no unit, outlet or opening brings anything to the room.

Name the room under the unit that cools it, draw an outlet, open it to a cooled room, or cut its load by shade.
"""

from checker.case import Case, Missing, quantity
from checker.design.rooms import Room
from checker.quantities.distribution import spaces
from checker.quantities.equipment import all_cooling, heated_rooms
from checker.quantities.loads import room_cooling_sensible
from checker.rule import Finding, Meets, Num, Rule


def beside_cooling(case: Case) -> list[Room]:
    """Heated rooms of a house that has cooling equipment."""
    return heated_rooms(case) if all_cooling(case) else []


def has_known_load(case: Case, room: Room) -> bool:
    """The room has no known cooling load."""
    if room.cooling_load is not None or f"{room.path}.cooling_load" in case.design.tbd:
        return True
    try:
        return room_cooling_sensible(case, room) > 0
    except Missing:
        return False


@quantity()
def is_cooled(case: Case, room: Room) -> bool:
    """Whether some equipment cools the room or one that it is open to. Raises Missing where one may."""
    groups = all_cooling(case)
    if spaces(case, case.design)[room.name] & {name for group in groups for name in group.rooms}:
        return True
    lacking = [path for group in groups for path in group.lacking]
    lacking += [path for path in sorted(case.design.tbd) if path.startswith("equipment.") and path.count(".") == 1]
    if lacking:
        raise Missing(*lacking)
    return False


def check(room: Room, load: float, cooled: bool, limit: float) -> Meets | Finding:
    """A load of note without cool air is the finding."""
    if cooled or load <= limit * (1 + 1e-9):
        return Meets()
    return Finding(
        "{room} has a cooling load of {room_cooling_sensible}, and no equipment, outlet or opening brings it cool air",
        help="name {room} under `serves` of the unit that cools it, or lead air to it", numbers={"room": Num(room.name)},
    )


RULE = Rule(
    code="LOAD-20", name="cooled-room-without-delivery", severity="caution", since="0.1",
    over=beside_cooling, when=has_known_load, needs=(room_cooling_sensible, is_cooled),
    limits=("cooling-load-of-note",), check=check, nothing="no cooling equipment, or no room, is shown",
)  # fmt: skip
