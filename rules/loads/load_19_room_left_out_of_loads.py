"""A room has no load, while most of the others have one.

The airflow and the unit of a room follow from its load; a room that was left out gets neither, or takes air that was
meant for others. It happens when a den is split off, or when only the rooms with outside walls were worked out.

State the load of the room, small as it may be, or give the file its envelope so that it can be worked out.
"""

from checker.case import Case, Missing, gather, path_of, quantity
from checker.design import Design
from checker.design.rooms import Room
from checker.quantities.distribution import spaces
from checker.quantities.equipment import HABITABLE, heated_rooms
from checker.quantities.room_uses import room_use
from checker.rule import Finding, Meets, Num, Rule

FIELDS = ("heating_load", "cooling_load")


def lived_in(case: Case) -> list[Room]:
    """Habitable rooms and baths, as far as their use is known."""
    found = []
    for room in heated_rooms(case):
        try:
            use = room_use(case, room)
        except Missing:
            continue
        if use in (*HABITABLE, "bathroom"):
            found.append(room)
    return found


def has_load(case: Case, room: Room) -> bool:
    """Whether a room states a load, none included. Raises Missing where it is to be decided."""
    stated = [case.maybe(room, field) is not None for field in FIELDS]
    return any(stated) or any(path_of(room, field) in case.design.stated_none for field in FIELDS)


@quantity()
def without_load(case: Case, design: Design) -> tuple[str, ...]:
    """Rooms without a load that are not one space with a room that has one. Raises Missing."""
    known = {room.name for room in heated_rooms(case) if any(getattr(room, field) is not None for field in FIELDS)}
    rooms = lived_in(case)
    stated = gather([lambda room=room: has_load(case, room) for room in rooms])  # type: ignore[misc]
    joined = spaces(case, design)
    return tuple(
        room.name for room, has in zip(rooms, stated, strict=True) if not has and not joined[room.name] & known
    )


def with_loads(case: Case) -> list[Design]:
    """The design, where no envelope gives the loads and most rooms to live in state one."""
    rooms = lived_in(case)
    known = [room for room in rooms if any(getattr(room, field) is not None for field in FIELDS)]
    return [case.design] if case.design.envelope is None and len(known) >= 2 and len(known) > len(rooms) / 2 else []


def check(_design: Design, lacking: tuple[str, ...]) -> Meets | Finding:
    """Any room without a load is the finding."""
    if not lacking:
        return Meets()
    rooms = ", ".join(lacking)
    return Finding(
        "{rooms} {have} no load, while most rooms have one", at=f"rooms.{lacking[0]}",
        help="state heating and cooling load of {rooms}",
        numbers={"rooms": Num(rooms), "have": Num("has" if len(lacking) == 1 else "have")},
    )  # fmt: skip


RULE = Rule(
    code="LOAD-19", name="room-left-out-of-loads", severity="note", since="0.1",
    over=with_loads, needs=(without_load,), cites=("loads-of-every-room",), check=check,
    nothing="few rooms state a load, or the envelope gives them",
)  # fmt: skip
