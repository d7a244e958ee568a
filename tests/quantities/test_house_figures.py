"""Figures of the page that shows the house: loads by cause, modes, ducts, rooms, equipment."""

from typing import Any

import pytest

from checker.case import Case, Missing, NotApplicable
from checker.quantities import room_figures
from checker.quantities.circuits import ducted_circuits
from checker.quantities.distribution import deliveries
from checker.quantities.duct_figures import (
    against_offer,
    critical_path,
    greatest_length,
    line,
    line_name,
    lines,
)
from checker.quantities.equipment import all_cooling, all_heating, heated_rooms
from checker.quantities.equipment_figures import (
    balance_point,
    group_backup,
    heating_ratio,
    least_heating,
    sensible_cooling,
    total_cooling_load,
)
from checker.quantities.load_figures import stated_sum, told_load, usual_conditions
from checker.quantities.load_parts import losses_of_rooms
from checker.quantities.mode_figures import MOST_SHOWN, mode_net, mode_pressure, shown
from checker.quantities.outdoor_air import heating_air, room_airs
from checker.read import read_file, read_text
from checker.run import check_reading
from tests.shown import ROOT

CFM = 0.00047194745
HEAD = "design_format: 1\nproject: {title: t, code: irc-2021}\n"
AIR = """\
house: {floor_area: 1000 ft2, volume: 8000 ft3, bedrooms: 2, airtightness: 2 ACH50}
rooms:
  bed: {use: bedroom, floor_area: 120 ft2, door: {undercut: 1/2 in, width: 30 in}}
  den: {use: living, floor_area: 300 ft2}
  bath: {use: bathroom, floor_area: 50 ft2, door: {undercut: 1/2 in, width: 30 in}}
fans:
  fresh: {role: supply, to: [bed, den], settings: {continuous: 40 cfm}}
  bath-fan: {role: exhaust, room: bath, settings: {high: 80 cfm}}
"""


def case_of(text: str) -> Case:
    checked = check_reading(read_text(HEAD + text, "house.yaml"), [], "2026-01-01")
    assert checked.case is not None
    assert not checked.outcomes, [each.message for each in checked.outcomes]
    return checked.case


# rooms


def test_a_fan_that_leads_to_several_rooms_without_flows_splits_by_their_volume_and_says_so() -> None:
    case = case_of(AIR.replace("bedrooms: 2,", "bedrooms: 2, ceiling_height: 8 ft,"))
    bed, den = case.design.rooms["bed"], case.design.rooms["den"]
    assert room_figures.fresh_air(case, bed) == pytest.approx(40 * CFM * 120 / 420)
    assert room_figures.fresh_air(case, den) == pytest.approx(40 * CFM * 300 / 420)
    words = "outdoor air of fresh is split between bed, den by their volume"
    assert room_figures.assumed_of_fresh_air(case, case.design) == (words,)
    text = AIR.replace("bedrooms: 2,", "bedrooms: 2, ceiling_height: 8 ft,")
    case = case_of(text.replace("living, floor_area: 300 ft2", "living"))
    with pytest.raises(Missing, match=r"rooms\.den\.floor_area"):
        room_figures.fresh_air(case, case.design.rooms["bed"])


def test_the_tally_and_the_loads_split_the_outdoor_air_alike() -> None:
    checked = check_reading(read_file(str(ROOT / "samples/envelope-house.yaml")), [], "2026-01-01")
    case = checked.case
    assert case is not None
    air = heating_air(case, case.design)
    for room in heated_rooms(case):
        _, through = room_airs(case, air, room)
        led = sum(flow for _, flow in through)
        if led > 0.0:
            assert room_figures.fresh_air(case, room) == pytest.approx(led)
    rooms = sum(sum(flow for _, flow in room_airs(case, air, room)[1]) for room in heated_rooms(case))
    assert rooms == pytest.approx(50 * CFM)


def test_a_recovery_unit_does_not_lead_outdoor_air_to_the_rooms_it_draws_from() -> None:
    text = AIR.replace("role: supply, to: [bed, den],", "role: recovery, from: stale, to: [fresh-ducts],") + """\
ducts:
  fresh-ducts: {runs: {main: {from: fresh, to: bed, length: 10 ft, serves: [bed, den]}}}
  stale: {mover: fresh, runs: {wet: {from: fresh, to: bath, length: 10 ft, serves: [bath, laundry]}}}
"""
    text = text.replace("  bath: {use", "  laundry: {use: laundry, floor_area: 60 ft2}\n  bath: {use")
    case = case_of(text)
    assert {each.room for each in deliveries(case, case.design)} == {"bed", "den"}
    # drawn outwards from the unit without a side of its own, wet rooms are still what it draws from
    case = case_of(text.replace("from: stale, to: [fresh-ducts]", "to: [fresh-ducts, stale]"))
    assert {each.room for each in deliveries(case, case.design)} == {"bed", "den"}


def test_a_fan_that_leads_to_one_room_gives_it_all() -> None:
    case = case_of(AIR.replace("[bed, den]", "bed"))
    bed, bath = case.design.rooms["bed"], case.design.rooms["bath"]
    assert room_figures.fresh_air(case, bed) == pytest.approx(40 * CFM)
    assert room_figures.fresh_share(case, bed) == pytest.approx(1.0)
    with pytest.raises(NotApplicable):
        room_figures.fresh_air(case, bath)


def test_a_timed_fan_counts_by_its_share_of_time() -> None:
    case = case_of(AIR.replace("[bed, den]", "bed").replace("continuous: 40 cfm", "low: {airflow: 40 cfm, on_time: 15 min/h}"))
    assert room_figures.fresh_air(case, case.design.rooms["bed"]) == pytest.approx(10 * CFM)
    assert room_figures.fresh_air_of_house(case, case.design) == pytest.approx(10 * CFM)


def test_the_door_passes_what_is_left() -> None:
    text = AIR.replace("use: bedroom,", "use: bedroom, supply: 90 cfm, return: 30 cfm,")
    case = case_of(text)
    rooms = case.design.rooms
    assert room_figures.through_door(case, rooms["bed"]) == pytest.approx(60 * CFM)
    assert room_figures.through_door_at_most(case, rooms["bath"]) == pytest.approx(-80 * CFM)
    with pytest.raises(NotApplicable, match="no air"):
        room_figures.through_door(case, rooms["bath"])
    with pytest.raises(NotApplicable, match="open"):
        room_figures.through_door(case, rooms["den"])


# modes


def test_every_combination_is_shown_in_order_of_its_demands() -> None:
    case = case_of(AIR)
    found = shown(case)
    assert [len(mode.running) for mode in found.modes] == [1, 2]
    nets = [mode_net(case, case.design, mode) for mode in found.modes]
    assert nets == pytest.approx([-40 * CFM, 40 * CFM])
    low, high = (mode_pressure(case, case.design, mode).value for mode in found.modes)
    assert low == pytest.approx(-high)
    assert low > 0


def test_a_flow_without_airtightness_has_no_pressure() -> None:
    case = case_of(AIR.replace(", airtightness: 2 ACH50", ""))
    mode = shown(case).modes[0]
    assert mode_net(case, case.design, mode) == pytest.approx(-40 * CFM)
    with pytest.raises(Missing, match="airtightness"):
        mode_pressure(case, case.design, mode)


def test_stated_make_up_air_is_taken_off() -> None:
    hood = """\
hoods:
  hood:
    settings: {high: 400 cfm}
    make_up_air: {airflow: 300 cfm, interlock: yes, damper: powered}
"""
    case = case_of(AIR + hood)
    together = next(mode for mode in shown(case).modes if "hood" in mode.name and "bath" not in mode.name)
    assert together.net_exhaust == pytest.approx(360 * CFM)
    assert mode_net(case, case.design, together) == pytest.approx(60 * CFM)


def test_a_dryer_of_unknown_airflow_is_left_out_and_named() -> None:
    case = case_of(AIR + "dryers: {dryer: {kind: vented}}\n")
    found = shown(case)
    assert found.without == ("dryers.dryer.airflow",)
    assert [mode.name for mode in found.modes] == [mode.name for mode in shown(case_of(AIR)).modes]
    assert mode_net(case, case.design, found.modes[0]) == pytest.approx(-40 * CFM)
    with pytest.raises(Missing, match=r"hoods\.hood\.settings\.high\.airflow"):
        shown(case_of(AIR + "dryers: {dryer: {kind: vented}}\nhoods: {hood: {settings: {high: tbd}}}\n"))


def test_many_combinations_end_in_the_worst() -> None:
    baths = "".join(f"  fan-{n}: {{role: exhaust, settings: {{high: 50 cfm}}}}\n" for n in range(5))
    case = case_of(AIR + baths)
    found = shown(case)
    assert found.of == 64
    assert len(found.modes) <= MOST_SHOWN + 1
    assert found.modes[-1].exhaust == pytest.approx((80 + 250) * CFM)


# ducts

DUCTED = """\
fans:
  fresh:
    role: supply
    settings: {continuous: 60 cfm at 0.2 in w.c.}
    duct: {size: 6 in, length: 20 ft, material: galvanized steel}
  bath-fan: {role: exhaust, settings: {high: 80 cfm}, duct: {size: 4 in, length: 10 ft, material: galvanized steel}}
hoods:
  hood: {settings: {low: 100 cfm, high: 200 cfm}, duct: {size: 7 in, material: galvanized steel}}
dryers:
  dryer: {airflow: 120 cfm, duct: {size: 4 in, length: 12 ft, material: galvanized steel}}
"""


def test_every_duct_is_a_line() -> None:
    case = case_of(DUCTED)
    named = {line_name(duct): duct for duct in lines(case)}
    assert list(named) == ["fresh: duct", "bath-fan: duct", "hood: duct", "dryer: duct"]
    found = line(case, named["bath-fan: duct"])
    assert found.airflow == pytest.approx(80 * CFM)
    assert found.velocity == pytest.approx(80 * CFM / (3.14159265 / 4 * 0.1016**2))
    assert found.low <= found.rate * 10 * 0.3048 * 1.0000001
    assert found.high >= found.low
    assert line(case, named["dryer: duct"]).airflow == pytest.approx(120 * CFM)
    with pytest.raises(Missing, match=r"hoods\.hood\.duct\.length"):
        line(case, named["hood: duct"])


def test_what_is_left_is_what_is_offered_less_what_is_needed() -> None:
    case = case_of(DUCTED)
    (circuit,) = ducted_circuits(case)
    found = against_offer(case, circuit)
    assert found.offered == pytest.approx(0.2 * 249.08891)
    assert found.left == pytest.approx(found.offered - found.high)
    with pytest.raises(NotApplicable):
        greatest_length(case, circuit)
    with pytest.raises(NotApplicable):
        critical_path(case, circuit)


# equipment

UNITS = """\
site: {winter_design: 5 degF}
house: {floor_area: 1000 ft2}
rooms:
  den: {use: living, floor_area: 300 ft2, heating_load: 9000 Btu/h, cooling_load: 6000 Btu/h}
equipment:
  outdoor: {kind: heat pump, location: outdoors}
  head:
    kind: wall unit
    outdoor_unit: outdoor
    location: den
    heating: {points: [{outdoor: 5 degF, capacity: 8000 Btu/h}, {outdoor: 47 degF, capacity: 12000 Btu/h}]}
    cooling: {rated: 9000 Btu/h}
    backup: {power: 2 kW}
"""
BTU_H = 0.29307107


def test_a_heat_pump_with_points_and_backup() -> None:
    case = case_of(UNITS)
    (group,) = all_heating(case)
    assert heating_ratio(case, group) == pytest.approx((8000 * BTU_H + 2000) / (9000 * BTU_H), rel=1e-6)
    assert group_backup(case, group) == pytest.approx(2000)
    # load 9000 (65 - t) / 60 = capacity 8000 + (t - 5) 4000 / 42
    degrees = (9000 * 65 / 60 - 8000 + 5 * 4000 / 42) / (4000 / 42 + 150)
    assert balance_point(case, group) == pytest.approx((degrees + 459.67) / 1.8, abs=1e-6)
    with pytest.raises(Missing, match="least"):
        least_heating(case, group)


def test_cooling_asks_for_what_is_not_told() -> None:
    case = case_of(UNITS)
    (group,) = all_cooling(case)
    with pytest.raises(Missing, match=r"cooling\.sensible"):
        sensible_cooling(case, group)
    with pytest.raises(Missing, match="latent"):
        total_cooling_load(case, group)


def test_an_electric_heater_has_no_balance_point() -> None:
    case = case_of(UNITS.partition("equipment:")[0] + "equipment:\n  heater: {kind: electric heat, location: den, power: 3 kW}\n")
    (group,) = all_heating(case)
    for figure in (balance_point, group_backup, least_heating):
        with pytest.raises(NotApplicable):
            figure(case, group)


# loads


def test_stated_loads() -> None:
    case = case_of(UNITS + "  # nothing\n")
    den = case.design.rooms["den"]
    assert told_load(case, den, "heating_load") == pytest.approx(9000 * BTU_H, rel=1e-6)
    assert stated_sum(case, "cooling_load") == pytest.approx(6000 * BTU_H, rel=1e-6)
    bare = case_of("rooms: {den: {use: living}}\n")
    with pytest.raises(NotApplicable):
        stated_sum(bare, "heating_load")


def test_loads_of_no_rooms_ask_for_rooms() -> None:
    with pytest.raises(Missing, match="rooms"):
        losses_of_rooms(case_of("envelope: {roof: dark shingles}\n"), object_of_design())


def object_of_design() -> Any:
    class Anywhere:
        path = ""

    return Anywhere()


def test_usual_conditions_are_those_that_nobody_states() -> None:
    assert usual_conditions(case_of("house: {bedrooms: 2}\n"), "cooling") == (
        "indoor summer temperature (common practice)", "indoor summer humidity (common practice)",
    )  # fmt: skip
    stated = case_of("house: {indoor: {summer_temperature: 76 degF, winter_temperature: 70 degF}}\n")
    assert usual_conditions(stated, "cooling") == ("indoor summer humidity (common practice)",)
    assert usual_conditions(stated, "heating") == ()
