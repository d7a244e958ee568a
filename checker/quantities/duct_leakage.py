"""Duct leakage: what is stated of it, whether the ducts are all inside, and what the edition allows."""

from itertools import product
from math import inf

from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.design.ducts import DuctLeakage, DuctSystem
from checker.design.equipment import Equipment
from checker.design.fields import Leakage
from checker.quantities.duct_exposure import exposed, house_air_systems
from checker.quantities.duct_scope import mover_or_none
from checker.quantities.leakage_class import leakage_by_class, states_class
from checker.record import Record
from checker.units import parse

BARE = "rough-in without air handler"
STAGES = (BARE, "complete")
MANY_RETURNS = 3
INDOOR = (
    "wall unit", "floor unit", "ceiling unit", "slim duct unit", "air handler", "furnace", "boiler", "packaged unit",
    "electric heat",
)  # fmt: skip


class Whereabouts(Record):
    """What of a system is surely outside the conditioned space, and what is not known."""

    outside: tuple[str, ...]
    open: tuple[str, ...]


@quantity()
def whereabouts(case: Case, system: DuctSystem) -> Whereabouts:
    """The runs and the unit of a system by where they are."""
    outside: list[str] = []
    unknown: list[str] = []
    unit = mover_or_none(case, system)
    places = [(run.name, path_of(run, "location"), run.location) for run in system.runs.values()]
    if isinstance(unit, Equipment):
        places.append((unit.name, path_of(unit, "location"), [unit.location] if unit.location is not None else []))
    for name, path, named in places:
        try:
            if exposed(case, named).at("attic", "outside", "ground"):
                outside.append(name)
            elif not named:
                unknown.append(path)
        except Missing as gap:
            unknown.extend(gap.paths)
        except CannotJudge:
            unknown.append(path)
    if not system.runs:
        unknown.append(path_of(system, "runs"))
    return Whereabouts(tuple(outside), tuple(dict.fromkeys(unknown)))


@quantity()
def is_all_inside(case: Case, system: DuctSystem) -> bool:
    """Whether ducts and unit are inside the conditioned space: by their places, else as declared. Raises Missing."""
    where = whereabouts(case, system)
    if where.outside:
        return False
    if not where.open:
        return True
    declared = case.maybe(system, "all_inside")
    if declared is None:
        raise Missing(*where.open)
    return bool(declared)


@quantity("area", "stated; else the house's floor area, where no other unit heats or cools it")
def served_area(case: Case, system: DuctSystem) -> float:
    """Conditioned floor area that a system serves."""
    stated = case.maybe(system, "floor_area_served")
    if stated is not None:
        return float(stated)
    house, unit = case.design.house, mover_or_none(case, system)
    others = [each for each in case.design.equipment.values() if each.kind in INDOOR and each is not unit]
    if house is None or others or len(house_air_systems(case)) > 1:
        raise Missing(path_of(system, "floor_area_served"))
    return float(case.get(house, "floor_area"))


def stated_leakage(case: Case, system: DuctSystem) -> DuctLeakage:
    """What is said of the leakage. Raises NotApplicable before the house is built, where nothing is."""
    if system.leakage is not None:
        return system.leakage
    project = case.design.project
    if path_of(system, "leakage") in case.design.tbd or (project is not None and project.stage == "as-built"):
        raise Missing(f"{path_of(system, 'leakage')}.total")
    raise NotApplicable("no leakage is stated yet")


class Allowed(Record):
    """Least and greatest total leakage that the edition may allow, m3/s, and what would settle it."""

    least: Leakage
    greatest: Leakage
    ask: tuple[str, ...]


@quantity(source="International Residential Code, chapter 11, duct leakage")
def allowed(case: Case, system: DuctSystem) -> Allowed:
    """What the edition allows, over all that the file leaves open."""
    leakage = stated_leakage(case, system)
    area = served_area(case, system)
    ask = []
    stage = case.maybe(leakage, "stage")
    if stage is None:
        ask.append(path_of(leakage, "stage"))
    try:
        insides: tuple[bool, ...] = (is_all_inside(case, system),)
    except Missing as gap:
        insides = (False, True)
        ask.extend(gap.paths)
    found = [limits(case, system, area, one, inside) for one, inside in product((stage,) if stage else STAGES, insides)]
    least, greatest = min(low for low, _ in found), max(high for _, high in found)
    if any(low < high for low, high in found):
        ask.append(path_of(system, "returns_ducted"))
    return Allowed(least, greatest, tuple(ask))


def limits(case: Case, system: DuctSystem, area: float, stage: str, inside: bool) -> tuple[float, float]:
    """Least and greatest allowed leakage, m3/s, at a stage; they differ where the count of returns is open."""
    try:
        usual = float(case.limit("duct-leakage-rough-in" if stage == BARE else "duct-leakage")) * area
    except NotApplicable:
        return by_table(case, system, area, stage, inside)
    if not inside:
        return usual, usual
    try:
        most = float(case.limit("duct-leakage-inside")) * area
    except NotApplicable:
        most = inf
    return most, most


def by_table(case: Case, system: DuctSystem, area: float, stage: str, inside: bool) -> tuple[float, float]:
    """The 2024 table: by equipment in place, inside or not, area served and ducted returns."""
    table = case.limit("duct-leakage-2024")
    row = table[("without equipment" if stage == BARE else "complete") + (" inside" if inside else "")]
    if area <= parse(str(table["up to"]), "area"):
        flow = parse(str(row[0]), "leakage")
        return flow, flow
    few, many = (parse(str(text), "leakage_per_area") * area for text in row[1:])
    returns = case.maybe(system, "returns_ducted")
    if returns is None:
        return few, many
    return (many, many) if returns >= MANY_RETURNS else (few, few)


@quantity("leakage", "as stated, target or tested; by the leakage class where the ducts alone leak more than is allowed")
def total_leakage(case: Case, system: DuctSystem) -> float:
    """Total leakage at 25 Pa. What the ducts leak by their class says nothing of the cabinet, so that less than
    the limit is no answer."""
    leakage = stated_leakage(case, system)
    if case.maybe(leakage, "total") is None and states_class(case, system):
        ducts = leakage_by_class(case, system)
        if ducts > allowed(case, system).greatest:
            return ducts
    return float(case.get(leakage, "total"))
