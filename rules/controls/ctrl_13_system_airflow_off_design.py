"""The airflow of a heating and cooling system, as measured, is far from its design.

Capacity, comfort and noise all hang on the airflow of the blower. A grade of installation allows some difference from
the design; where none is claimed, or grade III, which has no limit, the wider one counts here.

Set the blower speed, or find what resists: a filter, a closed damper, a crushed duct. Then measure again.
"""

from checker.case import Case
from checker.quantities.commissioning import (
    Grade,
    Measured,
    airflow_grade,
    measured_airflow,
    speaking,
    wanted_airflow,
)
from checker.rule import Finding, Meets, Num, Rule


def measured_systems(case: Case) -> list[Measured]:
    """Systems whose airflow was measured."""
    return speaking(case, "airflow")


def check(measured: Measured, found: float, wanted: float, grade: Grade) -> Meets | Finding:
    """Within the share of the grade, either way."""
    numbers = {
        "name": Num(measured.name), "grade": Num(grade.word), "allowed": Num(grade.limit, "share"),
        "off": Num(min(abs(found - wanted) / wanted, 1.0), "share"),
    }  # fmt: skip
    if abs(found - wanted) <= grade.limit * wanted * (1 + 1e-9):
        return Meets(numbers)
    so = "grade {grade}, which the papers claim, allows" if grade.is_claimed else "even grade {grade} allows only"
    return Finding(
        f"{{name}} moves {{measured_airflow}} as measured, {{off}} from its design of {{wanted_airflow}}; {so} {{allowed}}",
        at="airflow", help="set the blower speed or take out what resists, and measure again", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="CTRL-13", name="system-airflow-off-design", severity="caution", since="0.1",
    over=measured_systems, needs=(measured_airflow, wanted_airflow, airflow_grade), cites=("commissioned-airflow",),
    check=check, nothing="no airflow of a heating or cooling system was measured", answers=("Q12",),
)  # fmt: skip
