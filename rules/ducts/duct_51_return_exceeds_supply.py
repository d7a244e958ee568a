"""More air is returned from a closed room than is supplied to it.

What the return takes beyond the supply comes in under the door and through cracks, from outdoors, the attic or a
flue. In a bath or laundry the house system draws moist air away from the exhaust fan, and the room stays cold.

The usual cause is one return grille in the nearest small room. Put it in the hall or living room that the air of
all rooms comes back to, or keep the return of the room to what its registers deliver.
"""

from checker.case import Case, gather, quantity
from checker.design.rooms import Room
from checker.quantities.duct_flow import mover_flow, mover_setting, outlet_flow
from checker.quantities.duct_graph import mover_of
from checker.quantities.return_air import Inlet, inlets
from checker.quantities.room_uses import room_use
from checker.quantities.transfer import supply_into
from checker.rule import Finding, Meets, Num, Rule

CLOSED = ("bedroom", "bathroom", "toilet", "laundry", "office", "utility", "storage")


def of_room(case: Case, room: Room) -> list[Inlet]:
    """Places of return air in a room."""
    return [inlet for inlet in inlets(case, case.design) if inlet.place == room.name]


def rooms_with_returns(case: Case) -> list[Room]:
    """Rooms that return air is taken from."""
    return [room for room in case.design.rooms.values() if of_room(case, room)]


def can_be_closed(case: Case, room: Room) -> bool:
    """It is a hall, a living space or open to one, where the air of other rooms comes together."""
    rooms = case.design.rooms.values()
    gathers = room.open_to or any(
        room.name in other.open_to or (other.door is not None and other.door.to == room.name) for other in rooms
    )
    return room_use(case, room) in CLOSED and not gathers


@quantity("airflow")
def returned(case: Case, room: Room) -> float:
    """Return air taken from the room: of its grilles, else as stated, else of the unit whose only return it is."""
    stated = case.maybe(room, "return_")
    if stated is not None:
        return float(stated)
    return sum(gather([lambda inlet=inlet: inlet_flow(case, inlet) for inlet in of_room(case, room)]))  # type: ignore[misc]


def inlet_flow(case: Case, inlet: Inlet) -> float:
    """Airflow of one inlet. Raises Missing."""
    if inlet.outlet is not None and inlet.outlet.airflow is not None:
        return outlet_flow(case, inlet.outlet)
    same = [each for each in inlets(case, case.design) if each.system is inlet.system and each.unit is inlet.unit]
    if len(same) == 1 and inlet.system is not None:
        return mover_flow(case, mover_setting(case, inlet.system), mover_of(case, inlet.system))
    if inlet.outlet is not None:
        return outlet_flow(case, inlet.outlet)
    room = case.design.rooms[str(inlet.place)]
    return float(case.get(room, "return_"))


def check(room: Room, back: float, forth: float) -> Meets | Finding:
    """Compare return and supply of the room."""
    if back <= forth * (1.0 + 1e-9):
        return Meets()
    return Finding(
        f"{{returned}} is returned from {room.name} and {{supply_into}} supplied to it",
        help=f"move the return to a hall or living room, or take no more than {{supply_into}} from {room.name}",
        numbers={"difference": Num(back - forth, "airflow")},
    )


RULE = Rule(
    code="DUCT-51", name="return-exceeds-supply", severity="correction", since="0.1",
    over=rooms_with_returns, when=can_be_closed, needs=(returned, supply_into), cites=("return-above-supply",),
    check=check, nothing="nothing says from which room return air is taken", answers=("F34",),
)  # fmt: skip
