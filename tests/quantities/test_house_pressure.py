"""House pressure of whole designs, held against closed forms, brute force and published limits."""

from itertools import product
from math import sqrt
from typing import Any

import pytest

from checker.case import Case, Missing
from checker.quantities.airtightness import air_changes_at_50, leakage_flow
from checker.quantities.burners import depressurization_entry
from checker.quantities.combined_exhaust import most_drawn, most_pushed, movings, worst_case
from checker.quantities.house_pressure import pressure_all_day, pressure_under, winter_stack
from checker.quantities.modes import combinations
from tests.rules.case_files import START, case_of, merged

CFM = 0.3048**3 / 60.0
FANS = {
    "fresh-air": {"role": "supply", "settings": {"continuous": "60 cfm"}},
    "make-up": {"role": "supply", "settings": {"on": {"airflow": "250 cfm", "runs_with": "range-hood.high"}}},
    "bath-fan": {"role": "exhaust", "settings": {"continuous": "30 cfm", "boost": "80 cfm"}},
    "laundry-fan": {"role": "exhaust", "settings": {"on": {"airflow": "90 cfm", "not_with": "range-hood"}}},
    "hrv": {"role": "recovery", "settings": {"low": {"supply_airflow": "50 cfm", "exhaust_airflow": "45 cfm"}}},
}
HOUSE = {
    "house": {"airtightness": "800 cfm50"},
    "fans": FANS,
    "hoods": {"range-hood": {"settings": {"low": "100 cfm", "high": "300 cfm"}}},
    "dryers": {"dryer": {"airflow": "150 cfm"}},
}


def case(design: dict[str, Any]) -> Case:
    built, faults = case_of(merged(START, design))
    assert not faults
    return built


def test_extremes_are_those_of_all_combinations() -> None:
    house = case(HOUSE)
    nets = [mode.net_exhaust for mode in combinations(house, house.design)]

    assert most_drawn(house, house.design).net == pytest.approx(max(nets))
    assert most_pushed(house, house.design).net == pytest.approx(min(nets))


def test_worst_case_by_hand() -> None:
    house = case(HOUSE)
    worst = worst_case(house, house.design)

    # Hood at low 100 and laundry fan 90 exclude each other; hood at high brings 250 in with it: laundry 90 < low 100.
    assert worst.net / CFM == pytest.approx(100.0 + 80.0 + 150.0)
    assert worst.name == "dryer + range-hood at low + bath-fan at boost"


def test_worst_case_is_the_greatest_of_all_choices_without_interlocks() -> None:
    fans = {f"fan-{n}": {"role": "exhaust", "settings": {"low": f"{n * 7 + 5} cfm", "high": f"{n * 11} cfm"}} for n in range(9)}
    house = case({"house": {"airtightness": "800 cfm50"}, "fans": fans})
    flows = [[0.0, n * 7 + 5.0, n * 11.0] for n in range(9)]

    assert worst_case(house, house.design).net / CFM == pytest.approx(max(sum(picked) for picked in product(*flows)))
    assert len(movings(house, house.design)) == 18


def test_power_law() -> None:
    # 18,000 ft3 at 0.77 ACH50 is 231 cfm50; 150 cfm draw it down by 50 (150 / 231)^(1/0.65) = 25.73 Pa
    # (ASHRAE Handbook - Fundamentals 2021, chapter 16).
    house = case({"house": {"airtightness": "0.77 ACH50", "volume": "18000 ft3"}, "dryers": {"dryer": {"airflow": "150 cfm"}}})

    assert leakage_flow(house, house.design) / CFM == pytest.approx(231.0)
    assert pressure_under(house, house.design, worst_case(house, house.design)).value == pytest.approx(-25.73, abs=0.01)


def test_a_gravity_damper_rated_at_a_pressure_is_an_orifice() -> None:
    hood = {"settings": {"high": "200 cfm"}, "make_up_air": {"airflow": "100 cfm", "damper": "gravity", "damper_rated_at": "3 Pa"}}
    house = case({"house": {"airtightness": "300 cfm50"}, "hoods": {"range-hood": hood}})
    drawn = -pressure_under(house, house.design, worst_case(house, house.design)).value

    assert 300.0 * (drawn / 50.0) ** 0.65 + 100.0 * sqrt(drawn / 3.0) == pytest.approx(200.0, rel=1e-6)


@pytest.mark.parametrize(
    ("written", "cfm50"),
    [("650 cfm50", 650.0), ("0.25 cfm50/ft2 of floor", 250.0), ("0.25 cfm50/ft2 of envelope", 750.0), ("4 ACH50", 600.0)],
)
def test_airtightness_in_every_form(written: str, cfm50: float) -> None:
    size = {"floor_area": "1000 ft2", "ceiling_height": "9 ft", "envelope_area": "3000 ft2"}
    house = case({"house": {"airtightness": written, **size}})

    assert leakage_flow(house, house.design) / CFM == pytest.approx(cfm50)
    assert air_changes_at_50(house, house.design) == pytest.approx(cfm50 * 60.0 / 9000.0)


@pytest.mark.parametrize(("stage", "cfm50"), [("permit", 600.0), ("as-built", 900.0)])
def test_the_test_wins_once_the_house_is_built(stage: str, cfm50: float) -> None:
    house = case({"project": {"stage": stage}, "house": {"airtightness": "600 cfm50", "measured": {"airtightness": "900 cfm50"}}})

    assert leakage_flow(house, house.design) / CFM == pytest.approx(cfm50)


def test_no_house_asks_for_its_airtightness() -> None:
    house = case({"fans": {"bath-fan": {"role": "exhaust", "settings": {"continuous": "30 cfm"}}}})

    with pytest.raises(Missing) as gap:
        pressure_all_day(house, house.design)
    assert gap.value.paths == ("house.airtightness",)


def test_stack_at_the_lowest_floor() -> None:
    # 0.0342 x 101325 Pa x 5 m x (1 / 253.15 K - 1 / 294.26 K) / 2 (ASHRAE Handbook - Fundamentals 2021, chapter 16).
    house = case({"house": {"height": "5 m"}, "site": {"winter_design": "-20 degC"}})

    assert winter_stack(house, house.design) == pytest.approx(4.78, abs=0.01)


HEATER = {"kind": "water heater", "draft": "natural draft"}
FURNACE = {"kind": "furnace", "draft": "natural draft", "shares_vent_with": "heater"}


@pytest.mark.parametrize(
    ("heater", "furnace", "entries"),
    [
        (HEATER, {**FURNACE, "shares_vent_with": []}, ["natural-draft", "natural-draft"]),
        (HEATER, FURNACE, ["natural-draft-common-vent", "natural-draft-common-vent"]),
        (HEATER, {**FURNACE, "vent_damper": "yes"}, ["natural-draft", "natural-draft"]),
        (HEATER, {**FURNACE, "draft": "induced draft"}, ["natural-draft", "natural-draft"]),
        (
            {**HEATER, "outside_chimney": "yes"},
            {"draft": "induced draft", "kind": "furnace"},
            ["orphaned-water-heater", "mechanical-draft"],
        ),
        ({**HEATER, "draft": "power vent"}, {"kind": "boiler", "draft": "sealed"}, ["mechanical-draft", ""]),
        ({"kind": "stove", "draft": "open"}, {"kind": "space heater", "draft": "unvented"}, ["open-fire", ""]),
    ],
)
def test_classes_of_burners(heater: dict[str, Any], furnace: dict[str, Any], entries: list[str]) -> None:
    house = case({"combustion": {"heater": heater, "furnace": furnace}})
    named = house.design.combustion
    found = [depressurization_entry(house, burner) for burner in (named["heater"], named["furnace"])]

    assert found == [f"depressurization-{entry}" if entry else "" for entry in entries]
