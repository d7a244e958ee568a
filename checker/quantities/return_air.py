"""Where heating and cooling systems take their return air: grilles, open ends of return runs, named rooms."""


from checker.case import CannotJudge, Case, Missing, path_of, quantity
from checker.design.airway import PLACES, Run
from checker.design.combustion import Burner
from checker.design.ducts import DuctSystem, Outlet
from checker.design.equipment import Equipment
from checker.quantities.burners import burners, draft
from checker.quantities.duct_exposure import house_air_systems
from checker.quantities.duct_scope import mover_or_none
from checker.quantities.room_uses import room_use
from checker.record import Record

RETURNS = ("return grille", "filter grille")
DUCTLESS = ("wall unit", "floor unit", "ceiling unit", "heat pump", "air conditioner", "boiler", "electric heat")
NO_OPEN_FLAME = ("direct vent", "sealed")
PLAIN_FLAME = ("natural draft", "open", "unvented")


class Inlet(Record):
    """A place where return air is taken: its path, its name, the room or place it is in, and what draws there."""

    path: str
    name: str
    place: str | None
    outlet: Outlet | None
    system: DuctSystem | None
    unit: Equipment | None


@quantity()
def inlets(case: Case, _design: object) -> list[Inlet]:
    """All places of return air, each once."""
    found: list[Inlet] = []
    for system in house_air_systems(case):
        mover = mover_or_none(case, system)
        unit = mover if isinstance(mover, Equipment) else None
        own = of_system(case, system, unit)
        covered = {inlet.place for inlet in own}
        for number, name in enumerate(system.return_from):
            if name not in covered:
                own.append(Inlet(f"{system.path}.return_from[{number}]", system.name, name, None, system, unit))
        found += own
    for unit in case.design.equipment.values():
        drawn = {inlet.place for inlet in found if inlet.unit is unit}
        place = unit.return_location
        if place is not None and place not in drawn and unit.kind not in DUCTLESS:
            found.append(Inlet(path_of(unit, "return_location"), unit.name, place, None, None, unit))
    told = {inlet.place for inlet in found}
    found += [
        Inlet(path_of(room, "return_"), f"the return of {room.name}", room.name, None, None, None)
        for room in case.design.rooms.values()
        if room.return_ and room.name not in told
    ]
    return found


def of_system(case: Case, system: DuctSystem, unit: Equipment | None) -> list[Inlet]:
    """Return grilles of a system, and return runs that begin in a room or place."""
    found = [
        Inlet(outlet.path, outlet.name, outlet.room, outlet, system, unit)
        for outlet in system.outlets.values()
        if outlet.kind in RETURNS
    ]
    covered = {inlet.place for inlet in found}
    for run in system.runs.values():
        place = open_start(case, system, run)
        if place is not None and place not in covered:
            found.append(Inlet(run.path, run.name, place, None, system, unit))
    return found


def open_start(case: Case, system: DuctSystem, run: Run) -> str | None:
    """The room or place, not outdoors, that a run draws from without a grille."""
    name, design = run.from_, case.design
    if name is None or name == "outdoors" or name in system.outlets or (name in system.runs and name != run.name):
        return None
    if name in (*design.equipment, *design.fans, *design.hoods, *design.filters, *design.openings):
        return None
    return name if name in design.rooms or name in PLACES.words else None


@quantity()
def use_of(case: Case, inlet: Inlet) -> str:
    """What the room of an inlet is for, or the word of its place. Raises Missing."""
    if inlet.place is None:
        assert inlet.outlet is not None
        raise Missing(path_of(inlet.outlet, "room"))
    room = case.design.rooms.get(inlet.place)
    return inlet.place if room is None else room_use(case, room)


@quantity()
def is_conditioned(case: Case, inlet: Inlet) -> bool:
    """Whether the attic or crawl space of an inlet is conditioned. Raises Missing."""
    room = case.design.rooms.get(inlet.place or "")
    if room is not None and room.conditioned is not None:
        return bool(case.get(room, "conditioned"))
    field = "attic" if use_of(case, inlet) == "attic" else "crawl_space"
    house = case.design.house
    if house is None:
        raise Missing(f"house.{field}")
    return bool(case.get(house, field) == "conditioned")


def same_space(case: Case, one: str, other: str) -> bool:
    """Whether two rooms are one or open to each other."""
    if one == other:
        return True
    rooms = case.design.rooms
    return (one in rooms and other in rooms[one].open_to) or (other in rooms and one in rooms[other].open_to)


@quantity()
def open_flames(case: Case, inlet: Inlet) -> list[Burner]:
    """Burners other than the unit itself that draw their air from the space of an inlet. Raises Missing."""
    use_of(case, inlet)
    found: list[Burner] = []
    absent: list[str] = []
    for burner in burners(case, case.design):
        own = inlet.unit is not None and burner.name == inlet.unit.name
        if own or burner.kind in ("range", "dryer") or burner.room_sealed:
            continue
        if burner.location is None:
            absent.append(path_of(burner, "location"))
        elif same_space(case, str(inlet.place), burner.location) and draft(case, burner) not in NO_OPEN_FLAME:
            found.append(burner)
    if absent:
        raise Missing(*absent)
    return found


@quantity("length", "as stated for the grille, else the nearest appliance's distance to a return")
def flame_distance(case: Case, inlet: Inlet) -> float | None:
    """Distance of an inlet to an open flame or draft hood in its space; None where there is none."""
    stated = case.maybe(inlet.outlet, "distance_to_flame") if inlet.outlet is not None else None
    if stated is not None:
        return float(stated)
    flames = open_flames(case, inlet)
    if not flames:
        return None
    known = [case.maybe(burner, "return_distance") for burner in flames]
    if None in known:
        asked = path_of(inlet.outlet, "distance_to_flame") if inlet.outlet is not None else ""
        raise Missing(asked or path_of(flames[known.index(None)], "return_distance"))
    nearest = flames[known.index(min(known))]
    if draft(case, nearest) not in PLAIN_FLAME and min(known) < case.limit("return-near-flame"):
        raise CannotJudge(f"whether the combustion chamber of {nearest.name} is open to the room depends on its make")
    return float(min(known))
