"""A cold supply duct sweats in summer in the attic, crawl space, garage or basement.

While the equipment cools, the outside of a bare or thinly insulated duct falls below the dew point of the damp
air around it. Water runs along the metal, drips into ceilings and feeds mold.

The surface is worked out for the mean temperature of the summer design day at the outdoor dew point; a basement
is taken at 75 degF and 60 %. Supply air counts as 55 degF where the file states none. Insulate the duct to the
R-value given, joints and collars included, with a vapor retarder on the outside; or bring the duct inside.
"""

from checker.case import Case
from checker.design.airway import Run
from checker.design.ducts import DuctSystem
from checker.quantities.cold_ducts import BASEMENT, OUTSIDE, supplied_cold, surroundings
from checker.quantities.duct_surface import Surface, coldest_supply_air, supply_surface
from checker.rule import Finding, Meets, Num, Rule


def is_in_damp_air(case: Case, run: Run) -> bool:
    """The run does not pass through an attic, crawl space, garage or basement, or is buried in insulation."""
    system: DuctSystem = run.up
    if case.maybe(system, "all_inside") or case.maybe(run, "buried"):
        return False
    return bool(surroundings(case, run) & {OUTSIDE, BASEMENT})


def check(run: Run, _air: float, found: Surface) -> Meets | Finding:
    """The surface must not be below the dew point."""
    numbers = {
        "run": Num(run.name),
        "surface": Num(found.temperature, "temperature"),
        "dew_point": Num(found.dew_point, "temperature"),
        "least": Num(found.needed, "resistance"),
    }
    if not found.is_wet:
        return Meets(numbers)
    return Finding(
        "{run} carries supply air of {coldest_supply_air}; its outside at {surface} sweats below the summer dew point "
        "of {dew_point}",
        at="insulation",
        help="insulate it to {least} or more with a vapor retarder outside; the energy code may ask for more",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-60", name="cold-supply-duct-sweats", severity="caution", since="0.1",
    over=supplied_cold, when=is_in_damp_air, needs=(coldest_supply_air, supply_surface),
    cites=("cold-duct-surface",), check=check, nothing="no duct carries cooled air",
)  # fmt: skip
