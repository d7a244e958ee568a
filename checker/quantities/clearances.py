"""Which openings stand around one, and whether each keeps the distance, or the height, that it must."""

from collections.abc import Callable, Sequence
from math import inf

from checker.case import Case, Missing, quantity
from checker.design.openings import Opening
from checker.physics.distances import ROUNDING
from checker.quantities.opening_kinds import stated
from checker.quantities.places import (
    Span,
    coordinate,
    distance_between,
    half,
    height_above,
    kind_or_none,
    path_of_place,
    undecided,
)
from checker.record import Record
from checker.rule import Num


class Neighbor(Record):
    """Something near an opening. `rise` is how far it lies above the opening, `drop` how far below it.

    `opening` is None where only the distance of the nearest of a kind is stated; `unsure` holds the path
    that would say what it is or whether it counts. `level` is True where nobody says which of the two is higher,
    though the distance is drawn or stated.
    """

    label: str
    opening: Opening | None
    distance: Span
    rise: Span
    drop: Span
    unsure: tuple[str, ...] = ()
    level: bool = False


class Verdict(Record):
    """The nearest offender, or the nearest of all where none offends; None where there is nothing near.

    `others` offend as well, the nearest first.
    """

    offends: bool
    near: Neighbor | None
    others: tuple[Neighbor, ...] = ()

    @property
    def apart(self) -> float:
        """Distance to it, m: no more than this where it offends, no less where it does not."""
        if self.near is None:
            return inf
        return self.near.distance.high if self.offends else self.near.distance.low

    @property
    def also(self) -> str:
        """End of a message that names the other offenders, with slots; "" where there is none."""
        named = [f"{{near_{place}}} ({{apart_{place}}})" for place in range(2, len(self.others) + 2)]
        return f"; so {'are' if len(named) > 1 else 'is'} {', '.join(named)}" if named else ""

    @property
    def is_not(self) -> str:
        """How a message denies the height that would free the nearest: not so, or not shown to be so."""
        return "not shown to be" if self.near is not None and self.near.level else "not"


def level(case: Case, opening: Opening, other: Opening | None, heights: tuple[Span, Span]) -> bool:
    """Whether no height is spoken of, where nothing tells that one of the two is on the roof and the other below."""
    if any(span.low != -inf or span.high != inf for span in heights):
        return False
    begins = [f"{each.path}.{field}" for each in (opening, other) if each is not None
              for field in ("at", "height_over_grade", "above")]  # fmt: skip
    if any(path == begin or path.startswith(f"{begin}.") for path in case.design.tbd for begin in begins):
        return False
    faces = {stated(case, each, "on") == "roof" for each in (opening, other) if each is not None}
    return len(faces) == 1


def neighbor(case: Case, opening: Opening, other: Opening, unsure: tuple[str, ...] = ()) -> Neighbor:
    """Another opening as seen from one."""
    rise, drop = height_above(case, other, opening), height_above(case, opening, other)
    return Neighbor(
        other.name, other, distance_between(case, opening, other), rise, drop, unsure,
        level(case, opening, other, (rise, drop)),
    )  # fmt: skip


def nearest_stated(case: Case, opening: Opening, word: str) -> Neighbor:
    """The nearest of a kind, of which only the stated distance is known."""
    apart = opening.clear_of[word]
    above = opening.above.get(word)
    unknown = Span(-inf, inf, (f"{opening.path}.above.{word}",))
    drop = unknown if above is None else Span(above, above)
    rise = unknown if above is None else Span(-above, -above)
    unsaid = level(case, opening, None, (rise, drop))
    return Neighbor(f"the nearest {word}", None, Span(apart, apart), rise, drop, level=unsaid)


def neighbors(
    case: Case, opening: Opening, kinds: frozenset[str], keep: Callable[[Opening], bool] | None = None
) -> list[Neighbor]:
    """Every opening of these kinds, those whose kind is not known, and the nearest that are only spoken of."""
    found = []
    for other in case.design.openings.values():
        if other is opening:
            continue
        known = kind_or_none(case, other)
        if known is None:
            found.append(neighbor(case, opening, other, (f"{other.path}.kind",)))
        elif known in kinds and (keep is None or keep(other)):
            found.append(neighbor(case, opening, other))
    for word in opening.clear_of:
        if word in kinds and word not in case.design.openings:
            drawn = [each for each in found if each.opening is not None and kind_or_none(case, each.opening) == word]
            if not drawn or not all(each.distance.known for each in drawn):
                found.append(nearest_stated(case, opening, word))
    return found


def that_open(case: Case, opening: Opening, around: Sequence[Neighbor]) -> list[Neighbor]:
    """Without the windows that are said not to open; those of which that is to be decided are unsure."""
    counted = []
    for each in around:
        window = each.opening
        if window is None or each.unsure or kind_or_none(case, window) != "window":
            counted.append(each)
            continue
        if f"{window.path}.operable" in case.design.tbd:
            counted.append(neighbor(case, opening, window, (f"{window.path}.operable",)))
        elif window.operable is not False:
            counted.append(each)
    return counted


def unseen_windows(case: Case, opening: Opening) -> list[str]:
    """The path that would say how far windows are, where the file speaks of none; not asked of one on the roof."""
    if stated(case, opening, "on") == "roof":
        return []
    shown = spoken_of(case, opening, frozenset({"window", "fixed window", "door"}))
    return [] if shown else [asked_for(case, opening, "window")]


def spoken_of(case: Case, opening: Opening, kinds: frozenset[str]) -> bool:
    """Whether the design shows or states anything of these kinds about an opening."""
    drawn = any(kind_or_none(case, other) in kinds for other in case.design.openings.values())
    return drawn or any(word in kinds for word in opening.clear_of)


def asked_for(case: Case, opening: Opening, word: str) -> str:
    """The path that would state the distance to the nearest of a kind, as the file spells it if it does."""
    open_paths = undecided(case, opening, "clear_of", [word])
    return open_paths[0] if open_paths else f"{opening.path}.clear_of.{word}"


def settled(
    around: Sequence[Neighbor], least: float, rise: float | None = None, drop: float | None = None,
    unplaced: Sequence[str] = (),
) -> Verdict:  # fmt: skip
    """Whether all keep `least` m away, or lie `rise` m above or `drop` m below instead.

    What is too near offends as well where no height at all is spoken of: an exception has to be shown.
    `unplaced`: paths of things that must be near somewhere but are not drawn. An offender counts before what
    is missing. Raises Missing with all that is needed where nobody offends for certain.
    """
    offenders: list[Neighbor] = []
    absent: list[str] = []
    for each in around:
        heights = [(each.rise, rise), (each.drop, drop)]
        limits = [(span, limit) for span, limit in heights if limit is not None]
        if each.distance.low >= least - ROUNDING or any(span.low >= limit - ROUNDING for span, limit in limits):
            continue
        short = each.distance.high < least - ROUNDING
        freed = any(span.high >= limit - ROUNDING for span, limit in limits)
        if short and (not freed or each.level) and not each.unsure:
            offenders.append(each)
        elif each.unsure:
            absent.extend(each.unsure)
        elif not short:
            absent.extend(each.distance.missing)
        else:
            absent.extend(path for span, _ in limits for path in span.missing)
    if offenders:
        nearest, *others = sorted(offenders, key=lambda each: (each.distance.high, each.label))
        return Verdict(True, nearest, tuple(others))
    if absent or unplaced:
        raise Missing(*absent, *unplaced)
    closest = min(around, key=lambda each: (each.distance.low, each.label), default=None)
    return Verdict(False, closest)


@quantity("length")
def lower_edge(case: Case, opening: Opening) -> float:
    """Height of an opening's lower edge over grade, m: as stated, else from its position and height."""
    over = stated(case, opening, "height_over_grade")
    if isinstance(over, float):
        return over
    up = coordinate(case, opening, "up")
    if up is None:
        drawn = any(each.at is not None for each in case.design.openings.values())
        to_come = any(path.startswith(f"{opening.path}.at") for path in case.design.tbd)
        raise Missing(path_of_place(opening, "up") if drawn or to_come else f"{opening.path}.height_over_grade")
    own = stated(case, opening, "height")
    return up - (own / 2.0 if isinstance(own, float) else half(case, opening, "height", 0.0))


def numbers_of(verdict: Verdict, least: float) -> dict[str, Num]:
    """The neighbor's name, its distance and how much that is short of the least, for messages."""
    if verdict.near is None:
        return {}
    apart = verdict.apart
    numbers = {
        "near": Num(verdict.near.label), "apart": Num(apart, "length"), "short": Num(max(0.0, least - apart), "length"),
    }  # fmt: skip
    for place, other in enumerate(verdict.others, start=2):
        numbers |= {f"near_{place}": Num(other.label), f"apart_{place}": Num(other.distance.high, "length")}
    return numbers
