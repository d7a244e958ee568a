"""Fresh air is let into a closet that it cannot leave.

Letting outdoor air into a closet first is a good way to take the chill off it. But the air must go on: a
closet door that shuts tight turns the supply fan against a wall, and the house gets a fraction of the rate.

Show a transfer grille or an undercut that passes the flow at 3 Pa: about half a square inch of free area for
each cfm.
"""

from checker.case import Case, Missing, NotApplicable, quantity
from checker.design.fans import Fan
from checker.design.rooms import Room
from checker.physics.transfer import closed_door_pressure
from checker.physics.transfer import transfer_area as area_for
from checker.quantities.distribution import deliveries
from checker.quantities.room_uses import rooms_used_as
from checker.quantities.transfer import supply_into, transfer_area
from checker.quantities.ventilation import SLACK
from checker.quantities.whole_house import running, supply_of
from checker.rule import Finding, Meets, Num, Rule


def supplied_closets(case: Case) -> list[Room]:
    """Closets and stores that outdoor air is led to."""
    closets = rooms_used_as(case, "closet", "storage")
    if not closets:
        return []
    fed = {each.room for each in deliveries(case, case.design)}
    return [room for room in closets if room.name in fed]


@quantity("airflow", "the whole supply of the fans that lead only there")
def flow_into(case: Case, room: Room) -> float:
    """Outdoor air let into a closet. NotApplicable where its registers are judged as those of any closed room."""
    if room.open_to:
        raise NotApplicable("the closet is open to a room")
    if room.door is not None and supply_into(case, room) > 0:
        raise NotApplicable("its registers are judged as those of any closed room")
    flow = 0.0
    for part in running(case, case.design):
        if part.supplies and isinstance(part.device, Fan):
            rooms = {each.room for each in deliveries(case, case.design) if each.device is part.device}
            if room.name in rooms and len(rooms) > 1:
                raise Missing(f"{room.path}.outdoor_air")
            flow += supply_of(case, part) if room.name in rooms else 0.0
    if flow <= 0.0:
        raise Missing(f"{room.path}.outdoor_air")
    return flow


def check(room: Room, flow: float, area: float, most: float) -> Meets | Finding:
    """The pressure that drives the flow out of the closet."""
    wanted = area_for(flow, most)
    numbers = {"wanted": Num(wanted, "small_area")}
    if area >= wanted * (1 - SLACK):
        return Meets(numbers)
    if area <= 0.0:
        fact = f"{{flow_into}} of fresh air are let into {room.name}, and no way out of it is shown"
    else:
        numbers["pressure"] = Num(closed_door_pressure(flow, area), "house_pressure")
        fact = (
            f"{{flow_into}} of fresh air let into {room.name} leave by {{transfer_area}} at {{pressure}}, "
            "more than {limit}"
        )
    return Finding(
        fact, at="door", help="show a transfer grille or undercut with {wanted} of free area", numbers=numbers
    )


RULE = Rule(
    code="VENT-31", name="fresh-air-shut-in-a-closet", severity="caution", since="0.1",
    over=supplied_closets, needs=(flow_into, transfer_area), limits=("closed-door-pressure",), check=check,
    nothing="no fresh air is let into a closet",
)  # fmt: skip
