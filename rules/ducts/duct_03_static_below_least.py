"""The ducts take less static pressure than the unit asks for.

A blower set up for a duct system of some resistance pushes too much air through a very open one: noise at the
grilles, moisture carried off the coil, a motor that draws more than its rating. Makers of slim-duct units
therefore print a least external static pressure beside the greatest.

Choose a lower static setting on the unit where it has one, or add resistance on purpose: a smaller grille, a
better filter, a balancing damper.
"""

from checker.case import Case
from checker.design.equipment import Equipment
from checker.quantities.circuits import Circuit, ducted_circuits
from checker.quantities.static_budget import SLACK, Budget, budget_against_least
from checker.rule import Finding, Meets, Num, Rule


def with_least(case: Case) -> list[Circuit]:
    """Circuits of units whose maker states a least external static pressure."""
    return [
        each
        for each in ducted_circuits(case)
        if isinstance(each.mover, Equipment)
        and each.mover.by_maker is not None
        and (
            each.mover.by_maker.least_static is not None
            or f"{each.mover.by_maker.path}.least_static" in case.design.tbd
        )
    ]


def check(_circuit: Circuit, budget: Budget) -> Meets | Finding:
    """Compare the most that the ducts can take with the least that the unit asks for."""
    numbers = {
        "unit": Num(budget.name),
        "airflow": Num(budget.airflow, "airflow"),
        "taken": Num(budget.high, "pressure"),
        "least": Num(budget.offer.low, "pressure"),
        "gap": Num(max(budget.offer.low - budget.high, 0.0), "pressure"),
    }
    if budget.high * SLACK >= budget.offer.low:
        return Meets(numbers)
    return Finding(
        "the ducts of {unit} take at most {taken} at {airflow}; its maker asks for {least} or more",
        help="set the unit to a lower static setting, or add {gap} by a better filter, a grille or a damper",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-03", name="static-below-least", severity="caution", since="0.1",
    over=with_least, needs=(budget_against_least,), cites=("maker-duct-limits",), check=check, answers=("F49",),
    nothing="no unit with ducts states a least external static pressure",
)  # fmt: skip
