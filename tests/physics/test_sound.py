"""Sound levels."""

import pytest

from checker.physics.sound import (
    combined_level,
    distance_of_level,
    level_at_distance,
    level_from_power,
)


def test_a_source_doubled_is_three_decibels() -> None:
    assert combined_level([50, 50]) == pytest.approx(53.01, abs=0.005)
    with pytest.raises(ValueError, match="no level"):
        combined_level([])


def test_the_distance_of_a_level_turns_its_fall_round() -> None:
    assert distance_of_level(60.0, 3.0, 54.0) == pytest.approx(5.9858, abs=5e-5)
    for level in (35.0, 60.0, 71.5):
        assert level_at_distance(60.0, 3.0, distance_of_level(60.0, 3.0, level)) == pytest.approx(level)
    with pytest.raises(ValueError, match="distance"):
        distance_of_level(60.0, 0.0, 54.0)


def test_refusals() -> None:
    with pytest.raises(ValueError, match="distance"):
        level_at_distance(60, 0.0, 2.0)


def test_sound_power() -> None:
    # ISO 3744: over a half sphere of 1 m the pressure level is 10 log10(2 pi) = 7.98 dB below the power level.
    assert level_from_power(60.0, 1.0) == pytest.approx(52.02, abs=0.005)
    # One law with the free field: the same fall with distance.
    assert level_from_power(60.0, 8.0) == pytest.approx(level_at_distance(level_from_power(60.0, 1.0), 1.0, 8.0))
    with pytest.raises(ValueError, match="distance"):
        level_from_power(60.0, 0.0)
