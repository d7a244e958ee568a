"""No test of duct leakage is planned.

Nobody sees from outside whether mastic reached every joint. A test at rough-in finds the leaks while they can
still be reached. Until the 2018 edition ducts that are all inside need no test; from 2021 they do, and from 2024
only a few feet of duct inside are excepted.

Put the test on the plans and say who does it: `papers.tests.duct-leakage`.
"""

from checker.design.ducts import DuctSystem
from checker.quantities.duct_exposure import house_air_systems
from checker.quantities.required_tests import duct_test, is_duct_test_due
from checker.rule import Finding, Meets, Rule


def check(system: DuctSystem, state: str) -> Meets | Finding:
    """Planned or done."""
    if state != "none":
        return Meets()
    return Finding(
        f"no test of the duct leakage of {system.name} is planned",
        help="plan a duct leakage test at rough-in or at completion, and name who does it",
    )


RULE = Rule(
    code="DUCT-54", name="duct-leakage-test-not-planned", severity="correction", since="0.1",
    over=house_air_systems, when=is_duct_test_due, needs=(duct_test,), cites=("duct-leakage-test",), check=check,
    nothing="no duct system heats or cools rooms", answers=("F28",),
)  # fmt: skip
