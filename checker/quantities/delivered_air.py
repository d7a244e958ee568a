"""The air that outlets blow on people: how warm it is in winter, whether its grilles sweat in summer, how far it goes."""

from collections.abc import Callable

from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.design.ducts import DuctSystem, Outlet
from checker.design.equipment import Equipment
from checker.design.fields import Length, Temperature
from checker.physics.condensation import SURFACE_RESISTANCE, surface_temperature
from checker.physics.registers import AREA_SHARES, THROW_CONSTANTS, scaled_throw, throw
from checker.quantities.cold_ducts import cools
from checker.quantities.distribution import INTO_ROOM
from checker.quantities.duct_exit_temperature import (
    Span,
    cooled_air_at_outlet,
    cooled_air_at_unit,
    heated_air_at_outlet,
    heated_air_at_unit,
)
from checker.quantities.duct_flow import outlet_flow
from checker.quantities.duct_scope import comfort_systems, mover_or_none, outlets
from checker.quantities.duct_velocity import face_velocity
from checker.quantities.equipment import gives
from checker.quantities.moist_air import indoor_summer, worked_out
from checker.quantities.room_uses import room_use
from checker.record import Record

WITH_PEOPLE = frozenset({"bedroom", "living", "dining", "kitchen", "office", "bathroom"})
THROW_CHAPTER = "ASHRAE Handbook - Fundamentals 2021, chapter 20"
TERMINAL = 0.381
"""m/s (75 fpm), the terminal velocity that throws are listed at."""


class Arriving(Record):
    """Duct air at an outlet, or as it leaves the unit where no outlet is named."""

    outlet: Outlet | None
    temperature: Temperature


class Thrown(Record):
    """Throw of an outlet with its blades spread and with them straight."""

    spread: Length
    straight: Length


def heating_systems(case: Case) -> list[DuctSystem]:
    """Duct systems of equipment that heats and says how much or how hot."""
    found = []
    for system in comfort_systems(case):
        mover = mover_or_none(case, system)
        told = case.speaks_of(system, "greatest_supply_temperature") or case.speaks_of(system, "heat_output")
        if isinstance(mover, Equipment) and gives(case, mover, "heating") and (told or case.speaks_of(mover, "heating")):
            found.append(system)
    return found


def cooling_systems(case: Case) -> list[DuctSystem]:
    """Duct systems of equipment that cools."""
    movers = [(each, mover_or_none(case, each)) for each in comfort_systems(case)]
    return [each for each, mover in movers if isinstance(mover, Equipment) and cools(case, mover)]


def into_rooms(case: Case, system: DuctSystem) -> list[Outlet]:
    """Outlets of a system that blow into rooms where people sit, sleep or bathe."""
    rooms = case.design.rooms
    return [
        outlet for outlet in system.outlets.values()
        if (outlet.kind is None or outlet.kind in INTO_ROOM)
        and outlet.room in rooms and room_use(case, rooms[outlet.room]) in WITH_PEOPLE
    ]  # fmt: skip


def arriving(case: Case, system: DuctSystem, at_outlet: Callable[[Case, Outlet], Span]) -> list[Arriving]:
    """The warmest that duct air can be at each outlet that can be reckoned; none where no runs are drawn.

    Raises Missing where the runs say too little of all of them, and for what is to be decided.
    """
    if not case.speaks_of(system, "runs"):
        return []
    found: list[Arriving] = []
    gaps: list[str] = []
    for outlet in into_rooms(case, system):
        try:
            found.append(Arriving(outlet, at_outlet(case, outlet).warmest))
        except Missing as gap:
            if case.design.tbd & set(gap.paths):
                raise
            gaps += gap.paths
        except CannotJudge:
            continue
    if gaps and not found:
        raise Missing(*dict.fromkeys(gaps))
    return found


@quantity("", "air at the unit, less what the runs lose", "ASHRAE Handbook - Fundamentals, chapter 4")
def coolest_heated_air(case: Case, system: DuctSystem) -> Arriving:
    """Heated air at the outlet where it arrives coolest on the winter design day; air at the unit at the most."""
    at_unit = Arriving(None, heated_air_at_unit(case, system))
    if at_unit.temperature < float(case.limit("warm-air-least")) * (1 - 1e-9):
        return at_unit
    return min([at_unit, *arriving(case, system, heated_air_at_outlet)], key=lambda each: each.temperature)


class Grille(Record):
    """Face of a grille while the unit cools: the air behind it, its surface, and the dew point of the room."""

    outlet: Outlet | None
    air: Temperature
    surface: Temperature
    dew_point: Temperature


def face(case: Case, behind: Arriving) -> Grille:
    """The face between the duct air that rushes past one side and the still room air on the other."""
    room = indoor_summer(case, case.design)
    films = SURFACE_RESISTANCE["moving air"], SURFACE_RESISTANCE["still air, dull"]
    surface = worked_out(lambda: surface_temperature(behind.temperature, room.temperature, *films))
    return Grille(behind.outlet, behind.temperature, surface, room.dew_point)


@quantity("", "room air - (room air - duct air) x 0.12 / (0.12 + 0.06)", "ASHRAE Handbook - Fundamentals 2021, chapter 23")
def coldest_grille(case: Case, system: DuctSystem) -> Grille:
    """The grille that gets coldest in summer; the air as it leaves the unit where that is warm enough already."""
    at_unit = face(case, Arriving(None, cooled_air_at_unit(case, system)))
    if at_unit.surface >= at_unit.dew_point:
        return at_unit
    known = arriving(case, system, cooled_air_at_outlet)
    return face(case, min(known, key=lambda each: each.temperature)) if known else at_unit


def thrown_outlets(case: Case) -> list[Outlet]:
    """Supply outlets in walls that say how far the opposite wall is, and not their throw."""
    tbd = case.design.tbd
    return [
        outlet for outlet in outlets(case)
        if outlet.kind in INTO_ROOM and outlet.mounting in ("high wall", "low wall")
        and case.speaks_of(outlet, "distance_to_wall") and outlet.throw is None and path_of(outlet, "throw") not in tbd
        and (case.speaks_of(outlet, "size") or outlet.free_area is not None)
    ]  # fmt: skip


@quantity("", "K x airflow / (terminal velocity x root of the effective area)", THROW_CHAPTER)
def generic_throw(case: Case, outlet: Outlet) -> Thrown:
    """Throw to 75 fpm of a usual wall register of this size, without a maker's figures."""
    if case.maybe(outlet, "size") is not None and face_velocity(case, outlet) > float(case.limit("supply-face-velocity")):
        raise NotApplicable("its face velocity is too high already")
    free = case.maybe(outlet, "free_area")
    area = AREA_SHARES["grille"] * case.get(outlet, "size").area if free is None else float(free)
    flow = outlet_flow(case, outlet)
    kinds = (THROW_CONSTANTS["sidewall grille, wide"], THROW_CONSTANTS["sidewall grille, straight"])
    return Thrown(*(worked_out(lambda k=k: throw(flow, area, k, TERMINAL)) for k in kinds))  # type: ignore[misc]


@quantity("length", "listed throw x airflow / listed airflow x listed terminal velocity / 75 fpm", THROW_CHAPTER)
def throw_at_design(case: Case, outlet: Outlet) -> float:
    """Stated throw, carried over to the design airflow and to 75 fpm where it is listed at others."""
    listed = float(case.get(outlet, "throw"))
    at, terminal = case.maybe(outlet, "throw_at"), case.maybe(outlet, "throw_velocity")
    if listed <= 0.0 or (at is None and terminal is None):
        return listed
    flow = outlet_flow(case, outlet)
    if at is None and flow <= 0.0:
        raise CannotJudge(f"outlet {outlet.name} has no airflow")
    return worked_out(
        lambda: scaled_throw(listed, flow if at is None else float(at), float(terminal or TERMINAL), flow, TERMINAL)
    )
