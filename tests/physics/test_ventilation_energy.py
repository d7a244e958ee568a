"""Yearly energy and cost of ventilation."""

from math import inf

import pytest
from scipy.optimize import brentq

from checker.physics.ventilation_energy import (
    Bin,
    bin_cooling,
    bin_heating,
    bins_of_whole_year,
    degree_day_heating,
    fan_efficacy,
    fan_energy,
    net_present_value,
    recovery_with_imbalance,
    simple_payback,
    yearly_cost,
)

CFM = 0.3048**3 / 60.0
KWH = 3.6e6
MMBTU = 293.0711 * KWH
C = 273.15
FLOW = 75 * CFM
MILD = [Bin(1000, 5 + C), Bin(2000, 12 + C), Bin(5760, 18 + C)]


def test_bins_pay_the_full_lift() -> None:
    # Own vector: (21 - 5) x 1,000 + (21 - 12) x 2,000 = 34,000 K h, balance point 15 C.
    energy = bin_heating(FLOW, MILD, 21 + C, 15 + C)
    assert energy / KWH == pytest.approx(1458, abs=1)
    assert energy / (1.2041 * 1006 * FLOW * 3600) == pytest.approx(34_000, rel=1e-12)


def test_degree_days_to_the_balance_point_with_the_lift_equal_the_bins() -> None:
    degree_days = (10 * 1000 + 3 * 2000) / 24
    energy = degree_day_heating(FLOW, degree_days, lift_above_base=6.0, days_below_base=3000 / 24)
    assert energy == pytest.approx(bin_heating(FLOW, MILD, 21 + C, 15 + C), rel=1e-12)
    # Without the lift only 16,000 of the 34,000 K h are counted.
    assert degree_day_heating(FLOW, degree_days) == pytest.approx(energy * 16 / 34, rel=1e-12)


def test_degree_day_energy_and_payback() -> None:
    # Own vector by the trade's 1.08 factor: 75 cfm, 7,500 F d, recovery 0.65.
    without = degree_day_heating(FLOW, 7500 / 1.8)
    with_recovery = degree_day_heating(FLOW, 7500 / 1.8, recovery=0.65)
    assert without / MMBTU == pytest.approx(14.58, rel=0.005)
    assert with_recovery / MMBTU == pytest.approx(5.10, rel=0.005)
    gas, electricity = 12 / MMBTU, 0.15 / KWH
    plain = yearly_cost(without, 0.95, gas, 0.0, electricity)
    recovered = yearly_cost(with_recovery, 0.95, gas, fan_energy(40.0), electricity)
    assert plain - yearly_cost(with_recovery, 0.95, gas, 0.0, electricity) == pytest.approx(119.7, rel=0.005)
    assert fan_energy(40.0) * electricity == pytest.approx(52.6, rel=0.001)
    assert plain - recovered == pytest.approx(67.1, rel=0.01)
    assert simple_payback(1500.0, plain - recovered) == pytest.approx(22.4, rel=0.01)


def test_never_paid_back() -> None:
    assert simple_payback(1500.0, 0.0) == inf
    assert simple_payback(1500.0, -5.0) == inf


def test_net_present_value() -> None:
    assert net_present_value(1000.0, 100.0, 0.0, 15.0) == pytest.approx(500.0)
    by_sum = sum(100.0 / 1.04**year for year in range(1, 16)) - 1000.0
    assert net_present_value(1000.0, 100.0, 0.04, 15.0) == pytest.approx(by_sum, rel=1e-12)
    rate = brentq(lambda r: net_present_value(1000.0, 100.0, r, 15.0), 1e-6, 0.5)
    assert net_present_value(1000.0, 100.0, rate, 15.0) == pytest.approx(0.0, abs=1e-6)


def test_recovery_is_cut_while_thawing() -> None:
    cold = [Bin(100, -20 + C)]
    plain = bin_heating(FLOW, cold, 21 + C, 15 + C, recovery=0.7)
    thawing = bin_heating(FLOW, cold, 21 + C, 15 + C, recovery=0.7, defrost_threshold=268.15)
    assert thawing / plain == pytest.approx((1 - 0.63) / (1 - 0.7))
    above = [Bin(100, -4 + C)]
    assert bin_heating(FLOW, above, 21 + C, 15 + C, 0.7, defrost_threshold=268.15) == bin_heating(
        FLOW, above, 21 + C, 15 + C, 0.7
    )


def test_heat_pump_buys_less() -> None:
    purchased = bin_heating(FLOW, MILD, 21 + C, 15 + C, efficiency=lambda t: 2.0 if t < 10 + C else 4.0)
    assert purchased / (1.2041 * 1006 * FLOW * 3600) == pytest.approx(16_000 / 2 + 18_000 / 4)


def test_a_balance_point_above_the_room_does_not_heat_warm_air() -> None:
    assert bin_heating(FLOW, [Bin(100, 22 + C)], 21 + C, 24 + C) == 0.0


def test_cooling_counts_heat_and_moisture_of_warm_hours_only() -> None:
    bins = [Bin(100, 30 + C, 0.014), Bin(50, 35 + C, 0.008), Bin(1000, 20 + C, 0.014)]
    energy = bin_cooling(FLOW, bins, 24 + C, 0.0093)
    assert energy.sensible / (1.2041 * 1006 * FLOW * 3600) == pytest.approx(6 * 100 + 11 * 50)
    # About 3,010 W per m3/s and g/kg (ASHRAE Handbook - Fundamentals 2021, chapter 17).
    assert energy.latent == pytest.approx(3010e3 * FLOW * 0.0047 * 100 * 3600, rel=0.002)
    recovered = bin_cooling(FLOW, bins, 24 + C, 0.0093, 0.7, 0.4)
    assert recovered.sensible == pytest.approx(0.3 * energy.sensible)
    assert recovered.latent == pytest.approx(0.6 * energy.latent)


def test_bins_are_scaled_to_a_year_and_say_so() -> None:
    assert bins_of_whole_year(MILD) == (tuple(MILD), False)
    scaled, changed = bins_of_whole_year(MILD[:2])
    assert changed
    assert sum(row.hours for row in scaled) == pytest.approx(8760)
    assert scaled[1].hours == pytest.approx(2 * scaled[0].hours)


def test_imbalance_lowers_recovery() -> None:
    assert recovery_with_imbalance(0.8, 0.030, 0.040) == pytest.approx(0.6)
    assert recovery_with_imbalance(0.8, 0.040, 0.030) == pytest.approx(0.6)


def test_fan_efficacy() -> None:
    # 10 CFR 460.204 Table 1 states 1.2 cfm/W for recovery ventilators; 60 cfm at 50 W just meets it.
    assert fan_efficacy(60 * CFM, 50.0) / CFM == pytest.approx(1.2)


@pytest.mark.parametrize(
    "call",
    [
        lambda: degree_day_heating(-1.0, 100.0),
        lambda: degree_day_heating(1.0, 100.0, recovery=1.1),
        lambda: bin_heating(FLOW, [Bin(-1, 280.0)], 294.0, 288.0),
        lambda: bin_heating(FLOW, MILD, 294.0, 288.0, efficiency=lambda _: 0.0),
        lambda: bins_of_whole_year([]),
        lambda: recovery_with_imbalance(0.7, 0.0, 0.1),
        lambda: fan_efficacy(0.1, 0.0),
        lambda: yearly_cost(1.0, 0.0, 1.0, 1.0, 1.0),
        lambda: simple_payback(-1.0, 1.0),
        lambda: simple_payback(1.0, float("nan")),
    ],
)
def test_impossible_input(call) -> None:
    with pytest.raises(ValueError, match="must"):
        call()
