"""The open area of a dryer's terminal is too small.

A cap that opens less than the area of the 4 in duct holds the air back and catches lint at the narrow place.

The usual cause is a flat or low-profile cap. Use one that opens at least 12.5 square inches.
"""

from checker.case import Case, quantity
from checker.design.openings import Opening
from checker.quantities.dryer_duct import drawn_terminals, dryers_of
from checker.rule import Finding, Meets, Rule

SLACK = 1e-9


@quantity("small_area")
def open_area(case: Case, terminal: Opening) -> float:
    """Open area of the terminal, stated with it or with its dryer."""
    if terminal.free_area is None:
        for dryer in dryers_of(case, terminal):
            area = case.maybe(dryer, "terminal_area")
            if area is not None:
                return float(area)
    return float(case.get(terminal, "free_area"))


def terminals_of_edition(case: Case) -> list[Opening]:
    """Dryer terminals, where the edition asks for an area at all."""
    found = drawn_terminals(case)
    if found:
        case.codebook.require("dryer-terminal-area")
    return found


def speaks_of_area(case: Case, terminal: Opening) -> bool:
    """Nothing is said of the terminal's open area."""
    of_dryers = any(case.speaks_of(dryer, "terminal_area") for dryer in dryers_of(case, terminal))
    return of_dryers or case.speaks_of(terminal, "free_area")


def check(_terminal: Opening, area: float, least: float) -> Meets | Finding:
    """Compare the open area with the least."""
    if area >= least - SLACK:
        return Meets()
    return Finding(
        "this dryer's terminal opens {open_area}, less than {limit}", at="free_area",
        help="use a cap that opens {limit} or more",
    )  # fmt: skip


RULE = Rule(
    code="DRY-25", name="dryer-terminal-too-small", severity="correction", since="0.1",
    over=terminals_of_edition, when=speaks_of_area, needs=(open_area,), limits=("dryer-terminal-area",), check=check,
    nothing="the design shows no dryer terminal", answers=("E19",),
)  # fmt: skip
