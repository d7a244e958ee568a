"""The cooling capacities on the equipment selection do not add up.

Total capacity is its sensible and its latent part together. Where they differ, the parts were read from another line
of the maker's table, or at another airflow or entering wet bulb, than the total.

Read all three at one outdoor temperature, one entering wet bulb and one airflow.
"""

from checker.case import Case, given
from checker.design.selection_paper import SelectionPaper
from checker.quantities.selection_paper import selections
from checker.rule import Finding, Meets, Num, Rule

PARTS = ("cooling_total", "cooling_sensible", "cooling_latent")


def complete(case: Case) -> list[SelectionPaper]:
    """Selections that speak of the total and of both parts."""
    return [paper for paper in selections(case) if all(case.speaks_of(paper, field) for field in PARTS)]


def check(paper: SelectionPaper, total: float, sensible: float, latent: float, rounding: float) -> Meets | Finding:
    """Apart by more than rounding."""
    together = sensible + latent
    numbers = {"name": Num(paper.name), "together": Num(together, "heat_rate")}
    if abs(total - together) <= rounding * max(total, together) * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "the selection of {name} has a total of {cooling_total}; its sensible and latent parts come to {together}",
        at="cooling_total",
        help="read all three at one outdoor temperature, one entering wet bulb and one airflow",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-49", name="selection-does-not-add-up", severity="caution", since="0.1",
    over=complete, needs=tuple(given(field) for field in PARTS), limits=("paper-sums",), check=check,
    nothing="no equipment selection states a total cooling capacity and both parts", answers=("H18",),
)  # fmt: skip
