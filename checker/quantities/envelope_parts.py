"""The parts of the envelope room by room: net areas, windows by facade, temperatures of what lies beyond."""

from collections.abc import Sequence
from typing import NamedTuple

from checker.case import CannotJudge, Case, Missing, gather, path_of, quantity
from checker.design.envelope import (
    BelowGradeWall,
    Buffer,
    Fenestration,
    Glazing,
    OutsideDoor,
    Slab,
    Surface,
)
from checker.each import blank
from checker.physics.air import sensible_heat_factor
from checker.physics.heating_load import buffer_temperature
from checker.quantities.airtightness import house_of
from checker.quantities.assembly_values import OPEN_AIR, envelope_of, surface_kind, surface_u
from checker.quantities.equipment import heated_rooms
from checker.quantities.moist_air import indoor_winter, pressure, winter_design, worked_out

Part = Surface | Fenestration | OutsideDoor | BelowGradeWall | Slab


@quantity()
def parts(case: Case, _design: object) -> list[Part]:
    """Every part of the envelope that encloses a heated room. Raises Missing for one that names no room."""
    envelope = envelope_of(case)
    every: list[Part] = [
        *envelope.surfaces.values(), *envelope.windows.values(), *envelope.doors.values(),
        *envelope.below_grade_walls.values(), *envelope.slabs.values(),
    ]  # fmt: skip
    if not every:
        raise Missing("envelope.surfaces")
    rooms = {room.name for room in heated_rooms(case)}
    named = gather([lambda part=part: (part, str(case.get(part, "room"))) for part in every])  # type: ignore[misc]
    return [part for part, room in named if room in rooms]


@quantity()
def is_enclosed(case: Case, design: object) -> bool:
    """True where the envelope has walls, windows, something overhead and something below. Raises Missing."""
    envelope, found = envelope_of(case), parts(case, design)
    kinds = {surface_kind(case, part) for part in found if isinstance(part, Surface)}
    absent = []
    if "wall" not in kinds and not envelope.below_grade_walls:
        absent.append("envelope.surfaces")
    if not kinds & {"ceiling", "roof"}:
        absent.append("envelope.surfaces")
    if "floor" not in kinds and not envelope.slabs:
        absent.append("envelope.slabs")
    if not envelope.windows and "envelope.windows" not in case.design.stated_none:
        absent.append("envelope.windows")
    if absent:
        raise Missing(*dict.fromkeys(absent))
    return True


def window_area(case: Case, window: Fenestration) -> float:
    """Area of a window, or of several alike, m2."""
    count = case.maybe(window, "count")
    return float(case.get(window, "area")) * (1 if count is None else int(count))


def glazing_of(case: Case, window: Fenestration) -> Glazing:
    """The kind of a window; an empty one where it names none."""
    name = case.maybe(window, "glazing")
    return envelope_of(case).glazing.get(str(name)) or blank(Glazing, path_of(window, "glazing"))


def of_window(case: Case, window: Fenestration, field: str) -> float:
    """A figure of a window: its own, else that of its kind. Raises Missing."""
    own = case.maybe(window, field)
    if own is not None:
        return float(own)
    if window.glazing is None:
        raise Missing(path_of(window, field))
    return float(case.get(glazing_of(case, window), field))


@quantity()
def glass_by_facade(case: Case, design: object) -> dict[str, float]:
    """Window area by the compass point it faces, m2."""
    found: dict[str, float] = {}
    for part in parts(case, design):
        if isinstance(part, Fenestration):
            faces = str(case.get(part, "faces"))
            found[faces] = found.get(faces, 0.0) + window_area(case, part)
    return found


@quantity("area", "gross area less its share of the windows and doors of that room that face the same way")
def net_area(case: Case, surface: Surface) -> float:
    """Area of a surface without its windows and doors. CannotJudge where they are larger than the walls."""
    stated = case.maybe(surface, "net_area")
    if stated is not None:
        return float(stated)
    gross = float(case.get(surface, "area"))
    taken = holes(case, surface)
    alike = [
        each for each in envelope_of(case).surfaces.values()
        if each.room == surface.room and each.faces == surface.faces and each.net_area is None
    ]  # fmt: skip
    total = sum(gather([lambda each=each: float(case.get(each, "area")) for each in alike]))  # type: ignore[misc]
    if taken > total * (1 + 1e-9):
        raise CannotJudge(f"windows and doors of {surface.room} facing {surface.faces} are larger than its walls there")
    return gross - (taken * gross / total if total > 0 else 0.0)


def holes(case: Case, surface: Surface) -> float:
    """Area of the windows and doors of the surface's room that face the same way, m2."""
    envelope = envelope_of(case)
    windows = [each for each in envelope.windows.values() if (each.room, each.faces) == (surface.room, surface.faces)]
    doors = [each for each in envelope.doors.values() if (each.room, each.faces) == (surface.room, surface.faces)]
    return sum(window_area(case, each) for each in windows) + sum(float(case.get(each, "area")) for each in doors)


class Beyond(NamedTuple):
    """Temperature in K on the other side of a surface, and what was assumed of it."""

    temperature: float
    assumed: tuple[str, ...] = ()


def winter_beyond(case: Case, place: str) -> Beyond:
    """What lies beyond a surface at winter design: outdoors, the neighbour, or an unheated space."""
    if place in OPEN_AIR:
        return Beyond(winter_design(case, case.design))
    if place == "heated space" or is_inside(case, place):
        return Beyond(indoor_winter(case, case.design).temperature, ("as warm as the rooms",))
    return winter_buffer(case, envelope_of(case).buffers.get(place) or blank(Buffer, f"envelope.buffers.{place}"))


def is_inside(case: Case, place: str) -> bool:
    """Whether the house says that the attic or crawl space lies inside its insulation."""
    field = {"attic": "attic", "crawl space": "crawl_space"}.get(place)
    return field is not None and case.maybe(house_of(case), field) == "conditioned"


@quantity("", "stated; else by heat balance; else as cold as outdoors", "ASHRAE Handbook - Fundamentals 2021, chapter 17")
def winter_buffer(case: Case, buffer: Buffer) -> Beyond:
    """Temperature of an unheated space at winter design. Raises Missing for a basement that says nothing."""
    stated = case.maybe(buffer, "winter_temperature")
    if stated is not None:
        return Beyond(float(stated))
    outdoor, indoor = winter_design(case, case.design), indoor_winter(case, case.design).temperature
    area, u = case.maybe(buffer, "outside_area"), case.maybe(buffer, "outside_u")
    if area is None and u is None:
        if buffer.name == "basement":
            raise Missing(path_of(buffer, "winter_temperature"))
        return Beyond(outdoor, ("as cold as outdoors",))
    area, u = case.all(buffer, "outside_area", "outside_u")
    inward = sum(surface_u(case, each).value * net_area(case, each) for each in facing(case, buffer.name))
    volume, changes = case.maybe(buffer, "volume"), case.maybe(buffer, "air_changes")
    air = 0.0 if volume is None or changes is None else volume * changes / 3600.0
    heat = sensible_heat_factor(pressure(case, case.design)) * air
    return Beyond(worked_out(lambda: buffer_temperature(inward, indoor, area * u, outdoor, heat)), ("by heat balance",))


def facing(case: Case, place: str) -> Sequence[Surface]:
    """The surfaces between heated rooms and an unheated space."""
    return [part for part in parts(case, case.design) if isinstance(part, Surface) and part.faces == place]
