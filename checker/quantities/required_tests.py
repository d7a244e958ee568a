"""Tests that the energy chapter asks for in the finished house, what the papers say of them, and their reports."""

from collections.abc import Callable
from functools import partial

from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.codebook import converted
from checker.design import Design
from checker.design.controls import Test
from checker.design.ducts import DuctSystem
from checker.design.fields import fold
from checker.design.hoods import Hood
from checker.quantities.airtightness import house_of
from checker.quantities.duct_exposure import house_air_systems
from checker.quantities.duct_leakage import is_all_inside
from checker.quantities.ventilation import SLACK
from checker.quantities.ventilation_controls import Told
from checker.quantities.whole_house import needed
from checker.record import Record

NO_CAVITY = ("framing cavity", "gypsum")
LEAKAGE_TOPICS = ("blower door", "air leakage", "airtightness", "air tightness", "envelope leakage")


def must_be_tested(case: Case, design: Design) -> bool:
    """A hood with a short wide duct needs no test, and nothing else ventilates the house."""
    terms = case.limit("flow-test-exempt-hood")
    hoods = [part.device for part in needed(case, design)]
    return not all(isinstance(device, Hood) and is_let_off(device, terms) for device in hoods)


def is_let_off(hood: Hood, terms: dict[str, object]) -> bool:
    """Whether a hood's duct is stated to be wide, straight and short enough."""
    duct = hood.duct
    if duct is None or duct.size is None:
        return False
    if duct.size.hydraulic_diameter < converted(terms["size"], "diameter") * (1 - SLACK):
        return False
    turns = sum(count for piece, count in duct.pieces.items() if piece.startswith(("elbow-90", "flat-elbow", "elbow-180")))
    if "length" in terms and (duct.length is None or duct.length > converted(terms["length"], "length") * (1 + SLACK)):
        return False
    return turns <= float(str(terms["elbows"]))


@quantity()
def duct_test(case: Case, system: DuctSystem) -> str:
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


def is_duct_test_due(case: Case, system: DuctSystem) -> bool:
    """The edition asks for no test where ducts and air handler are all inside."""
    try:
        if duct_test(case, system) != "none":
            return True
    except Missing:
        pass
    return is_duct_test_asked(case, system)


def is_duct_test_asked(case: Case, system: DuctSystem) -> bool:
    """Whether the edition asks for a leakage test of these ducts, by where they run."""
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


@quantity()
def leakage_test(case: Case, _node: object) -> Told:
    """Whether the air leakage of the house is or will be tested. Raises Missing."""
    house = house_of(case)
    if house.airtightness_is == "tested" or (house.measured is not None and house.measured.airtightness is not None):
        return Told(True, "house.airtightness_is")
    if {"papers", "papers.tests"} & case.design.stated_none:
        return Told(False, "papers.tests")
    test = test_of(case, LEAKAGE)
    if test is None:
        raise Missing(LEAKAGE.path)
    return Told(case.get(test, "state") != "none", path_of(test, "state"))


class RequiredTest(Record):
    """A test of the finished house, by its topic; `words` name it in the papers."""

    path: str
    name: str
    words: tuple[str, ...]


LEAKAGE = RequiredTest("papers.tests.blower-door", "air leakage test", LEAKAGE_TOPICS)


def required_tests(case: Case) -> list[RequiredTest]:
    """The tests that the edition asks of this design. A test whose need is not known is left out: others ask for it."""
    found = [LEAKAGE]
    if any(is_surely(partial(is_duct_test_asked, case, system)) for system in house_air_systems(case)):
        found.append(RequiredTest("papers.tests.duct-leakage", "duct leakage test", ("duct",)))
    if is_surely(partial(is_flow_test_asked, case)):
        topics = ("ventilation", "flow")
        found.append(RequiredTest("papers.tests.ventilation-flow", "test of the ventilation flows", topics))
    return found


def is_flow_test_asked(case: Case) -> bool:
    """Whether the edition asks for a test of the ventilation flows."""
    case.codebook.require("ventilation-flow-test")
    return must_be_tested(case, case.design)


def is_surely(question: Callable[[], bool]) -> bool:
    """Whether a question is answered yes; one that cannot be answered counts as no."""
    try:
        return question()
    except (Missing, NotApplicable, CannotJudge):
        return False


class Report(Record):
    """What the papers say of a test: its state, and whether its report is among them."""

    state: str
    there: bool


def test_of(case: Case, wanted: RequiredTest) -> Test | None:
    """The test of the papers that goes by one of its words."""
    tests = case.design.papers.tests if case.design.papers is not None else {}
    for name in sorted(tests):
        folded = fold(name)
        if any(word in folded for word in wanted.words) and ("duct" in folded) == ("duct" in wanted.words):
            return tests[name]
    return None


@quantity()
def report(case: Case, wanted: RequiredTest) -> Report:
    """State and report of a test. Raises Missing; NotApplicable where there is no test, of which other rules speak."""
    test = test_of(case, wanted)
    if test is None:
        raise Missing(wanted.path)
    state = str(case.get(test, "state"))
    if state == "none":
        raise NotApplicable("no such test is made, of which another rule speaks")
    if state == "planned":
        return Report(state, False)
    told = str(case.get(test, "report"))
    return Report(state, fold(told) not in ("none", "no", "missing", "not there"))
