"""The ducts take more static pressure than the fan offers once the filter is loaded.

A filter is bought clean and lives loaded. Before it is changed it takes two or three times its clean pressure
drop, and the airflow that was just met on the first day falls short for months.

Give the filter more face or more depth so that its final drop is smaller, change it sooner (state a lower final
drop), or keep more static pressure in hand.
"""

from checker.quantities.circuits import ducted_circuits
from checker.quantities.static_budget import Budget, decided_loaded
from checker.quantities.static_words import budget_numbers
from checker.rule import Finding, Meets, Rule


def check(_circuit: object, budget: Budget) -> Meets | Finding:
    """Compare what the circuit surely needs at the end of the filter's life with what the mover offers."""
    numbers = budget_numbers(budget)
    if not budget.is_above:
        return Meets(numbers)
    return Finding(
        "{fan} offers {offered}, but needs at least {needed} to move {airflow} with its filter loaded",
        help="give the filter more face or depth, or change it at a drop at least {excess} lower",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-02", name="static-above-fan-when-filter-loads", severity="caution", since="0.1",
    over=ducted_circuits, needs=(decided_loaded,), cites=("available-static", "static-margin"), check=check,
    answers=("F42", "F49"),
    nothing="no duct of a supply fan, recovery unit or equipment is described",
)  # fmt: skip
