"""A combined intake and exhaust terminal is drawn under an edition that does not foresee one.

Up to 2021 the code asks for 10 ft between exhaust and intake and makes no exception for a terminal that holds
both. Many officials accept a listed one all the same, as some states have written into their own editions.

Show the listing and the installation instructions on the drawing and ask the building official first. Where that
is refused, use two hoods 10 ft apart, or the exhaust 3 ft above the intake.
"""

from checker.case import Case, quantity
from checker.design.openings import Opening
from checker.quantities.opening_kinds import COMBINED, of_kind
from checker.rule import Finding, Meets, Rule


def combined(case: Case) -> list[Opening]:
    """Combined intake and exhaust terminals."""
    return of_kind(case, frozenset({COMBINED}))


@quantity()
def note_on_drawing(case: Case, opening: Opening) -> str | None:
    """Where the drawing says what the terminal rests on; none unless it is stated."""
    note = case.maybe(opening, "drawing_note")
    return None if note is None or note.lower() == "none" else str(note)


def check(_opening: Opening, note: str | None) -> Meets | Finding:
    """A note that shows the listing or the official's consent is enough."""
    if note is not None:
        return Meets()
    return Finding(
        "this combined intake and exhaust terminal stands under an edition that has no exception for one from "
        "its 10 ft",
        help="show the listing or the official's consent in `drawing_note`, or part intake and exhaust by 10 ft",
    )


RULE = Rule(
    code="OPEN-06", name="combined-terminal-not-foreseen", severity="caution", since="0.1",
    over=combined, needs=(note_on_drawing,), cites=("combined-terminal-lacking",), check=check,
    nothing="the design has no combined terminal", answers=("D05",),
)  # fmt: skip
