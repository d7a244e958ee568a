"""Refrigerant lines: which units they join, which make up one system, what is in them and what a leak would need."""

import re
from typing import Any

from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.design.equipment import Equipment
from checker.design.refrigerant import RefrigerantLine
from checker.physics.refrigerant import area_by_mixing, least_room_area, unrestricted_charge
from checker.quantities.ducted_units import DUCTED
from checker.quantities.equipment import COMPRESSOR_KINDS
from checker.record import Record
from checker.units import parse

EXPANDS_INDOORS = ("air handler", "furnace", "air conditioner", "packaged unit")
INDOORS = frozenset({"conditioned", "basement", "chase", "crawl space", "attic", "garage"})
OF_SYSTEM = ("refrigerant", "listing", "made_on", "charge", "label", "papers_left", "pressure_test", "vacuum",
             "leak_detection", "locking_caps")  # fmt: skip
"""What a line says of its whole system."""


class System(Record):
    """The lines of one outdoor unit, one charge of refrigerant; first the one that tells most of the whole."""

    path: str
    name: str
    lines: tuple[RefrigerantLine, ...]


def outdoor_unit(case: Case, line: RefrigerantLine) -> Equipment | None:
    """The outdoor unit of a line: as stated, else as the indoor unit has it; None where neither tells."""
    if line.from_ is not None:
        return case.design.equipment.get(line.from_)
    for unit in indoor_units(case, line):
        if unit.outdoor_unit is not None:
            return case.design.equipment.get(unit.outdoor_unit)
    return None


def indoor_units(case: Case, line: RefrigerantLine) -> list[Equipment]:
    """The indoor units of a line: as stated, else the one it is named after; empty where neither tells."""
    names = line.to or [line.name]
    units = case.design.equipment
    return [units[name] for name in names if name in units and name != line.from_]


def expands_indoors(case: Case, line: RefrigerantLine) -> bool:
    """Whether liquid reaches a valve at an indoor unit; ductless units expand it outdoors."""
    return any(unit.kind in EXPANDS_INDOORS for unit in indoor_units(case, line))


def new_lines(case: Case) -> list[RefrigerantLine]:
    """The lines that are to be laid. Raises Missing("refrigerant") where split units are drawn without any."""
    if not case.stated("refrigerant") and any(unit.outdoor_unit for unit in case.design.equipment.values()):
        raise Missing("refrigerant")
    return drawn_lines(case)


def drawn_lines(case: Case) -> list[RefrigerantLine]:
    """The lines that are to be laid, by name; those of systems that stay as they are left out."""
    return [line for _, line in sorted(case.design.refrigerant.items()) if not line.existing]


def systems(case: Case) -> list[System]:
    """The systems of the lines that are to be laid, each once."""
    found: dict[str, list[RefrigerantLine]] = {}
    for line in drawn_lines(case):
        unit = outdoor_unit(case, line)
        found.setdefault(line.path if unit is None else f"equipment.{unit.name}", []).append(line)
    for lines in found.values():
        lines.sort(key=lambda line: -sum(case.speaks_of(line, field) for field in OF_SYSTEM))
    return [System(lines[0].path, owner.rpartition(".")[2], tuple(lines)) for owner, lines in found.items()]


def system_of(case: Case, line: RefrigerantLine) -> System:
    """The system that a line belongs to."""
    return next(system for system in systems(case) if any(each is line for each in system.lines))


def of_system(case: Case, system: System, field: str) -> Any:
    """What any line of a system says of the whole. Raises Missing where none does."""
    for line in system.lines:
        value = case.maybe(line, field)
        if value is not None:
            return value
    raise Missing(path_of(system.lines[0], field))


def charged_units(case: Case, system: System) -> list[Equipment]:
    """The units of a system: those of its lines, else the one that it stands for."""
    if not system.lines:
        return [case.design.equipment[system.name]]
    found = []
    for line in system.lines:
        unit = outdoor_unit(case, line)
        found += [*([] if unit is None else [unit]), *indoor_units(case, line)]
    return found


def states_refrigerant(case: Case, name: str | None) -> bool:
    """Whether the equipment of a name speaks of its refrigerant."""
    unit = None if name is None else case.design.equipment.get(name)
    return unit is not None and case.speaks_of(unit, "refrigerant")


def charged_systems(case: Case) -> list[System]:
    """The systems of the lines, and equipment that states its refrigerant without any line, be it an existing one."""
    lines = case.design.refrigerant.values()
    joined = {unit.name for line in lines for unit in charged_units(case, System(line.path, "", (line,)))}
    alone = [
        unit
        for unit in case.design.equipment.values()
        if unit.kind in COMPRESSOR_KINDS
        and unit.name not in joined
        and states_refrigerant(case, str(unit.name))
        and not (unit.outdoor_unit in joined or states_refrigerant(case, unit.outdoor_unit))
    ]
    return systems(case) + [System(unit.path, str(unit.name), ()) for unit in alone]


@quantity()
def designation(case: Case, system: System) -> str:
    """Refrigerant of a system in capitals without hyphen, such as `R32`: by a line, else by one of its units."""
    for node in [*system.lines, *charged_units(case, system)]:
        stated = case.maybe(node, "refrigerant")
        if stated is not None:
            return normal(str(stated))
    raise Missing(f"{system.path}.refrigerant")


def normal(text: str) -> str:
    """A designation in one spelling: `R-410a`, `HFC-410A` and `410A` are `R410A`."""
    bare = re.sub(r"[\s\-_]", "", text).upper()
    return re.sub(r"^(?:HFC|HCFC|CFC|HFO|HC|R)?(?=\d)", "R", bare)


def is_mildly_flammable(case: Case, system: System) -> bool:
    """Its refrigerant is not of group A2L."""
    return designation(case, system) in case.limit("mildly-flammable-refrigerants")


def line_is_mildly_flammable(case: Case, line: RefrigerantLine) -> bool:
    """Its refrigerant is not of group A2L."""
    return is_mildly_flammable(case, system_of(case, line))


def runs_outdoors(case: Case, line: RefrigerantLine) -> bool:
    """The unit that it comes from stands indoors."""
    unit = outdoor_unit(case, line)
    place = None if unit is None else case.maybe(unit, "location")
    return place is None or (place not in INDOORS and place not in case.design.rooms)


def is_ducted(units: list[Equipment]) -> bool:
    """Whether any of these units moves air through ducts."""
    return any(unit.kind in DUCTED for unit in units)


@quantity("mass")
def charge(case: Case, system: System) -> float:
    """Charge of a system."""
    return float(of_system(case, system, "charge"))


def flammable_limit(case: Case, system: System) -> float:
    """Lower flammable limit of a system's refrigerant, kg/m3. CannotJudge where the codebook lacks it."""
    limits: dict[str, str] = case.limit("lower-flammable-limits")
    name = designation(case, system)
    if name not in limits:
        raise CannotJudge(f"no lower flammable limit is tabled for {name}: ask for the maker's table")
    return parse(limits[name], "density")


@quantity("mass", "6 m3 x lower flammable limit", "UL/IEC 60335-2-40, annex GG")
def free_charge(case: Case, system: System) -> float:
    """Charge of a mildly flammable refrigerant that asks nothing of the room."""
    return unrestricted_charge(flammable_limit(case, system))


@quantity("area")
def leak_area(case: Case, line: RefrigerantLine) -> float:
    """Floor area of the room that a leak at the indoor unit would run into."""
    stated = case.maybe(line, "room_area")
    if stated is not None:
        return float(stated)
    name = case.maybe(line, "room")
    for unit in indoor_units(case, line) if name is None else []:
        serves = unit.serves[0] if len(unit.serves) == 1 else None
        name = unit.location if unit.location in case.design.rooms else serves
    room = case.design.rooms.get(name or "")
    if room is None:
        raise Missing(path_of(line, "room"))
    return float(case.get(room, "floor_area"))


def mounting_height(case: Case, line: RefrigerantLine) -> float:
    """Height from which a leak spreads, m: as stated, else by the kind of unit."""
    stated = case.maybe(line, "mounting_height")
    if stated is not None:
        return float(stated)
    heights: dict[str, str] = case.limit("leak-heights")
    kinds = [unit.kind for unit in indoor_units(case, line)]
    found = [parse(heights[kind], "length") for kind in kinds if kind in heights]
    if not found:
        raise Missing(path_of(line, "mounting_height"))
    return min(found)


@quantity("area", "(charge / (2.5 x LFL^1.25 x height))^2", "UL/IEC 60335-2-40, annex GG; the maker's table first")
def least_leak_area(case: Case, line: RefrigerantLine) -> float:
    """Floor area that the charge of the system needs around its indoor unit."""
    maker = line.by_maker
    by_maker = None if maker is None else case.maybe(maker, "least_room_area")
    if by_maker is not None:
        return float(by_maker)
    system = system_of(case, line)
    held = charge(case, system)
    if held <= free_charge(case, system) * (1.0 + 1e-9):
        raise NotApplicable("a charge this small asks nothing of the room")
    if any(case.maybe(each, "leak_detection") for each in system.lines):
        raise CannotJudge("with a leak detector the maker's table says how large the room must be")
    height, limit = mounting_height(case, line), flammable_limit(case, system)
    least = least_room_area(held, limit, height)
    mixed = area_by_mixing(held, limit, height, float(case.limit("leak-mixing-share")))
    if least <= leak_area(case, line) < mixed:
        raise CannotJudge("the room is near the limit: the maker's table for this charge and height decides")
    return least


@quantity("length")
def greatest_height(case: Case, line: RefrigerantLine) -> float:
    """Height between the units that the maker allows for the way this line runs."""
    maker = line.by_maker
    if maker is None:
        raise Missing(f"{line.path}.by_maker.greatest_lift")
    above = float(case.get(line, "rise")) >= 0.0
    for field in ("greatest_indoor_above" if above else "greatest_indoor_below", "greatest_lift"):
        stated = case.maybe(maker, field)
        if stated is not None:
            return float(stated)
    raise Missing(path_of(maker, "greatest_lift"))


@quantity("mass", "(length - length included) x charge per length")
def charge_to_add(case: Case, line: RefrigerantLine) -> float:
    """Charge that the maker asks to add for a line's length."""
    length, (included, rate) = case.get(line, "length"), case.all(line.by_maker, "included_length", "charge_per_length")
    return float(max(0.0, length - included) * rate)
