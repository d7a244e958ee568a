"""The JUnit XML: valid by the form that build servers share, and a case for every check."""

from pathlib import Path
from typing import Any

import pytest
from lxml import etree

from checker.outputs.junit import report
from checker.read import read_text
from checker.run import check_reading, numbered
from tests.outputs.sham_rules import COTTAGE, LOW, SHAMS, checked_text

SCHEMA = etree.XMLSchema(etree.parse(str(Path(__file__).parent / "data" / "junit.xsd")))


def suites_of(text: str, chosen: list[Any] = SHAMS, system: str = "trade") -> Any:
    document = etree.fromstring(report([checked_text(text, chosen)], system).encode())
    SCHEMA.assertValid(document)
    return document


def cases(document: Any, start: str) -> list[Any]:
    return [case for case in document.iter("testcase") if case.get("name").startswith(start)]


def test_counts() -> None:
    suites = suites_of(COTTAGE)
    suite = suites.find("testsuite")
    assert suite.get("name") == "cottage.yaml"
    counts = {name: int(suite.get(name)) for name in ("tests", "failures", "errors", "skipped")}
    # one fault of the file, four fans under two rules, the broken rule, the note
    assert counts == {"tests": 1 + 8 + 1 + 1, "failures": 1, "errors": 1, "skipped": 3}
    assert [suites.get(name) for name in ("tests", "failures", "errors")] == ["11", "1", "1"]


def test_a_finding_is_a_failure_with_its_place() -> None:
    case = cases(suites_of(COTTAGE), "EXH-90 sham-flow-low fans.bath")[0]
    assert case.get("classname") == "EXH"
    failure = case.find("failure")
    assert (failure.get("type"), failure.get("message")) == ("correction", "moves 40 cfm, less than 50 cfm")
    assert failure.text.startswith("cottage.yaml:5:35: correction: moves 40 cfm, less than 50 cfm\nto change: raise")
    assert "see: IRC 2021 Table X2; the locally adopted code" in failure.text


def test_a_note_does_not_fail() -> None:
    case = cases(suites_of(COTTAGE), "PAPER-90")[0]
    assert [child.tag for child in case] == ["system-out"]
    assert "note: the floor area of 1200 ft2 is on no paper" in case.find("system-out").text


def test_what_was_not_judged_is_skipped_with_the_reason() -> None:
    suites = suites_of(COTTAGE)
    later = cases(suites, "EXH-90 sham-flow-low fans.later")[0].find("skipped")
    assert later.get("message").startswith("needs information: cannot be judged before `fans.later.settings.high")
    big = cases(suites, "VENT-90 sham-flow-doubled fans.big")[0].find("skipped")
    assert big.get("message") == "cannot be judged: the method ends at 1000 cfm"


def test_an_accepted_finding_is_skipped() -> None:
    suites = suites_of(COTTAGE.replace("fans.none, reason: r", "fans.bath, reason: kept"), [LOW])
    case = cases(suites, "EXH-90 sham-flow-low fans.bath")[0]
    assert case.find("skipped").get("message") == "accepted: kept (accepted by b)"


def test_a_rule_that_broke_is_an_error() -> None:
    error = cases(suites_of(COTTAGE), "CTRL-90")[0].find("error")
    assert error.get("type") == "rule-failed"
    assert "ZeroDivisionError" in error.get("message")


@pytest.mark.parametrize("odd", ["\\e", "\\0", "\\uFFFE", "\\uD800", "<&>", "]]>"])
def test_marks_that_xml_cannot_hold(odd: str) -> None:
    text = COTTAGE.replace("Sham cottage", f'"a{odd}b"').replace("bath:", f'"bath{odd}":')
    assert suites_of(text).get("name") == "airtally"


def test_metric_units_and_several_files() -> None:
    readings = [read_text(COTTAGE, "a.yaml"), read_text("a: [", "b.yaml")]
    checked = numbered([check_reading(each, SHAMS, "2026-01-01") for each in readings])
    document = etree.fromstring(report(checked, "metric").encode())
    SCHEMA.assertValid(document)
    assert [suite.get("name") for suite in document] == ["a.yaml", "b.yaml"]
    assert document.get("failures") == "2"
    assert "moves 19 L/s, less than 24 L/s" in etree.tostring(document, encoding="unicode")
