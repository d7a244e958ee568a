"""Keys by another word that can mean nothing else are read; what may mean two things is refused as before."""

from typing import Any

import pytest

from checker.design import Design
from checker.design.build import build, build_section
from checker.design.fields import fold
from checker.design.other_words import WORDS
from checker.design.same_keys import EITHER, OPEN, UNITS
from checker.design.shape import fields_of
from checker.read import read_text
from tests.design.test_other_words import BY_NAME

HEAD = "design_format: 1\nproject: {title: words}\n"
CFM = 4.719474432e-4


def read(text: str) -> tuple[Design, list[tuple[str, str]]]:
    built = build(read_text(HEAD + text, "words.yaml"))
    return built.design, [(fault.code, fault.path) for fault in built.faults]


@pytest.mark.parametrize(
    ("text", "path", "value"),
    [
        ("rooms: {bath: {use: bath, area: 5 m2}}", "rooms.bath.floor_area", 5.0),
        ("rooms: {bath: {Use: bath, Floor Area: 5 m2}}", "rooms.bath.floor_area", 5.0),
        ("Rooms: {bath: {use: bath, floor-area: 5 m2}}", "rooms.bath.floor_area", 5.0),
        ("house: {ceiling height: 2.5 m}", "house.ceiling_height", 2.5),
        ("house: {sqft: 1000}", "house.floor_area", 92.90304),
        ("house: {undercut: 1 in}", "house.undercut", None),
        ("envelope: {surfaces: {w: {area: 9 m2, facing: S}}}", "envelope.surfaces.w.faces", "south"),
        ("envelope: {windows: {w: {area: 2 m2, qty: 3, orientation: NW}}}", "envelope.windows.w.count", 3),
        ("envelope: {windows: {w: {area: 2 m2, width: 1 m}}}", "envelope.windows.w.width", None),
        ("envelope: {assemblies: {w: {stud: 2x6, cavity: R-21}}}", "envelope.assemblies.w.framing", "2x6"),
        ("envelope: {assemblies: {w: {framing: 2x6, insulation: R-21}}}", "envelope.assemblies.w.cavity", None),
        ("site: {prices: {gas: 0.1 USD/kWh}}", "site.prices.fuel", 0.1 / 3.6e6),
        ("equipment: {u: {kind: radiator}}", "equipment.u.kind", None),
        ("fans: {f: {type: in-line}}", "fans.f.kind", "in-line"),
        ("fans: {f: {type: supply}}", "fans.f.role", "supply"),
        ("fans: {f: {type: strange}}", "fans.f.kind", None),
        ("fans: {f: {settings: {high: {cfm: 80, sones: 0.3, watts: 6 W}}}}", "fans.f.settings.high.airflow", 80 * CFM),
        ("fans: {f: {settings: {high: {cfm: 80, sones: 0.3, watts: 6 W}}}}", "fans.f.settings.high.sound", 0.3),
        ("fans: {f: {settings: {high: {cfm: 80, sones: 0.3, watts: 6}}}}", "fans.f.settings.high.power", 6.0),
        ("equipment: {u: {esp: 25 Pa}}", "equipment.u.available_static", 25.0),
        ("equipment: {u: {measured: {airflow: 100 L/s}}}", "equipment.u.commissioning.airflow", 0.1),
        ("combustion: {tank: {vent: direct vent}}", "combustion.tank.draft", "direct vent"),
        ("openings: {in: {at: {x: 1 m, y: 2 m, z: 3 m}}}", "openings.in.at.up", 3.0),
        ("openings: {in: {at: {x: 1 m, y: 2 m}}}", "openings.in.at.up", None),
        ("house: {floor_area: 1,200 ft2, volume: 10,200 ft3}", "house.floor_area", 111.483648),
        ("site: {elevation: 5,280 ft}", "site.elevation", 1609.344),
    ],
)
def test_the_value_stands_under_its_key(text: str, path: str, value: Any) -> None:
    design, faults = read(text)
    found: Any = design
    for part in path.split("."):
        found = found.get(part) if isinstance(found, dict) else getattr(found, part, None)
    assert (found == pytest.approx(value)) if isinstance(value, float) else found == value
    assert bool(faults) == (value is None)


def test_places_move_with_the_key() -> None:
    reading = read_text(HEAD + "fans:\n  f:\n    settings:\n      high: {cfm: 80, run: sometimes}\n", "words.yaml")
    design = build(reading).design
    assert design.fans["f"].settings["high"].path == "fans.f.settings.high"
    assert reading.values["fans.f.settings.high.airflow"][:2] == (6, 19)
    assert "fans.f.settings.high.cfm" not in reading.keys


def test_elbows_are_counted_as_those_that_cost_most() -> None:
    design, faults = read("hoods: {h: {duct: {size: 6 in, elbows: 2}}, g: {duct: {elbows: {90: 1, 45: 2}}}}")
    assert not faults
    first, second = (design.hoods[name].duct for name in "hg")
    assert first is not None
    assert second is not None
    assert dict(first.pieces) == {"elbow-90": 2}
    assert dict(second.pieces) == {"elbow-90": 1, "elbow-45": 2}


def test_a_key_beside_its_other_word_is_refused() -> None:
    design, faults = read("rooms: {bath: {floor_area: 5 m2, area: 6 m2}}")
    assert faults == [("FILE-20", "rooms.bath.area")]
    assert design.rooms["bath"].floor_area == 5.0


def test_the_data_of_programs_stays_as_it_is() -> None:
    data = {"design_format": 1, "project": {"title": "words"}, "rooms": {"bath": {"use": "bath", "area": "5 m2"}}}
    design, faults = build_section(Design, data)
    assert not faults
    assert isinstance(design, Design)
    assert design.rooms["bath"].floor_area == 5.0
    assert data["rooms"] == {"bath": {"use": "bath", "area": "5 m2"}}


@pytest.mark.parametrize("section", sorted(OPEN))
def test_open_words_are_words_of_their_section(section: str) -> None:
    words = {word for words in WORDS[section] for word in words.split(" | ")}
    assert set(OPEN[section].split(" | ")) <= words


def test_words_with_a_unit_and_with_two_keys_are_folded_and_lead_somewhere() -> None:
    assert all(fold(word) == word for word in (*UNITS, *(word for _, word in EITHER)))
    assert all(set(keys) <= set(fields_of(BY_NAME[section])) for (section, _), keys in EITHER.items())


def test_a_filter_told_where_it_sits() -> None:
    design, faults = read(
        "fans: {f: {filter: MERV 13}}\n"
        "equipment: {u: {filter: {merv: 11, drop_clean: 20 Pa, sise: 1 in}}, w: {filter: box}}\n"
        "filters: {box: {merv: 8}, f filter: {merv: 9}}\n"
    )
    assert faults == [("FILE-20", "equipment.u.filter.sise")]
    fan, unit = design.fans["f"], design.equipment["u"]
    assert design.filters[str(fan.filter)].merv == 13
    assert fan.filter == "f filter in place"
    assert design.filters[str(unit.filter)].drop_clean == 20.0
    assert design.filters[str(unit.filter)].path == "equipment.u.filter"
    assert design.equipment["w"].filter == "box"


def test_all_rooms_are_those_that_people_live_in() -> None:
    design, faults = read(
        "rooms: {living: living, garage: garage, cellar: {use: basement}, den: {use: basement, conditioned: yes}, "
        "porch: {use: other, conditioned: no}}\nequipment: {furnace: {serves: all}, u: {serves: [living, all]}}"
    )
    assert design.equipment["furnace"].serves == ["living", "den"]
    assert faults == [("FILE-24", "equipment.u.serves[1]")]


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("{range: gas}", "range"),
        ("{Water Heater 2: {draft: natural}}", "water heater"),
        ("{wh-1: natural}", "water heater"),
        ("{pool heater: natural}", None),
        ("{range: {kind: tbd}}", None),
        ("{range: {kind: stove}}", "stove"),
    ],
)
def test_a_burner_named_by_its_kind(text: str, kind: str | None) -> None:
    design, faults = read(f"combustion: {text}")
    assert not faults
    assert [burner.kind for burner in design.combustion.values()] == [kind]


@pytest.mark.parametrize("zero", ["0", "0.0"])
def test_nothing_needs_no_unit(zero: str) -> None:
    design, faults = read(f"rooms: {{bed: {{use: bedroom, door: {{undercut: {zero}}}}}}}\nsite: {{winter_design: {zero}}}")
    assert faults == [("FILE-22", "site.winter_design")]
    door = design.rooms["bed"].door
    assert door is not None
    assert door.undercut == 0.0


def test_a_wrong_name_of_an_opening_is_told_how_to_be_one() -> None:
    built = build(read_text(HEAD + "fans: {f: {from: gable, to: bed}}\nrooms: {bed: bedroom}", "words.yaml"))
    assert [fault.help for fault in built.faults] == ["say what it is: `openings: {gable: outdoor air intake}`"]
