"""The worksheet: each quantity once, with formula, numbers, places, result and source."""

import re
from math import inf
from typing import Annotated, NamedTuple

import pytest

from checker.design.fields import Airflow, Pressure, Ratio
from checker.outputs.layout import width
from checker.outputs.record_units import declared_dimensions, dimension_in
from checker.outputs.worksheet import report
from checker.outputs.worksheet_absent import absent_words
from checker.outputs.worksheet_values import record_lines, value_text
from checker.rule import Rule
from checker.sizes import parse_size
from checker.units import parse_airtightness
from tests.outputs.sham_rules import COTTAGE, DOUBLED, LOW, NOTED, SHAMS, Pair, checked_text
from tests.shown import ROOT, shown

SHORT = """\
design_format: 1
project: {title: Sham cottage, code: irc-2021}
fans:
  bath: {role: exhaust, settings: {high: 40 cfm}}
"""
GOLDEN = """\
WORKSHEET  Sham cottage
cottage.yaml, irc-2021
Steps are numbered through the sheet; one that was worked out before is named `as above`.

== Whole-house ventilation ==

VENT-90 sham-flow-doubled  fans.bath: meets
  (1) flow, fans.bath = 40 cfm
      formula  first setting of the fan
      given    fans.bath.settings = high (cottage.yaml:4)
      given    fans.bath.settings.high.airflow = 40 cfm (cottage.yaml:4)
      absent   fans.bath.notes
      source   the fan schedule
  (2) twice, fans.bath = 80 cfm
      formula  2 * flow
      with     (1) flow, fans.bath = 40 cfm
      source   arithmetic
  (3) pair, fans.bath
      formula  The flow as a record
      with     (1) flow, fans.bath = 40 cfm
      result   label bath, flow 0.0188779 (SI units)
  (4) known, fans.bath
      formula  The flow as a record with units
      with     (1) flow, fans.bath = 40 cfm
      result   kept flow 40 cfm
  limit    sham-share = 10 % (no more than a tenth; common practice; basis: common practice)
  so       the requirement is met
  see      common practice

== Local exhaust and hoods ==

EXH-90 sham-flow-low  fans.bath.settings: finding
  (1) flow, fans.bath = 40 cfm, as above
  limit    sham-least-flow = 50 cfm (a fan moves no less than this; IRC 2021 Table X2; basis: code)
  so       moves 40 cfm, less than 50 cfm (short = 10 cfm)
  see      IRC 2021 Table X2

Numbers are shown rounded; the program keeps all digits. An aid, not a review: the locally adopted code and
the authority having jurisdiction decide.
"""


def sheet(text: str, chosen: list[Rule], system: str = "trade") -> str:
    return report(checked_text(text, chosen, tracing=True), system)


def test_whole_worksheet() -> None:
    assert sheet(SHORT, [LOW, DOUBLED]) == GOLDEN


def test_each_quantity_is_shown_once_and_named_after_that() -> None:
    steps = re.findall(r"^  \((\d+)\) .*(?<!as above)$", sheet(COTTAGE, SHAMS), re.MULTILINE)
    assert steps == [str(number) for number in range(1, len(steps) + 1)]
    assert "(1) flow, fans.bath = 40 cfm, as above" in sheet(COTTAGE, SHAMS)


def test_what_the_method_cannot_do_is_said() -> None:
    text = sheet(COTTAGE, [DOUBLED])
    assert "VENT-90 sham-flow-doubled  fans.big: cannot-judge" in text
    assert re.search(r"\(\d+\) twice, fans\.big: no answer: the method ends at 1000 cfm", text)
    assert "  so       the method ends at 1000 cfm" in text


def test_what_waits_for_information_stands_at_the_end() -> None:
    text = sheet(COTTAGE, [LOW, DOUBLED])
    tail = text[text.index("== Waiting for information ==") :]
    assert "EXH-90 sham-flow-low  fans.later: needs fans.later.settings.high.airflow" in tail
    assert "fans.later" not in text[: text.index("== Waiting for information ==")]


def test_a_plain_field_is_a_given_value_not_a_step() -> None:
    text = sheet(COTTAGE, [NOTED])
    assert "  given    house.floor_area = 1200 ft2 (cottage.yaml:3)" in text
    assert "(1)" not in text


def test_metric_units() -> None:
    text = sheet(SHORT, [LOW, DOUBLED], "metric")
    assert "(1) flow, fans.bath = 19 L/s" in text
    assert "sham-least-flow = 24 L/s" in text
    assert "kept flow 19 L/s" in text
    assert " cfm" not in text


def test_an_accepted_finding_is_marked() -> None:
    text = sheet(COTTAGE.replace("fans.none, reason: r", "fans.bath, reason: kept"), [LOW])
    assert "fans.bath.settings: finding, accepted" in text
    assert "kept (accepted by b)" in text


def test_a_rule_that_broke_is_told() -> None:
    assert "CTRL-90 sham-breaks  the design: the rule broke (ZeroDivisionError: sham)" in sheet(COTTAGE, SHAMS)


def test_an_unreadable_file_has_no_numbers() -> None:
    text = sheet("a: [", SHAMS)
    assert "[FILE-08]" in text
    assert "so  " not in text


def test_lines_are_short() -> None:
    long = COTTAGE.replace("bath:", f"{'bath-of-the-long-name-' * 2}fan:").replace("reason: r", f"reason: {'r ' * 99}")
    assert max(width(line) for line in sheet(long, SHAMS).split("\n")) <= 110


@pytest.mark.parametrize(
    ("value", "dimension", "text"),
    [
        (None, "", "none"),
        (True, "", "yes"),
        (0.0254, "diameter", "1 in"),
        (0.25, "share", "25 %"),
        (2.5, "", "2.5"),
        (parse_size("10x6 in"), "SizeKind", "10x6 in"),
        (parse_airtightness("1.5 ACH50"), "AirtightnessKind", "1.5 ACH50"),
        (["attic", "garage"], "", "attic, garage"),
        ({"elbow-90": 2, "boot": 1}, "", "elbow-90: 2, boot: 1"),
        ([], "", "none"),
        (frozenset(), "", "none"),
        ({"hall": frozenset({"living", "hall"}), "bath": frozenset({"bath"})}, "", "hall: hall, living; bath: bath"),
        (Pair("p", "l", 1.0), "", ""),
    ],
)
def test_values(value: object, dimension: str, text: str) -> None:
    assert value_text(value, dimension, "trade") == text


def test_records() -> None:
    assert record_lines(Pair("p", "l", 1.5), "trade") == ["label l, flow 1.5 (SI units)"]
    many = [Pair("p", str(number), 1.5) for number in range(20)]
    assert record_lines(many, "trade")[-1] == "and 8 more"
    assert record_lines(object(), "trade") == ["object"]


class Measured(NamedTuple):
    """A record that declares its units."""

    flow: Airflow
    static: Pressure | None
    heat: Annotated[float, "heat_rate"]
    ratio: Ratio
    bare: float
    label: str = ""


class Either(NamedTuple):
    """A record whose number is of the dimension that it names."""

    value: float
    dimension: str


def test_the_dimension_of_a_field_is_that_of_its_annotation() -> None:
    assert declared_dimensions(Measured) == {"flow": "airflow", "static": "pressure", "heat": "heat_rate", "ratio": ""}
    assert dimension_in(Either(1.0, "length"), "value") == "length"
    assert dimension_in(Pair("p", "l", 1.0), "flow") is None
    assert record_lines(Either(0.3048, "length"), "trade") == ["value 1 ft"]


def test_a_record_is_shown_in_the_units_of_the_reader() -> None:
    record = Measured(0.0188779, None, 293.071, 0.5, inf)
    assert record_lines(record, "trade") == [
        "flow 40 cfm, heat 1000 Btu/h, ratio 0.5, bare without limit (SI units)"
    ]
    assert record_lines(record._replace(static=249.08891), "metric")[0].startswith("flow 19 L/s, static 249 Pa, heat 0.29 kW")


def test_absent_fields_are_drawn_together() -> None:
    design = checked_text(COTTAGE, SHAMS).design
    assert design is not None
    fans = list(design.fans)
    assert len(fans) > 3
    every = [f"fans.{name}.{field}" for name in fans for field in ("notes", "kind")]
    assert absent_words(design, every) == f"notes, kind of all {len(fans)} fans"
    assert absent_words(design, every[2:]) == f"notes, kind of all {len(fans)} fans but {fans[0]}"
    assert absent_words(design, [f"fans.{name}.notes" for name in fans[:2]]) == f"notes of fans {fans[0]}, {fans[1]}"
    assert absent_words(design, every[:2]) == f"fans.{fans[0]}: notes, kind"
    assert absent_words(design, ["house.height", "house.height", "papers"]) == "house.height; papers"


@pytest.mark.parametrize("sample", sorted(path.name for path in (ROOT / "samples").glob("*.yaml")))
def test_no_sample_prints_bare_si_numbers(sample: str) -> None:
    for system in ("trade", "metric"):
        _, out, _ = shown("worksheet", f"samples/{sample}", "--units", system)
        assert "SI units" not in out
        assert "\n      absent   , " not in out
