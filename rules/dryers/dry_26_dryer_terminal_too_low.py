"""A dryer's terminal is close to the ground, or would be under snow.

Mulch, leaves and snow block the flap, animals find it, and its steam wets the wall.

The usual cause is a rim-joist outlet behind the planting. Raise the terminal a foot above the ground, and above
the snow that is to be reckoned with.
"""

from checker.case import Case, Missing, NotApplicable, quantity
from checker.design.openings import Opening
from checker.physics.distances import ROUNDING
from checker.quantities.dryer_duct import drawn_terminals
from checker.quantities.surroundings import clear_height, snow_depth, speaks_of_height
from checker.rule import Finding, Meets, Num, Rule


@quantity("length")
def least_height(case: Case, terminal: Opening) -> float:
    """The usual least height, or the snow depth if that is more; a terminal that is lower anyway needs no snow."""
    usual = float(case.limit("dryer-terminal-height"))
    try:
        return max(usual, snow_depth(case, case.design))
    except NotApplicable:
        return usual
    except Missing:
        if clear_height(case, terminal) < usual - ROUNDING:
            return usual
        raise


def height_is_told(case: Case, terminal: Opening) -> bool:
    """Nothing is said of the terminal's height."""
    return speaks_of_height(case, terminal)


def check(_terminal: Opening, height: float, least: float, usual: float) -> Meets | Finding:
    """Compare the lower edge with the least height."""
    if height >= least - ROUNDING:
        return Meets()
    than = "under {least_height} of snow" if least > usual else "lower than the usual {limit}"
    return Finding(
        f"this dryer's terminal is {{clear_height}} above the ground or roof, {than}",
        help="raise the terminal by {short}",
        numbers={"short": Num(least - height, "length")},
    )


RULE = Rule(
    code="DRY-26", name="dryer-terminal-too-low", severity="caution", since="0.1",
    over=drawn_terminals, when=height_is_told, needs=(clear_height, least_height), limits=("dryer-terminal-height",), check=check,
    nothing="the design shows no dryer terminal", answers=("E21",),
)  # fmt: skip
