"""The transition duct behind a dryer is hidden, or pieced together.

A flexible connector inside a wall, floor or cabinet cannot be seen when it comes off or fills with lint, and it
does not hold a fire. A joint in the middle is where it comes off.

The usual cause is that the connector runs on through the wall to the outdoors. Begin the rigid duct at the wall's
face, and use a single length between it and the dryer.
"""

from checker import each
from checker.case import Case, Missing, quantity
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import transition_speaks_of
from checker.quantities.opening_kinds import stated
from checker.rule import Finding, Meets, Rule


@quantity()
def hidden(case: Case, dryer: Dryer) -> bool:
    """Whether any of the transition is said to be out of sight."""
    if dryer.transition is None:
        raise Missing(f"{dryer.path}.transition.concealed")
    return bool(case.maybe(dryer.transition, "concealed"))


@quantity()
def pieced(case: Case, dryer: Dryer) -> bool:
    """Whether the transition is said to be more than one piece."""
    return dryer.transition is not None and stated(case, dryer.transition, "one_piece") is False


def check(_dryer: Dryer, concealed: bool, in_pieces: bool) -> Meets | Finding:
    """In view and in one piece."""
    if concealed:
        return Finding(
            "part of this dryer's transition duct is hidden", at="transition.concealed",
            help="lead rigid duct to the face of the wall and keep the transition in view",
        )  # fmt: skip
    if in_pieces:
        return Finding(
            "this dryer's transition duct is made of more than one piece", at="transition.one_piece",
            help="use a single length",
        )  # fmt: skip
    return Meets()


RULE = Rule(
    code="DRY-12", name="transition-hidden", severity="correction", since="0.1",
    over=each.dryer, when=transition_speaks_of("concealed", "one_piece"), needs=(hidden, pieced),
    cites=("dryer-transition-in-view",), check=check, nothing="the design has no clothes dryer", answers=("E06",),
)  # fmt: skip
