"""The terms of the heating load: what each part of the envelope and the outdoor air lose at winter design."""

from collections.abc import Callable
from functools import partial
from typing import Any

from checker.case import CannotJudge, Case, gather, quantity
from checker.design.envelope import BelowGradeWall, Fenestration, OutsideDoor, Slab, Surface
from checker.physics.air import sensible_heat_factor
from checker.physics.ground import (
    FLOOR_RESISTANCE,
    WALL_RESISTANCE,
    below_grade_floor_u,
    below_grade_wall_u,
    edge_factor,
    ground_surface_temperature,
)
from checker.physics.heating_load import edge_loss, require_winter, transmission_loss
from checker.physics.validity import OutOfRange
from checker.quantities.assembly_values import surface_u
from checker.quantities.default_glass import assumption, door_u
from checker.quantities.envelope_parts import (
    Part,
    defaulted,
    net_area,
    of_window,
    require_there,
    window_area,
    winter_beyond,
)
from checker.quantities.load_records import Factor, Term
from checker.quantities.moist_air import indoor_winter, pressure, winter_design, worked_out
from checker.quantities.outdoor_air import OutdoorAir, Recovered, assumed_splits
from checker.quantities.ventilation_standard import site_of

CHAPTER = "ASHRAE Handbook - Fundamentals 2021, chapter 17"
GROUND_CHAPTER = "ASHRAE Handbook - Fundamentals 2021, chapter 18"
EDGE_TABLE = "Washington State Energy Code, WAC 51-11C-61061, Table A106.1"
GROUND = ("soil conducts 1.4 W/m K", "surface of the ground 10 K (marine 5 K) below the mean of the year")
PLAIN_AIR = "outdoor air by leakage and fans"


def winter_difference(case: Case) -> float:
    """Indoors less outdoors at winter design, K. CannotJudge outside the range of the method."""
    indoor, outdoor = indoor_winter(case, case.design).temperature, winter_design(case, case.design)
    try:
        require_winter(indoor, outdoor)
    except OutOfRange as problem:
        raise CannotJudge(str(problem)) from None
    return indoor - outdoor


def conducted(
    case: Case, what: str, u: float, area: float, beyond: float, assumed: tuple[str, ...] = (), memory: bool = False,
    source: str = CHAPTER, group: str = "walls, ceilings and floors",
) -> Term:  # fmt: skip
    """Heat that goes through an area to what lies beyond."""
    indoor = indoor_winter(case, case.design).temperature
    factors = (
        Factor(area, "area"), Factor(u, "u_value"), Factor(indoor - beyond, "temperature_difference"),
    )  # fmt: skip
    return Term(what, transmission_loss(u, area, indoor, beyond), factors, assumed, source, memory, group)


@quantity("", "U x A x (indoors - beyond); F x P for the edge of a slab", CHAPTER)
def heating_term(case: Case, part: Part) -> Term:
    """What a part of the envelope loses at winter design."""
    winter_difference(case)
    if isinstance(part, Surface):
        return surface_loss(case, part, partial(net_area, case, part))
    if isinstance(part, Fenestration):
        area, u_value = gather([partial(window_area, case, part), partial(of_window, case, part, "u")])
        return conducted(case, f"window {part.name}", u_value, area, winter_design(case, case.design),
                         defaulted(case, part, "u"), group="windows")  # fmt: skip
    if isinstance(part, OutsideDoor):
        routes: list[Callable[[], Any]] = [
            partial(door_u, case, part), partial(case.get, part, "area"), partial(case.get, part, "faces"),
        ]  # fmt: skip
        u_value, area, faces = gather(routes)
        require_there(case, f"door {part.name}", str(faces))
        beyond = winter_beyond(case, str(faces))
        assumed = (*assumption(part, "u"), *beyond.assumed)
        return conducted(case, f"door {part.name}", u_value, area, beyond.temperature, assumed, beyond.from_memory, group="doors")
    return wall_in_ground(case, part) if isinstance(part, BelowGradeWall) else slab(case, part)


def surface_loss(case: Case, part: Surface, net: Callable[[], float]) -> Term:
    """What a wall, ceiling, roof or floor of a net area loses."""
    routes: list[Callable[[], Any]] = [partial(surface_u, case, part), net, partial(case.get, part, "faces")]
    u, area, faces = gather(routes)
    require_there(case, part.name, str(faces))
    beyond = winter_beyond(case, str(faces))
    return conducted(case, f"{part.name} ({u.way})", u.value, area, beyond.temperature,
                     (*u.assumed, *beyond.assumed), u.from_memory or beyond.from_memory)  # fmt: skip


def ground_temperature(case: Case) -> float:
    """Temperature of the ground surface in winter, K: the mean of the year less an amplitude from memory."""
    site = site_of(case)
    mean, zone = case.get(site, "annual_mean"), case.maybe(site, "climate_zone")
    return ground_surface_temperature(float(mean), zone is not None and str(zone).strip().upper().endswith("C"))


def wall_in_ground(case: Case, part: BelowGradeWall) -> Term:
    """A wall below grade: longer ways through the soil the deeper it goes."""
    length, depth, insulation = case.all(part, "length", "depth", "insulation")
    u = worked_out(lambda: below_grade_wall_u(0.0, depth, WALL_RESISTANCE + (insulation or 0.0)))
    assumed = GROUND
    what = f"below-grade wall {part.name}"
    return conducted(case, what, u, length * depth, ground_temperature(case), assumed, True, GROUND_CHAPTER, "ground")


def slab(case: Case, part: Slab) -> Term:
    """A floor on the ground, by its edge; below grade by its area."""
    if case.maybe(part, "depth"):
        area, width, depth = case.all(part, "area", "width", "depth")
        insulation = float(case.maybe(part, "insulation") or 0.0)
        u = worked_out(lambda: below_grade_floor_u(width, depth, FLOOR_RESISTANCE + insulation))
        assumed = GROUND
        what = f"floor below grade {part.name}"
        return conducted(case, what, u, area, ground_temperature(case), assumed, True, GROUND_CHAPTER, "ground")
    perimeter, insulation = case.all(part, "perimeter", "insulation")
    insulated = "none" if not insulation else str(case.get(part, "insulated"))
    try:
        factor = edge_factor(insulated, insulation or 0.0, bool(case.maybe(part, "heated")))
    except OutOfRange as problem:
        raise CannotJudge(f"{part.name}: {problem.reason}") from None
    indoor, outdoor = indoor_winter(case, case.design).temperature, winter_design(case, case.design)
    factors = (
        Factor(perimeter, "length", "edge"), Factor(factor, "edge"),
        Factor(indoor - outdoor, "temperature_difference"),
    )  # fmt: skip
    return Term(f"slab {part.name}", edge_loss(factor, perimeter, indoor, outdoor), factors, (), EDGE_TABLE, group="ground")


def air_terms(case: Case, air: OutdoorAir, plain: float, recovered: list[tuple[Recovered, float]]) -> list[Term]:
    """What a share of the outdoor air takes: `plain` without recovery, the rest past the recovery units, m3/s."""
    heat, difference = sensible_heat_factor(pressure(case, case.design)), winter_difference(case)
    split = assumed_splits(case, [each.device for each in air.supplied])
    terms = [air_term(PLAIN_AIR, heat, plain, 0.0, difference, split)] if air.unrecovered > 0 else []
    return terms + [
        air_term(f"outdoor air through {unit.fan.name}", heat, flow, unit.sensible, difference, assumed_splits(case, [unit.fan]))
        for unit, flow in recovered
        if flow > 0
    ]


def air_term(what: str, heat: float, flow: float, recovery: float, difference: float, assumed: tuple[str, ...]) -> Term:
    """Heat that a flow of outdoor air takes, W; `heat` W per m3/s and K."""
    factors = [Factor(flow, "airflow"), Factor(difference, "temperature_difference")]
    if recovery > 0:
        factors.insert(1, Factor(1.0 - recovery, "", "1 - recovery"))
    watts = heat * flow * (1.0 - recovery) * difference
    return Term(what, watts, (*factors, Factor(heat, "air")), assumed, CHAPTER, group="outdoor air")
