"""Size ratio, airflow for a capacity, temperature rise, altitude."""

import pytest

from checker.physics.sizing import (
    airflow_per_capacity,
    altitude_factor,
    temperature_rise,
)

BTUH = 0.29307107017
CFM = 0.3048**3 / 60.0
TON = 12_000 * BTUH


def test_thin_air_rises_more() -> None:
    # Standard atmosphere: 83.2 % of the pressure at 5,000 ft.
    ratio = temperature_rise(15_000.0, 0.5, 1524.0) / temperature_rise(15_000.0, 0.5)
    assert ratio == pytest.approx(1 / 0.832, rel=1e-3)


def test_airflow_per_capacity() -> None:
    assert airflow_per_capacity(1200 * CFM, 3 * TON) * TON / CFM == pytest.approx(400.0)
    # At 5,000 ft 481 cfm per ton carry what 400 do at sea level.
    assert airflow_per_capacity(481 * CFM, TON, 1524.0) * TON / CFM == pytest.approx(400.0, rel=2e-3)


def test_altitude_factor() -> None:
    # Rule of thumb, from memory of NFPA 54: 4 % for each 1,000 ft above sea level, from 2,000 ft on.
    assert altitude_factor(0.0) == 1.0
    assert altitude_factor(609.6) == 1.0
    assert altitude_factor(5000 * 0.3048) == pytest.approx(0.80)
    assert altitude_factor(30_000.0) == 0.0
