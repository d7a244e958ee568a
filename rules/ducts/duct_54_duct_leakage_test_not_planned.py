"""No test of duct leakage is planned.

Nobody sees from outside whether mastic reached every joint. A test at rough-in finds the leaks while they can
still be reached. Until the 2018 edition ducts that are all inside need no test; from 2021 they do, and from 2024
only a few feet of duct inside are excepted.

Put the test on the plans and say who does it: `papers.tests.duct-leakage`.
"""

from checker.case import Case, Missing, NotApplicable, quantity
from checker.design.ducts import DuctSystem
from checker.design.fields import fold
from checker.quantities.duct_exposure import house_air_systems
from checker.quantities.duct_leakage import is_all_inside
from checker.rule import Finding, Meets, Rule

NO_CAVITY = ("framing cavity", "gypsum")


@quantity()
def test_state(case: Case, system: DuctSystem) -> str:
    """Whether a duct leakage test is planned, done or none."""
    if system.leakage is not None and case.maybe(system.leakage, "tested"):
        return "done"
    papers = case.design.papers
    if papers is not None:
        for name, test in papers.tests.items():
            if "duct" in fold(name):
                return str(case.get(test, "state"))
    if {"papers", "papers.tests"} & case.design.stated_none:
        return "none"
    raise Missing("papers.tests.duct-leakage")


def is_asked_for(case: Case, system: DuctSystem) -> bool:
    """The edition asks for no test where ducts and air handler are all inside."""
    try:
        if test_state(case, system) != "none":
            return True
    except Missing:
        pass
    if not is_all_inside(case, system):
        return True
    try:
        case.codebook.require("duct-leakage-test-inside")
    except NotApplicable:
        return False
    return not is_short(case, system)


def is_short(case: Case, system: DuctSystem) -> bool:
    """Whether so little duct, all inside, is excepted."""
    try:
        longest = case.limit("duct-leakage-test-length")
    except NotApplicable:
        return False
    lengths = [run.length for run in system.runs.values()]
    total = sum(length for length in lengths if length is not None)
    return None not in lengths and total <= longest and all(run.material not in NO_CAVITY for run in system.runs.values())


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
    over=house_air_systems, when=is_asked_for, needs=(test_state,), cites=("duct-leakage-test",), check=check,
    nothing="no duct system heats or cools rooms", answers=("F28",),
)  # fmt: skip
