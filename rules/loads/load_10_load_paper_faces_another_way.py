"""The load calculation turns the house another way than the drawings.

West glass counts more than twice as much as north glass. A plan that was taken over from another lot, or mirrored,
needs its loads worked out again for the way it faces there: rooms that were cool become the hottest of the house.

Turn the calculation to the compass of the site plan, and look at the rooms with west windows again.
"""

from checker.case import Case, given, quantity
from checker.design.controls import LoadsPaper
from checker.quantities.airtightness import house_of
from checker.quantities.load_paper import stating
from checker.rule import Finding, Meets, Rule


@quantity()
def drawn(case: Case, _paper: LoadsPaper) -> str:
    """The compass point that the front of the house faces."""
    return str(case.get(house_of(case), "front_faces"))


def check(_paper: LoadsPaper, stated: str, drawn: str) -> Meets | Finding:
    """The same compass point, or the finding."""
    if stated == drawn:
        return Meets()
    return Finding(
        "the load calculation has the front of the house facing {front_faces}; by the drawings it faces {drawn}",
        at="front_faces", help="work the loads out with the front facing {drawn}",
    )


RULE = Rule(
    code="LOAD-10", name="load-paper-faces-another-way", severity="caution", since="0.1",
    over=stating("front_faces"), needs=(given("front_faces"), drawn), cites=("paper-orientation",), check=check,
    nothing="the load calculation does not say which way the house faces",
)  # fmt: skip
