"""A test that the finished house must pass has no report among the papers.

The energy chapter wants written, signed reports of the air leakage test, of the duct leakage test where ducts must be
tested, and from 2021 of the ventilation flows. Without them the house is not done, whatever was measured.

Have the tests made, ask who made them for the reports, and say where they are.
"""

from checker.case import Case
from checker.quantities.required_tests import Report, RequiredTest, report, required_tests
from checker.rule import Finding, Meets, Num, Rule


def of_the_finished_house(case: Case) -> list[RequiredTest]:
    """The required tests, once the house is built."""
    project = case.design.project
    return required_tests(case) if project is not None and project.stage == "as-built" else []


def check(wanted: RequiredTest, found: Report) -> Meets | Finding:
    """A report must be there."""
    numbers = {"name": Num(wanted.name)}
    if found.there:
        return Meets(numbers)
    if found.state == "planned":
        return Finding(
            "the {name} is still planned, though the house is built",
            help="have it made, and say where its report is", numbers=numbers,
        )  # fmt: skip
    return Finding(
        "there is no report of the {name}",
        help="ask who made the test for the signed report, and say where it is", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="CTRL-10", name="test-report-missing", severity="correction", since="0.1",
    over=of_the_finished_house, needs=(report,), cites=("test-reports",), check=check,
    nothing="the house is not built yet", answers=("Q13",),
)  # fmt: skip
