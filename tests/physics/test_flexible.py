"""Flexible duct friction."""

import pytest

from checker.physics.flexible import (
    EXHAUST_TABLE_ROUGHNESS,
    compression_factor,
    flexible_friction_bounds,
    with_sag,
)
from checker.physics.friction import friction_per_meter

INCH = 0.0254


def test_code_flexible_is_nearly_stretched() -> None:
    # The exhaust table's roughness equals a compression of about 1 %.
    ratio = friction_per_meter(0.05, 6 * INCH, EXHAUST_TABLE_ROUGHNESS) / friction_per_meter(0.05, 6 * INCH, 0.9e-3)
    assert compression_factor(6 * INCH, 0.005) < ratio < compression_factor(6 * INCH, 0.01)


def test_bounds() -> None:
    bounds = flexible_friction_bounds(0.05, 8 * INCH)
    assert bounds.lower == friction_per_meter(0.05, 8 * INCH, EXHAUST_TABLE_ROUGHNESS)
    assert bounds.upper == pytest.approx(friction_per_meter(0.05, 8 * INCH, 0.9e-3) * compression_factor(8 * INCH, 0.15))
    assert not bounds.extrapolated
    small = flexible_friction_bounds(0.02, 4 * INCH)
    assert small.extrapolated
    assert small.upper > small.lower
    # Thesis on 12 to 16 in. duct: more than 4 times the stretched loss beyond 4 % compression.
    large = flexible_friction_bounds(0.3, 14 * INCH)
    assert large.extrapolated
    assert large.upper == pytest.approx(4 * friction_per_meter(0.3, 14 * INCH, 0.9e-3))


def test_compression_and_sag() -> None:
    assert with_sag(0.04, 0.042) == 0.04
    assert with_sag(0.04, 0.05) == pytest.approx(0.09)
