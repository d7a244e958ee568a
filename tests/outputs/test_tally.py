"""The tally: its cells are the quantities, its sums are sums, and what is missing or broken is said."""

import json
import re
from typing import Any

import jsonschema
import pytest

from checker.case import CannotJudge, Missing, NotApplicable
from checker.outputs.layout import width
from checker.outputs.tally import cells as made
from checker.outputs.tally.cells import Cell, Column, Row, Section, Table, cell, pruned
from checker.outputs.tally.grid import Below, Grid, spans
from checker.outputs.tally.looks import alone, plain
from checker.outputs.tally.sections import SECTIONS
from checker.quantities.computed_loads import computed_heating, computed_room_cooling, computed_room_heating
from checker.quantities.duct_figures import against_offer
from checker.quantities.equipment import all_heating, heated_rooms
from checker.quantities.equipment_figures import heating_ratio
from checker.read import read_file, read_text
from checker.run import Checked, check_reading
from checker.tally_schema import tally_schema
from checker.units import shown
from tests.shown import ROOT
from tests.shown import shown as printed

ENVELOPE = "samples/envelope-house.yaml"
VALID = jsonschema.Draft202012Validator(tally_schema())
SAMPLES = sorted(str(path.relative_to(ROOT)) for path in (ROOT / "samples").glob("*.yaml"))
NAPKIN = """\
design_format: 1
project: {title: Sham cottage, code: irc-2021}
house: {floor_area: 900 ft2, bedrooms: 1}
rooms:
  den: {use: living, floor_area: 200 ft2, heating_load: 3000 Btu/h}
  bath: {use: bathroom, floor_area: 50 ft2}
fans:
  bath-fan: {role: exhaust, room: bath, settings: {high: 60 cfm}}
"""
BROKEN = ["a: [", "", "- 1\n", "design_format: 2\n", "design_format: 1\nrooms: 7\nfans: {x: {role: 3}}\n", "\x00", "a: &x [*x]\n"]


def checked(path: str) -> Checked:
    return check_reading(read_file(str(ROOT / path)), [], "2026-01-01")


def told(path: str, *more: str) -> dict[str, Any]:
    """The JSON of one design, valid, by section."""
    status, out, _ = printed("tally", path, "--format", "json", *more)
    assert status == 0
    whole = json.loads(out)
    VALID.validate(whole)
    return {section["name"]: section for section in whole["designs"][0]["sections"]}


def values(table: dict[str, Any], title: str) -> dict[str, Any]:
    """The values of a column by row."""
    place = [column["title"] for column in table["columns"]].index(title)
    return {row["name"]: row["cells"][place]["value"] for row in table["rows"]}


def written(tmp_path: Any, text: str) -> str:
    path = tmp_path / "house.yaml"
    path.write_text(text, encoding="utf-8")
    return str(path)


# loads


@pytest.mark.parametrize("sample", [ENVELOPE, "samples/cold-basement-house.yaml", "samples/hot-humid-house.yaml"])
def test_the_causes_of_a_load_add_up_to_the_load(sample: str) -> None:
    case = checked(sample).case
    assert case is not None
    heating, cooling = (told(sample)[name]["tables"][0] for name in ("heating", "cooling"))
    both = ((heating, computed_room_heating, "worked out"), (cooling, computed_room_cooling, "sensible, worked out"))
    for table, load, total in both:
        causes = [column["title"] for column in table["columns"]]
        causes = causes[: causes.index(total)]
        assert len(causes) in (5, 7)
        for room in heated_rooms(case):
            by_cause = sum(values(table, cause)[room.name] for cause in causes)
            assert by_cause == pytest.approx(values(table, total)[room.name], abs=1e-4)
            assert values(table, total)[room.name] == shown(load(case, room).watts, "heat_rate")[0]
        rooms = sum(values(table, total)[room.name] for room in heated_rooms(case))
        assert values(table, total)["all rooms"] == pytest.approx(rooms, abs=1e-3)
        apart = rooms / values(table, total)["as one block"] - 1
        assert values(table, total)["difference"] == pytest.approx(100 * apart, abs=1e-4)


def test_the_block_is_worked_out_by_itself_and_stands_beside_what_the_papers_state() -> None:
    case = checked(ENVELOPE).case
    assert case is not None
    table = told(ENVELOPE)["heating"]["tables"][0]
    assert values(table, "worked out")["as one block"] == shown(computed_heating(case, case.design).house.watts, "heat_rate")[0]
    assert values(table, "stated")["as one block"] == 16000
    assert values(table, "stated")["living"] is None
    assert values(table, "for each area")["living"] == pytest.approx(values(table, "worked out")["living"] / 320, rel=1e-6)


def test_the_page_says_what_the_coefficients_rest_on() -> None:
    notes = " ".join(told("samples/cold-basement-house.yaml")["heating"]["notes"])
    assert "ASHRAE Handbook - Fundamentals 2021, chapter 17" in notes
    assert "From memory: below-grade wall family-room" in notes


def test_usual_conditions_are_named_with_their_basis(tmp_path: Any) -> None:
    text = (ROOT / ENVELOPE).read_text(encoding="utf-8")
    bare = re.sub(r"  indoor: .*\n", "", text)
    assert bare != text
    path = written(tmp_path, bare)
    assert "Not stated, so the usual: indoor winter temperature (common practice)." in told(path)["heating"]["notes"]
    assert not any("usual:" in note for note in told(ENVELOPE)["heating"]["notes"])


def test_stated_loads_stand_alone_where_there_is_no_envelope(tmp_path: Any) -> None:
    section = told(written(tmp_path, NAPKIN))["heating"]
    table = section["tables"][0]
    assert [column["title"] for column in table["columns"]] == ["stated", "for each area"]
    assert values(table, "stated") == {"den": 3000, "bath": None, "all rooms": None}
    assert values(table, "for each area")["den"] == pytest.approx(15)
    bath = table["rows"][1]["cells"][0]
    assert (bath["state"], bath["missing"]) == ("needs-info", ["rooms.bath.heating_load"])


# the other sections


def test_equipment_is_the_quantities() -> None:
    case = checked(ENVELOPE).case
    assert case is not None
    table = told(ENVELOPE)["equipment"]["tables"][0]
    for group in all_heating(case):
        assert values(table, "capacity over load")[group.name] == pytest.approx(heating_ratio(case, group), rel=1e-8)
        assert values(table, "capacity over load")[group.name] == pytest.approx(
            values(table, "capacity at design")[group.name] / values(table, "load")[group.name], rel=1e-6
        )


def test_a_mode_balances() -> None:
    table = told("samples/cottage-c-permit.yaml")["air"]["tables"][0]
    for row in table["rows"]:
        into, out, net, pressure = (each["value"] for each in row["cells"])
        assert net == pytest.approx(out - into, abs=1e-6)
        assert (pressure < -0.5) == (net > 20)
    assert values(table, "house pressure")["all day"] == 0


def test_a_pressure_beyond_the_method_is_a_bound() -> None:
    rows = told("samples/cottage-b-sketch.yaml")["air"]["tables"][0]["rows"]
    beyond = [row["cells"][3] for row in rows if row["cells"][3]["reason"]]
    assert beyond and all(each["text"] == "< -50.0" and each["value"] == -50 for each in beyond)


def test_many_combinations_are_cut_and_the_worst_is_shown() -> None:
    section = told("samples/gas-house-big-hood.yaml")["air"]
    worst = section["tables"][0]["rows"][-1]
    assert worst["name"].startswith("the most exhaust: ")
    assert worst["cells"][1]["value"] == max(row["cells"][1]["value"] for row in section["tables"][0]["rows"])
    assert any("8 of 63 combinations" in note for note in section["notes"])


def test_ducts_are_the_budget() -> None:
    from checker.quantities.circuits import ducted_circuits

    case = checked("samples/strangled-slim-duct.yaml").case
    assert case is not None
    systems, ducts = told("samples/strangled-slim-duct.yaml")["ducts"]["tables"]
    unit = next(each for each in ducted_circuits(case) if each.name == "attic-unit")
    found = against_offer(case, unit)
    assert values(systems, "left at worst")["attic-unit"] == pytest.approx(shown(found.left, "pressure")[0])
    assert found.left == pytest.approx(found.offered - found.high)
    assert found.left < 0
    assert {row["name"]: row["cells"][0]["value"] for row in ducts["rows"]}["attic-unit: plenum"] == "12x8 in"
    flow, size = values(ducts, "airflow")["hood: duct"], 3.14159265 / 4 * (7 / 12) ** 2
    assert values(ducts, "velocity")["hood: duct"] == pytest.approx(flow / size, rel=1e-6)


def test_air_of_rooms() -> None:
    table = told("samples/cottage-c-permit.yaml")["rooms"]["tables"][0]
    assert values(table, "by the door all day")["bath"] == 60 - 50
    assert sum(each or 0 for each in values(table, "share of it").values()) == pytest.approx(100)
    assert sum(each or 0 for each in values(table, "outdoor air led in").values()) == pytest.approx(50)


def test_the_year_compares_with_and_without_recovery() -> None:
    table = told(ENVELOPE)["year"]["tables"][0]
    bare, recovered = values(table, "heating").values()
    assert recovered < 0.5 * bare
    for row in table["rows"]:
        parts = {column["title"]: each["value"] for column, each in zip(table["columns"], row["cells"], strict=True)}
        costs = parts["cost of the air"] + parts["cost of the fans"] + parts["upkeep"]
        assert parts["cost in all"] == pytest.approx(costs, rel=1e-6)


# units, choice, faults


def test_metric_is_the_same_house() -> None:
    trade, metric = told(ENVELOPE)["heating"]["tables"][0], told(ENVELOPE, "--units", "metric")["heating"]["tables"][0]
    assert {column["unit"] for column in metric["columns"]} == {"W", "W/m2"}
    for name, watts in values(metric, "worked out").items():
        if name != "difference":
            assert watts * 3.412141633 == pytest.approx(values(trade, "worked out")[name], rel=1e-6)


def test_only_the_chosen_sections() -> None:
    assert list(told(ENVELOPE, "--only", "air,heating")) == ["heating", "air"]
    status, _, error = printed("tally", ENVELOPE, "--only", "loads")
    assert status == 2
    assert all(name in error for name in SECTIONS)


def test_an_absent_subject_takes_one_line(tmp_path: Any) -> None:
    _, out, _ = printed("tally", written(tmp_path, NAPKIN))
    assert "\nLoads by room, cooling: left out, the file holds no envelope and states no cooling load\n" in out
    assert "\nEquipment: left out, no equipment that heats or cools is described\n" in out
    assert "\nDucts: left out, no duct is described\n" in out


def test_missing_facts_are_named_on_the_page(tmp_path: Any) -> None:
    _, out, _ = printed("tally", written(tmp_path, NAPKIN))
    bath = next(line for line in out.split("\n") if line.startswith("bath "))
    mark = re.search(r"needs (\d+)", bath)
    assert "needs rooms.bath.heating_load" in bath or (mark and f"({mark[1]}) rooms.bath.heating_load" in out)
    assert re.search(r"^bath-fan at high .* needs house\.\w+|^\S.*\(\d+\) house\.", out, re.M)


@pytest.mark.parametrize("text", BROKEN)
@pytest.mark.parametrize("more", [(), ("--format", "json")])
def test_broken_files_are_told_without_a_traceback(tmp_path: Any, text: str, more: tuple[str, ...]) -> None:
    status, out, error = printed("tally", written(tmp_path, text), *more)
    assert "Traceback" not in out + error
    assert "please report it" not in out + error
    judged, said, _ = printed("check", written(tmp_path, text))
    assert (status == 2) == (judged == 2)
    if more:
        VALID.validate(json.loads(out))
        assert json.loads(out)["designs"][0]["readable"] == (status == 0)
    elif status == 2:
        assert out.split("\n")[3].split(": ", 1)[1] in said


def test_faults_of_a_readable_file_are_counted(tmp_path: Any) -> None:
    _, out, _ = printed("tally", written(tmp_path, NAPKIN.replace("60 cfm", "60 parsec").replace("bedrooms: 1", "bedrooms: many")))
    assert "2 faults of the file, which `airtally check` shows" in out


@pytest.mark.parametrize("sample", SAMPLES)
@pytest.mark.parametrize("system", ["trade", "metric"])
def test_samples_fit_the_page(sample: str, system: str) -> None:
    status, out, _ = printed("tally", sample, "--units", system)
    assert status == 0
    assert max(width(line) for line in out.split("\n")) <= 100
    assert "broke (" not in out
    told(sample, "--units", system)


# cells and grids


def test_a_cell_keeps_the_reason() -> None:
    def raising(problem: Exception) -> Any:
        def route() -> float:
            raise problem

        return route

    assert cell(lambda: 1.5, "airflow") == Cell(1.5, "airflow")
    assert cell(raising(Missing("a.b", "c"))).missing == ("a.b", "c")
    assert cell(raising(CannotJudge("too far"))) == Cell(state="cannot-judge", reason="too far")
    assert cell(raising(NotApplicable("none"))).state == "not-applicable"
    assert cell(raising(ZeroDivisionError("x"))).state == "broke"


def test_a_section_that_breaks_stays_alone() -> None:
    case = check_reading(read_text(NAPKIN, "house.yaml"), [], "2026-01-01").case
    assert case is not None

    def build(_case: object) -> Section:
        raise NotApplicable("nothing of it")

    assert made.section_of(case, "x", "X", build).left_out == "nothing of it"


def test_reasons_of_neighbours_are_said_once() -> None:
    gap = Cell(state="needs-info", missing=("rooms.den.floor_area",))
    far = Cell(state="cannot-judge", reason="beyond the method")
    columns = tuple(Column(title, "airflow") for title in ("one", "two", "three", "four"))
    table = Table("thing", columns, (Row("a", (gap, gap, gap, far)), Row("b", (Cell(0.05, "airflow"), gap, far, far))))
    below = Below()
    lines = Grid(table, "trade", below).lines()
    assert lines[2].count("needs") == 1
    assert re.fullmatch(r"b +106 +needs \d +cannot judge \(\d\)", lines[3])
    assert any(entry.startswith("cannot judge: beyond the method") for entry in below.entries)
    assert "rooms.den.floor_area" in below.entries


def test_columns_with_nothing_to_say_are_left_out() -> None:
    idle, blank = Cell(state="not-applicable", reason="none"), made.NOTHING
    columns = (Column("kept", "airflow"), Column("idle", "airflow"))
    table = pruned(Table("thing", columns, (Row("a", (Cell(1.0, "airflow"), idle)), Row("sum", (idle, blank), True))))
    assert [column.title for column in table.columns] == ["kept"]
    assert [row.name for row in table.rows] == ["a"]


@pytest.mark.parametrize(
    ("number", "decimals", "text"),
    [(12345.6, 0, "12,346"), (0.0, 1, "0.0"), (-0.00001, 3, "-1e-05"), (0.0004, 3, "0.0004"), (-1e-12, 1, "0.0"),
     (float("inf"), 1, "no bound"), (2.5e9, 0, "2.5e+09")],
)  # fmt: skip
def test_plain_numbers(number: float, decimals: int, text: str) -> None:
    assert plain(number, decimals) == text


def test_marks() -> None:
    assert spans([1, 2, 3, 5]) == "1-3, 5"
    assert spans([1, 2]) == "1, 2"
    assert spans([1, 3, 5, 7, 9]) == "1 + 4"
    assert alone(Cell(255.37222222222223, "temperature"), "trade") == "0 degF"


def test_the_check_does_not_import_the_tally() -> None:
    import subprocess
    import sys

    sample = "samples/cottage-c-permit.yaml"
    code = f"import sys, checker.cli; checker.cli.main(['check', {sample!r}]); print([n for n in sys.modules if 'tally' in n])"
    run = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True)
    assert run.stdout.rstrip().endswith("[]")
