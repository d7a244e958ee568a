"""A combined intake and exhaust terminal is drawn under an edition that does not foresee one.

Up to 2021 the code asks for 10 ft between exhaust and intake and makes no exception for a terminal that holds
both. Many officials accept a listed one all the same, as some states have written into their own editions.

Show the listing and the installation instructions on the drawing and ask the building official first. Where that
is refused, use two hoods 10 ft apart, or the exhaust 3 ft above the intake.
"""

from checker.case import Case, given
from checker.design.openings import Opening
from checker.quantities.opening_kinds import COMBINED, of_kind
from checker.rule import Finding, Meets, Rule


def combined(case: Case) -> list[Opening]:
    """Combined intake and exhaust terminals."""
    return of_kind(case, frozenset({COMBINED}))


def relied_on(case: Case, opening: Opening) -> bool:
    """No device is named that both draws and blows here."""
    return True


def check(_opening: Opening, into: str) -> Meets | Finding:
    """Any combined terminal is one to ask about."""
    return Meets()


RULE = Rule(
    code="OPEN-06", name="combined-terminal-not-foreseen", severity="caution", since="0.1",
    over=combined, cites=("combined-terminal-lacking",), check=check,
    nothing="the design has no combined terminal", answers=("D05",),
)  # fmt: skip
