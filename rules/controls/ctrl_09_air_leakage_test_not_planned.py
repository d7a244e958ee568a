"""No test of the house's air leakage is planned.

The energy chapter has every new dwelling tested with a blower door. Ventilation rate, loads and make-up air
all rest on what the test shows; the best time is while leaks can still be reached from inside.

Put the test on the plans, with the greatest leakage that it may show: `papers.tests.blower-door`.
"""

from checker import each
from checker.case import Case, Missing
from checker.design import Design
from checker.quantities.required_tests import leakage_test
from checker.quantities.stage import is_alteration, is_sketch
from checker.quantities.ventilation_controls import Told
from checker.rule import Finding, Meets, Rule


def is_due(case: Case, design: Design) -> bool:
    """A sketch need not say yet who tests the house, and an altered house is not held to the test."""
    if is_alteration(case):
        return False
    if not is_sketch(case):
        return True
    try:
        leakage_test(case, design)
    except Missing:
        return False
    return True


def check(_design: Design, test: Told) -> Meets | Finding:
    """Planned or done."""
    if test.so:
        return Meets()
    return Finding(
        "no test of the house's air leakage is planned",
        at=test.path, help="plan a blower-door test with a written report",
    )  # fmt: skip


RULE = Rule(
    code="CTRL-09", name="air-leakage-test-not-planned", severity="correction", since="0.1",
    over=each.design, when=is_due, needs=(leakage_test,), cites=("air-leakage-test",), check=check,
    answers=("Q13",),
)  # fmt: skip
