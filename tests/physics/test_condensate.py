"""Condensate flow, trap and drain size."""

import pytest

from checker.physics.condensate import (
    drain_size,
    flow_of_coil,
    trap_drop,
    trap_seal,
    water_column,
)
from checker.physics.validity import OutOfRange

GALLON_PER_HOUR = 3.785412e-3 / 3600
INCH, CFM, TON = 0.0254, 4.719474e-4, 3516.85


def test_coil() -> None:
    # 1,050 Btu per lb of water and 8.33 lb per gallon: 3,600 Btu/h latent is 0.4116 gal/h
    assert flow_of_coil(3600 * 0.2930711) / GALLON_PER_HOUR == pytest.approx(3600 / 1050 / 8.33, rel=0.005)
    assert flow_of_coil(-200.0) == 0.0


def test_usual_range_per_ton() -> None:
    # 0.1 to 0.5 gal/h per ton (trade's rule) for a latent share of 10 to 30 %
    for share in (0.1, 0.3):
        assert 0.1 <= flow_of_coil(share * TON) / GALLON_PER_HOUR <= 0.5


def test_trap() -> None:
    # seal p/2 + 1 in, drop p + 1 in, by hand for 2 in w.c. of suction
    two = 2 * 249.08891
    assert water_column(two) / INCH == pytest.approx(2.0, rel=1e-4)
    assert trap_seal(two) / INCH == pytest.approx(2.0, rel=1e-4)
    assert trap_drop(two) / INCH == pytest.approx(3.0, rel=1e-4)
    assert trap_seal(0.0) == INCH


@pytest.mark.parametrize(
    ("tons", "inches"), [(1, 0.75), (20, 0.75), (20.01, 1.0), (40, 1.0), (41, 1.25), (90, 1.25), (125, 1.5)]
)
def test_drain_size(tons: float, inches: float) -> None:
    # IMC Table 307.2.2
    rows = [(20, 0.75), (40, 1.0), (90, 1.25), (125, 1.5)]
    si = [(greatest * TON, diameter * INCH) for greatest, diameter in rows]
    assert drain_size(tons * TON, si) == pytest.approx(inches * INCH)


def test_beyond_the_table() -> None:
    with pytest.raises(OutOfRange, match="beyond the last row"):
        drain_size(30 * TON, [(20 * TON, 0.75 * INCH)])


@pytest.mark.parametrize("wrong", [0.0, -1.0])
def test_impossible_input(wrong: float) -> None:
    with pytest.raises(ValueError, match="capacity"):
        drain_size(wrong, [(20 * TON, 0.75 * INCH)])
