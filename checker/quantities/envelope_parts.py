"""The parts of the envelope room by room: net areas, windows by facade, temperatures of what lies beyond."""

from collections.abc import Sequence

from checker.case import CannotJudge, Case, Missing, gather, path_of, quantity
from checker.design.envelope import (
    POINTS,
    BelowGradeWall,
    Buffer,
    Fenestration,
    Glazing,
    OutsideDoor,
    Slab,
    Surface,
)
from checker.design.fields import Temperature
from checker.each import blank
from checker.physics.air import sensible_heat_factor
from checker.physics.heating_load import buffer_temperature
from checker.quantities.airtightness import house_of
from checker.quantities.assembly_values import OPEN_AIR, envelope_of, surface_kind, surface_u
from checker.quantities.default_glass import assumption, door_u, of_kind
from checker.quantities.distribution import spaces
from checker.quantities.equipment import HABITABLE, heated_rooms
from checker.quantities.moist_air import indoor_winter, pressure, winter_design, worked_out
from checker.record import Record

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
    # what is to be decided, or was refused as a whole, is no part that is absent
    places = {str(part.path) for part in every}
    sections = ("surfaces", "windows", "doors", "below_grade_walls", "slabs")
    open_ = [path for path in sorted(case.design.tbd) if path.startswith("envelope.") and path.split(".")[1] in sections]
    undecided = [path for path in open_ if path.count(".") < 2 or not any(f"{path}.".startswith(f"{each}.") for each in places)]
    if undecided:
        raise Missing(*undecided)
    rooms = {room.name for room in heated_rooms(case)}
    named = gather([lambda part=part: (part, str(case.get(part, "room"))) for part in every])  # type: ignore[misc]
    return [part for part, room in named if room in rooms]


@quantity()
def is_enclosed(case: Case, design: object) -> bool:
    """True where the envelope has walls, windows, something overhead and something below. Raises Missing."""
    envelope, found = envelope_of(case), parts(case, design)
    surfaces = [part for part in found if isinstance(part, Surface)]
    kinds = {surface_kind(case, part) for part in surfaces}
    absent = []
    if "wall" not in kinds and not envelope.below_grade_walls:
        absent.append("envelope.surfaces")
    if not kinds & {"ceiling", "roof"}:
        absent.append("envelope.surfaces")
    if "floor" not in kinds and not envelope.slabs:
        absent.append("envelope.slabs")
    if not envelope.windows and "envelope.windows" not in case.design.stated_none:
        absent.append("envelope.windows")
    # a warm attic or crawl space has a shell of its own, without which it would lose nothing
    if all_inside(case, surfaces, ("ceiling", "roof")):
        absent.append("envelope.surfaces.roof")
    if all_inside(case, surfaces, ("floor",)) and not envelope.slabs and not envelope.below_grade_walls:
        absent.append("envelope.below_grade_walls")
    absent += [f"envelope.surfaces.{name}" for name in bare_rooms(case, found)]
    if absent:
        raise Missing(*dict.fromkeys(absent))
    return True


def all_inside(case: Case, surfaces: Sequence[Surface], kinds: tuple[str, ...]) -> bool:
    """Whether there are surfaces of these kinds, and all face an attic or crawl space inside the insulation."""
    chosen = [part for part in surfaces if surface_kind(case, part) in kinds]
    return bool(chosen) and all(is_inside(case, str(case.get(part, "faces"))) for part in chosen)


def bare_rooms(case: Case, found: Sequence[Part]) -> list[str]:
    """Rooms to live in that no part of the envelope encloses, nor a room that they are open to."""
    enclosed = {part.room for part in found}
    joined = spaces(case, case.design)
    bare = [room for room in heated_rooms(case) if not joined[room.name] & enclosed]
    return [room.name for room in bare if case.maybe(room, "use") in HABITABLE]


def window_area(case: Case, window: Fenestration) -> float:
    """Area of a window, or of several alike, m2."""
    count, size = case.maybe(window, "count"), case.maybe(window, "size")
    one = case.get(window, "area") if size is None or window.area is not None else size.area
    return float(one) * (1 if count is None else int(count))


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
    return of_kind(case, glazing_of(case, window), field, window.faces == "sky")


def defaulted(case: Case, window: Fenestration, *fields: str) -> tuple[str, ...]:
    """Which of these figures of a window are the code's defaults, as words."""
    return assumption(glazing_of(case, window), *(each for each in fields if getattr(window, each) is None))


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
    if surface.faces in POINTS and len(alike) > 1:  # a roof that slopes that way keeps its area beside a wall
        upright = [each for each in alike if surface_kind(case, each) not in ("roof", "ceiling")]
        if upright and surface not in upright:
            return gross
        alike = upright or alike
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


class Beyond(Record):
    """Temperature in K on the other side of a surface, and what was assumed of it."""

    temperature: Temperature
    assumed: tuple[str, ...] = ()
    from_memory: bool = False


def as_warm(place: str) -> str:
    """The assumption of a space inside the insulation."""
    return f"{place} as warm as the rooms"


def winter_beyond(case: Case, place: str) -> Beyond:
    """What lies beyond a surface at winter design: outdoors, the neighbor, or an unheated space."""
    if place in OPEN_AIR:
        return Beyond(winter_design(case, case.design))
    if place == "heated space" or is_inside(case, place):
        return Beyond(indoor_winter(case, case.design).temperature, (as_warm(place),))
    return winter_buffer(case, envelope_of(case).buffers.get(place) or blank(Buffer, f"envelope.buffers.{place}"))


def require_there(case: Case, what: str, place: str) -> None:
    """CannotJudge where a part faces an attic or crawl space that the house says it has not."""
    field = {"attic": "attic", "crawl space": "crawl_space"}.get(place)
    if field is not None and case.maybe(house_of(case), field) == "none":
        raise CannotJudge(f"{what} faces the {place}, and the house says that it has none")


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
        return Beyond(outdoor, (f"{buffer.name} as cold as outdoors",))
    fields = ["outside_area", "outside_u"]
    if is_vented(case, buffer.name) or any(case.maybe(buffer, each) is not None for each in ("volume", "air_changes")):
        fields += ["volume", "air_changes"]
    area, u, *air = case.all(buffer, *fields)
    flow = air[0] * air[1] / 3600.0 if air else 0.0
    heat = sensible_heat_factor(pressure(case, case.design)) * flow
    inward = inward_conductance(case, buffer.name)
    assumed = f"temperature of the {buffer.name} by heat balance{'' if air else ', without outdoor air in it'}"
    temperature = worked_out(lambda: buffer_temperature(inward, indoor, area * u, outdoor, heat))
    return Beyond(temperature, (assumed,), any(surface_u(case, each).from_memory for each in facing(case, buffer.name)))


def is_vented(case: Case, place: str) -> bool:
    """Whether the house says that outdoor air passes through its attic or crawl space."""
    field = {"attic": "attic", "crawl space": "crawl_space"}.get(place)
    return field is not None and case.maybe(house_of(case), field) == "vented"


def facing(case: Case, place: str) -> list[Surface]:
    """The surfaces of heated rooms that face an unheated space."""
    return [part for part in parts(case, case.design) if isinstance(part, Surface) and part.faces == place]


def inward_conductance(case: Case, place: str) -> float:
    """What conducts between heated rooms and an unheated space, doors included, W/K."""
    doors = [part for part in parts(case, case.design) if isinstance(part, OutsideDoor) and part.faces == place]
    through = sum(surface_u(case, each).value * net_area(case, each) for each in facing(case, place))
    return through + sum(float(door_u(case, each) * case.get(each, "area")) for each in doors)
