"""The ducted returns take back less air than the supplies deliver.

Air that is blown out has to come back to the blower. What the return grilles are not designed to take comes
through the leaks of the return duct and the cabinet, from the attic or the crawl space, or the blower simply
moves less.

Raise the return grilles to the supply airflow, add a return, or name the rooms that the air comes back from
without a grille (`return_from`).
"""

from checker.case import Case, Missing, quantity
from checker.design.ducts import DuctSystem
from checker.design.equipment import Equipment
from checker.quantities.duct_balance import returned
from checker.quantities.duct_flow import sum_of_outlets, system_flow
from checker.quantities.duct_scope import comfort_systems, mover_or_none
from checker.rule import Finding, Meets, Num, Rule


def ducted_both_ways(case: Case) -> list[DuctSystem]:
    """Systems of equipment with runs, all of whose return air comes by ducts."""
    found = []
    for system in comfort_systems(case):
        mover = mover_or_none(case, system)
        open_return = isinstance(mover, Equipment) and mover.return_location is not None
        if system.runs and not system.return_from and not open_return:
            found.append(system)
    return found


@quantity("airflow", "sum of the supply outlets, no more than the airflow of the system")
def delivered(case: Case, system: DuctSystem) -> float:
    """What the supplies deliver; where the outlets fall short of the system, that is judged by itself."""
    whole = system_flow(case, system)
    try:
        return min(whole, sum_of_outlets(case, system))
    except Missing:
        return whole


def check(system: DuctSystem, back: float, airflow: float, tolerance: float) -> Meets | Finding:
    """Compare within the tolerance."""
    numbers = {"system": Num(system.name), "short": Num(max(airflow - back, 0.0), "airflow")}
    if back >= airflow * (1.0 - tolerance) * (1.0 - 1e-9):
        return Meets(numbers)
    return Finding(
        "the returns of {system} take back {returned} of the {delivered} that it delivers",
        help="raise the return grilles by {short}, or add a return",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-22", name="return-less-than-supply", severity="caution", since="0.1",
    over=ducted_both_ways, needs=(returned, delivered), limits=("return-tolerance",), check=check,
    nothing="no equipment has supply and return ducts",
)  # fmt: skip
