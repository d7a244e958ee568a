"""A fan's duct is longer than the fan's maker allows.

Makers of small fans print a greatest duct length, mostly as an equivalent length in which each elbow counts for
so many feet. Beyond it the fan does not move its rated air.

Shorten the duct, take out an elbow, go a size larger where the maker gives a longer length for it, or choose a
fan that allows more.
"""

from checker.case import CannotJudge, Case, Missing, quantity
from checker.design.airway import Airway
from checker.quantities.duct_scope import one_line_ducts
from checker.quantities.piece_shapes import uncounted_pieces
from checker.rule import Finding, Meets, Num, Rule


def limited(case: Case) -> list[Airway]:
    """Ducts in one line under supply and recovery fans whose maker states a greatest length."""
    ducts = one_line_ducts(case)
    return [duct for duct in ducts if duct.up.by_maker is not None and duct.up.by_maker.greatest_length is not None]


def elbows(duct: Airway) -> int:
    """Elbows of a duct, of every kind."""
    return sum(count for piece, count in duct.pieces.items() if "elbow" in piece)


@quantity("length", "straight length and 15 ft for each elbow")
def reckoned_length(case: Case, duct: Airway) -> float:
    """Length of a duct with its elbows."""
    each: float = case.limit("elbow-length")
    uncounted = uncounted_pieces(case, duct)
    if uncounted:
        raise Missing(*uncounted)
    return float(case.get(duct, "length")) + elbows(duct) * each


@quantity("length")
def straight_length(case: Case, duct: Airway) -> float:
    """Straight length; where only the elbows decide, the maker's own figure for them is wanted."""
    straight, allowed = float(case.get(duct, "length")), float(duct.up.by_maker.greatest_length)
    if straight <= allowed < reckoned_length(case, duct):
        raise CannotJudge("with 15 ft for each elbow it is too long; the maker's own figure for elbows decides")
    return straight


def check(duct: Airway, straight: float, _reckoned: float) -> Meets | Finding:
    """Compare the straight length alone with the maker's limit."""
    allowed = float(duct.up.by_maker.greatest_length)
    numbers = {
        "fan": Num(duct.up.name),
        "allowed": Num(allowed, "length"),
        "excess": Num(max(straight - allowed, 0.0), "length"),
    }
    if straight <= allowed:
        return Meets(numbers)
    return Finding(
        "the duct of {fan} is {straight_length} long without its elbows; its maker allows {allowed}",
        at="length",
        help="shorten it by {excess} and by the length that its elbows count for, or choose another fan",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-05", name="duct-longer-than-maker-allows", severity="correction", since="0.1",
    over=limited, needs=(straight_length, reckoned_length), cites=("maker-duct-limits",), check=check,
    nothing="no supply or recovery fan states a greatest duct length",
)  # fmt: skip
