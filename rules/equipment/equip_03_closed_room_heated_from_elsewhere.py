"""A room with a door relies on a heater that stands in another room.

A wall unit heats the air of the room where it hangs. Behind a closed door only what seeps through the wall and
under the door arrives: on a cold night a bedroom falls 5 to 10 degrees below the room with the unit, and in summer
it gets no cooling at all. In a mild climate, or with the door always open, people live with it.

Give the room a small heater of its own, a duct from a ducted unit, or a transfer fan; or list it only under
equipment that reaches it.
"""

from checker.case import Case, Missing, path_of, quantity
from checker.design.equipment import Equipment
from checker.design.rooms import Room
from checker.quantities.distribution import spaces
from checker.quantities.equipment import POINT_SOURCES, gives, rooms_served
from checker.quantities.room_uses import room_use
from checker.rule import Finding, Meets, Num, Rule

CLOSED = ("bedroom", "bathroom", "toilet", "laundry", "office", "utility", "storage", "closet")


def heaters_of(case: Case, room: Room) -> list[Equipment]:
    """The equipment that heats a room, by name."""
    found = []
    for unit in sorted(case.design.equipment.values(), key=lambda unit: str(unit.path)):
        try:
            if gives(case, unit, "heating") and room.name in rooms_served(case, unit):
                found.append(unit)
        except Missing:
            continue
    return found


def served_from_afar(case: Case) -> list[Room]:
    """Rooms that only point sources in other rooms are said to heat."""
    found = []
    for room in case.design.rooms.values():
        heaters = heaters_of(case, room)
        if heaters and all(unit.kind in POINT_SOURCES and unit.location != room.name for unit in heaters):
            found.append(room)
    return found


def is_closed(case: Case, room: Room) -> bool:
    """Whether a door shuts the room. Raises Missing(door) where neither the file nor the use tells."""
    if path_of(room, "door") in case.design.stated_none:
        return False
    if room.door is not None or room_use(case, room) in CLOSED:
        return True
    case.get(room, "door")
    return False


@quantity()
def reached(case: Case, room: Room) -> bool:
    """Whether the heat gets into the room: it is open to the heater's room, or a fan carries air over."""
    heaters = heaters_of(case, room)
    placed = [unit for unit in heaters if unit.location in case.design.rooms]
    if any(unit.location in spaces(case, case.design)[room.name] for unit in placed):
        return True
    for fan in case.design.fans.values():
        if fan.role in ("transfer", "recirculating") and room.name in (*fan.to, *fan.room):
            return True
    if len(placed) < len(heaters):
        raise Missing(*(path_of(unit, "location") for unit in heaters if unit not in placed))
    return not is_closed(case, room)


@quantity()
def heater_names(case: Case, room: Room) -> str:
    """The heaters that the room relies on, by name."""
    return " and ".join(f"{unit.name} in {unit.location}" for unit in heaters_of(case, room))


def check(room: Room, arrives: bool, heaters: str) -> Meets | Finding:
    """A closed room is the finding."""
    numbers = {"room": Num(room.name), "heaters": Num(heaters)}
    if arrives:
        return Meets(numbers)
    return Finding(
        "{room} relies on {heaters}; behind its closed door little of that heat or cooling arrives",
        help="show a heater of its own, a duct or a transfer fan for {room}",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-03", name="closed-room-heated-from-elsewhere", severity="caution", since="0.1",
    over=served_from_afar, needs=(reached, heater_names), cites=("heat-through-open-doors",), check=check,
    nothing="no room relies on a heater that stands in another",
)  # fmt: skip
