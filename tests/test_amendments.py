"""Amendments files: they override, withdraw and add for an edition, and state design criteria."""

import json
from pathlib import Path

import pytest

from tests.shown import shown

DESIGN = """\
design_format: 1
project: {title: a bath, code: irc-2021, amendments: county.yaml}
rooms:
  bath: {use: bathroom}
fans:
  bath-fan: {role: exhaust, room: bath, to: outdoors, settings: {on-demand: 55 cfm}}
"""


def outcome(folder: Path, amendments: str, rule: str) -> dict[str, object]:
    (folder / "house.yaml").write_text(DESIGN, encoding="utf-8")
    (folder / "county.yaml").write_text(amendments, encoding="utf-8")
    _, text, _ = shown("check", str(folder / "house.yaml"), "--format", "json")
    outcomes = json.loads(text)["designs"][0]["outcomes"]
    found: dict[str, object] = next(each for each in outcomes if each["rule"] == rule)
    return found


def test_without_change_the_code_counts(tmp_path: Path) -> None:
    assert outcome(tmp_path, "amendments_format: 1\n", "EXH-02")["outcome"] == "meets"


def test_a_limit_is_overridden_and_its_section_cited(tmp_path: Path) -> None:
    county = """\
amendments_format: 1
requirements: {bath-exhaust-on-demand: {limit: 80 cfm, section: county code 15.04.030}}
"""
    found = outcome(tmp_path, county, "EXH-02")

    assert found["outcome"] == "finding"
    assert "80 cfm" in str(found["message"])
    assert "county code 15.04.030" in str(found["cites"])


def test_a_requirement_is_withdrawn(tmp_path: Path) -> None:
    county = """\
amendments_format: 1
requirements:
  bath-exhaust-on-demand: {withdrawn: not adopted here}
  bath-exhaust-continuous: {withdrawn: not adopted here}
"""
    found = outcome(tmp_path, county, "EXH-02")

    assert found["outcome"] == "not-applicable"
    assert "not adopted here" in str(found["message"])


@pytest.mark.parametrize(
    ("county", "words"),
    [
        ("requirements: {}\n", "does not begin with"),
        ("amendments_format: 1\nrequirements: {bath-exhaust: {limit: 80 cfm}}\n", "bath-exhaust-on-demand"),
        ("amendments_format: 1\nrequirements: {bath-exhaust-on-demand: {limit: 80}}\n", "80"),
        ("amendments_format: 1\nrequirements: {bath-exhaust-on-demand: {limit: 80 ft}}\n", "length"),
        ("amendments_format: 1\nrequirements: 5\n", "requirements by key"),
        ("amendments_format: 1\nextra: 5\n", "extra"),
        ("amendments_format: 1\ndesign_criteria: {winter_desgn: 3 degF}\n", "winter_design"),
        ("amendments_format: 1\ndesign_criteria: {winter_design: 3}\n", "3"),
        ("a: [\n", "county.yaml:"),
    ],
)
def test_a_wrong_file_is_told_where_the_design_names_it(tmp_path: Path, county: str, words: str) -> None:
    found = outcome(tmp_path, county, "FILE-29")

    assert (found["line"], found["severity"]) == (2, "correction")
    assert words in f"{found['message']} {found['help']}"


def test_a_missing_file(tmp_path: Path) -> None:
    (tmp_path / "house.yaml").write_text(DESIGN, encoding="utf-8")
    status, text, _ = shown("check", str(tmp_path / "house.yaml"))

    assert status == 1
    assert "county.yaml" in text and "FILE-29" in text


METRIC = """\
design_format: 1
project: {title: a drain, code: irc-2021, amendments: county.yaml}
equipment: {unit: {kind: wall unit, cooling: 7000 Btu/h}}
condensate: {unit: {size: 19 mm}}
"""


AMENDED = "requirements: {condensate-pipe-size: {limit: 3/4 in}}"


@pytest.mark.parametrize(("county", "wanted"), [("", "meets"), (AMENDED, "finding")])
def test_the_rounded_metric_figure_of_the_code_counts_unless_the_limit_is_amended(
    tmp_path: Path, county: str, wanted: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(globals(), "DESIGN", METRIC)
    assert outcome(tmp_path, f"amendments_format: 1\n{county}\n", "COND-04")["outcome"] == wanted
