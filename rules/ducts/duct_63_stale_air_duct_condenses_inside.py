"""Moist room air on its way to a recovery unit gets so cold that water condenses in the duct.

The duct from bath or kitchen to a recovery unit runs all day with moist room air. In the cold its wall falls below
the dew point of that air: water collects, freezes, and runs back to the grille or into the unit. The heat lost on
the way is lost to recovery too.

The inner wall at the end of the run is worked out for the winter design temperature with the room air that the file
states, else 70 degF and 40 %. Insulate to the R-value given, or keep the unit and its ducts inside. The ducts
of plain exhaust fans and hoods are the matter of another rule.
"""

from checker.case import Case
from checker.design.airway import Run
from checker.quantities.cold_ducts import OUTSIDE, stale_air_runs, surroundings
from checker.quantities.duct_surface import InnerWall, inner_wall
from checker.quantities.moist_air import winter_design
from checker.rule import Finding, Meets, Num, Rule


def is_in_the_cold(case: Case, run: Run) -> bool:
    """The run does not pass through an attic, crawl space or garage."""
    return OUTSIDE in surroundings(case, run)


def check(run: Run, _outdoor: float, found: InnerWall) -> Meets | Finding:
    """The wall at the end must not be below the dew point."""
    numbers = {
        "run": Num(run.name),
        "wall": Num(found.wall, "temperature"),
        "dew_point": Num(found.dew_point, "temperature"),
        "least": Num(found.needed, "resistance"),
    }
    if found.wall >= found.dew_point:
        return Meets(numbers)
    return Finding(
        "the wall of {run} falls to {wall} amid air of {winter_design}, below the dew point of {dew_point} of the "
        "room air that it carries",
        at="insulation",
        help="insulate it to {least} or more, or bring it inside; let it fall to the unit's drain",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-63", name="stale-air-duct-condenses-inside", severity="caution", since="0.1",
    over=stale_air_runs, when=is_in_the_cold, needs=(winter_design, inner_wall),
    cites=("room-air-duct-wall",), check=check, nothing="no run brings room air to a recovery unit",
)  # fmt: skip
