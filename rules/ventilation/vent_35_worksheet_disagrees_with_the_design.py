"""A figure on the ventilation worksheet is not that of the design.

The worksheet is the first thing that a reviewer lays beside the drawing. A floor area from an earlier
revision, a den that has become a bedroom, or a rate from another table makes the whole packet doubtful.

Correct the worksheet or the design, whichever is out of date. A stated rate above what the code takes is
never held against it.
"""


from checker.case import Case, quantity
from checker.design.controls import VentilationWorksheet
from checker.quantities.airtightness import house_of
from checker.quantities.ventilation import SLACK, least_rate
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule

DIMENSIONS = {"floor_area": "area", "bedrooms": "", "required_rate": "airflow"}


class Figure(Record):
    """One figure of the worksheet."""

    path: str
    name: str
    stated: float
    sheet: VentilationWorksheet


def figures(case: Case) -> list[Figure]:
    """The figures that the worksheet states."""
    sheet = case.design.papers.ventilation if case.design.papers is not None else None
    if sheet is None:
        return []
    stated = {name: case.maybe(sheet, name) for name in DIMENSIONS}
    return [
        Figure(f"{sheet.path}.{name}", name, float(value), sheet) for name, value in stated.items() if value is not None
    ]


class Own(Record):
    """The same figure by the design, with its dimension."""

    value: float
    dimension: str


@quantity()
def of_the_design(case: Case, figure: Figure) -> Own:
    """What the design makes of the figure."""
    if figure.name == "required_rate":
        return Own(least_rate(case, case.design), DIMENSIONS[figure.name])
    return Own(float(case.get(house_of(case), figure.name)), DIMENSIONS[figure.name])


def check(figure: Figure, own: Own, rounding: float) -> Meets | Finding:
    """Agreement within rounding; a rate may be above."""
    slack = 0.0 if figure.name == "bedrooms" else rounding * own.value + SLACK
    short = own.value - figure.stated
    dimension, both = DIMENSIONS[figure.name], {"stated": figure.stated, "own": own.value}
    numbers = {name: Num(value, dimension) if dimension else Num(int(value)) for name, value in both.items()}
    if short <= slack and (figure.name == "required_rate" or -short <= slack):
        return Meets(numbers)
    what = {"bedrooms": "number of bedrooms"}.get(figure.name, figure.name.replace("_", " "))
    return Finding(
        f"the ventilation worksheet has a {what} of {{stated}}; by the design it is {{own}}",
        help="correct the worksheet or the design, whichever is out of date",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-35", name="worksheet-disagrees-with-the-design", severity="caution", since="0.1",
    over=figures, needs=(of_the_design,), limits=("worksheet-rounding",), check=check,
    nothing="the papers hold no ventilation worksheet",
)  # fmt: skip
