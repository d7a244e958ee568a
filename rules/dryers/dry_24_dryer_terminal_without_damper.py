"""A dryer's terminal has no backdraft damper.

Through the open pipe cold air falls into the drum in winter, and birds and wasps find their way in.

The usual cause is a bare louver or elbow drawn as the terminal. Use a dryer cap with a flap that the exhaust
opens.
"""

from checker.case import Case, either, quantity
from checker.design.openings import Opening
from checker.quantities.dryer_duct import drawn_terminals, dryers_of, duct
from checker.rule import Finding, Meets, Rule


@quantity()
def backdraft_damper(case: Case, terminal: Opening) -> bool:
    """Whether a damper closes the exhaust, at the terminal or in the duct."""
    ducts = [found for dryer in dryers_of(case, terminal) if (found := duct(case, dryer)) is not None]
    if any(airway.damper or "backdraft-damper" in airway.pieces for airway in ducts):
        return True
    return either(
        lambda: bool(case.get(terminal, "damper") != "none"),
        *(lambda airway=airway: bool(case.get(airway, "damper")) for airway in ducts),
    )


def speaks_of_damper(case: Case, terminal: Opening) -> bool:
    """Nothing is said of a damper at the terminal or in the duct."""
    ducts = [found for dryer in dryers_of(case, terminal) if (found := duct(case, dryer)) is not None]
    in_duct = any(case.speaks_of(airway, "damper") or "backdraft-damper" in airway.pieces for airway in ducts)
    return in_duct or case.speaks_of(terminal, "damper")


def check(_terminal: Opening, damper: bool) -> Meets | Finding:
    """There is one or there is not."""
    if damper:
        return Meets()
    return Finding(
        "this dryer's terminal has no backdraft damper", at="damper",
        help="use a dryer cap with a flap that the exhaust opens",
    )  # fmt: skip


RULE = Rule(
    code="DRY-24", name="dryer-terminal-without-damper", severity="correction", since="0.1",
    over=drawn_terminals, when=speaks_of_damper, needs=(backdraft_damper,), cites=("dryer-terminal-damper",), check=check,
    nothing="the design shows no dryer terminal", answers=("E18",),
)  # fmt: skip
