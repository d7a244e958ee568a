"""Duct conduction and leakage."""

import pytest
from scipy.integrate import solve_ivp

from checker.physics.duct_heat import (
    conductance,
    exit_temperature,
    leakage_coefficient,
    leakage_of_class,
)
from checker.physics.losses import Leak


def test_exit_temperature_against_integration() -> None:
    run, flow = conductance(0.96, 9.0, 1.0), 55.0
    path = solve_ivp(lambda x, t: run / flow * (320.0 - t), (0.0, 1.0), [286.0], rtol=1e-10, atol=1e-10)
    assert exit_temperature(286.0, 320.0, run, flow) == pytest.approx(path.y[0][-1], abs=1e-6)


def test_still_air_takes_the_surroundings() -> None:
    assert exit_temperature(286.0, 320.0, 5.0, 0.0) == 320.0


def test_leakage_as_a_network_part() -> None:
    flow = leakage_of_class(24, 12.0, 80.0)
    assert Leak(leakage_coefficient(24, 12.0), 0.65).loss(flow)[0] == pytest.approx(80.0)


def test_refusals() -> None:
    with pytest.raises(ValueError, match="perimeter"):
        conductance(0.0, 5.0, 1.0)
    with pytest.raises(ValueError, match="insulation"):
        conductance(1.0, 5.0, -1.0)
