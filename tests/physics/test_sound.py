"""Sound levels."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checker.physics.sound import (
    combined_level,
    level_at_distance,
    loudness,
    loudness_level,
    self_noise_change,
)
from checker.physics.validity import OutOfRange


# Published decibel sums; 80 and 81 dB after OSHA 29 CFR 1910.95 Appendix A (83.6 by its table).
@pytest.mark.parametrize(
    ("levels", "total", "tolerance"),
    [((62, 73), 73.3, 0.05), ((80, 81), 83.6, 0.1), ((88, 90), 92, 0.2)],
)
def test_adding_levels(levels: tuple[float, float], total: float, tolerance: float) -> None:
    assert combined_level(levels) == pytest.approx(total, abs=tolerance)


def test_a_source_doubled_is_three_decibels() -> None:
    assert combined_level([50, 50]) == pytest.approx(53.01, abs=0.005)
    with pytest.raises(ValueError, match="no level"):
        combined_level([])


def test_point_source_loses_six_decibels_per_doubling() -> None:
    # A published page says 3 dB for a point source; that is a line source.
    change = level_at_distance(60, 1.0, 2.0) - 60
    assert change == pytest.approx(-6.02, abs=0.005)
    assert change != pytest.approx(-3, abs=1)


# ISO 532, from memory.
@pytest.mark.parametrize(("sones", "phon"), [(0.3, 22.6), (1, 40), (2, 50), (4, 60)])
def test_loudness_level(sones: float, phon: float) -> None:
    assert loudness_level(sones) == pytest.approx(phon, abs=0.1)


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
