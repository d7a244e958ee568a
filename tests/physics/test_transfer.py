"""Air paths out of a closed room."""

import pytest

from checker.physics.transfer import (
    TRANSFER_COEFFICIENT,
    closed_door_pressure,
    transfer_area,
    undercut_area,
)

CFM = 0.3048**3 / 60.0
IN = 0.0254
IN2 = 0.0254**2


def test_undercut_is_taken_off() -> None:
    assert transfer_area(10 * CFM, 3.0, undercut_area(32 * IN, 0.5 * IN)) == 0.0


def test_coefficient_is_an_orifice_of_0_607() -> None:
    orifice = 0.607 * (2 / 1.2041) ** 0.5
    assert orifice == pytest.approx(TRANSFER_COEFFICIENT, rel=0.001)


def test_one_square_inch_per_cfm_is_below_one_pascal() -> None:
    assert closed_door_pressure(100 * CFM, 100 * IN2) == pytest.approx(0.873, abs=0.001)


def test_pressure_and_area_are_inverse() -> None:
    assert transfer_area(0.05, closed_door_pressure(0.05, 0.02)) == pytest.approx(0.02, rel=1e-14)
    assert undercut_area(0.8, 0.01, carpet=0.015) == 0.0


@pytest.mark.parametrize(
    "call",
    [
        lambda: closed_door_pressure(0.05, 0.0),
        lambda: closed_door_pressure(-0.05, 0.1),
        lambda: transfer_area(0.05, 0.0),
        lambda: undercut_area(0.0, 0.01),
    ],
)
def test_impossible_input(call) -> None:
    with pytest.raises(ValueError, match="must"):
        call()
