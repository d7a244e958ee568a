"""The air of each room for a page that shows the house: exhaust, what passes its door, outdoor air led to it."""

from collections.abc import Callable
from functools import partial

from checker.case import Case, Missing, NotApplicable, gather, path_of, quantity
from checker.design.rooms import Room
from checker.quantities.distribution import deliveries
from checker.quantities.fresh_split import fresh_split
from checker.quantities.local_exhaust import RoomExhaust, local_exhaust
from checker.quantities.transfer import closed_rooms, return_from, rooms_with_returns, supply_into
from checker.quantities.whole_house import Running, run_share, running, supply_of


def own_exhaust(case: Case, room: Room) -> RoomExhaust:
    """What takes air out of a room. NotApplicable where nothing does, Missing where a shared device is not split."""
    found = local_exhaust(case, room)
    if not found.present:
        raise NotApplicable("nothing takes air out of it")
    if not found.split_known:
        raise Missing(path_of(room, "exhaust"))
    return found


@quantity("airflow", "what runs all the time")
def all_day_exhaust(case: Case, room: Room) -> float:
    """Air taken out of a room all day."""
    return own_exhaust(case, room).continuous


@quantity("airflow", "highest setting of each device")
def most_exhaust(case: Case, room: Room) -> float:
    """The most air that is taken out of a room."""
    return own_exhaust(case, room).on_demand


@quantity("airflow", "stated for the room; else the sum of its return grilles")
def taken_back(case: Case, room: Room) -> float:
    """Air that returns take out of a room. NotApplicable where none does, Missing where air is blown in and nobody tells."""
    flow = return_from(case, room) if room.name in rooms_with_returns(case) or supply_into(case, room) > 0.0 else 0.0
    if flow <= 0.0:
        raise NotApplicable("no return takes air out of it")
    return flow


def door_flow(case: Case, room: Room, exhaust: Callable[[Case, Room], float]) -> float:
    """Air blown into a closed room less what returns and exhaust take out, m3/s. NotApplicable where there is none."""
    if room not in closed_rooms(case):
        raise NotApplicable("it is open to the rest of the house")
    flows = [partial(or_none, each, case, room) for each in (supply_into, taken_back, exhaust)]
    blown, back, drawn = gather(flows)
    if blown == back == drawn == 0.0:
        raise NotApplicable("no air is blown into it or drawn out of it")
    return blown - back - drawn


def or_none(flow: Callable[[Case, Room], float], case: Case, room: Room) -> float:
    """An airflow, 0 where it does not arise."""
    try:
        return flow(case, room)
    except NotApplicable:
        return 0.0


@quantity("airflow", "blown in less returned less what is taken out all day")
def through_door(case: Case, room: Room) -> float:
    """Air that leaves a closed room by its door all day; below zero what must come in."""
    return door_flow(case, room, all_day_exhaust)


@quantity("airflow", "blown in less returned less the most that is taken out")
def through_door_at_most(case: Case, room: Room) -> float:
    """The same with every exhaust of the room at its highest setting."""
    return door_flow(case, room, most_exhaust)


def led_by(case: Case, part: Running, room: Room) -> float:
    """Outdoor air that one running supply leads to a room, averaged over time, m3/s; split as the loads split it."""
    if room.name not in {each.room for each in deliveries(case, case.design) if each.device is part.device}:
        return 0.0
    share = fresh_split(case, part.device).shares.get(room.name, 0.0)
    return run_share(case, part) * supply_of(case, part) * share if share > 0.0 else 0.0


@quantity()
def assumed_of_fresh_air(case: Case, design: object) -> tuple[str, ...]:
    """What is assumed of how the devices split their outdoor air between the rooms that they lead it to."""
    splits = [fresh_split(case, part.device) for part in running(case, design) if part.supplies]
    return tuple(dict.fromkeys(split.assumed for split in splits if split.assumed and split.is_led))


@quantity("airflow", "as stated for the room; else what fans lead to it, averaged over time")
def fresh_air(case: Case, room: Room) -> float:
    """Outdoor air that is led to a room. NotApplicable where none is."""
    stated = case.maybe(room, "outdoor_air")
    if stated is not None:
        return float(stated)
    parts = [part for part in running(case, case.design) if part.supplies]
    flow = sum(gather([partial(led_by, case, part, room) for part in parts]))
    if flow <= 0.0:
        raise NotApplicable("no outdoor air is led to it")
    return flow


@quantity("airflow", "sum over the fans that bring it in, averaged over time")
def fresh_air_of_house(case: Case, design: object) -> float:
    """Outdoor air that fans bring into the house, averaged over time."""
    parts = [part for part in running(case, design) if part.supplies]
    flow = sum(gather([lambda part=part: run_share(case, part) * supply_of(case, part) for part in parts]))  # type: ignore[misc]
    if flow <= 0.0:
        raise NotApplicable("no fan brings in outdoor air")
    return flow


@quantity("share", "outdoor air of the room / outdoor air of the house")
def fresh_share(case: Case, room: Room) -> float:
    """Share of a room in the outdoor air that fans bring in."""
    flow, whole = gather([partial(fresh_air, case, room), partial(fresh_air_of_house, case, case.design)])
    return flow / whole
