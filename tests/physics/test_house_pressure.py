"""House pressure: closed form, with ducts and openings, with stack; against scipy."""

from math import copysign

import pytest
from scipy.optimize import brentq

from checker.physics.friction import friction_per_meter
from checker.physics.house_pressure import (
    envelope,
    house_pressure,
    makeup_duct,
    passive_opening,
    path_inflows,
    stack_pressure,
)
from checker.physics.validity import OutOfRange

CFM = 0.3048**3 / 60.0
IN = 0.0254
FT = 0.3048
TIGHT_HOUSE = 231 * CFM  # 18,000 ft3 at 0.77 air changes per hour at 50 Pa


def test_solver_equals_the_closed_form() -> None:
    for net in (-100, -1, 10, 150, 230):
        solved = house_pressure(net * CFM, [envelope(TIGHT_HOUSE)])
        closed_form = copysign(50.0 * (abs(net) / 231) ** (1 / 0.65), -net)
        assert solved == pytest.approx(closed_form, abs=1e-6)


@pytest.mark.parametrize(
    ("exhaust", "length", "pressure", "leaks", "inlet"),
    [
        (150, 100, -10.250, 82.46, 67.54),  # own vectors, checked by brentq below
        (400, 60, -41.73, 205.4, 194.6),
    ],
)
def test_leaks_beside_a_six_inch_inlet(
    exhaust: float, length: float, pressure: float, leaks: float, inlet: float
) -> None:
    paths = [envelope(TIGHT_HOUSE), makeup_duct(6 * IN, length * FT, 0.0)]
    solved = house_pressure(exhaust * CFM, paths)
    assert solved == pytest.approx(pressure, abs=0.01)
    flows = path_inflows(solved, paths)
    assert flows[0] / CFM == pytest.approx(leaks, abs=0.1)
    assert flows[1] / CFM == pytest.approx(inlet, abs=0.1)
    assert sum(flows) == pytest.approx(exhaust * CFM, rel=1e-7)

    def by_duct_flow(flow: float) -> float:
        drop = friction_per_meter(flow, 6 * IN, 0.09e-3) * length * FT
        return TIGHT_HOUSE * (drop / 50.0) ** 0.65 + flow - exhaust * CFM

    assert flows[1] == pytest.approx(brentq(by_duct_flow, 1e-6, 1.0, xtol=1e-12), rel=1e-5)


def test_opening_shares_the_flow_with_leaks() -> None:
    paths = [envelope(TIGHT_HOUSE), passive_opening(0.02)]
    solved = house_pressure(150 * CFM, paths)

    def surplus(drop: float) -> float:
        return TIGHT_HOUSE * (drop / 50) ** 0.65 + 0.61 * 0.02 * (2 * drop / 1.2041) ** 0.5 - 150 * CFM

    assert solved == pytest.approx(-brentq(surplus, 0.0, 50.0, xtol=1e-12), abs=1e-6)


def test_one_way_damper_lets_air_in_but_hardly_out() -> None:
    paths = [envelope(TIGHT_HOUSE), passive_opening(0.05, one_way=True)]
    drawn = house_pressure(100 * CFM, paths)
    blown = house_pressure(-100 * CFM, paths)
    assert -drawn < 3.0 < blown
    assert path_inflows(blown, paths)[1] == pytest.approx(-1e-3 * path_inflows(-blown, paths)[1])


def test_stack_pressure() -> None:
    assert stack_pressure(5.0, 293.15, 293.15) == 0.0
    assert stack_pressure(5.0, 293.15, 308.15) < 0.0


def test_stack_alone_draws_air_in_low_and_lets_it_out_high() -> None:
    paths = [envelope(0.1, height=-2.5), envelope(0.1, height=2.5)]
    pressure = house_pressure(0.0, paths, 293.15, 263.15)
    low, high = path_inflows(pressure, paths, 293.15, 263.15)
    assert pressure == pytest.approx(0.0, abs=1e-6)
    assert low == pytest.approx(-high, rel=1e-6)
    assert low == pytest.approx(0.1 * (6.74 / 2 / 50) ** 0.65, rel=1e-3)


def test_a_high_passive_opening_lowers_the_pressure_low_down() -> None:
    paths = [envelope(0.1), passive_opening(0.01, height=3.0)]
    assert house_pressure(0.0, paths, 293.15, 263.15) < -0.5


def test_one_temperature_alone_is_refused() -> None:
    with pytest.raises(ValueError, match="both"):
        house_pressure(0.01, [envelope(0.1)], indoor_temperature=293.15)


def test_beyond_the_test_pressure_nothing_is_claimed() -> None:
    with pytest.raises(OutOfRange):
        house_pressure(600 * CFM, [envelope(TIGHT_HOUSE)])
    with pytest.raises(OutOfRange, match="far beyond"):
        house_pressure(1e6, [envelope(TIGHT_HOUSE)])


def test_impossible_input() -> None:
    with pytest.raises(ValueError, match="leakage flow must be positive"):
        envelope(0.0)
    with pytest.raises(ValueError, match="at least one path"):
        house_pressure(0.1, [])
    with pytest.raises(ValueError, match="finite"):
        house_pressure(float("nan"), [envelope(0.1)])
