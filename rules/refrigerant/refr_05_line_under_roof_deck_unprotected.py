"""A refrigerant line runs close below the roof deck without protection from nails.

The roofer cannot see it. A nail through the line lets the whole charge out into the attic, and some refrigerants burn.

Keep the line 1 1/2 in or more below the deck, or put steel plates between. Lines that leak are mended by certified
technicians only; until then the unit stays off and the attic is aired.
"""

from checker.case import Case, quantity
from checker.design.refrigerant import RefrigerantLine
from checker.quantities.refrigerant import drawn_lines
from checker.quantities.refrigerant_routes import nail_gap, near_deck
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


@quantity("length")
def below_deck(case: Case, line: RefrigerantLine) -> float | None:
    """Distance below the deck; None where steel plates protect the line."""
    return nail_gap(case, line, "deck_clearance", float(case.limit("line-below-roof-deck")))


def check(line: RefrigerantLine, gap: float | None, limit: float) -> Meets | Finding:
    """Far enough below, or protected."""
    if gap is None or gap >= limit:
        return Meets()
    return Finding(
        f"{line.name} runs {{below_deck}} below the roof deck without protection, nearer than {{limit}}",
        at="deck_clearance",
        help="lower the line to {limit} or more below the deck, or show steel plates above it",
    )


RULE = Rule(
    code="REFR-05", name="line-under-roof-deck-unprotected", severity="correction", since="0.1",
    over=drawn_lines, when=due("deck_clearance", "nail_plates", when=near_deck),
    needs=(below_deck,), limits=("line-below-roof-deck",), check=check, nothing="no refrigerant line is drawn", answers=("I03",),
)  # fmt: skip
