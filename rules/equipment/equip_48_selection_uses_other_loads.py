"""The equipment was selected by other loads than the load calculation has.

A load calculation is revised with the windows, the insulation and the leakage; the selection is often left as it was.
The equipment then fits a house that is not built.

Carry the loads of the last calculation into the selection, and choose again.
"""

from checker.case import Case, quantity
from checker.quantities.selection_paper import OF_THE_LOADS, Figure, figures, load_beside, selected
from checker.rule import Finding, Meets, Num, Rule


def load_figures(case: Case) -> list[Figure]:
    """The loads that the selections state."""
    return figures(case, OF_THE_LOADS)


@quantity("heat_rate")
def load_on_paper(case: Case, figure: Figure) -> float:
    """The load of the selection."""
    return float(case.get(figure.paper, figure.field))


@quantity()
def name_of_unit(case: Case, figure: Figure) -> str:
    """Name of the equipment that was selected."""
    return str(selected(case, figure.paper).name)


def check(figure: Figure, paper: float, load: float, unit: str, share: float) -> Meets | Finding:
    """Apart by more than the tolerance."""
    numbers = {"unit": Num(unit), "what": Num(figure.what)}
    if abs(paper - load) <= share * max(paper, load) * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{unit} is selected by {what} of {load_on_paper}; the loads of the design give {load_beside}",
        help="carry {load_beside} into the selection, and choose again",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-48", name="selection-uses-other-loads", severity="caution", since="0.1",
    over=load_figures, needs=(load_on_paper, load_beside, name_of_unit), limits=("selection-capacity",), check=check,
    nothing="no equipment selection states its loads", answers=("H01",),
)  # fmt: skip
