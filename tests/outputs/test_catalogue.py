"""The list of rules."""

import json
import re

from checker.judge import modules
from checker.outputs.catalogue import as_json, as_text, catalogue
from tests.outputs.sham_rules import ENTRIES, LOW, NOTED, SHAMS


def test_table_by_area() -> None:
    assert as_text([LOW, NOTED], ENTRIES) == (
        "== Local exhaust and hoods: 1 rule ==\n"
        "EXH-90    correction  sham-flow-low          A sham finds what the tests of the outputs need.\n"
        "\n"
        "== Papers: 1 rule ==\n"
        "PAPER-90  note        sham-area-on-no-paper  A sham finds what the tests of the outputs need.\n"
        "\n"
        "2 rules in 2 areas, and 0 checks of the file itself.\n"
        "`airtally explain CODE` shows the page of each.\n"
    )


def test_data() -> None:
    listed = json.loads(as_json(SHAMS, ENTRIES))
    assert listed[0] == {
        "code": "EXH-90", "name": "sham-flow-low", "area": "EXH", "severity": "correction",
        "title": "A sham finds what the tests of the outputs need.",
        "cites": {"irc-2018": "Table X1", "irc-2021": "Table X2", "irc-2024": "Table X2"},
        "needs": ["flow"], "since": "0.1", "basis": "code",
    }  # fmt: skip
    assert listed[1]["cites"] == {"any": "common practice"}
    assert [each["basis"] for each in listed[2:]] == ["common practice", "common practice"]


def test_every_rule_is_listed() -> None:
    codes = [code for code, _ in modules()]
    assert [each["code"] for each in json.loads(catalogue("json")) if each["area"] != "FILE"] == codes
    text = catalogue("text")
    assert [code for code in re.findall(r"^([A-Z]+-\d+) ", text, re.MULTILINE) if not code.startswith("FILE")] == codes
    assert f"{len(codes)} rule" in text
    assert max(map(len, text.split("\n"))) <= 120
