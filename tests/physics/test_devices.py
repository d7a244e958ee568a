"""Pressure drop of filters, coils, grilles."""

from math import inf

import numpy as np
import pytest

from checker.physics.devices import (
    EXPONENTS,
    drop_from_points,
    drop_from_rating,
    filter_face_area,
)
from checker.physics.validity import OutOfRange

M3_PER_HOUR = 1 / 3600


def test_filter_at_half_flow() -> None:
    full, half = 3400 * M3_PER_HOUR, 1700 * M3_PER_HOUR
    assert drop_from_rating(half, 128, full, 1.4) == pytest.approx(48.5, rel=0.01)


def test_exponents_are_within_physics() -> None:
    assert all(1.0 <= exponent <= 2.0 for exponent in EXPONENTS.values())
    assert EXPONENTS["grille"] == 2.0


def test_density_acts_on_the_turbulent_part() -> None:
    assert drop_from_rating(1.0, 100, 1.0, 2.0, density_ratio=0.8) == pytest.approx(80)
    assert drop_from_rating(1.0, 100, 1.0, 1.0, density_ratio=0.8) == 100
    assert drop_from_rating(-1.0, 100, 1.0, 1.5) == -100


def test_points_are_joined_log_log() -> None:
    points = [(0.2, 20.0), (0.4, 60.0), (0.6, 130.0)]
    for flow in (0.11, 0.2, 0.3, 0.4, 0.5, 0.6, 0.89):
        if 0.2 <= flow <= 0.6:
            expected = np.exp(np.interp(np.log(flow), np.log([0.2, 0.4, 0.6]), np.log([20.0, 60.0, 130.0])))
            assert drop_from_points(flow, points) == pytest.approx(expected, rel=1e-9)
    low_exponent = np.log(3) / np.log(2)
    assert drop_from_points(0.1, points) == pytest.approx(20 * 0.5**low_exponent)
    high_exponent = np.log(130 / 60) / np.log(1.5)
    assert drop_from_points(0.9, points) == pytest.approx(130 * 1.5**high_exponent)
    for outside in (0.099, 0.901):
        with pytest.raises(OutOfRange, match="airflow"):
            drop_from_points(outside, points)


def test_filter_face_is_smaller_than_its_name() -> None:
    # Common practice: a nominal 20 x 20 in. filter measures 19.5 in. each way.
    inch = 0.0254
    assert filter_face_area(20 * inch, 20 * inch) / inch**2 == pytest.approx(19.5**2)
    with pytest.raises(ValueError, match="width"):
        filter_face_area(0.4 * inch, 20 * inch)


def test_refusals() -> None:
    with pytest.raises(ValueError, match="exponent"):
        drop_from_rating(1.0, 100, 1.0, 2.1)
    with pytest.raises(ValueError, match="rated drop"):
        drop_from_rating(1.0, 0.0, 1.0, 1.3)
    with pytest.raises(ValueError, match="airflow"):
        drop_from_rating(inf, 100, 1.0, 1.3)
    with pytest.raises(ValueError, match="two points"):
        drop_from_points(0.2, [(0.2, 20.0)])
    with pytest.raises(ValueError, match="must rise"):
        drop_from_points(0.2, [(0.2, 20.0), (0.4, 20.0)])
