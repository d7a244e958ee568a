"""Residential load factors: a window worked out apart, and the limits of the method."""

import pytest

from checker.physics.cooling_load import (
    glass_share,
    require_method_applies,
    window_gain,
)
from checker.physics.solar import peak_irradiance
from checker.physics.validity import OutOfRange


def test_window_on_the_west() -> None:
    """Same equations at 33.6 north, U 2.87, dT 9.2, DR 11, SHGC 0.57, IAC 0.6, FF 0.56, worked out apart."""
    sun = peak_irradiance("west", 33.6).total

    assert sun == pytest.approx(730.1, abs=0.1)
    assert window_gain(2.87, 9.2, 11.0, sun, 0.57, 0.6, 0.56) == pytest.approx(151.72, rel=1e-3)


@pytest.mark.parametrize(
    ("latitude", "elevation", "outdoor", "daily_range", "reason"),
    [
        (15.0, 0.0, 308.0, 10.0, "latitude"), (40.0, 2000.0, 308.0, 10.0, "elevation"),
        (40.0, 0.0, 300.0, 10.0, "no warmer"), (40.0, 0.0, 302.0, 10.0, "no warmer"),
    ],
)  # fmt: skip
def test_outside_the_method(latitude: float, elevation: float, outdoor: float, daily_range: float, reason: str) -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 17, Table 1; rooms at 297 K."""
    with pytest.raises(OutOfRange, match=reason):
        require_method_applies(latitude, elevation, outdoor, 297.0, daily_range)


def test_inside_the_method() -> None:
    require_method_applies(40.0, 1999.0, 303.0, 297.0, 11.9)


def test_share_of_glass() -> None:
    share = glass_share({"south": 12.0, "west": 6.0, "sky": 2.0}, 100.0)

    assert share == (pytest.approx(0.20), pytest.approx(0.12), "south")
