"""Yearly energy and cost of ventilation."""

from math import inf

import pytest

from checker.physics.ventilation_energy import (
    Bin,
    bins_of_whole_year,
    fan_efficacy,
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


def test_never_paid_back() -> None:
    assert simple_payback(1500.0, 0.0) == inf
    assert simple_payback(1500.0, -5.0) == inf


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
        lambda: bins_of_whole_year([Bin(-1, 280.0)]),
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
