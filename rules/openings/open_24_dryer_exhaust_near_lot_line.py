"""A dryer's exhaust is too close to the lot line.

It blows lint and steam at the neighbor. The code's section on dryers names no property line; its section on exhaust
openings in general asks for 3 ft, and many officials hold dryers to that as well.

The usual cause is a laundry on a narrow side yard. Lead the duct to another wall, or have the official agree to less.
"""

from checker.case import Case
from checker.design.openings import Opening
from checker.physics.distances import ROUNDING
from checker.quantities.opening_kinds import known_exhausts, of_kind
from checker.quantities.places import undecided
from checker.quantities.surroundings import lot_line_distance
from checker.rule import Finding, Meets, Num, Rule


def dryer_terminals(case: Case) -> list[Opening]:
    """The terminals of dryers."""
    return known_exhausts(case, frozenset({"dryer exhaust"})) if case.stated("openings") else []


def asked_of(case: Case, opening: Opening) -> bool:
    """Nothing is said of the terminal's distance to the lot line."""
    told = "lot line" in opening.clear_of or bool(undecided(case, opening, "clear_of", ["lot line"]))
    return told or case.speaks_of(opening, "to_lot_line") or bool(of_kind(case, frozenset({"lot line"})))


def check(_opening: Opening, apart: float, least: float) -> Meets | Finding:
    """Compare the distance to the lot line with the least."""
    if apart >= least - ROUNDING:
        return Meets()
    return Finding(
        "this dryer exhaust is {lot_line_distance} from the lot line, nearer than {limit}",
        help="move the terminal {short} farther from the lot line or to another wall, or have the official agree to less",
        numbers={"short": Num(least - apart, "length")},
    )


RULE = Rule(
    code="OPEN-24", name="dryer-exhaust-near-lot-line", severity="caution", since="0.1",
    over=dryer_terminals, when=asked_of, needs=(lot_line_distance,), limits=("dryer-exhaust-to-lot-line",), check=check,
    nothing="no opening is the exhaust of a dryer", answers=("D02",),
)  # fmt: skip
