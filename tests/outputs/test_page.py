"""The pages of `explain`."""

import json
from pathlib import Path
from typing import Any

import pytest

from checker.case import Worked
from checker.codebook import Entry
from checker.design import Design
from checker.design.fields import Choice
from checker.design.shape import fields_of
from checker.fault_kinds import FAULTS
from checker.judge import modules
from checker.outputs import page
from checker.outputs.format_page import record_of, topics
from checker.outputs.layout import width
from checker.outputs.page import explain, facts, rule_page, unknown
from checker.outputs.rule_facts import worked_by
from tests.outputs.sham_rules import ENTRIES, LOW

PAGE = """\
EXH-90 sham-flow-low
correction; local exhaust and hoods; since 0.1

A sham finds what the tests of the outputs need.

It stands for a real rule, so that the outputs can be tested while the rules change. Braces {like
these} and a bracket [too] stand in its page.

The usual cause is a test. Change the test.

It reads:
  flow (an airflow): first setting of the fan; the fan schedule

It rests on:
  sham-least-flow: a fan moves no less than this
      edition   section   limit
      IRC 2015  -         -
      IRC 2018  Table X1  45 cfm (21 L/s)
      IRC 2021  Table X2  50 cfm (24 L/s)
      IRC 2024  Table X2  50 cfm (24 L/s)
      basis: code; made up

A design that meets it:
    fans:
      bath: 60 cfm

A design that does not:
    fans:
      bath: 40 cfm

In the end the locally adopted code and the authority having jurisdiction decide."""


def test_whole_page_of_a_rule(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    file = tmp_path / "examples.json"
    designs = {"meets": "fans:\n  bath: 60 cfm\n", "finding": "fans:\n  bath: 40 cfm\n"}
    file.write_text(json.dumps({"EXH-90": designs}))
    monkeypatch.setattr(page, "EXAMPLES", str(file))
    assert "\n".join(rule_page(LOW, ENTRIES)) == PAGE


@pytest.mark.parametrize("content", [None, "", "{"])
def test_without_examples_the_page_is_still_there(
    content: str | None, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    file = tmp_path / "examples.json"
    if content is not None:
        file.write_text(content)
    monkeypatch.setattr(page, "EXAMPLES", str(file))
    assert "A design" not in "\n".join(rule_page(LOW, ENTRIES))


@pytest.mark.parametrize("code", [code for code, _ in modules()])
def test_every_rule_has_a_page_by_code_and_name(code: str) -> None:
    text = explain(code.lower())
    head, _, rest = text.partition("\n")
    assert head.startswith(f"{code} ")
    assert explain(head.removeprefix(f"{code} ").upper()) == text
    assert "authority having jurisdiction" in rest
    assert "It reads:" in rest or "It rests on:" in rest


@pytest.mark.parametrize("code", FAULTS)
def test_every_kind_of_fault_has_a_page(code: str) -> None:
    assert explain(code).startswith(f"{code} {FAULTS[code].name}\n")
    assert explain(FAULTS[code].name) == explain(code.lower())


@pytest.mark.parametrize("topic", topics())
def test_every_place_of_the_file_has_a_page(topic: str) -> None:
    text = explain(topic)
    assert text
    assert max(width(line) for line in text.split("\n")) <= 110


def test_a_section_shows_its_keys() -> None:
    text = explain("fans.settings")
    assert text.startswith("fans.settings\n\nOne speed or mode")
    assert "Short form: a plain value in place of the keys stands for `airflow` @ `static`." in text
    assert "\n  airflow: airflow that the mover gives, installed\n      an airflow such as `80 cfm`\n" in text
    assert "see `airtally explain fans.settings.measured`" in text


def test_a_key_shows_its_words_and_their_spellings() -> None:
    text = explain("fans.role")
    assert "Takes a word: `supply`, `exhaust`" in text
    assert "\n  recovery: hrv, erv, heat recovery" in text


def test_names_of_things_may_stand_in_a_path() -> None:
    assert explain("fans.bath-fan.settings.high.airflow") == explain("fans.settings.airflow")
    assert explain("accepted[0].rule") == explain("accepted.rule")
    assert explain("ducts.upper.runs.r1") == explain("ducts.runs")


def test_compulsory_keys_are_told() -> None:
    assert "Compulsory: `design_format: 1`, `project` with a `title`, and one section more" in explain("design")
    assert "Compulsory: `rule`, `path`, `reason` and `by`" in explain("accepted")


def test_design_lists_every_section() -> None:
    text = explain("design")
    assert all(f"\n  {key} " in text for key in fields_of(Design))


def test_units_lists_spellings() -> None:
    text = explain("units")
    assert "\nairflow: an airflow such as `80 cfm`\n  `cfm`" in text
    assert "`ACH50`" in text
    assert "\ndiameter: a diameter such as `6 in`\n  the units of length\n" in text


def test_an_area_lists_its_rules() -> None:
    assert explain("file").startswith("FILE: The design file\n")
    assert "FILE-20" in explain("FILE")


def test_a_requirement_of_the_codebook_has_a_page() -> None:
    text = explain("sham-least-flow")
    assert text.startswith("sham-least-flow\n\na fan moves no less than this\n")
    assert "IRC 2018  Table X1  45 cfm (21 L/s)" in text


@pytest.mark.parametrize(
    ("topic", "near"),
    [
        ("fan", "`fans`"),
        ("fans.setings", "`fans.settings`"),
        ("FILE-99", "`FILE-"),
        ("unknwon-key", "`unknown-key`"),
        ("zzzzzz", "`airtally catalogue` lists the rules"),
        ("fans.role.x", ""),
        ("design_format.x", ""),
        ("", ""),
        (".", ""),
        ("..", ""),
    ],
)
def test_an_unknown_topic_is_answered_with_the_nearest(topic: str, near: str) -> None:
    assert explain(topic) == ""
    assert near in unknown(topic)


def test_words_of_every_choice_are_on_a_page() -> None:
    for topic in topics()[2:]:
        section, kind = Design, None
        for part in topic.split("."):
            field = fields_of(section)[part]
            section, kind = record_of(field.shape) or section, field.shape.kind
        if isinstance(kind, Choice):
            text = explain(topic)
            assert all(f"\n  {word}" in text for word in kind.words), topic


def test_how_a_quantity_is_worked_out_is_told_without_its_exceptions() -> None:
    quantity: Worked[Any, Any] = Worked(lambda _case, _node: 0.0, "", "", "")
    quantity.function.__doc__ = "The flow of a fan. Raises Missing, CannotJudge."
    assert worked_by(quantity) == "The flow of a fan"


def test_tables_are_shown_in_full() -> None:
    entry = Entry("lengths", "table", {"flexible": {4: [56, 4]}, "sizes": [3, 4]}, "", "common practice", "")
    assert facts(entry) == [
        "      table:", "        flexible:", "          4: [56, 4]", "        sizes: [3, 4]",
        "      basis: common practice",
    ]  # fmt: skip
