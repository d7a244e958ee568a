"""The duct of an exhaust fan, recovery unit or hood, whether it stands under the device or among the runs."""


from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.design.airway import Airway, Run
from checker.design.ducts import DuctSystem
from checker.design.fans import Fan, Setting
from checker.quantities.local_exhaust import Exhauster, systems_of
from checker.quantities.movers import exhaust_flow, supply_flow
from checker.quantities.piece_shapes import uncounted_pieces
from checker.quantities.room_uses import room_use
from checker.record import Record

SMOOTH = frozenset(
    {"galvanized steel", "stainless steel", "copper", "aluminum", "rigid plastic", "pvc", "unknown metal"}
)
FLEXIBLE = frozenset({"flexible", "semi-rigid aluminum"})
ELBOWS = {
    "elbow-90": 1, "elbow-45": 1, "elbow-30": 1, "elbow-180": 2, "elbow-90-mitered": 1, "flat-elbow-90": 1,
}  # fmt: skip
TURNS = {"none": 0, "90": 1, "180": 2}
COLD_PLACES = frozenset({"attic", "crawl space", "garage", "outdoors", "roof", "floor over unconditioned"})
DUCTLESS_KINDS = ("through-the-wall",)


class Line(Record):
    """Ducts that one stream of air takes in series; `path` is that of the first."""

    path: str
    sections: tuple[Airway, ...]


@quantity()
def exhaust_line(case: Case, device: Exhauster) -> Line:
    """The duct of a device, as one line. Raises Missing, or NotApplicable for a fan that needs no duct."""
    field = "exhaust_duct" if isinstance(device, Fan) and device.role == "recovery" else "duct"
    own = getattr(device, field)
    if own is not None:
        return Line(own.path, (own,))
    if path_of(device, field) in case.design.stated_none:
        raise NotApplicable(f"{device.name} has no duct")
    for system in systems_of(case, device):
        sections = runs_in_series(case, system, device)
        if sections:
            return Line(sections[0].path, tuple(sections))
    if isinstance(device, Fan) and device.kind in DUCTLESS_KINDS:
        raise NotApplicable(f"{device.name} blows straight through the wall")
    raise Missing(path_of(device, field))


def runs_in_series(case: Case, system: DuctSystem, device: Exhauster) -> list[Run]:
    """The runs of a system one after the other: the longest branch on the room side, then what leads outdoors."""
    runs = system.runs
    if len(runs) == 1:
        return list(runs.values())
    if isinstance(device, Fan) and device.role == "recovery":
        return []
    after: list[Run] = []
    for run in runs.values():
        if run.from_ == device.name:
            after = following(runs, run)
            break
    before: list[list[Run]] = [leading(runs, run) for run in runs.values() if run.to == device.name]
    longest = max(before, key=lambda way: sum(run.length or 0.0 for run in way), default=[])
    return [*longest, *after]


def following(runs: dict[str, Run], first: Run) -> list[Run]:
    """A run and those that it leads to, one after the other."""
    way = [first]
    while way[-1].to in runs and runs[str(way[-1].to)] not in way:
        way.append(runs[str(way[-1].to)])
    return way


def leading(runs: dict[str, Run], last: Run) -> list[Run]:
    """A run and those that lead to it, the longest of several, in the order of the air."""
    way = [last]
    while True:
        first = way[0]
        before = [
            run
            for run in runs.values()
            if run not in way and (run.to == first.name or first.from_ == run.name)
        ]
        if not before:
            return way
        way.insert(0, max(before, key=lambda run: run.length or 0.0))


@quantity()
def highest_setting(case: Case, device: Exhauster) -> Setting:
    """The setting of a device that moves the most air. Raises Missing."""
    settings: dict[str, Setting] = case.get(device, "settings")
    if not settings:
        raise Missing(path_of(device, "settings"))
    supply = isinstance(device, Fan) and device.role == "supply"
    return max(settings.values(), key=lambda each: (supply_flow if supply else exhaust_flow)(case, each))


@quantity("airflow", "the highest setting")
def highest_flow(case: Case, device: Exhauster) -> float:
    """The most air that a device moves through its duct."""
    setting = highest_setting(case, device)
    supply = isinstance(device, Fan) and device.role == "supply"
    return (supply_flow if supply else exhaust_flow)(case, setting)


def section_flow(case: Case, device: Exhauster, section: Airway) -> float:
    """Airflow in one section: as stated, else the device's, unless several branches meet before it."""
    if isinstance(section, Run):
        stated = case.maybe(section, "airflow")
        if stated is not None:
            return float(stated)
        branched = sum(run.to == device.name for run in section.up.runs.values()) > 1
        if branched and section.from_ != device.name:
            raise Missing(path_of(section, "airflow"))
    return highest_flow(case, device)


@quantity("length", "sum of the straight lengths")
def straight_length(case: Case, device: Exhauster) -> float:
    """Straight length of a device's duct."""
    line = exhaust_line(case, device)
    absent = [path_of(section, "length") for section in line.sections if section.length is None]
    if absent:
        raise Missing(*absent)
    return float(sum(case.get(section, "length") for section in line.sections))


@quantity("", "elbows of the duct; a turn at the fan's outlet counts where it is not among them")
def elbow_count(case: Case, device: Exhauster) -> int:
    """Elbows in a device's duct, each turn of 90 degrees or less as one."""
    line = exhaust_line(case, device)
    first = line.sections[0]
    counted = [case.maybe(section, "pieces") for section in line.sections]
    if not any(counted) and path_of(first, "pieces") not in case.design.stated_none:
        raise Missing(path_of(first, "pieces"))
    uncounted = [path for section in line.sections for path in uncounted_pieces(case, section)]
    if uncounted:
        raise Missing(*uncounted)
    elbows = sum(ELBOWS.get(piece, 0) * count for pieces in counted for piece, count in pieces.items())
    turn = case.maybe(device, "turn_at_outlet") if isinstance(device, Fan) else None
    return int(max(elbows, TURNS.get(turn or "none", 0)))


def kind_of(case: Case, section: Airway) -> str:
    """Smooth or flexible, as the code's length table tells ducts apart."""
    material = case.get(section, "material")
    if material in SMOOTH:
        return "smooth"
    if material in FLEXIBLE:
        return "flexible"
    raise CannotJudge(f"the length table has no column for {material}")


def cold_sections(case: Case, line: Line) -> list[Airway]:
    """Sections that run through unheated space: a place of that name, or a room for such a use that is not heated."""
    return [section for section in line.sections if any(is_cold(case, place) for place in case.get(section, "location"))]


def is_cold(case: Case, place: str) -> bool:
    """Whether a place is unheated; a conditioned attic or crawl space is not, nor an unvented attic."""
    house = case.design.house
    room = case.design.rooms.get(place)
    if room is not None:
        return room.conditioned is False or (room.conditioned is None and room_use(case, room) in COLD_PLACES)
    if place == "attic" and house is not None and house.attic in ("conditioned", "unvented"):
        return False
    if place == "crawl space" and house is not None and house.crawl_space == "conditioned":
        return False
    return place in COLD_PLACES
