"""Every output over the example designs of every rule: valid, whole, short lines, in both systems of units."""

import json
from typing import Any

import jsonschema
import pytest
from lxml import etree

from checker.examples_source import examples
from checker.judge import rules
from checker.outcomes_schema import outcomes_schema
from checker.outputs import json_report, junit, sarif, text, worksheet
from checker.outputs.layout import width
from checker.read import read_text
from checker.run import Checked, check_reading, numbered
from tests.outputs.test_junit import SCHEMA as JUNIT
from tests.outputs.test_sarif import VALIDATOR as SARIF

OUTCOMES = jsonschema.Draft202012Validator(outcomes_schema())
DESIGNS = [
    (code, outcome, design)
    for code, each in examples().items()
    for outcome, design in each.items()
    if not design.startswith("#")  # needs an amendments file beside it
]


@pytest.fixture(scope="module")
def chosen() -> list[Any]:
    return list(rules())


def checked_by(design: str, chosen: list[Any], tracing: bool = False) -> list[Checked]:
    return numbered([check_reading(read_text(design, "example.yaml"), chosen, "2026-01-01", tracing)])


@pytest.mark.parametrize(("code", "outcome", "design"), DESIGNS, ids=[f"{code} {outcome}" for code, outcome, _ in DESIGNS])
def test_outputs(code: str, outcome: str, design: str, chosen: list[Any]) -> None:
    area = code.partition("-")[0]
    checked = checked_by(design, [rule for rule in chosen if rule.area == area])
    assert any(each.rule.code == code and each.outcome == outcome for each in checked[0].outcomes)
    OUTCOMES.validate(json.loads(json_report.report(checked, "metric")))
    SARIF.validate(json.loads(sarif.report(checked, "trade")))
    JUNIT.assertValid(etree.fromstring(junit.report(checked, "metric").encode()))
    summary = text.report(checked, "trade", False).partition("== Summary ==")[2]
    assert summary.count("\n") <= 24


@pytest.mark.parametrize(("code", "outcome", "design"), DESIGNS, ids=[f"{code} {outcome}" for code, outcome, _ in DESIGNS])
def test_worksheet(code: str, outcome: str, design: str, chosen: list[Any]) -> None:
    checked = checked_by(design, [rule for rule in chosen if rule.code == code], tracing=True)[0]
    for system in ("trade", "metric"):
        sheet = worksheet.report(checked, system)
        heads = [line for line in sheet.split("\n") if line.startswith(f"{code} ")]
        assert any(outcome in line for line in heads)
        assert max(width(line) for line in sheet.split("\n")) <= worksheet.COLUMNS
        assert "(SI units)" not in sheet, "a record's fields say their dimension, as `flow: Airflow` does"
