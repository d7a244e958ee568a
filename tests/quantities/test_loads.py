"""Loads of houses with an envelope: every term by hand, rooms against house, what is missing or out of range."""

import copy
from pathlib import Path
from typing import Any

import pytest
from ruamel.yaml import YAML

from checker.case import CannotJudge, Case, Missing
from checker.physics.air import sensible_heat_factor
from checker.physics.infiltration import design_infiltration, effective_leakage_area
from checker.quantities.computed_loads import (
    computed_cooling,
    computed_heating,
    computed_latent,
    computed_room_cooling,
    computed_room_heating,
)
from checker.quantities.loads import (
    block_cooling_latent,
    block_cooling_sensible,
    block_heating_load,
    room_cooling_sensible,
    room_heating_load,
)
from tests.rules.case_files import case_of, merged

ROOT = Path(__file__).parents[2]
SAMPLE: dict[str, Any] = YAML(typ="safe", pure=True).load((ROOT / "samples/envelope-house.yaml").read_text())
HOT: dict[str, Any] = {
    "site": {
        "climate_zone": "2A", "latitude": 30, "elevation": "60 ft", "winter_design": "30 degF", "annual_mean": "69 degF",
        "summer_design": {"dry_bulb": "96 degF", "wet_bulb": "77 degF", "daily_range": "18 delta_degF"},
    }
}  # fmt: skip

# SI throughout, so that sums can be checked by hand: 20 C indoors, -10 C outdoors, no mass of its own
BOX: dict[str, Any] = {
    "design_format": 1,
    "project": {"title": "a box", "code": "irc-2021"},
    "site": {
        "latitude": 40, "elevation": "0 m", "winter_design": "-10 degC", "annual_mean": "10 degC", "climate_zone": "6A",
        "summer_design": {"dry_bulb": "34 degC", "dew_point": "20 degC", "daily_range": "10 K"},
    },
    "house": {
        "floor_area": "100 m2", "volume": "250 m3", "height": "2.5 m", "stories": 1, "bedrooms": 1, "attic": "vented",
        "airtightness": "2 ACH50",
        "indoor": {"winter_temperature": "20 degC", "summer_temperature": "24 degC", "summer_humidity": "50 %"},
    },
    "rooms": {"day": {"use": "living", "volume": "150 m3"}, "night": {"use": "bedroom", "volume": "100 m3"}},
    "fans": "none",
    "envelope": {
        "assemblies": {"wall": "0.25 W/m2K", "ceiling": "0.15 W/m2K"},
        "roof": "medium shingles",
        "surfaces": {
            "day-south": {"room": "day", "assembly": "wall", "area": "40 m2", "faces": "south"},
            "night-north": {"room": "night", "assembly": "wall", "area": "40 m2", "faces": "north"},
            "day-ceiling": {"room": "day", "assembly": "ceiling", "area": "60 m2", "faces": "attic"},
            "night-ceiling": {"room": "night", "assembly": "ceiling", "area": "40 m2", "faces": "attic"},
        },
        "windows": {"day": {"room": "day", "u": "1.5 W/m2K", "shgc": 0.4, "area": "5 m2", "count": 2, "faces": "south"}},
        "doors": {"night": {"room": "night", "u": "1.2 W/m2K", "area": "2 m2", "faces": "north"}},
        "slabs": {
            "day": {"room": "day", "area": "60 m2", "perimeter": "24 m", "insulation": "none"},
            "night": {"room": "night", "area": "40 m2", "perimeter": "20 m", "insulation": "none"},
        },
    },
}  # fmt: skip


def case(change: dict[str, Any] | None = None, base: dict[str, Any] = BOX) -> Case:
    """The case of a house with a change."""
    made, faults = case_of(merged(copy.deepcopy(base), change or {}))
    assert not faults, [fault.message for fault in faults]
    return made


def room(made: Case, name: str) -> Any:
    return made.design.rooms[name]


def term(load: Any, words: str) -> float:
    """Watts of the one term whose text begins so."""
    found = [each.watts for each in load.terms if each.what.startswith(words)]
    assert len(found) == 1, [each.what for each in load.terms]
    return float(found[0])


@pytest.mark.parametrize("climate", [{}, HOT], ids=["cold", "hot"])
def test_rooms_of_the_sample_make_the_house(climate: dict[str, Any]) -> None:
    made = case(climate, SAMPLE)
    for loads in (computed_heating(made, made.design), computed_cooling(made, made.design)):
        assert len(loads.rooms) == 8
        assert loads.sum_of_rooms == pytest.approx(loads.house.watts, rel=5e-3)
        assert loads.house.watts > 500


def test_the_hot_place_needs_more_cooling_and_less_heat() -> None:
    cold, hot = case({}, SAMPLE), case(HOT, SAMPLE)

    assert block_heating_load(hot, hot.design) < 0.7 * block_heating_load(cold, cold.design)
    assert block_cooling_sensible(hot, hot.design) > block_cooling_sensible(cold, cold.design)
    assert block_cooling_latent(hot, hot.design) > block_cooling_latent(cold, cold.design)


def test_every_heating_term_of_a_room_by_hand() -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17: U A dT and F P dT at 30 K."""
    made = case()
    load = computed_room_heating(made, room(made, "day"))

    assert term(load, "day-south") == pytest.approx(0.25 * (40 - 10) * 30)
    assert term(load, "day-ceiling") == pytest.approx(0.15 * 60 * 30)
    assert term(load, "window day") == pytest.approx(1.5 * 10 * 30)
    assert term(load, "slab day") == pytest.approx(0.73 * 1.730735 * 24 * 30)  # Washington State Energy Code, A106.1
    leak = design_infiltration(effective_leakage_area(2 * 250 / 3600), 2.5, 30.0, "heating")
    assert term(load, "outdoor air") == pytest.approx(sensible_heat_factor() * leak * 0.6 * 30)
    assert load.watts == pytest.approx(sum(each.watts for each in load.terms))


def test_every_cooling_term_of_a_room_by_hand() -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17, Tables 7, 10 and 13; 10 K hotter outdoors, range 10 K."""
    made = case()
    load = computed_room_cooling(made, room(made, "day"))

    assert term(load, "day-south") == pytest.approx(30 * 0.25 * (10 + 8.2 - 0.36 * 10))
    assert term(load, "day-ceiling") == pytest.approx(60 * 0.15 * (0.62 * 10 + 14.3 * 0.85 - 4.5 - 0.19 * 10))
    # 471 W/m2 on the south at 40 degrees, in the table's rounding
    assert term(load, "window day") == pytest.approx(10 * (1.5 * (10 - 4.6) + 471 * 0.4 * 0.47), rel=2e-3)
    assert term(load, "people and appliances") == pytest.approx(136 + 2.2 * 100 + 22 * 2)
    assert term(load, "slab day") == 0.0


def test_latent_load_by_hand() -> None:
    """Same chapter: 3,010 W for each m3/s and g/kg, and 20 + 0.22 A + 12 N."""
    made = case({"fans": {"fresh": {"role": "supply", "settings": {"continuous": "50 L/s"}}}})
    load = computed_latent(made, made.design)
    leak = design_infiltration(effective_leakage_area(2 * 250 / 3600), 2.5, 10.0, "cooling")
    flow = max(0.05, leak + 0.025)

    # 20 C dew point 14.7 g/kg, 24 C at 50 % 9.3 g/kg
    assert term(load, "moisture") == pytest.approx(3010 * flow * (14.7 - 9.3), rel=0.02)
    assert term(load, "people and appliances") == pytest.approx(20 + 22 + 24)


def test_supply_without_recovery_comes_into_its_room() -> None:
    fan = {"role": "supply", "room": "night", "settings": {"continuous": "30 L/s"}}
    made = case({"fans": {"fresh": fan}})
    day, night = (computed_room_heating(made, room(made, name)) for name in ("day", "night"))
    leak = design_infiltration(effective_leakage_area(2 * 250 / 3600), 2.5, 30.0, "heating")
    together = max(0.03, leak + 0.015)  # same chapter, equations 12 to 14

    assert term(day, "outdoor air") == pytest.approx(sensible_heat_factor() * 30 * (together - 0.03) * 0.6, abs=1e-6)
    assert term(day, "outdoor air") + term(night, "outdoor air") == pytest.approx(sensible_heat_factor() * 30 * together)


def test_recovery_takes_its_share_off() -> None:
    unit = {"role": "recovery", "settings": {"continuous": "40 L/s"}, "recovery": {"sensible": "80 %"}}
    made = case({"fans": {"erv": unit}})
    load = computed_heating(made, made.design).house

    assert term(load, "outdoor air through erv") == pytest.approx(sensible_heat_factor() * 0.04 * 0.2 * 30)


def test_unbalanced_recovery_unit_leaks_the_difference() -> None:
    unit = {
        "role": "recovery", "settings": {"continuous": {"supply_airflow": "30 L/s", "exhaust_airflow": "40 L/s"}},
        "recovery": {"sensible": "80 %"},
    }  # fmt: skip
    made = case({"fans": {"erv": unit}})
    leak = design_infiltration(effective_leakage_area(2 * 250 / 3600), 2.5, 30.0, "heating")
    load = computed_heating(made, made.design).house

    assert term(load, "outdoor air through erv") == pytest.approx(sensible_heat_factor() * 0.03 * 0.2 * 30)
    assert term(load, "outdoor air by") == pytest.approx(sensible_heat_factor() * max(0.01, leak + 0.005) * 30)


def test_ducts_in_the_attic_add_their_share() -> None:
    """Same chapter, Table 6: one story, attic, R-8 counts as R-1.4 m2 K/W, 11 % leakage, heat pump 0.34, cooling 0.63."""
    change = {
        "equipment": {"handler": {"kind": "air handler", "location": "attic", "serves": ["day", "night"], "heating": "5 kW"}},
        "ducts": {
            "main": {
                "mover": "handler",
                "runs": {"trunk": {"from": "handler", "to": "day", "length": "6 m", "location": "attic", "insulation": "R-8"}},
            }
        },
    }
    made, bare = case(change), case()
    for loads, share in ((computed_heating, 0.34), (computed_cooling, 0.63)):
        with_ducts = loads(made, made.design)
        assert with_ducts.house.watts == pytest.approx((1 + share) * loads(bare, bare.design).house.watts)
        assert with_ducts.sum_of_rooms == pytest.approx(with_ducts.house.watts)


def test_garage_by_heat_balance_and_basement_by_soil() -> None:
    change = {
        "envelope": {
            "surfaces": {"night-north": {"faces": "garage"}},
            "doors": "none",
            "buffers": {"garage": {"outside_area": "30 m2", "outside_u": "1 W/m2K"}},
            "below_grade_walls": {"west": {"room": "day", "length": "10 m", "depth": "1.8 m", "insulation": "0.88 RSI"}},
        }
    }
    made = case(change)
    garage = (0.25 * 40 * 20 + 30 * -10) / (0.25 * 40 + 30)

    assert term(computed_room_heating(made, room(made, "night")), "night-north") == pytest.approx(0.25 * 40 * (20 - garage))
    wall = computed_room_heating(made, room(made, "day"))
    # 0.505 W/(m2 K), ASHRAE Handbook - Fundamentals 2021, chapter 18; ground surface 10 K below the mean of 10 C
    assert term(wall, "below-grade wall west") == pytest.approx(0.505 * 18 * 20, rel=2e-3)
    assert wall.from_memory == ("below-grade wall west",)


def test_boards_from_memory_are_told() -> None:
    made = case({"envelope": {"assemblies": {"wall": {"framing": "2x6", "cavity": "R-21"}}}})
    loads = computed_heating(made, made.design)

    assert any("day-south" in what for what in loads.from_memory)
    assert "from memory" in "\n".join(loads.worksheet_lines("trade"))


@pytest.mark.parametrize(
    ("change", "missing"),
    [
        ({"fans": "(gone)"}, "fans"), ({"house": {"airtightness": "(gone)"}}, "house.airtightness"),
        ({"site": {"winter_design": "tbd"}}, "site.winter_design"), ({"envelope": {"slabs": "(gone)"}}, "envelope.slabs"),
        ({"envelope": {"windows": "(gone)"}}, "envelope.windows"),
        ({"envelope": {"assemblies": {"wall": {"kind": "wall"}}}}, "envelope.assemblies.wall.u"),
        ({"envelope": {"surfaces": {"day-south": {"room": "(gone)"}}}}, "envelope.surfaces.day-south.room"),
        ({"rooms": {"night": {"volume": "(gone)", "ceiling_height": "2.5 m"}}}, "rooms.night.floor_area"),
    ],
)  # fmt: skip
def test_nothing_is_guessed(change: dict[str, Any], missing: str) -> None:
    made = case(change)
    with pytest.raises(Missing) as gap:
        computed_heating(made, made.design)
    assert missing in gap.value.paths


def test_a_basement_below_grade_adds_nothing_to_the_height_that_leaks() -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17: leakage goes with 51 + 0.35 H dT; at 30 K 2.5 m give 77.25, 5 m 103.5."""
    heights = [{}, {"height": "5 m"}, {"height": "5 m", "height_above_grade": "2.5 m"}]
    low, high, above = (term(computed_heating(made, made.design).house, "outdoor air by leakage")
                        for made in (case({"house": each}) for each in heights))  # fmt: skip

    assert above == pytest.approx(low, rel=1e-12)
    assert high / low == pytest.approx(103.5 / 77.25, rel=1e-6)
    asked = case({"house": {"height_above_grade": "tbd"}})
    with pytest.raises(Missing) as gap:
        computed_heating(asked, asked.design)
    assert gap.value.paths == ("house.height_above_grade",)


def test_without_ceiling_heights_rooms_share_the_volume_of_the_house_by_floor_area() -> None:
    """Leakage of 60 and 40 m2 under one cathedral ceiling: split as by their volumes of 150 and 100 m3."""
    by_area = {"rooms": {name: {"volume": "(gone)", "floor_area": area} for name, area in (("day", "60 m2"), ("night", "40 m2"))}}
    made, told = case(by_area), case()

    assert room_heating_load(made, room(made, "day")) == pytest.approx(room_heating_load(told, room(told, "day")), rel=1e-9)
    assert room_heating_load(made, room(made, "day")) > room_heating_load(made, room(made, "night"))
    lacking = case(merged(by_area, {"house": {"volume": "(gone)"}}))
    with pytest.raises(Missing):
        room_heating_load(lacking, room(lacking, "day"))


@pytest.mark.parametrize(
    ("change", "reason"),
    [
        ({"site": {"latitude": 64}}, "latitude"), ({"site": {"elevation": "2100 m"}}, "2,000 m"),
        ({"site": {"summer_design": {"dry_bulb": "26 degC"}}}, "no warmer"),
        ({"envelope": {"windows": {"day": {"count": 4}}}}, "15 %"), ({"house": {"attic": "unvented"}}, "unvented attic"),
        ({"envelope": {"assemblies": {"wall": {"framing": "masonry", "layers": {"block": "1 RSI"}}}}}, "masonry"),
        ({"envelope": {"assemblies": {"wall": {"framing": "steel", "cavity": "R-13"}}}}, "steel"),
    ],
)  # fmt: skip
def test_outside_the_method(change: dict[str, Any], reason: str) -> None:
    made = case(change)
    with pytest.raises(CannotJudge, match=reason):
        computed_cooling(made, made.design)


def test_stated_loads_stand_in_where_the_envelope_does_not_do() -> None:
    """Too far north for the load factors: the stated cooling load is taken, the heating load is worked out."""
    made = case({"site": {"latitude": 64}, "rooms": {"day": {"heating_load": "9 kW", "cooling_load": "2 kW"}}})

    assert room_cooling_sensible(made, room(made, "day")) == pytest.approx(2000)
    assert room_heating_load(made, room(made, "day")) < 4000


def test_stated_loads_without_an_envelope() -> None:
    papers = {"loads": {"heating": "8 kW", "cooling_total": "5 kW", "cooling_sensible": "4 kW"}}
    made = case({"envelope": "(gone)", "papers": papers, "rooms": {"day": {"heating_load": "3 kW"}}})

    assert block_heating_load(made, made.design) == pytest.approx(8000)
    assert block_cooling_latent(made, made.design) == pytest.approx(1000)
    assert room_heating_load(made, room(made, "day")) == pytest.approx(3000)
    with pytest.raises(Missing) as gap:
        room_cooling_sensible(made, room(made, "night"))
    assert gap.value.paths == ("rooms.night.cooling_load",)


def test_a_room_is_never_cooled_by_less_than_nothing() -> None:
    made = case({"envelope": {"slabs": {"night": {"covering": "0.01 RSI"}}}})

    assert computed_room_cooling(made, room(made, "night")).watts < 0
    assert room_cooling_sensible(made, room(made, "night")) == 0.0
