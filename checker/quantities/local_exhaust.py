"""What takes air out of each room: fans, recovery units, hoods, grilles of duct systems, or a stated flow."""

from checker.case import Case, Missing, path_of, quantity
from checker.design.airway import Run
from checker.design.ducts import DuctSystem, Outlet
from checker.design.fans import Fan, Setting
from checker.design.fields import Airflow
from checker.design.hoods import Hood
from checker.design.rooms import Room
from checker.quantities.movers import exhaust_flow, is_continuous
from checker.quantities.room_uses import WET_USES, room_use, rooms_used_as
from checker.record import Record

Exhauster = Fan | Hood
Point = Outlet | Run
NOT_LOCAL = ("attic", "whole-house cooling")
SLACK = 1e-9


class Draw(Record):
    """Air that one device may take from a room, m3/s. A shared device without a split gives its whole flow."""

    device: Exhauster | None
    path: str
    airflow: Airflow
    continuous: bool
    split_known: bool = True


class RoomExhaust(Record):
    """Exhaust of one room, m3/s: what runs all the time, and the most with every device at its highest speed."""

    room: Room
    draws: tuple[Draw, ...]

    @property
    def present(self) -> bool:
        """Whether anything takes air out of the room."""
        return any(draw.airflow > 0 for draw in self.draws)

    @property
    def split_known(self) -> bool:
        """Whether each flow is the room's own; else the flows are upper bounds."""
        return all(draw.split_known for draw in self.draws)

    @property
    def continuous(self) -> float:
        """What runs all the time."""
        return self.highest(only_continuous=True)

    @property
    def on_demand(self) -> float:
        """The most that the devices take out together."""
        return self.highest(only_continuous=False)

    def highest(self, only_continuous: bool) -> float:
        """Sum over devices of the highest setting."""
        by_device: dict[str, float] = {}
        for draw in self.draws:
            if draw.continuous or not only_continuous:
                key = draw.device.path if draw.device is not None else draw.path
                by_device[key] = max(by_device.get(key, 0.0), draw.airflow)
        return sum(by_device.values())

    def reaches(self, continuous: float, on_demand: float) -> bool:
        """Whether either flow is reached. Raises Missing where a shared device is not split and that decides."""
        steady = self.continuous >= continuous * (1 - SLACK)
        enough = steady or self.on_demand >= on_demand * (1 - SLACK)
        if enough and not self.split_known:
            raise Missing(path_of(self.room, "exhaust"))
        return enough


def devices(case: Case) -> list[Exhauster]:
    """Every fan and hood."""
    return [*case.design.fans.values(), *case.design.hoods.values()]


def systems_of(case: Case, device: Exhauster) -> list[DuctSystem]:
    """Duct systems that a device moves the air of, or that begin or end at it."""
    return [
        system
        for system in case.design.ducts.values()
        if device.name == (system.mover or system.name)
        or (isinstance(device, Fan) and system.name in device.from_)
        or (system.mover is None and any(device.name in (run.from_, run.to) for run in system.runs.values()))
    ]


def points_of(case: Case, device: Exhauster) -> list[tuple[str, Point, DuctSystem]]:
    """(room, grille or run, system) where the systems of a device take air from a room."""
    found: list[tuple[str, Point, DuctSystem]] = []
    for system in systems_of(case, device):
        grilles = [outlet for outlet in system.outlets.values() if outlet.kind in ("exhaust grille", "return grille")]
        found += [(outlet.room, outlet, system) for outlet in grilles if outlet.room is not None]
        open_ends = [run for run in system.runs.values() if run.from_ not in system.outlets]
        found += [(str(run.from_), run, system) for run in open_ends if run.from_ in case.design.rooms]
    return found


@quantity()
def rooms_exhausted(case: Case, device: Exhauster) -> tuple[str, ...]:
    """Names of the rooms that a device takes air out of to outdoors. Raises Missing where nobody can tell."""
    if isinstance(device, Hood):
        return hood_room(case, device)
    role = case.maybe(device, "role")
    if role is None:
        raise Missing(path_of(device, "role"))
    if role not in ("exhaust", "recovery"):
        return ()
    rooms = [name for name, _, _ in points_of(case, device)]
    drawn = [name for name in device.from_ if name in case.design.rooms]
    listed = list(case.maybe(device, "room"))
    if role == "recovery" and not drawn and not rooms:
        listed = [name for name in listed if is_drawn_from(case, case.design.rooms[name])]
    elif role == "recovery":
        listed = []
    found = tuple(dict.fromkeys([*rooms, *drawn, *listed]))
    places = [name for name in device.from_ if name not in case.design.openings]
    if found or device.kind in NOT_LOCAL or (places and role == "exhaust"):
        return found
    # a recovery unit's `room` may be where it supplies to: only `from` then tells where it draws
    raise Missing(f"{device.path}.from" if role == "recovery" and device.room else path_of(device, "room"))


def is_drawn_from(case: Case, room: Room) -> bool:
    """Whether a recovery unit takes air out of a room that it lists: a wet one, or one whose exhaust is stated."""
    return bool(room.exhaust) or room_use(case, room) in WET_USES


def hood_room(case: Case, hood: Hood) -> tuple[str, ...]:
    """The room that a hood exhausts; none where it blows back into the room."""
    return () if case.maybe(hood, "recirculating") else (room_of_hood(case, hood).name,)


@quantity()
def room_of_hood(case: Case, hood: Hood) -> Room:
    """The room that a hood hangs in: as stated, else the only kitchen."""
    stated = case.maybe(hood, "room")
    if stated is not None:
        return case.design.rooms[stated]
    kitchens = rooms_used_as(case, "kitchen")
    if len(kitchens) != 1:
        raise Missing(path_of(hood, "room"))
    return kitchens[0]


@quantity()
def local_exhaust(case: Case, room: Room) -> RoomExhaust:
    """Everything that takes air out of a room; without draws where the file is clear that nothing does."""
    draws: list[Draw] = []
    doubts: list[str] = []
    for device in devices(case):
        if isinstance(device, Hood) and device.room is None and room_use(case, room) != "kitchen":
            continue
        try:
            if room.name not in rooms_exhausted(case, device):
                continue
        except Missing as gap:
            if isinstance(device, Fan) and room.name in (*device.room, *device.from_):
                raise
            doubts.extend(gap.paths)
            continue
        draws.extend(draws_of(case, device, room))
    stated = case.maybe(room, "exhaust")
    if not draws and stated is not None:
        draws = [Draw(None, path_of(room, "exhaust"), stated, runs_all_day(case, room, stated))]
    if not draws and stated is None:
        doubts.extend(whatever_else_might(case, room))
        if doubts:
            raise Missing(*doubts)
    return RoomExhaust(room, tuple(draws))


def runs_all_day(case: Case, room: Room, stated: float) -> bool:
    """Whether a flow that only the room states runs all the time; no flow needs no word."""
    return stated > 0 and bool(case.get(room, "exhaust_run") == "continuous")


def draws_of(case: Case, device: Exhauster, room: Room) -> list[Draw]:
    """What one device takes from a room at each setting, or by its grille, or by the room's stated share."""
    points = [(point, system) for name, point, system in points_of(case, device) if name == room.name]
    flows = [point_flow(case, point) for point, _ in points]
    known = [flow for flow in flows if flow is not None]
    if points and len(known) == len(points):
        first, system = points[0]
        flow = sum(known)
        return [Draw(device, first.path, flow, point_runs(case, device, system, room))]
    settings: dict[str, Setting] = case.get(device, "settings")
    if len(rooms_exhausted(case, device)) == 1:
        return [
            Draw(device, setting.path, exhaust_flow(case, setting), is_continuous(case, setting))
            for setting in settings.values()
        ]
    stated = case.maybe(room, "exhaust")
    if stated is not None:
        return [Draw(device, path_of(room, "exhaust"), stated, point_runs(case, device, None, room))]
    return [
        Draw(device, setting.path, exhaust_flow(case, setting), is_continuous(case, setting), False)
        for setting in settings.values()
    ]


def point_flow(case: Case, point: Point) -> float | None:
    """Airflow of a grille or run: as measured where the house is built and it was measured, else as designed."""
    project = case.design.project
    if project is not None and project.stage == "as-built" and isinstance(point, Outlet) and point.measured is not None:
        measured = case.maybe(point.measured, "airflow")
        if measured is not None:
            return float(measured)
    designed = case.maybe(point, "airflow")
    return None if designed is None else float(designed)


def point_runs(case: Case, device: Exhauster, system: DuctSystem | None, room: Room) -> bool:
    """Whether a grille's design flow runs all the time: by the system's setting, the device's, or the room's word."""
    word = case.maybe(room, "exhaust_run")
    if word is not None:
        return bool(word == "continuous")
    settings: dict[str, Setting] = case.get(device, "settings")
    if system is not None and system.setting in settings:
        return is_continuous(case, settings[str(system.setting)])
    kinds = {is_continuous(case, setting) for setting in settings.values()}
    if len(kinds) != 1:
        raise Missing(path_of(room, "exhaust_run"))
    return kinds.pop()


def whatever_else_might(case: Case, room: Room) -> list[str]:
    """What the file leaves open where nothing is known to exhaust a room: sections not written yet, loose openings."""
    kitchen = room_use(case, room) == "kitchen"
    section = "hoods" if kitchen else "fans"
    if not case.stated(section):
        return [section]
    grilles = [
        outlet
        for system in case.design.ducts.values()
        for outlet in system.outlets.values()
        if outlet.room == room.name and outlet.kind == "exhaust grille"
    ]
    used = {name for fan in case.design.fans.values() for name in fan.to}
    used |= {str(hood.to) for hood in case.design.hoods.values()}
    used |= {str(run.to) for system in case.design.ducts.values() for run in system.runs.values()}
    kind = "kitchen exhaust" if kitchen else "exhaust"
    loose = [
        opening
        for opening in case.design.openings.values()
        if opening.kind == kind and opening.name not in used and not opening.serves
    ]
    return [path_of(room, "exhaust")] if grilles or loose else []
