"""The blower, as measured, takes much power for the air that it moves.

A blower with a controlled motor holds its airflow against narrow ducts by taking more power, so the airflow looks
right and the bill does not. The grades of installation therefore limit the power for each flow as well; where none is
claimed, or grade III, which has no limit, the wider one counts here.

Widen filter and return, open what is closed, and measure again.
"""

from checker.case import Case
from checker.quantities.commissioning import Grade, Measured, measured_power_per_flow, power_grade, speaking
from checker.rule import Finding, Meets, Num, Rule


def measured_blowers(case: Case) -> list[Measured]:
    """Systems whose blower power was measured."""
    return speaking(case, "power")


def check(measured: Measured, found: float, grade: Grade) -> Meets | Finding:
    """Not above the limit of the grade."""
    numbers = {
        "name": Num(measured.name), "grade": Num(grade.word), "allowed": Num(grade.limit, "specific_fan_power")
    }  # fmt: skip
    if found <= grade.limit * (1 + 1e-9):
        return Meets(numbers)
    so = "grade {grade}, which the papers claim, allows" if grade.is_claimed else "even grade {grade} allows only"
    return Finding(
        f"the blower of {{name}} takes {{measured_power_per_flow}} as measured; {so} {{allowed}}",
        at="power", help="widen what resists most, filter or return, and measure again", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="CTRL-14", name="measured-blower-power-high", severity="caution", since="0.1",
    over=measured_blowers, needs=(measured_power_per_flow, power_grade), cites=("commissioned-power",), check=check,
    nothing="no blower power was measured", answers=("Q12",),
)  # fmt: skip
