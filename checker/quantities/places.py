"""Where outdoor openings are from each other: distances straight through the air, and heights.

What is not fully known is kept as the least and the greatest it can be, so that a rule can still answer
where either decides, and names what is missing where neither does.
"""

from math import atan2, degrees, hypot, inf

from checker.case import Case, Missing
from checker.design.fields import Length, fold
from checker.design.openings import Opening
from checker.physics.distances import Opening as Outline
from checker.physics.distances import distance, point, rectangle_on_wall
from checker.quantities.opening_kinds import kind, of_kind, stated
from checker.record import Record

AT_GRADE = frozenset({"street", "parking", "driveway", "walkway"})
WIDE = frozenset({"window", "fixed window", "door"})
WIDEST_HALF = 2.4384
TALLEST_HALF = 1.2192
"""m; half of 16 ft by 8 ft, a garage door: a window or door of unknown size is taken to be no larger."""
BEARINGS = {
    "north": 0.0, "northeast": 45.0, "east": 90.0, "southeast": 135.0,
    "south": 180.0, "southwest": 225.0, "west": 270.0, "northwest": 315.0,
}  # fmt: skip


class Span(Record):
    """What a length is at least and at most, m, and the paths that would settle it."""

    low: Length
    high: Length
    missing: tuple[str, ...] = ()

    @property
    def known(self) -> bool:
        """Whether least and most agree."""
        return self.low == self.high


def bearing(wall: str | None) -> float | None:
    """Bearing in degrees that a wall faces, if its name holds exactly one compass word."""
    words = fold(wall or "").split()
    found = [word for word in words if word in BEARINGS]
    if len(found) == 2 and " ".join(found) in " ".join(words):
        found = [word for word in ("".join(found),) if word in BEARINGS]
    return BEARINGS[found[0]] if len(found) == 1 else None


def same_wall(one: Opening, other: Opening) -> bool:
    """Whether two openings are said to be on the same wall."""
    return one.wall is not None and other.wall is not None and fold(one.wall) == fold(other.wall)


def coordinate(case: Case, opening: Opening, axis: str) -> float | None:
    """East, north or up of an opening's center, m; height over grade serves as up."""
    value = None if opening.at is None else stated(case, opening.at, axis)
    if axis == "up" and not isinstance(value, float):
        over = stated(case, opening, "height_over_grade")
        if isinstance(over, float):
            value = over + half(case, opening, "height", 0.0)
        elif kind_or_none(case, opening) in AT_GRADE:
            value = 0.0
    return value if isinstance(value, float) else None


def kind_or_none(case: Case, opening: Opening) -> str | None:
    """What an opening is, None where that is not known."""
    try:
        return kind(case, opening)
    except Missing:
        return None


def half(case: Case, opening: Opening, field: str, unknown: float) -> float:
    """Half the width or height of a window or door, m; other openings count as points."""
    if kind_or_none(case, opening) not in WIDE:
        return 0.0
    value = stated(case, opening, field)
    return value / 2.0 if isinstance(value, float) else unknown


def path_of_place(opening: Opening, axis: str) -> str:
    """The path that would give a coordinate."""
    at = opening.at
    bare = at is None or not any(isinstance(getattr(at, each), float) for each in ("east", "north", "up"))
    return f"{opening.path}.at" if bare else f"{opening.path}.at.{axis}"


def offsets(case: Case, one: Opening, other: Opening) -> tuple[dict[str, float], list[str]]:
    """Differences of the coordinates known for both, and the paths of those that are not.

    Two openings on one wall may leave out the coordinate across it.
    """
    found: dict[str, float] = {}
    absent: list[str] = []
    for axis in ("east", "north", "up"):
        first, second = coordinate(case, one, axis), coordinate(case, other, axis)
        if first is not None and second is not None:
            found[axis] = second - first
        else:
            lacking = [opening for opening, value in ((one, first), (other, second)) if value is None]
            absent.extend(path_of_place(opening, axis) for opening in lacking)
    across = {"east", "north"} - set(found)
    if same_wall(one, other) and len(across) == 1:
        axis = across.pop()
        if coordinate(case, one, axis) is None and coordinate(case, other, axis) is None:
            found[axis] = 0.0
            absent = [path for path in absent if not path.endswith(f".{axis}")]
    return found, list(dict.fromkeys(absent))


def outline(case: Case, opening: Opening, place: tuple[float, float, float], along: float | None) -> Outline | None:
    """An opening as the rectangle it is, around a known center; None where its size or wall is not known.

    `along`: bearing of its wall where another opening of the same wall shows it.
    """
    if kind_or_none(case, opening) not in WIDE:
        return point(*place)
    width, height = stated(case, opening, "width"), stated(case, opening, "height")
    facing = bearing(opening.wall)
    facing = along if facing is None else facing
    if not isinstance(width, float) or not isinstance(height, float) or facing is None or opening.on == "roof":
        return None
    return rectangle_on_wall(*place, width, height, facing) if width > 0.0 and height > 0.0 else None


def lacking_size(case: Case, opening: Opening) -> list[str]:
    """Paths that would make a window or door a rectangle."""
    if kind_or_none(case, opening) not in WIDE:
        return []
    absent = [field for field in ("width", "height") if stated(case, opening, field) is None]
    if bearing(opening.wall) is None:
        absent.append("wall")
    return [f"{opening.path}.{field}" for field in absent]


def by_position(case: Case, one: Opening, other: Opening) -> Span:
    """Distance worked out from the positions."""
    found, absent = offsets(case, one, other)
    middle = hypot(*found.values()) if found else 0.0
    slack = sum(
        hypot(half(case, opening, "width", WIDEST_HALF), half(case, opening, "height", TALLEST_HALF))
        for opening in (one, other)
    )
    if absent:
        return Span(max(0.0, middle - slack), inf, tuple(absent))
    along = None
    if same_wall(one, other):
        along = degrees(atan2(found["east"], found["north"])) + 90.0
    second = (found["east"], found["north"], found["up"])
    outlines = (outline(case, one, (0.0, 0.0, 0.0), along), outline(case, other, second, along))
    if outlines[0] is not None and outlines[1] is not None:
        apart = distance(outlines[0], outlines[1])
        return Span(apart, apart)
    sizes = (*lacking_size(case, one), *lacking_size(case, other))
    return Span(max(0.0, middle - slack), middle, sizes or (f"{one.path}.clear_of.{other.name}",))


def words_for(case: Case, opening: Opening) -> list[str]:
    """The names by which another opening may speak of this one as one of a kind."""
    known = kind_or_none(case, opening)
    wider = {"kitchen exhaust": "exhaust", "dryer exhaust": "exhaust", "fixed window": "window"}
    return [] if known is None else [known, wider[known]] if known in wider else [known]


def undecided(case: Case, opening: Opening, field: str, words: list[str]) -> tuple[str, ...]:
    """Paths of statements about these words or names that the file leaves to be decided."""
    begin = f"{opening.path}.{field}."
    return tuple(path for path in case.design.tbd if path.startswith(begin) and fold(path[len(begin) :]) in map(fold, words))


def spoken(case: Case, one: Opening, other: Opening, field: str) -> tuple[float | None, float | None, tuple[str, ...]]:
    """(exact, least, undecided paths) of what `one` states in `clear_of` or `above` about `other`."""
    said: dict[str, float] = getattr(one, field)
    open_paths = undecided(case, one, field, [other.name, *words_for(case, other)])
    if other.name in said:
        return said[other.name], None, open_paths
    for word in words_for(case, other):
        if word in said and word not in case.design.openings:
            only = len(of_kind(case, frozenset({word}))) == 1 and word == kind_or_none(case, other)
            return (said[word] if only else None), said[word], open_paths
    return None, None, open_paths


def distance_between(case: Case, one: Opening, other: Opening) -> Span:
    """Distance between two openings: from their positions, else as stated on either of them."""
    placed = by_position(case, one, other)
    if placed.known:
        return placed
    statements = [spoken(case, one, other, "clear_of"), spoken(case, other, one, "clear_of")]
    exact = [each[0] for each in statements if each[0] is not None]
    if exact:
        return Span(min(exact), min(exact))
    low = max([placed.low, *(each[1] for each in statements if each[1] is not None)])
    asked = tuple(path for each in statements for path in each[2])
    return Span(low, max(low, placed.high), asked or placed.missing)


def height_above(case: Case, upper: Opening, lower: Opening) -> Span:
    """Height from the top of `lower` to the bottom of `upper`, m; negative where `upper` is not above it."""
    top, bottom = coordinate(case, lower, "up"), coordinate(case, upper, "up")
    absent = []
    if top is not None and bottom is not None:
        middle = bottom - top
        known = half(case, upper, "height", 0.0) + half(case, lower, "height", 0.0)
        most = half(case, upper, "height", TALLEST_HALF) + half(case, lower, "height", TALLEST_HALF)
        sizes = [path for each in (upper, lower) for path in lacking_size(case, each) if path.endswith(".height")]
        placed = Span(middle - most, middle - known, tuple(sizes))
    else:
        for opening, value in ((lower, top), (upper, bottom)):
            if value is None:
                absent.append(path_of_place(opening, "up"))
        placed = Span(-inf, inf, tuple(absent))
    if placed.known:
        return placed
    above, below = spoken(case, upper, lower, "above"), spoken(case, lower, upper, "above")
    exact = above[0] if above[0] is not None else None if below[0] is None else -below[0]
    if exact is not None:
        return Span(exact, exact)
    return Span(placed.low, placed.high, (*above[2], *below[2]) or placed.missing)
