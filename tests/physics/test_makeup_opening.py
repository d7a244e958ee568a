"""Make-up air openings and ducts."""

from math import pi

import pytest
from fluids.friction import friction_factor
from scipy.optimize import brentq

from checker.physics.makeup_opening import (
    STOCK_DIAMETERS,
    duct_diameter,
    duct_flow,
    duct_pressure_drop,
    gross_area,
    opening_area,
    opening_flow,
    stock_diameter,
    tempering_load,
)
from checker.physics.validity import NoSolution, OutOfRange

CFM = 0.3048**3 / 60.0
IN = 0.0254
IN2 = 0.0254**2


def test_area_and_flow_are_inverse() -> None:
    area = opening_area(0.1, 5.0)
    assert opening_flow(area, 5.0) == pytest.approx(0.1, rel=1e-14)
    # 100 cfm at 3 Pa needs about 54 in2 (transfer-grille sizing table; coefficient 0.607 there, 0.61 here).
    assert opening_area(100 * CFM, 3.0) / IN2 == pytest.approx(54.0, rel=0.01)


def test_duct_drop_against_the_fluids_library() -> None:
    flow, diameter, length, loss, roughness = 0.08, 0.15, 8.0, 2.5, 0.09e-3
    speed = flow / (pi * diameter**2 / 4)
    reynolds = 1.2041 * speed * diameter / 1.8205e-5
    factor = friction_factor(Re=reynolds, eD=roughness / diameter, Method="Colebrook")
    expected = (factor * length / diameter + loss) * 0.5 * 1.2041 * speed**2
    assert duct_pressure_drop(flow, diameter, length, loss) == pytest.approx(expected, rel=1e-9)


def test_duct_flow_and_diameter_are_inverse() -> None:
    flow = duct_flow(5.0, 0.2, 6.0, 2.0)
    assert duct_pressure_drop(flow, 0.2, 6.0, 2.0) == pytest.approx(5.0, rel=1e-7)
    assert duct_diameter(flow, 5.0, 6.0, 2.0) == pytest.approx(0.2, rel=1e-6)
    oracle = brentq(lambda d: duct_pressure_drop(0.1, d, 6.0, 2.0) - 5.0, 0.05, 1.0, xtol=1e-12)
    assert duct_diameter(0.1, 5.0, 6.0, 2.0) == pytest.approx(oracle, rel=1e-6)
    assert duct_flow(0.0, 0.2, 6.0, 2.0) == 0.0


def test_a_short_duct_tends_to_its_local_losses() -> None:
    # Without friction the loss is C x velocity pressure; a coefficient of 1/0.61^2 is the orifice itself.
    area = pi * 0.2**2 / 4
    assert duct_flow(5.0, 0.2, 0.0, 1 / 0.61**2) == pytest.approx(opening_flow(area, 5.0), rel=1e-6)


def test_stock_sizes_round_up_and_flex_takes_one_more() -> None:
    assert stock_diameter(5.2 * IN) == 6 * IN
    assert stock_diameter(6 * IN) == 6 * IN
    assert stock_diameter(6.01 * IN) == 7 * IN
    assert stock_diameter(5.2 * IN, flexible=True) == 7 * IN
    with pytest.raises(OutOfRange, match="no stock size"):
        stock_diameter(STOCK_DIAMETERS[-1], flexible=True)


def test_a_size_that_no_duct_reaches() -> None:
    with pytest.raises(NoSolution):
        duct_diameter(50.0, 0.5, 30.0, 5.0)


def test_tempering() -> None:
    # 1.08 x 400 cfm x 50 F = 21,600 Btu/h, the trade's factor.
    load = tempering_load(400 * CFM, 263.15, 263.15 + 50 / 1.8)
    assert load == pytest.approx(21_600 * 0.2930711, rel=0.005)
    assert tempering_load(0.2, 293.15, 283.15) == 0.0


@pytest.mark.parametrize(
    "call",
    [
        lambda: opening_area(0.1, 0.0),
        lambda: opening_area(-0.1, 5.0),
        lambda: gross_area(1.0, 0.0),
        lambda: gross_area(1.0, 1.1),
        lambda: duct_pressure_drop(0.1, 0.0, 1.0, 1.0),
        lambda: duct_flow(5.0, 0.2, 0.0, 0.0),
        lambda: duct_diameter(0.0, 5.0, 1.0, 1.0),
    ],
)
def test_impossible_input(call) -> None:
    with pytest.raises(ValueError, match=r"must|needs"):
        call()
