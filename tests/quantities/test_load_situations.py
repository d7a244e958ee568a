"""Houses that are not a plain box: buffers, warm attics, knee walls, ducts outdoors, fans out of balance, parts left out."""

from typing import Any

import pytest

from checker.case import CannotJudge, Missing
from checker.physics.air import sensible_heat_factor
from checker.physics.infiltration import design_infiltration, effective_leakage_area
from checker.quantities.computed_loads import (
    computed_cooling,
    computed_heating,
    computed_latent,
    computed_room_cooling,
    computed_room_heating,
)
from checker.quantities.envelope_parts import net_area, winter_beyond
from checker.quantities.loads import block_heating_load, room_cooling_sensible, room_heating_load
from tests.quantities.test_loads import BOX, case, room, term
from tests.rules.case_files import case_of, merged

LEAK = design_infiltration(effective_leakage_area(2 * 250 / 3600), 2.5, 30.0, "heating")
RUN = {"from": "handler", "to": "day", "length": "6 m", "location": "attic", "insulation": "R-8"}
HANDLER = {"kind": "air handler", "location": "attic", "serves": ["day", "night"], "heating": "5 kW", "airflow": "300 L/s"}


def envelope(**change: Any) -> dict[str, Any]:
    return {"envelope": change}


def missing(change: dict[str, Any], loads: Any = computed_heating) -> tuple[str, ...]:
    """What is asked for."""
    made = case(change)
    with pytest.raises(Missing) as gap:
        loads(made, made.design)
    return gap.value.paths


def test_a_bedroom_without_walls_is_no_total() -> None:
    """A room to live in of which the envelope knows nothing: neither a sham room nor a sham house."""
    gone = {"surfaces": {"night-north": "(gone)", "night-ceiling": "(gone)"}, "doors": "none", "slabs": {"night": "(gone)"}}

    assert missing({"envelope": gone}) == ("envelope.surfaces.night",)
    assert missing({"envelope": gone}, computed_cooling) == ("envelope.surfaces.night",)

    stated = case({"envelope": gone, "rooms": {"night": {"heating_load": "2 kW"}}, "papers": {"loads": {"heating": "5 kW"}}})
    assert room_heating_load(stated, room(stated, "night")) == pytest.approx(2000)
    assert block_heating_load(stated, stated.design) == pytest.approx(5000)


@pytest.mark.parametrize("change", [{"use": "closet"}, {"use": "hall"}, {"open_to": "day"}])
def test_a_room_inside_or_open_to_another_may_lack_walls(change: dict[str, Any]) -> None:
    gone = {"surfaces": {"night-north": "(gone)", "night-ceiling": "(gone)"}, "doors": "none", "slabs": {"night": "(gone)"}}
    made = case({"envelope": gone, "rooms": {"night": change}})
    load = computed_room_heating(made, room(made, "night"))

    assert [each.group for each in load.terms] == ["outdoor air"]
    assert load.watts == pytest.approx(sensible_heat_factor() * LEAK * 0.4 * 30)


def test_a_warm_attic_needs_its_roof() -> None:
    assert missing({"house": {"attic": "conditioned"}}) == ("envelope.surfaces.roof",)

    roof = {"room": "day", "assembly": "ceiling", "area": "110 m2", "faces": "sky"}
    made = case({"house": {"attic": "conditioned"}, "envelope": {"surfaces": {"roof": roof}}})
    assert term(computed_room_heating(made, room(made, "day")), "roof") == pytest.approx(0.15 * 110 * 30)
    assert term(computed_room_heating(made, room(made, "day")), "day-ceiling") == 0.0


def test_a_warm_crawl_space_needs_its_walls() -> None:
    floor = {"room": "day", "assembly": "floor", "area": "60 m2", "faces": "crawl space"}
    change = {
        "house": {"crawl_space": "conditioned"},
        "envelope": {"assemblies": {"floor": "0.2 W/m2K"}, "surfaces": {"floor": floor}, "slabs": "none"},
    }
    assert missing(change) == ("envelope.below_grade_walls",)


@pytest.mark.parametrize(("house", "place"), [({"attic": "none"}, "attic"), ({"crawl_space": "none"}, "crawl space")])
def test_what_the_house_has_not(house: dict[str, Any], place: str) -> None:
    made = case({"house": house, **envelope(surfaces={"night-north": {"faces": place}}, doors="none")})
    for loads in (computed_heating, computed_cooling):
        with pytest.raises(CannotJudge, match=f"faces the {place}, and the house says that it has none"):
            loads(made, made.design)


def test_a_wall_of_no_stated_compass_point_may_have_the_sun_on_it() -> None:
    """Table 7: 8.2 K more than in the shade; a door likewise."""
    sunny = case(envelope(surfaces={"night-north": {"faces": "outdoors"}}, doors={"night": {"faces": "outdoors"}}))
    load = computed_room_cooling(sunny, room(sunny, "night"))

    assert term(load, "night-north") == pytest.approx(38 * 0.25 * (10 + 8.2 - 3.6))
    assert term(load, "door night") == pytest.approx(2 * 1.2 * (10 + 8.2 - 3.6))
    shady = case(envelope(surfaces={"night-north": {"faces": "outdoors", "shaded": "yes"}}))
    assert term(computed_room_cooling(shady, room(shady, "night")), "night-north") == pytest.approx(40 * 0.25 * 6.4)


@pytest.mark.parametrize(
    ("faces", "buffers", "kelvins"),
    [
        ("garage", {}, 10 - 3.6), ("garage", {"garage": {"summer_temperature": "40 degC"}}, 16.0), ("heated space", {}, 0.0),
        ("basement", {"basement": {"winter_temperature": "8 degC"}}, 0.0),
        ("sunroom", {"sunroom": {"summer_temperature": "45 degC"}}, 21.0),
    ],
)  # fmt: skip
def test_doors_and_walls_to_a_space_beside(faces: str, buffers: dict[str, Any], kelvins: float) -> None:
    change = envelope(surfaces={"night-north": {"faces": faces}}, doors={"night": {"faces": faces}}, buffers=buffers)
    made = case(change)
    load = computed_room_cooling(made, room(made, "night"))

    assert term(load, "door night") == pytest.approx(2 * 1.2 * kelvins)
    assert term(load, "night-north") == pytest.approx(38 * 0.25 * kelvins)


def test_a_sunroom_is_hotter_than_outdoors() -> None:
    change = envelope(surfaces={"night-north": {"faces": "sunroom"}}, doors="none")

    assert missing(change, computed_cooling) == ("envelope.buffers.sunroom.summer_temperature",)
    assert term(computed_room_heating(case(change), room(case(change), "night")), "night-north") == pytest.approx(40 * 0.25 * 30)


def test_a_room_over_the_garage() -> None:
    """Table 7, floor over ambient air: dT - 0.06 DR; as cold as outdoors where nothing is known of the garage."""
    floor = {"room": "night", "assembly": "floor", "area": "40 m2", "faces": "garage"}
    made = case(envelope(assemblies={"floor": "0.2 W/m2K"}, surfaces={"night-floor": floor}, slabs={"night": "(gone)"}))

    assert term(computed_room_heating(made, room(made, "night")), "night-floor") == pytest.approx(40 * 0.2 * 30)
    assert term(computed_room_cooling(made, room(made, "night")), "night-floor") == pytest.approx(40 * 0.2 * (10 - 0.6))


def test_knee_wall_cathedral_ceiling_and_skylight() -> None:
    """Table 7: a wall to the attic counts as a ceiling below it; rafters under the sky, dT + 38.3 a - 7 - 0.36 DR."""
    change = envelope(
        assemblies={"roof": "0.2 W/m2K", "knee-wall": "0.3 W/m2K"},
        surfaces={
            "night-slope": {"room": "night", "assembly": "roof", "area": "30 m2", "faces": "sky"},
            "night-knee": {"room": "night", "assembly": "knee-wall", "area": "12 m2", "faces": "attic"},
        },
        windows={"light": {"room": "night", "u": "2 W/m2K", "shgc": 0.3, "area": "1.5 m2", "faces": "sky"}},
    )
    made = case(change)
    heat, cool = (loads(made, room(made, "night")) for loads in (computed_room_heating, computed_room_cooling))

    assert term(heat, "night-slope") == pytest.approx((30 - 1.5) * 0.2 * 30)
    assert term(cool, "night-slope") == pytest.approx(28.5 * 0.2 * (10 + 38.3 * 0.85 - 7 - 3.6))
    assert term(cool, "night-knee") == pytest.approx(12 * 0.3 * (6.2 + 14.3 * 0.85 - 4.5 - 1.9))
    # 935 W/m2 at 40 degrees (Table 9), 0.58 of it at the peak (Table 13)
    assert term(cool, "window light") == pytest.approx(1.5 * (2 * (10 - 4.6) + 935 * 0.3 * 0.58), rel=2e-3)


def test_a_window_pierces_the_wall_and_not_the_roof_above_it() -> None:
    change = envelope(
        assemblies={"roof": "0.2 W/m2K"},
        surfaces={"day-slope": {"room": "day", "assembly": "roof", "area": "40 m2", "faces": "south"}},
    )
    made = case(change)
    surfaces = made.design.envelope.surfaces  # type: ignore[union-attr]

    assert net_area(made, surfaces["day-slope"]) == pytest.approx(40)
    assert net_area(made, surfaces["day-south"]) == pytest.approx(30)


def test_the_strip_of_concrete_above_grade_is_no_masonry_house() -> None:
    strip = {"room": "night", "assembly": "foundation", "area": "6 m2", "faces": "west"}
    made_of = {"kind": "wall", "framing": "masonry", "layers": {"concrete": "0.1 RSI", "foam board": "2 RSI"}}
    change = envelope(assemblies={"foundation": made_of}, surfaces={"strip": strip})
    with pytest.raises(CannotJudge, match="masonry"):
        computed_cooling(case(change), case(change).design)

    change["envelope"]["below_grade_walls"] = {"west": {"room": "night", "length": "6 m", "depth": "1.5 m", "insulation": "2 RSI"}}
    made = case(change)
    u = 1 / (0.1 + 2 + (0.68 + 0.17) * 0.17611018)
    assert term(computed_room_cooling(made, room(made, "night")), "strip") == pytest.approx(6 * u * (10 + 8.2 - 3.6))


def test_a_vented_attic_by_heat_balance_asks_for_its_air() -> None:
    shell = {"outside_area": "120 m2", "outside_u": "2 W/m2K"}
    assert missing(envelope(buffers={"attic": shell})) == ("envelope.buffers.attic.volume", "envelope.buffers.attic.air_changes")
    beside = {"surfaces": {"night-north": {"faces": "garage"}}, "doors": "none"}
    half = envelope(**beside, buffers={"garage": {**shell, "volume": "100 m3"}})
    assert missing(half) == ("envelope.buffers.garage.air_changes",)

    made = case(envelope(buffers={"attic": {**shell, "volume": "90 m3", "air_changes": 4}}))
    outward = 240 + sensible_heat_factor() * 90 * 4 / 3600
    assert winter_beyond(made, "attic").temperature == pytest.approx((15 * 293.15 + outward * 263.15) / (15 + outward))


def test_the_door_warms_the_garage_too() -> None:
    shell = {"garage": {"outside_area": "30 m2", "outside_u": "1 W/m2K"}}
    made = case(envelope(surfaces={"night-north": {"faces": "garage"}}, doors={"night": {"faces": "garage"}}, buffers=shell))
    inward = 38 * 0.25 + 2 * 1.2

    beyond = winter_beyond(made, "garage")
    assert beyond.temperature == pytest.approx((inward * 293.15 + 30 * 263.15) / (inward + 30))
    assert beyond.assumed == ("temperature of the garage by heat balance, without outdoor air in it",)


@pytest.mark.parametrize(
    ("supply", "exhaust", "together"),
    [
        (0, 30, max(0.030, LEAK + 0.015)), (0, 90, 0.090), (40, 25, max(0.015, LEAK + 0.0075) + 0.025), (30, 30, LEAK + 0.030),
        (90, 20, max(0.070, LEAK + 0.035) + 0.020),
    ],
)  # fmt: skip
def test_fans_out_of_balance_count_once(supply: float, exhaust: float, together: float) -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17, equations 12 to 14; what a room says of the same air adds nothing."""
    fans: dict[str, Any] = {}
    if supply:
        fans["in"] = {"role": "supply", "room": "day", "settings": {"continuous": f"{supply} L/s"}}
    if exhaust:
        fans["out"] = {"role": "exhaust", "room": "night", "settings": {"continuous": f"{exhaust} L/s"}}
    rooms = {"night": {"exhaust": f"{exhaust} L/s", "exhaust_run": "continuous"}} if exhaust else {}
    made = case({"fans": fans, "rooms": rooms})
    loads = computed_heating(made, made.design)

    assert term(loads.house, "outdoor air") == pytest.approx(sensible_heat_factor() * together * 30)
    assert loads.sum_of_rooms == pytest.approx(loads.house.watts)


def test_moisture_recovery_spares_its_share_of_the_moisture() -> None:
    unit = {"role": "recovery", "settings": {"continuous": "40 L/s"}, "recovery": {"sensible": "80 %"}}
    leak = design_infiltration(effective_leakage_area(2 * 250 / 3600), 2.5, 10.0, "cooling")
    found = []
    for moisture in ("none", "60 %"):
        recovery = {"sensible": "80 %"} if moisture == "none" else {"sensible": "80 %", "moisture": moisture}
        made = case({"fans": {"erv": {**unit, "recovery": recovery}}})
        found.append(term(computed_latent(made, made.design), "moisture"))

    assert found[1] / found[0] == pytest.approx((leak + 0.040 * 0.4) / (leak + 0.040))


@pytest.mark.parametrize(
    ("leakage", "share"),
    [("none", 0.34), ("30 L/s at 25 Pa", 0.16), ("48 L/s at 25 Pa", 0.25), ("90 L/s at 25 Pa", 0.34)],
)
def test_tested_leakage_of_ducts_in_the_attic(leakage: str, share: float) -> None:
    """Table 6, one story, heat pump, R-1.4: 0.34 at 11 % of each side, 0.16 at 5 %; 48 of 300 L/s is 8 % of each side."""
    system: dict[str, Any] = {"mover": "handler", "runs": {"trunk": RUN}}
    if leakage != "none":
        system["leakage"] = {"total": leakage}
    made = case({"equipment": {"handler": HANDLER}, "ducts": {"main": system}})
    ducted, bare = computed_heating(made, made.design).house, computed_heating(case(), case().design).house

    assert ducted.watts / bare.watts - 1 == pytest.approx(share)


def test_the_airflow_of_the_system_serves_as_well() -> None:
    unit = {key: value for key, value in HANDLER.items() if key != "airflow"}
    system = {"mover": "handler", "airflow": "300 L/s", "runs": {"trunk": RUN}, "leakage": {"total": "30 L/s at 25 Pa"}}
    made = case({"equipment": {"handler": unit}, "ducts": {"main": system}})

    bare = computed_heating(case(), case().design).house.watts
    assert computed_heating(made, made.design).house.watts == pytest.approx(1.16 * bare)


def test_a_return_grille_does_not_serve_its_room() -> None:
    runs = {"trunk": {**RUN, "to": "register"}, "return": {**RUN, "from": "grille", "to": "handler"}}
    outlets = {"register": {"room": "day", "kind": "supply register"}, "grille": {"room": "night", "kind": "return grille"}}
    system = {"mover": "handler", "runs": runs, "outlets": outlets}
    made = case({"equipment": {"handler": {**HANDLER, "serves": "day"}}, "ducts": {"main": system}})

    assert [each.group for each in computed_room_heating(made, room(made, "day")).terms].count("ducts") == 1
    assert [each.group for each in computed_room_heating(made, room(made, "night")).terms].count("ducts") == 0


@pytest.mark.parametrize(
    ("ducts", "asked"),
    [({}, ("ducts",)), ({"ducts": {"main": {"mover": "handler", "outlets": {"one": {"room": "day"}}}}}, ("ducts.main.runs",))],
)
def test_an_air_handler_in_the_attic_has_its_ducts_there(ducts: dict[str, Any], asked: tuple[str, ...]) -> None:
    assert missing({"equipment": {"handler": HANDLER}, **ducts}) == asked

    inside = case({"equipment": {"handler": {**HANDLER, "location": "day"}}, **ducts})
    assert computed_heating(inside, inside.design).house.watts == pytest.approx(computed_heating(case(), case().design).house.watts)


@pytest.mark.parametrize(("other", "factor"), [("east", 0.53), ("north", 0.53), ("west", 0.53)])
def test_an_attached_dwelling_with_windows_to_one_side_or_two(other: str, factor: float) -> None:
    """Table 13: south 0.53 of an attached dwelling, 0.47 of a detached house; north 0.27 and 0.44."""
    windows = {"night": {"room": "night", "u": "1.5 W/m2K", "shgc": 0.4, "area": "3 m2", "faces": "north"}}
    change = {"house": {"dwelling_units": 4}, **envelope(windows=windows, surfaces={"night-north": {"faces": "north"}})}
    change["envelope"]["windows"]["night"]["faces"] = other
    made = case(change)

    assert f"x peak {factor:.2f}" in str([each.what for each in computed_room_cooling(made, room(made, "day")).terms])
    if other == "north":  # straight through from north to south: the larger factor of both columns
        assert "x peak 0.44" in str([each.what for each in computed_room_cooling(made, room(made, "night")).terms])


def test_rooms_of_a_stated_house_need_no_envelope() -> None:
    made = case({"envelope": "(gone)", "rooms": {"day": {"cooling_load": "2 kW"}, "night": {"heating_load": "1.5 kW"}}})

    assert room_cooling_sensible(made, room(made, "day")) == pytest.approx(2000)
    with pytest.raises(Missing) as gap:
        block_heating_load(made, made.design)
    assert set(gap.value.paths) & {"papers.loads.heating", "rooms.day.heating_load"}


@pytest.mark.parametrize(
    ("change", "asked"),
    [
        ({"doors": "tbd"}, ("envelope.doors",)), ({"below_grade_walls": "tbd"}, ("envelope.below_grade_walls",)),
        ({"surfaces": {"day-south": "tbd"}}, ("envelope.surfaces.day-south.room",)),
        ({"assemblies": {"wall": {"framing": "2x6", "cavity": "R-21", "layers": {"siding": "tbd"}}}},
         ("envelope.assemblies.wall.layers.siding",)),
        ({"assemblies": {"wall": {"framing": "2x6", "cavity": "R-21", "layers": "tbd"}}}, ("envelope.assemblies.wall.layers",)),
    ],
)  # fmt: skip
def test_what_is_to_be_decided_is_not_absent(change: dict[str, Any], asked: tuple[str, ...]) -> None:
    assert set(missing({"envelope": change})) == set(asked)


def test_a_refused_wall_is_not_absent() -> None:
    """A plain area where a map is wanted: refused as a whole, and then asked for instead of left out."""
    made, faults = case_of(merged(BOX, {"envelope": {"surfaces": {"day-south": "40 m2"}}}))

    assert [fault.path for fault in faults] == ["envelope.surfaces.day-south"]
    with pytest.raises(Missing) as gap:
        computed_heating(made, made.design)
    assert gap.value.paths == ("envelope.surfaces.day-south",)


@pytest.mark.parametrize("size", ["2x2.5 m", "2000x2500 mm", "78.740157480315x98.425196850394 in"])
def test_windows_by_their_size(size: str) -> None:
    """Width and height in place of area and height: the same load, behind an overhang too."""
    overhang = {"overhang": {"depth": "0.5 m", "drop": "0.3 m"}, "faces": "southwest"}
    by_area = case(envelope(windows={"day": {"area": "5 m2", "height": "2.5 m", **overhang}}))
    by_size = case(envelope(windows={"day": {"area": "(gone)", "size": size, **overhang}}))

    for loads in (computed_heating, computed_cooling):
        assert loads(by_size, by_size.design).house.watts == pytest.approx(loads(by_area, by_area.design).house.watts, rel=1e-9)


def test_a_slab_without_an_outside_edge() -> None:
    made = case(envelope(slabs={"night": {"perimeter": "none"}}))

    assert term(computed_room_heating(made, room(made, "night")), "slab night") == 0.0
