"""An outdoor air intake is close to the ground or to the roof that it stands in.

Near the ground the air is dusty and damp, leaves and mulch gather, and mowers and idling cars are close. Just
above a dark roof the summer air is hot, and needles pile up against the hood.

The usual cause is a rim-joist intake behind the planting. Raise the intake, or lead it to the gable.
"""

from checker.design.openings import Opening
from checker.physics.distances import ROUNDING
from checker.quantities.opening_kinds import known_intakes
from checker.quantities.surroundings import clear_height
from checker.rule import Finding, Meets, Num, Rule


def check(_intake: Opening, height: float, least: float) -> Meets | Finding:
    """Compare the height of the lower edge with the usual least."""
    if height >= least - ROUNDING:
        return Meets()
    return Finding(
        "this intake is {clear_height} above the ground or roof, lower than {limit}",
        help="raise the intake by {short}",
        numbers={"short": Num(least - height, "length")},
    )


RULE = Rule(
    code="OPEN-11", name="intake-too-low", severity="caution", since="0.1",
    over=known_intakes, needs=(clear_height,), limits=("intake-height",), check=check,
    nothing="the design has no outdoor air intake", answers=("D10",),
)  # fmt: skip
