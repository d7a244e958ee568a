"""A dryer's terminal has a screen.

Lint blocks a screen within weeks. The dryer then runs hot against it, and the duct behind fills.

The usual cause is a cap made for bath fans, or mesh added against birds. Use a dryer cap with a damper flap and
no screen.
"""

from checker.case import Case, given
from checker.design.openings import Opening
from checker.quantities.dryer_duct import drawn_terminals
from checker.rule import Finding, Meets, Rule


def speaks_of_screen(case: Case, terminal: Opening) -> bool:
    """Nothing is said of a screen."""
    return case.speaks_of(terminal, "screen")


def check(_terminal: Opening, mesh: float) -> Meets | Finding:
    """No screen at all."""
    if mesh <= 0.0:
        return Meets()
    return Finding(
        "this dryer's terminal has a screen with openings of {screen}", at="screen",
        help="use a dryer cap with a damper flap and no screen",
    )  # fmt: skip


RULE = Rule(
    code="DRY-23", name="dryer-terminal-screened", severity="correction", since="0.1",
    over=drawn_terminals, when=speaks_of_screen, needs=(given("screen"),), cites=("dryer-terminal-screen",), check=check,
    nothing="the design shows no dryer terminal", answers=("E18",),
)  # fmt: skip
