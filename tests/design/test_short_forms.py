"""Plain values that a sketch would hold in place of a section: read where they can mean one thing, else told how to write."""

from typing import Any

import pytest

from checker.design import Design
from checker.design.build import build_section
from checker.design.cross_check import schema_errors


def built(**sections: Any) -> tuple[Design, list[tuple[str, str, str]], dict[str, Any]]:
    data = {"design_format": 1, "project": {"title": "words"}, **sections}
    design, faults = build_section(Design, data)
    assert isinstance(design, Design)
    return design, [(fault.path, fault.message, fault.help) for fault in faults], data


CFM = 4.719474432e-4


@pytest.mark.parametrize(
    ("text", "facts"),
    [
        ("70 cfm continuous", {"airflow": 70 * CFM, "run": "continuous"}),
        ("70 cfm 24/7", {"airflow": 70 * CFM, "run": "continuous"}),
        ("110 cfm on demand", {"airflow": 110 * CFM, "run": "on demand"}),
        ("70 cfm, 14 W, 0.3 sone", {"airflow": 70 * CFM, "power": 14.0, "sound": 0.3}),
        ("70 cfm / 14 W", {"airflow": 70 * CFM, "power": 14.0}),
        ("60 cfm for 20 min/h", {"airflow": 60 * CFM, "on_time": 1 / 3}),
        ("80 cfm at 0.2 in w.c., 20 W", {"airflow": 80 * CFM, "static": 0.2 * 249.08891, "power": 20.0}),
        ("80 cfm at 0.2 in w.c.", {"airflow": 80 * CFM, "static": 0.2 * 249.08891}),
        ("80 cfm", {"airflow": 80 * CFM}),
        (True, {}),
        ("yes", {}),
    ],
)
def test_a_setting_in_one_line(text: Any, facts: dict[str, Any]) -> None:
    design, faults, data = built(fans={"fan": {"settings": {"high": text}}})
    setting = design.fans["fan"].settings["high"]

    assert not faults
    assert schema_errors(data) == []
    for field in ("airflow", "static", "power", "sound", "on_time", "run"):
        value = getattr(setting, field)
        assert value == (pytest.approx(facts[field], rel=1e-6) if isinstance(facts.get(field), float) else facts.get(field))


@pytest.mark.parametrize("text", ["about 70 cfm", "70 to 110 cfm", "50 cfm and 80 cfm", "70 cfm max", "70 elephants 14 W",
                                  "70 cfm 14 W 14 W", "x" * 200])  # fmt: skip
def test_a_line_that_says_anything_else_is_refused(text: str) -> None:
    design, faults, data = built(fans={"fan": {"settings": {"high": text}}})

    assert [path for path, _, _ in faults] == ["fans.fan.settings.high.airflow"]
    assert schema_errors(data) != []
    assert design.fans["fan"].settings["high"].airflow is None
    assert "fans.fan.settings.high.airflow" in design.tbd


def test_a_duct_in_one_line() -> None:
    design, faults, _ = built(fans={"fan": {"duct": "6 in flex 12 ft 6 in R-8"}})
    duct = design.fans["fan"].duct

    assert not faults
    assert duct is not None
    assert (duct.material, duct.length) == ("flexible", pytest.approx(3.81))
    assert duct.size is not None
    assert duct.size.width == pytest.approx(0.1524)
    assert duct.insulation == pytest.approx(8 * 0.17611, rel=1e-3)


@pytest.mark.parametrize(
    ("text", "draft", "fuel"),
    [("atmospheric", "natural draft", None), ("gas", None, "gas"), ("gas, direct vent", "direct vent", "gas"),
     ("wood", None, "wood"), ("category IV", "sealed", None)],
)  # fmt: skip
def test_an_appliance_by_its_draft_or_fuel(text: str, draft: str | None, fuel: str | None) -> None:
    design, faults, data = built(combustion={"water heater": text})

    assert not faults
    assert schema_errors(data) == []
    assert (design.combustion["water heater"].draft, design.combustion["water heater"].fuel) == (draft, fuel)


@pytest.mark.parametrize(
    ("pieces", "counts"),
    [
        ("2 elbows", {"elbow-90": 2}),
        ("two 90s and a boot", {"elbow-90": 2, "boot": 1}),
        ("2x elbow-45, wall cap", {"elbow-45": 2, "wall-cap": 1}),
        (["2 elbows", "damper"], {"elbow-90": 2, "damper": 1}),
        ({"elbow": "two"}, {"elbow-90": 2}),
        ({"elbow": "2"}, {"elbow-90": 2}),
    ],
)
def test_pieces_counted_in_words(pieces: Any, counts: dict[str, int]) -> None:
    design, faults, data = built(fans={"fan": {"duct": {"size": "6 in", "pieces": pieces}}})
    duct = design.fans["fan"].duct

    assert not faults
    assert schema_errors(data) == []
    assert duct is not None
    assert duct.pieces == counts


@pytest.mark.parametrize("pieces", ["some elbows", "2 widgets", "2 elbows and an elbow", ["elbow", 2], "two"])
def test_pieces_that_cannot_be_counted(pieces: Any) -> None:
    design, faults, _ = built(fans={"fan": {"duct": {"size": "6 in", "pieces": pieces}}})

    assert [path for path, _, _ in faults] == ["fans.fan.duct.pieces"]
    assert faults[0][2] == "write it as `pieces: {elbow-90: 2}`, or `none`"
    assert "fans.fan.duct.pieces" in design.tbd


def test_a_piece_told_twice_by_two_words_is_refused() -> None:
    _, faults, _ = built(fans={"fan": {"duct": {"size": "6 in", "pieces": {"elbow": 2, "90": 1}}}})

    assert [(path, message) for path, message, _ in faults] == [("fans.fan.duct.pieces.90", "`90` is `elbow-90` once more")]


def test_yes_in_place_of_a_section_says_that_it_is_there() -> None:
    design, faults, data = built(condensate={"drain": {"pump": "yes"}}, hoods={"hood": {"make_up_air": True}})

    assert not faults
    assert schema_errors(data) == []
    assert design.condensate["drain"].pump is not None
    assert design.hoods["hood"].make_up_air is not None
    assert design.hoods["hood"].make_up_air.airflow is None


@pytest.mark.parametrize(
    ("sections", "message", "help"),
    [
        ({"openings": {"cap": {"screen": "yes"}}}, "`yes` says that there is one; a length such as `1/4 in` is wanted",
         "write a length, for example `1/4 in`"),
        ({"combustion": {"boiler": {"draft": "Category I"}}}, "`Category I` is not a word that is known here",
         "category I may be either: write `natural draft` (with a draft hood) or `fan-assisted`"),
        ({"combustion": {"boiler": {"draft": "Cat. I"}}}, "`Cat. I` is not a word that is known here", "category I may be"),
        ({"openings": {"cap": {"clear_of": "10 ft"}}}, "stands where things keyed by name are wanted",
         "write it as `clear_of: {bath-exhaust: 11 ft}`"),
        ({"fans": {"fan": {"control": "20 minute timer"}}}, "`20 minute timer` is not a word",
         "write `timer` here and the rest under its own key"),
        ({"fans": {"fan": {"role": "whole house"}}}, "`whole house` is not a word", "say which way its air goes"),
        ({"openings": {"cap": {"material": "aluminum"}}}, "has no key `material`", "the keys are `kind`"),
        ({"fans": {"fan": {"duct": {"pieces": {"Five-piece elbow": 2}}}}}, "`Five-piece elbow` is not a word",
         "write `elbow-90: {count: 2, made: segmented, gores: 5}`"),
        ({"dryers": {"dryer": {"kind": "gas"}}}, "`gas` is not a word", "write `kind: vented` and `fuel: gas`"),
        ({"equipment": {"unit": {"seer2": 16}}}, "has no key `seer2`", "it belongs to the ratings"),
    ],
)  # fmt: skip
def test_what_to_write_instead(sections: dict[str, Any], message: str, help: str) -> None:
    _, faults, _ = built(**sections)

    assert len(faults) == 1
    assert message in faults[0][1]
    assert help in faults[0][2]
