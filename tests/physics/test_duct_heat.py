"""Duct conduction and leakage."""

from math import pi

import pytest
from scipy.integrate import solve_ivp

from checker.physics.duct_heat import (
    FILM_RESISTANCE,
    LEAKAGE_CLASSES,
    conductance,
    conduction_gain,
    delivered_fraction,
    exit_temperature,
    leakage_coefficient,
    leakage_from_test,
    leakage_of_class,
    return_leakage_gain,
    supply_leakage_loss,
)
from checker.physics.losses import Leak

CFM = 4.719474e-4
FOOT = 0.3048
SQUARE_FOOT = FOOT**2
INCH_WATER = 249.089
R_VALUE = 0.1761102


def from_fahrenheit(fahrenheit: float) -> float:
    return (fahrenheit - 32) / 1.8 + 273.15


def test_film_resistance() -> None:
    # Insulation design guide after ASHRAE Handbook - Fundamentals, chapter 4: 0.85 h ft2 F/Btu in all.
    in_inch_pound = FILM_RESISTANCE / R_VALUE
    assert in_inch_pound == pytest.approx(0.85, abs=0.005)


@pytest.mark.parametrize(("cfm", "leaving"), [(400, 57.35), (200, 59.63), (100, 63.97)])
def test_attic_run(cfm: float, leaving: float) -> None:
    # Round 12 in. x 30 ft, R-6, 55 F air, 130 F attic: T = Ta - (Ta - Ti) exp(-UA/mcp) of the same chapter.
    run = conductance(pi * FOOT, 30 * FOOT, 6 * R_VALUE)
    flow = cfm * CFM * 1.2014 * 1005
    out = exit_temperature(from_fahrenheit(55), from_fahrenheit(130), run, flow)
    assert (out - 273.15) * 1.8 + 32 == pytest.approx(leaving, abs=0.05)


def test_exit_temperature_against_integration() -> None:
    run, flow = conductance(0.96, 9.0, 1.0), 55.0
    path = solve_ivp(lambda x, t: run / flow * (320.0 - t), (0.0, 1.0), [286.0], rtol=1e-10, atol=1e-10)
    assert exit_temperature(286.0, 320.0, run, flow) == pytest.approx(path.y[0][-1], abs=1e-6)
    assert conduction_gain(286.0, 320.0, run, flow) == pytest.approx(flow * (path.y[0][-1] - 286.0), abs=1e-4)


def test_still_air_takes_the_surroundings() -> None:
    assert exit_temperature(286.0, 320.0, 5.0, 0.0) == 320.0
    assert conduction_gain(286.0, 320.0, 0.0, 50.0) == 0.0


def test_leakage_class_12_at_half_an_inch() -> None:
    # SMACNA HVAC Air Duct Leakage Test Manual, F = CL p**0.65: 7.65 cfm per 100 ft2.
    leak = leakage_of_class(12, 100 * SQUARE_FOOT, 0.5 * INCH_WATER)
    assert leak / CFM == pytest.approx(7.65, abs=0.005)
    assert leakage_of_class(12, 100 * SQUARE_FOOT, INCH_WATER) / CFM == pytest.approx(12.0, rel=1e-4)


def test_leakage_classes() -> None:
    # Same manual, Table 4-1.
    rectangular = [LEAKAGE_CLASSES[f"rectangular metal, seal class {c}"] for c in "CBA"]
    round_duct = [LEAKAGE_CLASSES[f"round metal, seal class {c}"] for c in "CBA"]
    assert (rectangular, round_duct) == ([24, 12, 6], [12, 6, 3])
    assert LEAKAGE_CLASSES["rectangular metal, unsealed"] == 48
    assert (LEAKAGE_CLASSES["flexible, unsealed"], LEAKAGE_CLASSES["flexible, sealed"]) == (30, 12)


def test_leakage_as_a_network_part() -> None:
    flow = leakage_of_class(24, 12.0, 80.0)
    assert Leak(leakage_coefficient(24, 12.0), 0.65).loss(flow)[0] == pytest.approx(80.0)


def test_leakage_from_a_test() -> None:
    assert leakage_from_test(0.05, 25.0, 25.0) == 0.05
    assert leakage_from_test(0.05, 25.0, 60.0) == pytest.approx(0.05 * 2.4**0.65)
    assert leakage_from_test(0.05, 25.0, 60.0, 0.60) == pytest.approx(0.05 * 2.4**0.60)


def test_system_losses() -> None:
    # 10 % of 600 W/K supplied at 286 K to rooms at 297 K; 5 % of the return drawn from a 325 K attic.
    assert supply_leakage_loss(0.10, 600.0, 286.0, 297.0) == pytest.approx(660.0)
    assert return_leakage_gain(0.05, 600.0, 325.0, 297.0) == pytest.approx(840.0)
    assert return_leakage_gain(0.05, 600.0, 275.0, 295.0) == pytest.approx(-600.0)
    assert delivered_fraction(8000.0, 2000.0) == pytest.approx(0.8)


def test_refusals() -> None:
    with pytest.raises(ValueError, match="perimeter"):
        conductance(0.0, 5.0, 1.0)
    with pytest.raises(ValueError, match="insulation"):
        conductance(1.0, 5.0, -1.0)
    with pytest.raises(ValueError, match="leaking share"):
        supply_leakage_loss(1.1, 600.0, 286.0, 297.0)
    with pytest.raises(ValueError, match="exponent"):
        leakage_from_test(0.05, 25.0, 60.0, 1.1)
    with pytest.raises(ValueError, match="tested pressure"):
        leakage_from_test(0.05, 0.0, 60.0)
