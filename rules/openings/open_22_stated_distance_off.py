"""A stated distance between two openings does not agree with their positions.

One of the two is wrong, and whoever builds from the drawing will pick one. Where the distance matters, for an
intake and an exhaust, the mistake shows only after the holes are cut.

The usual cause is an opening that was moved on the sketch while its note stayed. Correct the note or the
position. The positions are measured straight through the air, so a distance around a corner is longer.
"""

from checker.case import Case, Missing, quantity
from checker.design.openings import Opening
from checker.physics.distances import ROUNDING
from checker.quantities.places import by_position
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def stated_and_placed(case: Case, opening: Opening) -> list[tuple[str, float, float]]:
    """(name, stated distance, distance by position) of each opening named in `clear_of`, where both are known."""
    found = []
    for name, said in opening.clear_of.items():
        other = case.design.openings.get(name)
        if other is None or other is opening or other.at is None or opening.at is None:
            continue
        placed = by_position(case, opening, other)
        to_come = [path for path in placed.missing if path in case.design.tbd]
        if to_come:
            raise Missing(*to_come)
        if placed.known:
            found.append((name, said, placed.low))
    return found


def says_both(case: Case, opening: Opening) -> bool:
    """No opening is named here whose position is known as well."""
    named = [case.design.openings[name] for name in opening.clear_of if name in case.design.openings]
    return opening.at is not None and any(other.at is not None for other in named)


def openings(case: Case) -> list[Opening]:
    """Openings that state distances."""
    return [opening for opening in case.design.openings.values() if opening.clear_of]


def check(_opening: Opening, pairs: list[tuple[str, float, float]], tolerance: float) -> Meets | Finding:
    """Compare the two; the farthest apart is told."""
    wrong = [pair for pair in pairs if abs(pair[1] - pair[2]) > tolerance + ROUNDING]
    if not wrong:
        return Meets()
    name, said, placed = max(wrong, key=lambda pair: (abs(pair[1] - pair[2]), pair[0]))
    return Finding(
        "{near} is stated to be {said} away, but by the positions it is {placed}", at=f"clear_of.{name}",
        help="correct the stated distance or the position",
        numbers={"near": Num(name), "said": Num(said, "length"), "placed": Num(placed, "length")},
    )  # fmt: skip


RULE = Rule(
    code="OPEN-22", name="stated-distance-off", severity="note", since="0.1",
    over=openings, when=says_both, needs=(stated_and_placed,), limits=("stated-distance-tolerance",),
    check=check, nothing="no opening states its distance to another",
)  # fmt: skip
