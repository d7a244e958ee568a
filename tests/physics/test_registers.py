"""Registers: face velocity, throw, noise bands."""

import pytest

from checker.physics.registers import (
    NoiseBand,
    face_velocity,
    free_velocity,
    return_noise,
    scaled_throw,
    supply_noise,
    throw,
)
from checker.physics.validity import OutOfRange

FPM = 0.00508


def test_handbook_throw_before_the_low_velocity_cut() -> None:
    # The example's 22 m at 0.25 m/s is before the 30 % cut of the fourth zone.
    area = 0.28 * 0.43 * 0.8
    assert throw(0.3, area, 5.7, 0.25) / 0.7 == pytest.approx(22, rel=0.03)
    # The example's text says K = 5, its numbers use 5.7.
    assert throw(0.3, area, 5.0, 0.5) != pytest.approx(11.0, rel=0.1)


def test_scaling_a_listed_throw() -> None:
    assert scaled_throw(4.0, 0.05, 0.38, 0.04, 0.76) == pytest.approx(4.0 * 0.8 / 2)
    with pytest.raises(OutOfRange, match="fourth zone"):
        scaled_throw(4.0, 0.05, 0.38, 0.05, 0.25)


# Architectural Acoustics, free-opening velocities: upper end of each band, fpm.
@pytest.mark.parametrize(
    ("supply", "inlet", "band"),
    [
        (300, 360, NoiseBand(15, 20)),
        (350, 420, NoiseBand(20, 25)),
        (425, 510, NoiseBand(25, 30)),
        (500, 600, NoiseBand(30, 35)),
        (575, 690, NoiseBand(35, 40)),
        (650, 780, NoiseBand(40, 45)),
    ],
)
def test_noise_bands(supply: float, inlet: float, band: NoiseBand) -> None:
    assert supply_noise(supply * FPM) == band
    assert return_noise(inlet * FPM) == band
    assert supply_noise((supply - 1) * FPM) == band
    assert return_noise((inlet - 1) * FPM) == band


def test_noise_outside_the_table() -> None:
    assert supply_noise(249 * FPM) == NoiseBand(0, 15)
    assert return_noise(299 * FPM) == NoiseBand(0, 15)
    with pytest.raises(OutOfRange, match="supply"):
        supply_noise(651 * FPM)
    with pytest.raises(OutOfRange, match="return"):
        return_noise(781 * FPM)


def test_velocities() -> None:
    assert free_velocity(0.1, 0.1) == pytest.approx(1 / 0.75)
    assert face_velocity(0.2, 0.1) == pytest.approx(2.0)


def test_refusals() -> None:
    with pytest.raises(ValueError, match="free share"):
        free_velocity(0.1, 0.1, 1.1)
    with pytest.raises(ValueError, match="face area"):
        face_velocity(0.1, 0.0)
    with pytest.raises(ValueError, match="terminal velocity"):
        throw(0.1, 0.05, 5.0, 0.0)
    with pytest.raises(ValueError, match="velocity"):
        supply_noise(-1.0)
