"""Where outdoor air is let into the house, what draws air out all day, and which rooms lie between."""


from checker.case import Case, Missing, path_of, quantity
from checker.design.ducts import DuctSystem, Outlet
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.design.fields import Airflow
from checker.design.hoods import Hood
from checker.quantities.duct_scope import mover_or_none
from checker.quantities.local_exhaust import rooms_exhausted
from checker.quantities.movers import Device
from checker.quantities.room_uses import WET_USES, room_use
from checker.quantities.whole_house import Running, running
from checker.record import Record

INTO_ROOM = ("supply register", "supply diffuser", "outdoor air outlet")
OUT_OF_ROOM = ("return grille", "filter grille", "exhaust grille", "transfer grille")


class Delivery(Record):
    """Outdoor air let into a room: by what (None where only the room says so), and where the file says it."""

    room: str
    device: Device | None
    path: str
    airflow: Airflow | None


@quantity()
def deliveries(case: Case, design: object) -> list[Delivery]:
    """Every room that outdoor air is led to. Raises Missing where a supply names no room at all."""
    found = [
        Delivery(room.name, None, path_of(room, "outdoor_air"), room.outdoor_air)
        for room in case.design.rooms.values()
        if case.maybe(room, "outdoor_air")
    ]
    open_ended = []
    for part in running(case, design):
        if part.supplies:
            own = of_part(case, part)
            found += own
            if not own:
                field = "to" if isinstance(part.device, Fan) else "serves"
                open_ended.append(path_of(part.device, field))
    if open_ended and not found:
        raise Missing(*open_ended)
    return found


def of_part(case: Case, part: Running) -> list[Delivery]:
    """Rooms that one running supply leads outdoor air to."""
    if isinstance(part.device, Equipment):
        return of_equipment(case, part.device, part.device)
    return of_fan(case, part.device) if isinstance(part.device, Fan) else []


def of_fan(case: Case, fan: Fan) -> list[Delivery]:
    """Rooms of a supply or recovery fan: those it leads to itself, and those of equipment that it leads to."""
    found = direct(case, fan)
    for name in fan.to:
        unit = behind(case, name)
        if unit is not None:
            found += of_equipment(case, unit, fan)
    return found


def behind(case: Case, name: str) -> Equipment | None:
    """The equipment that a fan's `to` leads to: by its name, or by that of its duct system."""
    if name in case.design.equipment and name not in case.design.rooms:
        return case.design.equipment[name]
    system = case.design.ducts.get(name)
    mover = mover_or_none(case, system) if system is not None else None
    return mover if isinstance(mover, Equipment) else None


def direct(case: Case, fan: Fan) -> list[Delivery]:
    """Rooms that a fan leads outdoor air to without passing through equipment."""
    named, stated = ([name for name in names if name in case.design.rooms] for names in (fan.to, fan.room))
    if fan.role == "recovery":
        named += [name for name in stated if room_use(case, case.design.rooms[name]) not in WET_USES]
    else:
        named += stated
    at = path_of(fan, "to") if fan.to else path_of(fan, "room")
    found = [Delivery(name, fan, at, None) for name in dict.fromkeys(named)]
    for system in case.design.ducts.values():
        if system.name in fan.from_ and system.name not in fan.to:
            continue  # the side that draws
        mover = mover_or_none(case, system)
        if mover is fan or (mover is None and system.name in fan.to):
            found += of_system(case, system, fan)
    return found


def of_equipment(case: Case, unit: Equipment, device: Device) -> list[Delivery]:
    """Rooms that an air handler leads its air to: by the outlets of its duct system, and those that it serves."""
    at = path_of(unit, "serves")
    found = [Delivery(name, device, at, None) for name in unit.serves if name in case.design.rooms]
    for system in case.design.ducts.values():
        if mover_or_none(case, system) is unit:
            found += of_system(case, system, device)
    return found


def of_system(case: Case, system: DuctSystem, device: Device) -> list[Delivery]:
    """Rooms at the outlets and run ends of a duct system."""
    found = [
        Delivery(outlet.room, device, outlet.path, case.maybe(outlet, "airflow"))
        for outlet in system.outlets.values()
        if outlet.room in case.design.rooms and leads_in(case, outlet, device)
    ]
    for run in system.runs.values():
        ends = [run.to] if run.to in case.design.rooms and run.to not in system.outlets else []
        ends += [name for name in run.serves if name in case.design.rooms]
        found += [Delivery(name, device, run.path, None) for name in ends if not drawn_from(case, name, device)]
    return found


def leads_in(case: Case, outlet: Outlet, device: Device) -> bool:
    """Whether air comes into the room at an outlet; without a kind, a recovery unit exhausts wet rooms."""
    if outlet.kind is not None:
        return outlet.kind in INTO_ROOM
    return outlet.room is None or not drawn_from(case, str(outlet.room), device)


def drawn_from(case: Case, name: str, device: Device) -> bool:
    """Whether a room is one that a recovery unit draws from: said to be, else a wet room that it is not said to lead to."""
    if not isinstance(device, Fan) or device.role != "recovery" or name in device.to:
        return False
    return name in device.from_ or room_use(case, case.design.rooms[name]) in WET_USES


@quantity()
def drawn_all_day(case: Case, design: object) -> frozenset[str]:
    """Rooms that something draws air out of all day or by a timer. Raises Missing where nobody can tell."""
    found: set[str] = set()
    absent: list[str] = []
    for part in running(case, design):
        if part.exhausts and isinstance(part.device, Fan | Hood):
            try:
                found.update(rooms_exhausted(case, part.device))
            except Missing as gap:
                absent.extend(gap.paths)
    found |= {room.name for room in case.design.rooms.values() if room.exhaust and room.exhaust_run == "continuous"}
    if absent and not found:
        raise Missing(*absent)
    return frozenset(name for name in found if name in case.design.rooms)


@quantity()
def spaces(case: Case, _design: object) -> dict[str, frozenset[str]]:
    """The rooms that each room makes one space with: open to each other. Doors are taken as shut."""
    joined = {name: {name} for name in case.design.rooms}
    for room in case.design.rooms.values():
        for name in (name for name in room.open_to if name in joined):
            together = joined[room.name] | joined[name]
            for each in together:
                joined[each] = together
    return {name: frozenset(together) for name, together in joined.items()}
