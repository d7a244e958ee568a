"""The equipment selection states another figure than the drawings.

The selection is the page that shows why this unit was chosen: at these outdoor temperatures, with this airflow, it
gives so much. Where the schedule on the drawing says otherwise, one of them belongs to another revision or another unit.

Bring both to one figure; the maker's table at the design conditions decides which.
"""

from checker.case import Case, quantity
from checker.quantities.selection_paper import Amount, Figure, amount, beside_design, designed, selected
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def on_paper(case: Case, figure: Figure) -> Amount:
    """The figure of the selection."""
    return amount(figure, float(case.get(figure.paper, figure.field)))


@quantity()
def name_of_unit(case: Case, figure: Figure) -> str:
    """Name of the equipment that was selected."""
    return str(selected(case, figure.paper).name)


def check(
    figure: Figure, paper: Amount, design: Amount, unit: str, degrees: float, air: float, share: float
) -> Meets | Finding:
    """Apart by more than the tolerance of its kind."""
    of, stated, drawn = paper.dimension, paper.value, design.value
    numbers = {"stated": Num(stated, of), "designed": Num(drawn, of), "unit": Num(unit), "what": Num(figure.what)}
    most = degrees if of == "temperature" else (air if of == "airflow" else share) * max(abs(stated), abs(drawn))
    if abs(stated - drawn) <= most * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "the selection of {unit} has {stated} for {what}; the design has {designed}",
        help="bring selection and drawing to one figure, by the maker's table at the design conditions",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-47", name="selection-differs-from-design", severity="caution", since="0.1",
    over=beside_design, needs=(on_paper, designed, name_of_unit),
    limits=("selection-temperature", "selection-airflow", "selection-capacity"), check=check,
    nothing="no equipment selection states a figure that the design states as well", answers=("H01", "H18"),
)  # fmt: skip
