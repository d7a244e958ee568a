"""An exhaust opening is too close to the lot line.

Exhaust at the edge of the lot blows steam, smells and grease at the neighbor, and an opening in a wall near the
lot line weakens its fire resistance.

The usual cause is a side yard that is narrower than it looks on the sketch, or a survey that came late. Lead the
duct to a wall that faces the yard or the street, or through the roof. Dryers are judged elsewhere.
"""

from checker.case import Case, Missing
from checker.design.openings import Opening
from checker.physics.distances import ROUNDING
from checker.quantities.opening_kinds import known_exhausts, of_kind, stated
from checker.quantities.places import undecided
from checker.quantities.surroundings import lot_line_distance
from checker.rule import Finding, Meets, Num, Rule


def exhausts(case: Case) -> list[Opening]:
    """Every exhaust terminal but those of dryers. Raises Missing once where no lot line is spoken of."""
    found = known_exhausts(case)
    lines = of_kind(case, frozenset({"lot line"}))
    silent = [each for each in found if not lines and not speaks_of_line(case, each)]
    asked = [f"{each.path}.to_lot_line" for each in found if stated(case, each, "on") != "roof"]
    if asked and len(silent) == len(found):
        raise Missing(*asked)
    return found


def speaks_of_line(case: Case, opening: Opening) -> bool:
    """Whether an opening says how far the lot line is, be it to be decided."""
    told = "lot line" in opening.clear_of or bool(undecided(case, opening, "clear_of", ["lot line"]))
    return told or case.speaks_of(opening, "to_lot_line")


def asked_of(case: Case, opening: Opening) -> bool:
    """The terminal is on the roof, and nothing is said of its distance to the lot line."""
    drawn = bool(of_kind(case, frozenset({"lot line"})))
    return drawn or speaks_of_line(case, opening) or stated(case, opening, "on") != "roof"


def check(_opening: Opening, apart: float, least: float) -> Meets | Finding:
    """Compare the distance to the lot line with the least."""
    if apart >= least - ROUNDING:
        return Meets()
    return Finding(
        "this exhaust is {lot_line_distance} from the lot line, nearer than {limit}",
        help="move the terminal {short} farther from the lot line, to another wall or through the roof",
        numbers={"short": Num(least - apart, "length")},
    )


RULE = Rule(
    code="OPEN-02", name="exhaust-near-lot-line", severity="correction", since="0.1",
    over=exhausts, when=asked_of, needs=(lot_line_distance,), limits=("exhaust-to-lot-line",), check=check,
    nothing="the design has no exhaust opening", answers=("D02",),
)  # fmt: skip
