"""Flexible duct friction."""

import numpy as np
import pytest

from checker.physics.flexible import (
    EXHAUST_TABLE_ROUGHNESS,
    compression_factor,
    compression_ratio,
    fit_loss_curve,
    flexible_friction,
    flexible_friction_bounds,
    with_sag,
)
from checker.physics.friction import friction_per_metre
from checker.physics.validity import OutOfRange

INCH = 0.0254


def test_handbook_example() -> None:
    # ASHRAE Handbook - Fundamentals 2021, chapter 21, example 6: 1.8 m of 250 mm at 470 L/s.
    stretched = 1.8 * flexible_friction(0.470, 0.250, 0.0, 1.204)
    assert stretched == pytest.approx(11.4, rel=0.03)
    for compression, printed in ((0.15, 40.0), (0.30, 68.9)):
        ours = 1.8 * flexible_friction(0.470, 0.250, compression, 1.204)
        assert ours == pytest.approx(printed, rel=0.03)
    # At 4 % the example multiplies by its rounded factor 1.7 and prints 19.5 Pa: hold the factor to it.
    slightly = 1.8 * flexible_friction(0.470, 0.250, 0.04, 1.204)
    assert slightly / stretched == pytest.approx(19.5 / 11.4, abs=0.05)


# Same chapter, Table 2: factors for a 10 in. duct.
@pytest.mark.parametrize(("compression", "factor"), [(0.04, 1.7), (0.15, 3.5), (0.30, 5.9)])
def test_handbook_factors(compression: float, factor: float) -> None:
    assert compression_factor(10 * INCH, compression) == pytest.approx(factor, abs=0.05)


# Same chapter, equation 23, worked by hand to two decimals.
@pytest.mark.parametrize(
    ("inches", "factors"),
    [(6, (2.09, 5.09, 9.17)), (8, (1.85, 4.18, 7.35)), (10, (1.66, 3.47, 5.94)), (12, (1.51, 2.92, 4.84))],
)
def test_factors_by_size(inches: float, factors: tuple[float, float, float]) -> None:
    for compression, factor in zip((0.04, 0.15, 0.30), factors, strict=True):
        assert compression_factor(inches * INCH, compression) == pytest.approx(factor, abs=0.006)


def test_laboratory_study_of_compressed_flexible_duct() -> None:
    # Laboratory report on compressed flexible duct, 6 to 10 in.: moderate about 4 times, severe close to 10.
    moderate = [compression_factor(inches * INCH, 0.15) for inches in (6, 8, 10)]
    assert sum(moderate) / 3 == pytest.approx(4, rel=0.3)
    assert compression_factor(6 * INCH, 0.30) == pytest.approx(10, rel=0.3)


def test_code_flexible_is_nearly_stretched() -> None:
    # The exhaust table's roughness equals a compression of about 1 %.
    ratio = friction_per_metre(0.05, 6 * INCH, EXHAUST_TABLE_ROUGHNESS) / flexible_friction(
        0.05, 6 * INCH, 0.0
    )
    assert compression_factor(6 * INCH, 0.005) < ratio < compression_factor(6 * INCH, 0.01)


def test_bounds() -> None:
    bounds = flexible_friction_bounds(0.05, 8 * INCH)
    assert bounds.lower == friction_per_metre(0.05, 8 * INCH, EXHAUST_TABLE_ROUGHNESS)
    assert bounds.upper == pytest.approx(flexible_friction(0.05, 8 * INCH, 0.15))
    assert not bounds.extrapolated
    small = flexible_friction_bounds(0.02, 4 * INCH)
    assert small.extrapolated
    assert small.upper > small.lower
    # Thesis on 12 to 16 in. duct: more than 4 times the stretched loss beyond 4 % compression.
    large = flexible_friction_bounds(0.3, 14 * INCH)
    assert large.extrapolated
    assert large.upper == pytest.approx(4 * friction_per_metre(0.3, 14 * INCH, 0.9e-3))


def test_compression_and_sag() -> None:
    assert compression_ratio(8.5, 10.0) == pytest.approx(0.15)
    assert with_sag(0.04, 0.042) == 0.04
    assert with_sag(0.04, 0.05) == pytest.approx(0.09)
    with pytest.raises(ValueError, match="exceeds"):
        compression_ratio(10.1, 10.0)


def test_fit_of_a_loss_curve_is_least_squares() -> None:
    points = [(50.0, 4.1), (100.0, 15.2), (150.0, 33.9), (200.0, 57.0)]
    slope, intercept = np.polyfit(np.log([q for q, _ in points]), np.log([p for _, p in points]), 1)
    fit = fit_loss_curve(points)
    assert fit.exponent == pytest.approx(slope, rel=1e-9)
    assert fit.coefficient == pytest.approx(np.exp(intercept), rel=1e-9)


def test_refusals() -> None:
    for inches in (5.9, 12.1):
        with pytest.raises(OutOfRange, match="diameter"):
            compression_factor(inches * INCH, 0.04)
    with pytest.raises(OutOfRange, match="compression"):
        compression_factor(8 * INCH, 0.31)
    with pytest.raises(ValueError, match="compression"):
        compression_factor(8 * INCH, -0.01)
    with pytest.raises(ValueError, match="two points"):
        fit_loss_curve([(1.0, 1.0)])
    with pytest.raises(ValueError, match="two different"):
        fit_loss_curve([(1.0, 1.0), (1.0, 2.0)])
    with pytest.raises(OutOfRange, match="exponent"):
        fit_loss_curve([(1.0, 1.0), (2.0, 2.0)])
