"""Air paths out of a closed room."""

import pytest
from scipy.optimize import brentq

from checker.physics.friction import friction_per_metre
from checker.physics.transfer import (
    TRANSFER_COEFFICIENT,
    closed_door_pressure,
    jumper_duct_flow,
    jumper_duct_pressure,
    transfer_area,
    transfer_flow,
    undercut_area,
    undercut_flow,
    undercut_for_flow,
)

CFM = 0.3048**3 / 60.0
IN = 0.0254
IN2 = 0.0254**2

# Published transfer-grille sizing table: free area in in2 at 3 Pa by cfm.
GRILLE_TABLE = [
    (50, 27.0),
    (75, 40.5),
    (100, 54.0),
    (125, 67.4),
    (150, 80.9),
    (175, 94.4),
    (200, 107.9),
    (225, 121.4),
    (250, 134.9),
    (300, 161.9),
    (325, 175.4),
    (350, 188.9),
]


@pytest.mark.parametrize(("flow", "area"), GRILLE_TABLE)
def test_grille_sizing_table(flow: float, area: float) -> None:
    assert transfer_area(flow * CFM, 3.0) / IN2 == pytest.approx(area, abs=0.06)


def test_the_tables_row_for_275_cfm_lost_a_digit() -> None:
    # The published table prints 14.4 in2; its own equation gives 148.4.
    area = transfer_area(275 * CFM, 3.0) / IN2
    assert area == pytest.approx(148.4, abs=0.06)
    assert area != pytest.approx(14.4, abs=100.0)


def test_undercut_is_taken_off() -> None:
    # The same publication: a 32 in door with a 0.5 in undercut takes 16 in2 off; 100 cfm leaves 38.0.
    undercut = undercut_area(32 * IN, 0.5 * IN)
    assert undercut / IN2 == pytest.approx(16.0, rel=1e-12)
    assert transfer_area(100 * CFM, 3.0, undercut) / IN2 == pytest.approx(38.0, abs=0.06)
    assert transfer_area(10 * CFM, 3.0, undercut) == 0.0


def test_coefficient_is_an_orifice_of_0_607() -> None:
    orifice = 0.607 * (2 / 1.2041) ** 0.5
    assert orifice == pytest.approx(TRANSFER_COEFFICIENT, rel=0.001)


@pytest.mark.parametrize(("width", "flow"), [(30, 55.6), (32, 59.3)])
def test_one_inch_undercut_at_three_pascal(width: float, flow: float) -> None:
    # 1.07 x width x sqrt 3, in cfm and inches.
    assert undercut_flow(width * IN, IN, 3.0) / CFM == pytest.approx(flow, abs=0.05)


def test_one_square_inch_per_cfm_is_below_one_pascal() -> None:
    assert closed_door_pressure(100 * CFM, 100 * IN2) == pytest.approx(0.873, abs=0.001)


def test_pressure_flow_and_undercut_are_inverse() -> None:
    assert transfer_flow(0.02, closed_door_pressure(0.05, 0.02)) == pytest.approx(0.05, rel=1e-14)
    undercut = undercut_for_flow(0.8, 0.03, 2.5, carpet=0.01)
    assert undercut_flow(0.8, undercut, 2.5, carpet=0.01) == pytest.approx(0.03, rel=1e-12)
    assert undercut_area(0.8, 0.01, carpet=0.015) == 0.0


def test_jumper_duct_adds_two_grilles_and_its_duct() -> None:
    lost = jumper_duct_pressure(0.05, 0.04, 0.2, 3.0, 1.68e-3, 2.0)
    speed_pressure = 0.5 * 1.2041 * (0.05 / (3.141592653589793 * 0.01)) ** 2
    duct = friction_per_metre(0.05, 0.2, 1.68e-3) * 3.0 + 2.0 * speed_pressure
    assert lost == pytest.approx(2 * closed_door_pressure(0.05, 0.04) + duct, rel=1e-12)


@pytest.mark.parametrize("pressure", [0.5, 2.5, 3.0, 10.0])
def test_jumper_duct_flow_against_brentq(pressure: float) -> None:
    flow = jumper_duct_flow(pressure, 0.04, 0.2, 3.0, 1.68e-3, 2.0)
    oracle = brentq(
        lambda q: jumper_duct_pressure(q, 0.04, 0.2, 3.0, 1.68e-3, 2.0) - pressure, 1e-9, 1.0, xtol=1e-13
    )
    assert flow == pytest.approx(oracle, rel=1e-8)


def test_jumper_duct_at_rest() -> None:
    assert jumper_duct_flow(0.0, 0.04, 0.2, 3.0, 1.68e-3, 2.0) == 0.0


@pytest.mark.parametrize(
    "call",
    [
        lambda: closed_door_pressure(0.05, 0.0),
        lambda: closed_door_pressure(-0.05, 0.1),
        lambda: transfer_area(0.05, 0.0),
        lambda: undercut_area(0.0, 0.01),
        lambda: transfer_flow(0.1, -1.0),
    ],
)
def test_impossible_input(call) -> None:
    with pytest.raises(ValueError, match="must"):
        call()
