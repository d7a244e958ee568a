"""The way of air between a closed room and the rest of the house: what must pass, and through how much area."""

from checker.case import Case, Missing, path_of, quantity
from checker.design.airway import Run
from checker.design.ducts import Outlet
from checker.design.rooms import Room
from checker.physics.transfer import closed_door_pressure, undercut_area
from checker.quantities.duct_flow import outlet_flow, run_flow
from checker.quantities.local_exhaust import local_exhaust
from checker.quantities.room_uses import room_use

SUPPLY_KINDS = ("supply register", "supply diffuser", "outdoor air outlet")
RETURN_KINDS = ("return grille", "filter grille")
SLEEPING = ("bedroom", "office")
BELONGING = ("bathroom", "toilet", "closet", "storage")
WET = ("bathroom", "toilet", "laundry")


def outlets_in(case: Case, room: Room, kinds: tuple[str, ...]) -> list[Outlet]:
    """Registers or grilles of these kinds in a room."""
    return [
        outlet
        for system in case.design.ducts.values()
        for outlet in system.outlets.values()
        if outlet.room == room.name and outlet.kind in kinds
    ]


def runs_to(case: Case, room: Room) -> list[Run]:
    """Runs that end in a room without an outlet of their own."""
    return [
        run
        for system in case.design.ducts.values()
        for run in system.runs.values()
        if run.to == room.name and room.name not in system.outlets
    ]


@quantity("airflow", "stated for the room; else the sum of its registers; else of the runs that end in it")
def supply_into(case: Case, room: Room) -> float:
    """Conditioned or outdoor air blown into a room, m3/s; 0 where nothing is."""
    stated = case.maybe(room, "supply")
    if stated is not None:
        return float(stated)
    outlets = outlets_in(case, room, SUPPLY_KINDS)
    if outlets:
        return sum(outlet_flow(case, outlet) for outlet in outlets)
    runs = [run for run in runs_to(case, room) if not is_exhaust(case, run)]
    if runs:
        return sum(run_flow(case, run) for run in runs)
    return float(case.maybe(room, "outdoor_air") or 0.0)


def is_exhaust(case: Case, run: Run) -> bool:
    """Whether a run belongs to the system of an exhaust fan or hood, or of none that blows air into rooms."""
    system = run.up
    mover = system.mover or system.name
    fan = case.design.fans.get(mover)
    return mover in case.design.hoods or (fan is not None and fan.role == "exhaust")


@quantity("airflow", "stated for the room; else the sum of its return grilles")
def return_from(case: Case, room: Room) -> float:
    """Air that returns take out of a room, m3/s. Raises Missing where nobody says where the returns are."""
    stated = case.maybe(room, "return_")
    if stated is not None:
        return float(stated)
    grilles = outlets_in(case, room, RETURN_KINDS)
    if grilles:
        return sum(outlet_flow(case, grille) for grille in grilles)
    if has_fresh_air_alone(case, room):
        return 0.0
    if room.name in rooms_with_returns(case):
        raise Missing(path_of(room, "return_"))
    if not returns_are_described(case):
        raise Missing(path_of(room, "return_"))
    return 0.0


def has_fresh_air_alone(case: Case, room: Room) -> bool:
    """Whether what is supplied to a room is outdoor air of a fan, which no air handler takes back."""
    if room.supply is not None:
        return False
    systems = [outlet.up for outlet in outlets_in(case, room, SUPPLY_KINDS) if outlet.kind != "outdoor air outlet"]
    systems += [run.up for run in runs_to(case, room)]
    return all((system.mover or system.name) in case.design.fans for system in systems)


def rooms_with_returns(case: Case) -> set[str]:
    """Rooms that the file names as places of returns."""
    named = {str(unit.return_location) for unit in case.design.equipment.values() if unit.return_location is not None}
    for system in case.design.ducts.values():
        named.update(system.return_from)
        named.update(str(outlet.room) for outlet in system.outlets.values() if outlet.kind in RETURN_KINDS)
        named.update(str(run.from_) for run in system.runs.values() if run.from_ in case.design.rooms)
    named.update(room.name for room in case.design.rooms.values() if room.return_)
    return named


def returns_are_described(case: Case) -> bool:
    """Whether the file says where air returns, or that a room has none."""
    return bool(rooms_with_returns(case)) or any(room.return_ is not None for room in case.design.rooms.values())


def belonging_to(case: Case, room: Room) -> list[Room]:
    """Baths and closets that are reached through a room and send their air through it."""
    found = []
    for other in case.design.rooms.values():
        behind = (other.door is not None and other.door.to == room.name) or room.name in other.open_to
        if other is not room and behind and room_use(case, other) in BELONGING:
            found.append(other)
    return found


def drawn_out(case: Case, room: Room) -> float:
    """Exhaust that runs all day in a room, m3/s: what is on demand may be off while air is supplied.

    Nothing where the file tells of none. Raises Missing where a device shared with other rooms is not split, and for what
    is said of the room's exhaust without its flow or its times.
    """
    own = {path_of(room, "exhaust"), path_of(room, "exhaust_run")} | case.design.tbd
    try:
        found = local_exhaust(case, room)
    except Missing as gap:
        if own & set(gap.paths):
            raise
        return 0.0
    if found.continuous > 0.0 and not found.split_known:
        raise Missing(path_of(room, "exhaust"))
    return found.continuous


@quantity("airflow", "supply less return and all-day exhaust, of the room and of the baths and closets behind it")
def transfer_flow(case: Case, room: Room) -> float:
    """Air that must leave a closed room by its door, m3/s; negative where it must come in."""
    rooms = [room, *belonging_to(case, room)]
    supplies = [supply_into(case, one) for one in rooms]
    leaving = [flow - return_from(case, one) if flow > 0 else 0.0 for one, flow in zip(rooms, supplies, strict=True)]
    return sum(leaving) - sum(drawn_out(case, one) for one in rooms)


@quantity("small_area", "undercut x width, and transfer openings", "common practice")
def transfer_area(case: Case, room: Room) -> float:
    """Free area between a closed room and the house, m2; 0 where the design says that there is none."""
    door = room.door
    grilles = [outlet for outlet in outlets_in(case, room, ("transfer grille",)) if outlet.free_area is not None]
    opening = sum(float(case.get(grille, "free_area")) for grille in grilles)
    if door is None:
        if not grilles:
            raise Missing(f"{path_of(room, 'door')}.undercut")
        return opening
    stated = case.maybe(door, "transfer_area")
    opening += float(stated or 0.0)
    if case.maybe(door, "weatherstripped"):
        return opening
    undercut = case.maybe(door, "undercut")
    if undercut is None:
        if stated is None and not grilles:
            raise Missing(path_of(door, "undercut"))
        return opening
    if undercut <= 0.0:
        return opening
    return opening + undercut_area(float(case.get(door, "width")), float(undercut))


@quantity("house_pressure", "(flow / (1.07 area))^2 in cfm, in2, Pa", "public sizing table for transfer grilles at 3 Pa")
def room_pressure(case: Case, room: Room) -> float:
    """How far a closed room stands above the house by the air supplied to it, Pa; below zero under it. Raises Missing."""
    area, flow = transfer_area(case, room), transfer_flow(case, room)
    pressure = closed_door_pressure(abs(flow), area) if area > 0.0 else 0.0
    return pressure if flow >= 0.0 else -pressure


def is_open(case: Case, room: Room) -> bool:
    """Whether a room has no door to the rest of the house, or is open to it."""
    if path_of(room, "door") in case.design.stated_none:
        return True
    beyond = [case.design.rooms[name] for name in room.open_to if name in case.design.rooms]
    return any(room_use(case, other) not in BELONGING for other in beyond)


def closed_rooms(case: Case) -> list[Room]:
    """Bedrooms and offices, and other rooms whose door the file describes, that can be closed off."""
    return [
        room
        for room in case.design.rooms.values()
        if not is_open(case, room) and (room.door is not None or use_if_known(case, room) in SLEEPING)
    ]


def use_if_known(case: Case, room: Room) -> str:
    """What a room is for, "" where nobody can tell."""
    try:
        return room_use(case, room)
    except Missing:
        return ""


def supplied_rooms(case: Case) -> list[Room]:
    """Closed rooms that air is supplied to; baths and closets behind another room count with that room."""
    behind = {one.path for room in closed_rooms(case) for one in belonging_to(case, room)}
    return [room for room in closed_rooms(case) if room.path not in behind and blows(case, room)]


def blows(case: Case, room: Room) -> bool:
    """Whether air is supplied to a room, as far as the file knows; a flow to be stated counts."""
    registers = room.supply is not None or outlets_in(case, room, SUPPLY_KINDS) or runs_to(case, room)
    if room.door is None and not registers and path_of(room, "supply") not in case.design.tbd:
        return False
    try:
        return supply_into(case, room) > 0.0
    except Missing:
        return True


def exhausted_rooms(case: Case) -> list[Room]:
    """Baths and laundries whose door the file describes."""
    return [room for room in case.design.rooms.values()
            if room.door is not None and not is_open(case, room) and use_if_known(case, room) in WET]  # fmt: skip


@quantity("airflow", "highest exhaust and dryer of the room, less supply")
def replacement_flow(case: Case, room: Room) -> float:
    """Air that must come in by the door of an exhausted room, m3/s; a dryer's closet has an opening of its own."""
    exhaust = local_exhaust(case, room)
    if exhaust.present and not exhaust.split_known:
        raise Missing(path_of(room, "exhaust"))
    dryers = [dryer for dryer in case.design.dryers.values() if dryer.room == room.name and dryer.make_up_air is None
              and dryer.kind not in ("condensing", "heat pump")
              and not (dryer.in_closet and dryer.closet_opening)]  # fmt: skip
    return exhaust.on_demand + sum(float(case.get(dryer, "airflow")) for dryer in dryers) - supply_into(case, room)
