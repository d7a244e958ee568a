"""Heat transmission: what is refused. Published U-values are in tests/published."""

import pytest

from checker.physics.assemblies import (
    R_UNIT,
    counted_fill,
    greatest_cavity,
    u_of_layers,
    u_parallel,
)


def test_shares_must_sum_to_one() -> None:
    with pytest.raises(ValueError, match="sum to 1"):
        u_parallel([(0.75, 1.0), (0.20, 1.0)])


def test_no_resistance_at_all_is_refused() -> None:
    with pytest.raises(ValueError, match="must be positive"):
        u_of_layers([0.0])


def test_cavity_of_a_two_by_four() -> None:
    """Seven per inch times 3.5 in."""
    assert greatest_cavity(0.0889) / R_UNIT == pytest.approx(24.5)


@pytest.mark.parametrize(("fill", "counted"), [(0, 0.0), (15, 13.451), (34, 29.282), (80, 53.329)])
def test_fill_of_a_ceiling_between_and_beyond_the_rows(fill: float, counted: float) -> None:
    # by hand from U 0.035, 0.030 and 0.024 less 1.67: 26.901 at R-30, 31.663 at R-38, 39.997 at R-60
    assert counted_fill(fill * R_UNIT) / R_UNIT == pytest.approx(counted, abs=1e-3)
