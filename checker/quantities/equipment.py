"""Which equipment heats or cools which rooms, alone or together, and what is joined to an outdoor unit."""


from checker.case import Case, Missing, path_of, quantity
from checker.design import Design
from checker.design.equipment import Equipment
from checker.design.fields import Node
from checker.design.rooms import Room
from checker.quantities.distribution import of_equipment
from checker.quantities.room_uses import room_use
from checker.record import Record

HEADS = frozenset({"wall unit", "floor unit", "ceiling unit", "slim duct unit"})
POINT_SOURCES = frozenset({"wall unit", "floor unit", "ceiling unit", "electric heat", "stove", "fireplace"})
COMPRESSOR_KINDS = HEADS | {"heat pump", "air conditioner", "packaged unit"}
HEATER_KINDS = HEADS | {"furnace", "boiler", "heat pump", "electric heat", "packaged unit"}
COOLER_KINDS = HEADS | {"heat pump", "air conditioner", "packaged unit"}
BURNING_KINDS = frozenset({"furnace", "boiler"})
NOT_THE_ROOMS = frozenset({"water heater", "portable heater"})
"""Kinds that never count as heating or cooling rooms: the code counts no portable heater as heating."""
HABITABLE = ("bedroom", "living", "dining", "kitchen", "office")
UNHEATED_USES = ("garage", "attic", "crawl space")


class Group(Record):
    """Units that share rooms, by name. `lacking`: paths that would say what a unit serves."""

    path: str
    name: str
    units: tuple[Equipment, ...]
    rooms: tuple[str, ...]
    whole_house: bool
    lacking: tuple[str, ...] = ()


def first_told(case: Case, *places: tuple[Node, str]) -> float:
    """The first of several figures that the file states. Raises Missing: of one to be decided, else of the last."""
    for node, field in places:
        stated = case.maybe(node, field)
        if stated is not None:
            return float(stated)
    return float(case.get(*places[-1]))


def indoor_units(case: Case, outdoor: Equipment) -> list[Equipment]:
    """The units joined to an outdoor unit, by name."""
    joined = [unit for unit in case.design.equipment.values() if unit.outdoor_unit == outdoor.name]
    return sorted(joined, key=lambda unit: str(unit.path))


def outdoor_of(case: Case, unit: Equipment) -> Equipment | None:
    """The outdoor unit that a unit is joined to; None where it stands alone."""
    name = case.maybe(unit, "outdoor_unit")
    return None if name is None else case.design.equipment.get(str(name))


def is_heat_pump(case: Case, unit: Equipment) -> bool:
    """Whether a unit heats by a compressor: a head, a heat pump, or an air handler joined to one."""
    if unit.kind in HEADS or unit.kind == "heat pump":
        return True
    outdoor = outdoor_of(case, unit)
    if outdoor is not None and outdoor.kind == "heat pump":
        return True
    return unit.kind == "packaged unit" and unit.heating is not None and bool(unit.heating.points or unit.backup)


def burns(unit: Equipment) -> bool:
    """Whether the heating figures of a unit are those of its flame.

    A furnace with performance points by outdoor temperature tells those of the heat pump that is joined to it.
    """
    return unit.kind in BURNING_KINDS and not (unit.heating is not None and unit.heating.points)


def gives(case: Case, unit: Equipment, field: str) -> bool:
    """Whether a unit heats (`heating`) or cools (`cooling`) rooms itself."""
    if unit.kind in NOT_THE_ROOMS or path_of(unit, field) in case.design.stated_none or indoor_units(case, unit):
        return False
    if getattr(unit, field) is not None or path_of(unit, field) in case.design.tbd:
        return True
    if field == "heating" and unit.kind in HEADS and is_cooled_by_conditioner(case, unit):
        return False
    if unit.kind == "air handler":
        outdoor = outdoor_of(case, unit)
        kinds = ("heat pump",) if field == "heating" else ("heat pump", "air conditioner")
        return outdoor is not None and outdoor.kind in kinds
    return unit.kind in (HEATER_KINDS if field == "heating" else COOLER_KINDS)


def is_cooled_by_conditioner(case: Case, unit: Equipment) -> bool:
    """Whether the outdoor unit of an indoor unit is an air conditioner, which gives no heat."""
    outdoor = outdoor_of(case, unit)
    return outdoor is not None and outdoor.kind == "air conditioner"


def is_outdoors(case: Case, unit: Equipment) -> bool:
    """Whether a unit is the outdoor part of heat pump or air conditioner, or a packaged unit."""
    if indoor_units(case, unit):
        return True
    return unit.kind in ("heat pump", "air conditioner", "packaged unit") and unit.location in (None, "outdoors", "roof")


def outdoor_units(case: Case) -> list[Equipment]:
    """Every outdoor unit."""
    return [unit for unit in case.design.equipment.values() if is_outdoors(case, unit)]


def heated_rooms(case: Case) -> list[Room]:
    """Rooms inside the heated house: said to be, or not by their use outside it."""
    found = []
    for room in case.design.rooms.values():
        stated = case.maybe(room, "conditioned")
        try:
            use = room_use(case, room)
        except Missing:
            use = "other"
        if stated is True or (stated is None and use not in UNHEATED_USES):
            found.append(room)
    return found


@quantity()
def rooms_served(case: Case, unit: Equipment) -> tuple[str, ...]:
    """Rooms that a unit serves: as said, by its ducts, and the one it stands in. Raises Missing(serves)."""
    rooms = {each.room for each in of_equipment(case, unit, unit)}
    if unit.kind in POINT_SOURCES and unit.location in case.design.rooms:
        rooms.add(str(unit.location))
    if not rooms:
        raise Missing(path_of(unit, "serves"))
    return tuple(sorted(rooms))


class Reach(Record):
    """Rooms that some units reach together, and paths that would say more."""

    rooms: frozenset[str]
    units: tuple[Equipment, ...]
    lacking: tuple[str, ...] = ()


def reach_of(case: Case, unit: Equipment, alone: bool) -> Reach:
    """The rooms of one unit; the whole house where it is central, alone, and says nothing of rooms."""
    try:
        return Reach(frozenset(rooms_served(case, unit)), (unit,))
    except Missing as gap:
        if alone and unit.kind not in POINT_SOURCES and path_of(unit, "serves") not in case.design.tbd:
            return Reach(frozenset(room.name for room in heated_rooms(case)), (unit,))
        return Reach(frozenset(), (unit,), gap.paths)


def grouped(case: Case, units: list[Equipment], load: str) -> list[Group]:
    """The units as groups that share no room with each other; rooms whose `load` is stated to be 0 need none."""
    reaches: list[Reach] = []
    for unit in units:
        together = reach_of(case, unit, len(units) == 1)
        for other in [each for each in reaches if each.rooms & together.rooms]:
            reaches.remove(other)
            together = Reach(
                together.rooms | other.rooms, together.units + other.units, together.lacking + other.lacking
            )
        reaches.append(together)
    everywhere = {room.name for room in heated_rooms(case) if case.maybe(room, load) != 0.0}
    found = []
    for rooms, members, lacking in reaches:
        ordered = tuple(sorted(members, key=lambda unit: str(unit.path)))
        whole = everywhere <= rooms and not lacking
        name = " and ".join(str(unit.name) for unit in ordered)
        found.append(Group(str(ordered[0].path), name, ordered, tuple(sorted(rooms)), whole, lacking))
    return sorted(found)


@quantity()
def heating_groups(case: Case, design: Design) -> list[Group]:
    """What heats the house, as groups of units that share rooms."""
    return grouped(case, [unit for unit in design.equipment.values() if gives(case, unit, "heating")], "heating_load")


@quantity()
def cooling_groups(case: Case, design: Design) -> list[Group]:
    """What cools the house, as groups of units that share rooms."""
    return grouped(case, [unit for unit in design.equipment.values() if gives(case, unit, "cooling")], "cooling_load")


def all_heating(case: Case) -> list[Group]:
    """Every heating group of the design."""
    return heating_groups(case, case.design)


def all_cooling(case: Case) -> list[Group]:
    """Every cooling group of the design."""
    return cooling_groups(case, case.design)
