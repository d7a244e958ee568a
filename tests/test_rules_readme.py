"""rules/README.md answers every requirement of the project's list, by a rule or by a reason."""

import re
from pathlib import Path

import pytest

from checker.codebook_table import ENTRIES
from checker.judge import FOLDER, rules
from checker.rules_readme import ReasonError, answered, place, rules_readme, unchecked
from tests.outputs.sham_rules import LOW

COUNTS = {"A": 34, "B": 35, "C": 22, "D": 14, "E": 22, "F": 57, "G": 14}
LISTED = [f"{letter}{number:02}" for letter, count in COUNTS.items() for number in range(1, count + 1)]


def test_every_requirement_is_answered() -> None:
    known = {*answered(rules()), *unchecked(FOLDER)}
    assert sorted(set(LISTED) - known) == []
    assert [number for number in known if not re.fullmatch(r"[A-Z]\d{2,}[a-z]?", number)] == []


def test_rows() -> None:
    rule = LOW._replace(answers=("A01", "B02"), limits=())
    text = rules_readme([rule], ENTRIES, {"B02": "half of it | is local", "A10": "cannot be decided on paper"})
    table = text[text.index("## Requirements") :]
    assert re.findall(r"^\| ([A-G]\d+ .*) \|$", table, re.MULTILINE) == [
        "A01 | EXH-90",
        "A10 | not checked: cannot be decided on paper",
        "B02 | EXH-90; in part; half of it \\| is local",
    ]
    title = "A sham finds what the tests of the outputs need."
    assert f"| EXH-90 | sham-flow-low | correction | {title} | common practice |" in text


def test_order_is_by_letter_and_number() -> None:
    assert sorted(["B01", "A100", "A20", "A3"], key=place) == ["A3", "A20", "A100", "B01"]


def test_reasons_of_two_areas_are_joined(tmp_path: Path) -> None:
    for area, text in (("a", "A01: one\n"), ("b", "A01: two\nA02: three\n"), ("c", "# nothing\n")):
        (tmp_path / area).mkdir()
        (tmp_path / area / "unchecked.yaml").write_text(text)
    assert unchecked(str(tmp_path)) == {"A01": "one; two", "A02": "three"}


def test_a_broken_file_of_reasons_is_named(tmp_path: Path) -> None:
    (tmp_path / "a").mkdir()
    (tmp_path / "a" / "unchecked.yaml").write_text("- A01\n")
    with pytest.raises(ReasonError, match=r"unchecked\.yaml"):
        unchecked(str(tmp_path))
