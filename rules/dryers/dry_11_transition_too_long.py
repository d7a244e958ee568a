"""The transition duct behind a dryer is too long.

The flexible connector is the roughest part of the way and the one that is crushed when the dryer is pushed back.
Long ones sag and fill with lint.

The usual cause is that the wall outlet is not behind the dryer. Move the outlet; the connector may be at most
8 ft.
"""

from checker import each
from checker.case import given
from checker.design.hoods import Dryer
from checker.quantities.dryer_duct import transition_speaks_of
from checker.rule import Finding, Meets, Rule


def check(_dryer: Dryer, length: float, most: float) -> Meets | Finding:
    """Compare the length with the greatest."""
    if length <= most:
        return Meets()
    return Finding(
        "this dryer's transition duct is {length} long, more than {limit}", at="transition.length",
        help="move the wall outlet nearer to the dryer and cut the transition to {limit} or less",
    )  # fmt: skip


RULE = Rule(
    code="DRY-11", name="transition-too-long", severity="correction", since="0.1",
    over=each.dryer, when=transition_speaks_of("length"), needs=(given("transition.length"),), limits=("dryer-transition-length",),
    check=check, nothing="the design has no clothes dryer", answers=("E06",),
)  # fmt: skip
