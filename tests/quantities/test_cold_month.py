"""The coldest month: its bounds, the humidity of the rooms in it, and what dries a humid day."""

from typing import Any

import psychrolib
import pytest

from checker.case import Case
from checker.quantities.cold_month import cold_month, left_by_ventilation, month_humidity, usual_humidity
from checker.quantities.humid_days import dried, is_humid, kept, moisture_load
from tests.rules.case_files import case_of, merged

psychrolib.SetUnitSystem(psychrolib.SI)

HOUSE: dict[str, Any] = {
    "design_format": 1, "project": {"title": "air", "code": "irc-2021"},
    "site": {"winter_design": "0 degF", "elevation": "0 ft", "climate_zone": "2A",
             "summer_design": {"dry_bulb": "94 degF", "wet_bulb": "77 degF"}},
    "house": {"floor_area": "1500 ft2", "volume": "12000 ft3", "height": "9 ft", "bedrooms": 3, "airtightness": "1 ACH50",
              "indoor": {"winter_temperature": "70 degF"}},
    "fans": {"fresh": {"role": "supply", "settings": {"continuous": "60 cfm"}}},
    "papers": {"loads": {"cooling_sensible": "18000 Btu/h"}},
    "equipment": {"unit": {"kind": "air handler", "stages": "single stage",
                           "cooling": {"rated": "24000 Btu/h", "sensible": "18000 Btu/h"}}},
}  # fmt: skip


def made(**more: Any) -> Case:
    case, faults = case_of(merged(HOUSE, more))
    assert not faults, faults
    return case


def kelvin(fahrenheit: float) -> float:
    return (fahrenheit + 459.67) / 1.8


def test_the_month_lies_above_the_design_temperature() -> None:
    span = cold_month(made(), made().design)

    assert kelvin(0) < span.coldest < span.mildest
    stated = made(site={"coldest_month": "22 degF"})
    assert cold_month(stated, stated.design) == pytest.approx((kelvin(22), kelvin(22)))


def test_usual_humidity_runs_in_a_straight_line_and_stops() -> None:
    case = made()

    found = [usual_humidity(case, kelvin(each)) for each in (-20, 14, 41, 68, 90)]

    assert found == pytest.approx([0.3, 0.3, 0.45, 0.6, 0.6])


def test_the_ventilation_leaves_what_people_give_off() -> None:
    case = made()
    outdoor = (20 - 32) / 1.8
    ratio = psychrolib.GetHumRatioFromRelHum(outdoor, 0.8, 101_325.0)
    room = (70 - 32) / 1.8

    found = left_by_ventilation(case, case.design, kelvin(20))

    by_fan = ratio + 12 / 86_400 / (60 * 4.719474432e-4 * 1.204)
    # Air leakage dries the rooms a little further.
    assert 0.8 < found / psychrolib.GetRelHumFromHumRatio(room, by_fan, 101_325.0) < 1.0
    assert month_humidity(case, case.design, kelvin(20)) == found


def test_the_usual_humidity_stands_in_where_the_file_tells_too_little() -> None:
    case = made(fans="(gone)")

    assert month_humidity(case, case.design, kelvin(41)) == pytest.approx(0.45)


def test_a_stated_humidity_goes_first() -> None:
    case = made(house={"indoor": {"winter_humidity": "37 %"}})

    assert month_humidity(case, case.design, kelvin(20)) == pytest.approx(0.37)


def test_water_of_a_humid_day_by_hand() -> None:
    case = made()
    dry = (94 - 32) / 1.8
    outdoor = psychrolib.GetHumRatioFromTWetBulb(dry, (77 - 32) / 1.8, 101_325.0)
    indoor = psychrolib.GetHumRatioFromRelHum((75 - 32) / 1.8, 0.6, 101_325.0)
    people = 20 + 0.22 * 1500 * 0.09290304 + 12 * 4

    by_hand = 60 * 4.719474432e-4 * 1.204 * 2.501e6 * (outdoor - indoor) + people

    assert moisture_load(case, case.design) == pytest.approx(by_hand, rel=0.01)


def test_dried_by_hand() -> None:
    case = made()
    # A third of the load over a sensible capacity of 18000 Btu/h: 35 % of the time; a quarter of the total is latent.
    by_hand = 0.35 * 18000 * 0.25 / 0.75 * (0.85 + 0.10 * (0.35 - 0.3) / 0.2)

    found = dried(case, case.design)

    assert found.least == found.most == pytest.approx(by_hand * 0.29307107, rel=1e-6)
    assert found.run_share == pytest.approx(0.35)


def test_short_runs_keep_less_of_the_latent_capacity() -> None:
    case = made()

    for blows_on in (False, True):
        found = [kept(case, share / 20, blows_on) for share in range(21)]
        assert found == sorted(found)
        assert found[-1] == 1.0
    assert all(kept(case, share / 20, True) <= kept(case, share / 20, False) for share in range(21))


@pytest.mark.parametrize(
    ("zone", "wet_bulb", "humid"),
    [("2A", 77, True), ("4A", 70, True), ("5A", 77, False), ("3B", 77, False), ("(gone)", 77, True), ("(gone)", 72, False),
     ("4", 78, True)],
)  # fmt: skip
def test_humid_summers(zone: str, wet_bulb: int, humid: bool) -> None:
    case = made(site={"climate_zone": zone, "summer_design": {"dry_bulb": "94 degF", "wet_bulb": f"{wet_bulb} degF"}})

    assert is_humid(case, case.design) is humid
