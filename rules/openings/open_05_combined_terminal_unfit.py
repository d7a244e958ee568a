"""A combined intake and exhaust terminal is not listed, or carries air from a hood or dryer.

A combined terminal throws the stale air away from the intake by its shape. Only one that was built and tested as
a unit does that, and only for air from living space: grease, lint and damp from hood or dryer would be drawn in.

The usual cause is two caps mounted side by side and called a combination, or a hood led into the terminal of a
recovery unit. Use a factory-built terminal that is listed for the purpose, and give hood and dryer their own.
"""

from checker.case import Case, given, quantity
from checker.design.hoods import Dryer, Hood
from checker.design.openings import Opening
from checker.quantities.opening_kinds import COMBINED, devices_of, of_kind
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def unfit_users(case: Case, opening: Opening) -> list[str]:
    """Names of hoods and dryers that end in the terminal."""
    return [device.name for device in devices_of(case, opening) if isinstance(device, (Hood, Dryer))]


def combined(case: Case) -> list[Opening]:
    """Combined intake and exhaust terminals."""
    return of_kind(case, frozenset({COMBINED}))


def check(_opening: Opening, users: list[str], listed: bool) -> Meets | Finding:
    """A listed terminal that serves neither hood nor dryer is fit."""
    if users:
        return Finding(
            "{user} ends in this combined terminal, which takes exhaust from living space only",
            help="give {user} a terminal of its own, at least 10 ft from the intake",
            numbers={"user": Num(users[0])},
        )
    if not listed:
        return Finding(
            "this combined intake and exhaust terminal is not a listed, factory-built one",
            at="combination_listed",
            help="use a factory-built terminal that is listed for intake and exhaust together, or part the two",
        )
    return Meets()


RULE = Rule(
    code="OPEN-05", name="combined-terminal-unfit", severity="correction", since="0.1",
    over=combined, needs=(unfit_users, given("combination_listed")), cites=("combined-terminal",), check=check,
    nothing="the design has no combined terminal", answers=("D05",),
)  # fmt: skip
