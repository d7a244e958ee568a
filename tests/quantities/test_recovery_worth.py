"""Whether recovery pays: the comparison of whole designs against independent sums."""

from typing import Any

import numpy as np
import pytest

from checker.quantities.recovery_options import in_years
from checker.quantities.recovery_worth import as_designed, design_range, offer_range, offers
from checker.quantities.winter_energy import winter_cost, winter_energy
from tests.rules.case_files import case_of, merged

KWH = 3.6e6
CFM = 0.3048**3 / 60
AIR = 1.2041 * 1006.0  # J/(m3 K)
START = {"design_format": 1, "project": {"title": "a comparison", "code": "irc-2018"}}
BINS = [(95, 200, 72), (85, 900, 70), (75, 1460, 0), (65, 1700, 0), (55, 1500, 0), (40, 1800, 0), (20, 1000, 0), (0, 200, 0)]
HOUSE = {
    "site": {
        "prices": {"electricity": "0.20 USD/kWh"},
        "temperature_bins": [
            {"temperature": f"{t} degF", "time": f"{h} h", **({"dew_point": f"{d} degF"} if d else {})} for t, h, d in BINS
        ],
    },
    "equipment": {"heat-pump": {"kind": "heat pump", "ratings": {"seer2": 15, "hspf2": 8}}},
    "fans": {"fresh-air": {"role": "supply", "settings": {"continuous": {"airflow": "70 cfm", "power": "20 W"}}}},
}


def case(change: dict[str, Any]) -> Any:
    built, faults = case_of(merged(merged(START, HOUSE), change))
    assert not faults
    return built


def ratio(dew_point: float, humidity: float = 1.0) -> float:
    """Humidity ratio at a dew point (or temperature and humidity) in F at sea level, by a Magnus formula."""
    celsius = (dew_point - 32) / 1.8
    vapor = humidity * 611.2 * np.exp(17.62 * celsius / (243.12 + celsius))
    return float(0.621945 * vapor / (101325 - vapor))


def wanted(sensible: float, moisture: float, thaw: float) -> tuple[float, float, float]:
    """kWh of heating, cooling and drying of 70 cfm with room air of 70 and 75 F, 50 %."""
    t, hours, dew = (np.array(column, dtype=float) for column in zip(*BINS, strict=True))
    kept = np.where(t < thaw, 0.9 * sensible, sensible)
    heat = np.sum(np.where(t < 60, (1 - kept) * (70 - t) / 1.8 * hours, 0.0))
    cool = np.sum(np.where(t > 75, (1 - sensible) * (t - 75) / 1.8 * hours, 0.0))
    excess = np.array([max(0.0, ratio(d) - ratio(75, 0.5)) if d else 0.0 for d in dew])
    dry = np.sum(np.where(t > 75, (1 - moisture) * excess * hours, 0.0))
    flow = 70 * CFM * 3600 / KWH
    return float(AIR * flow * heat), float(AIR * flow * cool), float(1.2041 * 2.501e6 * flow * dry)


def test_three_ways_of_ventilating_by_bins() -> None:
    built = case({})
    found = offers(built, built.design)
    assert found.warm_part
    for option, sum_of in zip(
        (found.without, *found.options), (wanted(0, 0, 23), wanted(0.7, 0, 23), wanted(0.7, 0.5, 14)), strict=True
    ):
        kwh = [option.heating / KWH, option.cooling / KWH, option.dehumidifying / KWH]
        assert kwh[:2] == pytest.approx(sum_of[:2], rel=1e-6)
        assert kwh[2] == pytest.approx(sum_of[2], rel=0.01)
    bare, heat, both = found.without, *found.options
    assert bare.air_cost == pytest.approx(
        (bare.heating / 8 + (bare.cooling + bare.dehumidifying) / 15) * 3.412141633 / KWH * 0.20, rel=1e-9
    )
    assert heat.fan_cost == pytest.approx(70 / 1.2 * 8.766 * 0.20, rel=1e-9)
    assert bare.fan_cost == pytest.approx(20 * 8.766 * 0.20, rel=1e-9)
    assert both.cost < heat.cost


def test_a_range_of_prices_and_weather() -> None:
    built = case({"site": {"prices": {"recovery_cost": "1500 USD", "recovery_upkeep": "12 USD/yr"}}})
    reach = offer_range(built, built.design)
    worth = reach.worth
    assert worth.upkeep == pytest.approx(12.0)
    again = case({"site": {"prices": {"electricity": "0.40 USD/kWh", "recovery_cost": "1500 USD", "recovery_upkeep": "12 USD/yr"}}})
    assert offer_range(again, again.design).worth.saving() == pytest.approx(worth.saving(2.0), rel=1e-9)
    assert reach.told() == in_years(1500 / worth.saving())
    assert len(reach.worksheet_lines("trade")) == 9


def test_weather_scales_like_degree_days() -> None:
    def saving(days: int) -> float:
        site = {"temperature_bins": "(gone)", "heating_degree_days": f"{days} HDD65"}
        built = case({"site": site, "equipment": {"heat-pump": "(gone)", "heaters": {"kind": "electric heat"}}})
        return offer_range(built, built.design).worth.saving()

    built = case(
        {
            "site": {"temperature_bins": "(gone)", "heating_degree_days": "5000 HDD65"},
            "equipment": {"heat-pump": "(gone)", "heaters": {"kind": "electric heat"}},
        }
    )
    worth = offer_range(built, built.design).worth
    assert worth.saving(weather=1.2) == pytest.approx(saving(6000), rel=1e-9)
    assert worth.saving(weather=0.8) == pytest.approx(saving(4000), rel=1e-9)


def test_the_regional_bins_tell_how_long_a_core_thaws() -> None:
    site = {"temperature_bins": "(gone)", "heating_degree_days": "6000 HDD65"}
    heaters = {"heat-pump": "(gone)", "heaters": {"kind": "electric heat"}}
    mild = case({"site": site, "equipment": heaters})
    cold = case({"site": {**site, "winter_design": "5 degF"}, "equipment": heaters})
    # Region IV: bins from 22 F down hold 0.055 x 43 + 0.036 x 48 + ... = 7.15 of 23.94 F on the mean.
    shares = [0.055, 0.036, 0.026, 0.013, 0.006, 0.002, 0.001]
    lift = sum(share * (65 - 22 + 5 * n) for n, share in enumerate(shares))
    kept = 1 - 0.1 * lift / (0.3987 * 60)
    without = offers(mild, mild.design).without.heating
    saved = [without - offers(each, each.design).options[0].heating for each in (mild, cold)]
    assert saved[1] / saved[0] == pytest.approx(kept, abs=2e-4)


def test_two_recovery_units_count_by_their_flows() -> None:
    def unit(sensible: str, airflow: str, power: str) -> dict[str, Any]:
        setting = {"airflow": airflow, "power": power}
        return {"role": "recovery", "whole_house": True, "recovery": {"sensible": sensible}, "settings": {"continuous": setting}}

    built = case(
        {
            "fans": {
                "fresh-air": "(gone)",
                "large": unit("80 %", "60 cfm", "40 W"),
                "small": unit("60 %", "20 cfm", "15 W"),
            }
        }
    )
    found = as_designed(built, built.design)
    assert found.best.sensible == pytest.approx(0.75)
    assert found.flow / CFM == pytest.approx(80)
    assert found.best.fans / KWH == pytest.approx(55 * 8.766)
    assert design_range(built, built.design).cost is None


def test_a_thin_air_carries_less() -> None:
    low, high = case({}), case({"site": {"elevation": "7000 ft"}})
    one, other = (offers(each, each.design).without.heating for each in (low, high))
    assert other / one == pytest.approx((1 - 2.25577e-5 * 7000 * 0.3048) ** 5.2559, rel=1e-4)


def test_a_winter_is_as_long_as_its_degree_days() -> None:
    pump = {
        "kind": "heat pump",
        "heating": {
            "points": [
                {"outdoor": "47 degF", "capacity": "30000 Btu/h", "power": "2600 W"},
                {"outdoor": "17 degF", "capacity": "21000 Btu/h", "power": "2500 W"},
                {"outdoor": "-5 degF", "capacity": "15000 Btu/h", "power": "2400 W"},
            ]
        },
    }
    change = {
        "site": {"temperature_bins": "(gone)", "winter_design": "5 degF", "heating_degree_days": "6200 HDD65"},
        "rooms": {"all": {"use": "living", "heating_load": "24000 Btu/h"}},
        "equipment": {"heat-pump": pump},
    }
    from checker.quantities.energy import with_tables

    built = case(change)
    (group,) = with_tables(built)
    found = winter_energy(built, group)
    assert found.heat / KWH == pytest.approx(24000 / 60 * 24 * 6200 / 3412.141633, rel=1e-6)
    assert found.electricity / KWH * 0.20 == pytest.approx(winter_cost(built, group), rel=1e-9)
    assert found.performance == pytest.approx(found.heat / found.electricity)
    assert 0.0 < found.backup_share < 0.1


@pytest.mark.parametrize(("years", "text"), [(0.2, "1"), (14.4, "14"), (99.9, "100"), (101.0, "never"), (float("inf"), "never")])
def test_years(years: float, text: str) -> None:
    assert in_years(years) == text


def test_an_unrated_heat_pump_counts_by_its_table() -> None:
    from checker.quantities.seasonal_efficiency import best_heating, least_heating

    points = [
        {"outdoor": "47 degF", "capacity": "30000 Btu/h", "power": "2600 W"},
        {"outdoor": "-5 degF", "capacity": "15000 Btu/h", "power": "2400 W"},
    ]
    change = {
        "site": {"temperature_bins": "(gone)", "winter_design": "5 degF", "heating_degree_days": "6200 HDD65"},
        "rooms": {"all": {"use": "living", "heating_load": "24000 Btu/h"}},
        "equipment": {"heat-pump": {"kind": "heat pump", "ratings": "(gone)", "heating": {"points": points}}},
    }
    built = case(change)
    assert best_heating(built, built.design).basis == "table of heat-pump over the winter"
    assert 2.0 < best_heating(built, built.design).efficiency < 3.4
    bare = case({"equipment": {"heat-pump": {"ratings": "(gone)"}}})
    assert best_heating(bare, bare.design).efficiency == pytest.approx(3.0)
    assert least_heating(bare, bare.design).efficiency == pytest.approx(2.2)
