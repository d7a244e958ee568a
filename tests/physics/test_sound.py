"""Sound levels."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checker.physics.sound import (
    combined_level,
    level_at_distance,
    level_from_power,
    loudness,
    loudness_level,
    self_noise_change,
)
from checker.physics.validity import OutOfRange


def test_a_source_doubled_is_three_decibels() -> None:
    assert combined_level([50, 50]) == pytest.approx(53.01, abs=0.005)
    with pytest.raises(ValueError, match="no level"):
        combined_level([])


@given(st.floats(0.31, 100))
def test_loudness_is_the_inverse(sones: float) -> None:
    assert loudness(loudness_level(sones)) == pytest.approx(sones, rel=1e-12)


def test_self_noise() -> None:
    # Common practice: 15 to 18 dB per doubling of the velocity.
    low, high = self_noise_change(2.0)
    assert (low, high) == (pytest.approx(15.05, abs=0.01), pytest.approx(18.06, abs=0.01))
    assert self_noise_change(0.5) == (pytest.approx(-high), pytest.approx(-low))


def test_refusals() -> None:
    with pytest.raises(OutOfRange, match=r"0\.3 sone"):
        loudness_level(0.2)
    with pytest.raises(OutOfRange, match=r"0\.3 sone"):
        loudness(20.0)
    with pytest.raises(ValueError, match="sones"):
        loudness_level(0.0)
    with pytest.raises(ValueError, match="distance"):
        level_at_distance(60, 0.0, 2.0)


def test_sound_power() -> None:
    # ISO 3744: over a half sphere of 1 m the pressure level is 10 log10(2 pi) = 7.98 dB below the power level.
    assert level_from_power(60.0, 1.0) == pytest.approx(52.02, abs=0.005)
    # One law with the free field: the same fall with distance.
    assert level_from_power(60.0, 8.0) == pytest.approx(level_at_distance(level_from_power(60.0, 1.0), 1.0, 8.0))
    with pytest.raises(ValueError, match="distance"):
        level_from_power(60.0, 0.0)
