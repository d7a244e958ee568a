"""The ducts, with a clean filter, take more static pressure than the fan offers at its airflow.

A fan moves its stated airflow only against the pressure it is rated for. When ducts, fittings, filter, coil and
grilles ask for more, the air does not come: rooms stay cold, the fresh-air rate is not met, coils freeze, and a
fan that speeds up to hold its airflow gets loud.

Usual causes are a duct one size too small, flexible duct that is not pulled tight, a thick filter in a small
frame, or a slim unit whose rating is only a tenth or two of an inch of water. Enlarge the part that takes most
first: friction falls with about the fifth power of the diameter. Where the file leaves open how a duct is made,
the most favourable case counts here, so the true pressure is higher.
"""

from checker.quantities.circuits import circuits
from checker.quantities.duct_solution import airflow_at_best
from checker.quantities.duct_ways import Share
from checker.quantities.static_budget import Budget, decided_clean, heavy_filter, size_that_fits
from checker.quantities.static_words import budget_numbers, help_for
from checker.rule import Finding, Meets, Num, Rule
from checker.sizes import Size


def check(
    _circuit: object, budget: Budget, size: Size | None, moved: float | None, heavy: Share | None
) -> Meets | Finding:
    """Compare what the circuit surely needs with what the mover offers."""
    numbers = dict(budget_numbers(budget, size, moved))
    if not budget.is_above:
        return Meets(numbers)
    so = ""
    if heavy is not None:
        numbers |= {"filter": Num(heavy.name), "filter_drop": Num(heavy.low, "pressure")}
        so = "; {filter_drop} of that is taken by {filter}"
    if moved is not None:
        so += "; on its curve it moves {moved} at best"
    return Finding(
        "{fan} offers {offered}, but needs at least {needed} to move {airflow} with a clean filter" + so,
        help=help_for(size, heavy),
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-01", name="static-above-fan", severity="correction", since="0.1",
    over=circuits, needs=(decided_clean, size_that_fits, airflow_at_best, heavy_filter),
    cites=("duct-design-method", "available-static", "static-margin"), check=check, answers=("F42", "F44", "F49"),
    nothing="no supply fan, recovery unit or ducted equipment is described",
)  # fmt: skip
