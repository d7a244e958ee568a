"""No test of the installed ventilation flows is planned.

Fans move what their ducts let them, and that is often half of what the box says. Since 2021 the energy chapter
asks that the installed flows be tested and reported in writing. Only a hood with a short, wide duct is let off.

Plan the test with a flow hood, a powered hood or the unit's own flow stations, and name who does it.
"""

from checker import each
from checker.case import Case, quantity
from checker.design import Design
from checker.quantities.required_tests import must_be_tested
from checker.quantities.ventilation_controls import Told, test_state
from checker.rule import Finding, Meets, Rule


@quantity()
def flow_test(case: Case, _design: Design) -> Told:
    """Whether the flows are or will be tested."""
    return test_state(case, "ventilation-flow")


def check(_design: Design, test: Told) -> Meets | Finding:
    """The test must be planned or done."""
    if test.so:
        return Meets()
    return Finding(
        "no test of the installed ventilation flows is planned",
        at=test.path,
        help="plan a test of each whole-house flow with a written report",
    )


RULE = Rule(
    code="VENT-19", name="ventilation-flow-test-not-planned", severity="correction", since="0.1",
    over=each.design, when=must_be_tested, needs=(flow_test,), cites=("ventilation-flow-test",), check=check,
    answers=("A17",),
)  # fmt: skip
