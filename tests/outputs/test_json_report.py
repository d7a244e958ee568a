"""The JSON report and its schema."""

import json
from typing import Any

import jsonschema
import pytest

from checker.outcomes_schema import OUTCOMES, amendments_schema, outcomes_schema
from checker.outputs.json_report import number, report
from checker.rule import Num
from tests.outputs import sham_rules
from tests.outputs.sham_rules import COTTAGE, checked_text

VALIDATOR = jsonschema.Draft202012Validator(outcomes_schema())


def said(text: str, system: str = "trade") -> dict[str, Any]:
    whole: dict[str, Any] = json.loads(report([checked_text(text)], system))
    VALIDATOR.validate(whole)
    return whole


def test_schemas_are_schemas() -> None:
    jsonschema.Draft202012Validator.check_schema(outcomes_schema())
    jsonschema.Draft202012Validator.check_schema(amendments_schema(sham_rules.ENTRIES))


def test_every_outcome_is_told() -> None:
    design = said(COTTAGE)["designs"][0]
    assert (design["path"], design["title"], design["code"]) == ("cottage.yaml", "Sham cottage", "irc-2021")
    assert {each["outcome"] for each in design["outcomes"]} == set(OUTCOMES) - {"not-applicable"}
    assert design["wanted"] == [{"path": "fans.later.settings.high.airflow", "rules": 2}]
    low = next(each for each in design["outcomes"] if each["rule"] == "EXH-90" and each["outcome"] == "finding")
    assert low == {
        "number": 2, "rule": "EXH-90", "name": "sham-flow-low", "area": "EXH", "severity": "correction",
        "outcome": "finding", "path": "fans.bath.settings", "line": 5, "column": 35, "end_line": 5, "end_column": 36,
        "message": "moves 40 cfm, less than 50 cfm",
        "help": "raise it by 10 cfm, or choose a fan that moves 50 cfm against the pressure of its own duct and of "
        "the cap",
        "numbers": {
            "flow": {"value": 40.0, "unit": "cfm", "text": "40 cfm"},
            "limit": {"value": 50.0, "unit": "cfm", "text": "50 cfm"},
            "short": {"value": 10.0, "unit": "cfm", "text": "10 cfm"},
        },
        "missing": [], "cites": "IRC 2021 Table X2", "accepted": None,
    }  # fmt: skip


def test_metric_numbers() -> None:
    low = next(each for each in said(COTTAGE, "metric")["designs"][0]["outcomes"] if each["number"] == 2)
    # 40 cfm = 40 * 0.4719474432 L/s (one cubic foot is 0.3048 m to the third, exactly)
    assert low["numbers"]["flow"] == {"value": 18.8778977, "unit": "L/s", "text": "19 L/s"}


@pytest.mark.parametrize("text", ["", "\0", "a: [", "- 1", "design_format: 2", "design_format: 1\nfans: 3\n"])
def test_what_cannot_be_read_is_told_in_the_same_form(text: str) -> None:
    design = said(text)["designs"][0]
    assert design["readable"] is (text.startswith("design_format"))
    assert design["outcomes"]


def test_a_thousand_faults_are_kept() -> None:
    text = "design_format: 1\nproject: {title: a}\nhouse: {}\n" + "".join(f"bogus{number}: 1\n" for number in range(1100))
    design = said(text)["designs"][0]
    faults = [each for each in design["outcomes"] if each["area"] == "FILE"]
    assert len(faults) == 1000
    assert len(faults) + design["left_out"] == 1100


@pytest.mark.parametrize(
    ("value", "shown"), [(float("inf"), None), (float("nan"), None), (3, 3), ("word", "word"), ((1, 2), "(1, 2)")]
)
def test_numbers_that_json_lacks(value: Any, shown: Any) -> None:
    assert number(Num(value), "trade")["value"] == shown


@pytest.mark.parametrize(
    ("requirements", "valid"),
    [
        ({"sham-least-flow": {"limit": "60 cfm", "section": "County 1"}}, True),
        ({"sham-least-flow": {"withdrawn": "repealed"}}, True),
        ({"sham-least-flow": {}}, False),
        ({"sham-least-flow": {"limits": "60 cfm"}}, False),
        ({"no-such-key": {"limit": "60 cfm"}}, False),
    ],
)
def test_amendments_schema_agrees_with_the_reader(requirements: dict[str, Any], valid: bool) -> None:
    from checker.amendments import read_requirements

    data = {"amendments_format": 1, "title": "a county", "requirements": requirements}
    schema = jsonschema.Draft202012Validator(amendments_schema(sham_rules.ENTRIES))
    assert schema.is_valid(data) is valid
    assert (not read_requirements("county.yaml", data, {})) is valid
