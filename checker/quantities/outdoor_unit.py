"""Where outdoor units stand: their base, the distances around them, and how loud they are at the lot line."""

from checker.case import Case, Missing, path_of, quantity
from checker.design.equipment import Equipment
from checker.design.openings import Opening
from checker.design.siting import Clearances, Electrical, Siting
from checker.each import blank
from checker.physics.sound import level_at_distance, level_from_power
from checker.quantities.clearances import lower_edge
from checker.quantities.equipment import gives, indoor_units, is_heat_pump, outdoor_units
from checker.quantities.opening_kinds import of_kind
from checker.quantities.surroundings import lot_line_distance

SIDES = ("front", "back", "left", "right", "above")
RATED_AT = 1.0
"""m; distance at which sound pressure levels of outdoor units are usually stated."""


def siting_of(unit: Equipment) -> Siting:
    """Where a unit stands; an empty record where the file does not say."""
    siting: Siting = unit.siting or blank(Siting, f"{unit.path}.siting")
    return siting


def electrical_of(unit: Equipment) -> Electrical:
    """How a unit is fed; an empty record where the file does not say."""
    electrical: Electrical = unit.electrical or blank(Electrical, f"{unit.path}.electrical")
    return electrical


def on_the_ground(case: Case) -> list[Equipment]:
    """Outdoor units that neither hang on a wall nor stand on a roof."""
    return [
        unit
        for unit in outdoor_units(case)
        if siting_of(unit).support not in ("wall brackets", "roof") and unit.location != "roof"
    ]


def heats_in_winter(case: Case, unit: Equipment) -> bool:
    """Whether an outdoor unit runs in winter: a heat pump that heats, itself or by its indoor units."""
    joined = indoor_units(case, unit)
    if joined:
        return unit.kind != "air conditioner" and any(gives(case, each, "heating") for each in joined)
    return is_heat_pump(case, unit)


def place_of(case: Case, unit: Equipment) -> Opening | None:
    """The unit among the openings: named, serving it, of its own name, or the only one for the only unit."""
    place = case.maybe(siting_of(unit), "place")
    if place is not None:
        return case.design.openings.get(str(place))
    shown = of_kind(case, frozenset({"outdoor unit"}))
    named = [each for each in shown if each.name == unit.name or unit.name in each.serves]
    if len(named) == 1:
        return named[0]
    return shown[0] if len(shown) == 1 and len(outdoor_units(case)) == 1 else None


@quantity("length", "as stated for its base, else the lower edge of its place among the openings")
def base_height(case: Case, unit: Equipment) -> float:
    """Height of the base of an outdoor unit above grade."""
    siting = siting_of(unit)
    stated = case.maybe(siting, "base_height")
    if stated is not None:
        return float(stated)
    place = place_of(case, unit)
    if place is not None and place.height_over_grade is not None:
        return lower_edge(case, place)
    return float(case.get(siting, "base_height"))


@quantity("length", "as stated, else from the positions of unit and lot line")
def to_lot_line(case: Case, unit: Equipment) -> float:
    """Distance of an outdoor unit to the nearest lot line."""
    siting = siting_of(unit)
    stated = case.maybe(siting, "to_lot_line")
    if stated is not None:
        return float(stated)
    place = place_of(case, unit)
    if place is None:
        return float(case.get(siting, "to_lot_line"))
    try:
        return lot_line_distance(case, place)
    except Missing as gap:
        raise Missing(path_of(siting, "to_lot_line")) from gap


def with_sound_levels(case: Case) -> list[Equipment]:
    """Outdoor units whose sound level or sound power is spoken of."""
    return [
        unit
        for unit in outdoor_units(case)
        if unit.ratings is not None and any(case.speaks_of(unit.ratings, field) for field in ("sound_level", "sound_power"))
    ]


def sound_field(unit: Equipment) -> str:
    """Which of its ratings tells how loud a unit is."""
    told_by_power = unit.ratings is not None and unit.ratings.sound_level is None and unit.ratings.sound_power is not None
    return "ratings.sound_power" if told_by_power else "ratings.sound_level"


def level_at(case: Case, unit: Equipment, distance: float) -> float:
    """Sound level of an outdoor unit at a distance in m: from a stated level, else from its sound power."""
    ratings = unit.ratings
    if ratings is None:
        raise Missing(f"{unit.path}.ratings.sound_level")
    if ratings.sound_level is None and case.speaks_of(ratings, "sound_power"):
        return level_from_power(float(case.get(ratings, "sound_power")), max(distance, RATED_AT))
    level, measured_at = float(case.get(ratings, "sound_level")), case.maybe(ratings, "sound_distance")
    near = RATED_AT if measured_at is None else float(measured_at)
    return level_at_distance(level, near, max(distance, near))


@quantity(
    "sound_level", "stated level - 20 log10(distance / distance of the statement), or power - 10 log10(2 pi r2)",
    "spherical spreading; ISO 3744",
)  # fmt: skip
def level_at_lot_line(case: Case, unit: Equipment) -> float:
    """Sound level of an outdoor unit at the nearest lot line, walls that reflect it left out."""
    return level_at(case, unit, to_lot_line(case, unit))


@quantity("length")
def to_bedroom_window(case: Case, unit: Equipment) -> float:
    """Distance of an outdoor unit to the nearest bedroom window."""
    return float(case.get(siting_of(unit), "to_bedroom_window"))


@quantity("sound_level", "as at the lot line", "spherical spreading; ISO 3744")
def level_at_window(case: Case, unit: Equipment) -> float:
    """Sound level of an outdoor unit outside the nearest bedroom window."""
    return level_at(case, unit, to_bedroom_window(case, unit))


def least_clearances(case: Case, unit: Equipment) -> Clearances | None:
    """The clear distances that the maker asks for."""
    return None if unit.by_maker is None else case.maybe(unit.by_maker, "clearance")


@quantity()
def clearance_gaps(case: Case, unit: Equipment) -> list[tuple[float, float, str]]:
    """(drawn, asked for, side) for each side that is drawn nearer than its maker asks, the worst first."""
    wanted = least_clearances(case, unit)
    drawn = siting_of(unit).clearance
    absent, found = [], []
    for side in SIDES:
        least = None if wanted is None else case.maybe(wanted, side)
        if least is None:
            continue
        shown = None if drawn is None else case.maybe(drawn, side)
        if shown is None:
            absent.append(f"{siting_of(unit).path}.clearance.{side}")
        elif shown < least * (1 - 1e-9):
            found.append((float(shown), float(least), side))
    if absent and not found:
        raise Missing(*absent)
    return sorted(found, key=lambda each: each[0] - each[1])
