"""How cold the inner surfaces of the envelope and its details get, and how humid the room air is that touches them."""

from collections.abc import Callable
from functools import partial

from checker.case import CannotJudge, Case, Missing, NotApplicable, gather, path_of, quantity
from checker.design.details import Detail, DetailKind
from checker.design.envelope import Assembly, Fenestration, Surface
from checker.design.fields import Choice, Humidity, Ratio, Temperature, fold
from checker.design.shape import shape_of
from checker.physics.assemblies import FILM_INSIDE
from checker.physics.condensation import (
    humidity_at_surface,
    least_temperature_factor,
    temperature_by_factor,
    with_film,
)
from checker.quantities.assembly_values import OPEN_AIR, surface_kind, surface_u
from checker.quantities.cold_month import cold_month, month_humidity
from checker.quantities.envelope_parts import winter_beyond
from checker.quantities.equipment import heated_rooms
from checker.quantities.moist_air import indoor_winter, winter_design, worked_out
from checker.record import Record

ColdNode = Assembly | Detail | Surface
FILM = 0.25
"""Inner film in m2 K/W behind curtains, in corners and low on a wall: ISO 13788, for opaque parts."""


class Factors(Record):
    """Temperature factor at least and at most, and the paths that would tell."""

    low: Ratio
    high: Ratio
    asked: tuple[str, ...] = ()


class Touching(Record):
    """A surface in the month that decides: it, outdoors, the room air and the air at the surface; factor that helps."""

    surface: Temperature
    outdoor: Temperature
    humidity: Humidity
    at_surface: Humidity
    needed: Ratio | None


@quantity()
def heated_names(case: Case, _design: object) -> frozenset[str]:
    """Names of the heated rooms."""
    return frozenset(room.name for room in heated_rooms(case))


def is_heated(case: Case, part: Surface | Detail | Fenestration) -> bool:
    """Whether a part encloses a heated room; one that names no room does."""
    return part.room is None or part.room in heated_names(case, case.design)


def surfaces_of(case: Case, assembly: Assembly) -> list[Surface]:
    """Surfaces of heated rooms that are built as an assembly and part them from something colder."""
    envelope = case.design.envelope
    return [] if envelope is None else [
        each for each in envelope.surfaces.values()
        if each.assembly == assembly.name and each.faces != "heated space" and is_heated(case, each)
    ]  # fmt: skip


def cold_nodes(case: Case) -> list[ColdNode]:
    """Assemblies between heated rooms and the cold, surfaces whose assembly is to be decided, and details."""
    envelope = case.design.envelope
    if envelope is None:
        return []
    used = [each for each in envelope.assemblies.values() if surfaces_of(case, each)]
    open_ = [each for each in envelope.surfaces.values() if path_of(each, "assembly") in case.design.tbd]
    return [*used, *open_, *(each for each in envelope.details.values() if is_heated(case, each))]


@quantity("", "1 - 0.25 m2 K/W / resistance with that film; as stated or usual for details", "ISO 13788")
def factors(case: Case, node: ColdNode) -> Factors:
    """Temperature factor toward the outdoor air, between bounds where the file does not tell."""
    if not isinstance(node, Detail):
        surfaces = [node] if isinstance(node, Surface) else surfaces_of(case, node)
        routes = [partial(factor_of, case, each) for each in surfaces]
        least = min(gather(routes))
        return Factors(least, least)
    stated = case.maybe(node, "temperature_factor")
    if stated is not None:
        return Factors(float(stated), float(stated))
    insulated = case.maybe(node, "insulated")
    if insulated is None:
        raise Missing(path_of(node, "temperature_factor"))
    return Factors(*usual_factors(case, detail_kind(case, node), bool(insulated)), (path_of(node, "temperature_factor"),))


def usual_factors(case: Case, kind: str, insulated: bool) -> tuple[float, float]:
    """Usual temperature factors of a detail."""
    if insulated:
        low, high = case.limit("insulated-detail-factor")
    else:
        table: dict[str, list[float]] = case.limit("bare-detail-factors")
        low, high = table.get(kind, table["other"])
    return float(low), float(high)


def detail_kind(case: Case, detail: Detail) -> str:
    """What a detail is: as said, else by a word of its name."""
    stated = case.maybe(detail, "kind")
    if stated is not None:
        return str(stated)
    kind = shape_of(DetailKind).kind
    assert isinstance(kind, Choice)
    name = f" {fold(detail.name)} "
    return next((found for spelling, found in kind.spellings.items() if f" {spelling} " in name), "other")


def factor_of(case: Case, surface: Surface) -> float:
    """Temperature factor of a plain surface toward outdoors; an unheated space beyond it takes part of the cold."""
    routes: list[Callable[[], float]] = [
        lambda: surface_u(case, surface).value, lambda: share_of_cold(case, str(case.get(surface, "faces"))),
        lambda: usual_film(case, surface),
    ]  # fmt: skip
    transmittance, share, film = gather(routes)
    slower = worked_out(lambda: with_film(transmittance, film, FILM))
    return 1.0 - share * FILM * slower


def usual_film(case: Case, surface: Surface) -> float:
    """Inner film that the U-value of a surface counts, m2 K/W."""
    return FILM_INSIDE.get({"ceiling": "up", "roof": "up", "floor": "down"}.get(surface_kind(case, surface), "wall"), FILM)


def share_of_cold(case: Case, place: str) -> float:
    """Share of the difference between rooms and outdoors that lies between rooms and a place, 0 to 1."""
    if place in OPEN_AIR:
        return 1.0
    indoor, outdoor = indoor_winter(case, case.design).temperature, winter_design(case, case.design)
    if outdoor >= indoor:
        raise NotApplicable("it is not colder outdoors than in the rooms")
    return min(max((indoor - winter_beyond(case, place).temperature) / (indoor - outdoor), 0.0), 1.0)


@quantity("u_value", "resistance at which 0.25 m2 K/W is 1 - least temperature factor of it, with the usual film")
def u_that_helps(case: Case, assembly: Assembly) -> float:
    """Highest U-value of an assembly on which no mold grows in the month that decides. CannotJudge where none does."""
    needed = air_at_surface(case, assembly).needed
    worst = min(surfaces_of(case, assembly), key=lambda each: factor_of(case, each))
    share = share_of_cold(case, str(case.get(worst, "faces")))
    if needed is None or needed >= 1.0 or share <= 1.0 - needed:
        raise CannotJudge("no insulation keeps the surface dry enough")
    return worked_out(lambda: with_film(1.0 / (share * FILM / (1.0 - needed)), FILM, usual_film(case, worst)))


def touching(case: Case, node: ColdNode, outdoor: float, factor: float) -> Touching:
    """The air at a surface with a temperature factor in a month with a mean outdoor temperature in K."""
    room, humidity = indoor_winter(case, case.design).temperature, month_humidity(case, case.design, outdoor)
    limit = float(case.limit("mold-surface-humidity"))
    surface = worked_out(lambda: temperature_by_factor(room, outdoor, factor))
    wet = min(1.0, worked_out(lambda: humidity_at_surface(room, humidity, surface)))
    try:
        needed = worked_out(lambda: least_temperature_factor(room, outdoor, humidity, limit))
    except CannotJudge:
        return Touching(surface, outdoor, humidity, wet, None)
    return Touching(surface, outdoor, humidity, wet, needed)


@quantity("", "room vapor pressure / saturation at the surface, monthly mean", "ISO 13788")
def air_at_surface(case: Case, node: ColdNode) -> Touching:
    """The air at a surface in the coldest month. Raises Missing for what decides whether mold can grow there."""
    span, found, limit = cold_month(case, case.design), factors(case, node), float(case.limit("mold-surface-humidity"))
    months = tuple(dict.fromkeys(span))
    worst = max((touching(case, node, each, found.low) for each in months), key=lambda air: air.at_surface)
    best = min((touching(case, node, each, found.high) for each in months), key=lambda air: air.at_surface)
    if worst.at_surface > limit * (1 + 1e-9) >= best.at_surface:
        raise Missing(*found.asked, *(("site.coldest_month",) if len(months) > 1 else ()))
    return best if best.at_surface > limit * (1 + 1e-9) else worst
