"""A room has no load, while other rooms have one.

The airflow and the unit of a room follow from its load; a room that was left out gets neither, or takes air that was
meant for others. It happens when a den is split off, or when only the rooms with outside walls were worked out.

State the load of the room, small as it may be, or give the file its envelope so that it can be worked out.
"""

from checker.case import Case, Missing, path_of, quantity
from checker.design.rooms import Room
from checker.quantities.equipment import HABITABLE, heated_rooms
from checker.quantities.room_uses import room_use
from checker.rule import Finding, Meets, Num, Rule

FIELDS = ("heating_load", "cooling_load")


def lived_in(case: Case) -> list[Room]:
    """Habitable rooms and baths, where at least two rooms state a load and no envelope gives it."""
    rooms = heated_rooms(case)
    known = [room for room in rooms if any(getattr(room, field) is not None for field in FIELDS)]
    if len(known) < 2 or case.design.envelope is not None:
        return []
    found = []
    for room in rooms:
        try:
            use = room_use(case, room)
        except Missing:
            continue
        if use in (*HABITABLE, "bathroom"):
            found.append(room)
    return found


@quantity()
def has_load(case: Case, room: Room) -> bool:
    """Whether the room has a load, or makes one space with a room that has. Raises Missing where it is to be decided."""
    if any(case.maybe(room, field) is not None for field in FIELDS):
        return True
    if any(path_of(room, field) in case.design.stated_none for field in FIELDS):
        return True
    beside = [case.design.rooms[name] for name in room.open_to if name in case.design.rooms]
    return any(getattr(each, field) is not None for each in beside for field in FIELDS)


def check(room: Room, known: bool) -> Meets | Finding:
    """A room without a load is the finding."""
    if known:
        return Meets()
    return Finding(
        "{room} has no load, while other rooms have one",
        help="state the heating and cooling load of {room}", numbers={"room": Num(room.name)},
    )


RULE = Rule(
    code="LOAD-19", name="room-left-out-of-loads", severity="note", since="0.1",
    over=lived_in, needs=(has_load,), cites=("loads-of-every-room",), check=check,
    nothing="no loads of rooms are stated, or the envelope gives them",
)  # fmt: skip
