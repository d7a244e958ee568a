"""Leakage, leakage area and design-hour infiltration."""


import pytest

from checker.physics.infiltration import (
    air_changes_from_flow,
    combined_outdoor_air,
    design_infiltration,
    effective_leakage_area,
    flow_at_pressure,
    flow_from_air_changes,
)
from checker.physics.validity import OutOfRange

CFM = 0.3048**3 / 60.0
FT3 = 0.3048**3


def test_air_changes_and_flow() -> None:
    # 18,000 ft3 at 0.77 air changes per hour at 50 Pa is 231 cfm.
    flow = flow_from_air_changes(0.77, 18_000 * FT3)
    assert flow / CFM == pytest.approx(231.0, rel=1e-12)
    assert air_changes_from_flow(flow, 18_000 * FT3) == pytest.approx(0.77, rel=1e-12)


def test_power_law() -> None:
    at_four = flow_at_pressure(1000 * CFM, 4.0)
    assert at_four / CFM == pytest.approx(1000 * (4 / 50) ** 0.65, rel=1e-12)
    assert flow_at_pressure(1.0, 0.0) == 0.0


def test_flue_raises_infiltration_and_has_a_limit() -> None:
    without = design_infiltration(0.05, 3.0, 25.0, "heating")
    assert design_infiltration(0.05, 3.0, 25.0, "heating", flue_area=0.01) > without
    with pytest.raises(OutOfRange, match="flue area"):
        design_infiltration(0.05, 3.0, 25.0, "heating", flue_area=0.025)


def test_fans_and_infiltration_together() -> None:
    # ASHRAE Handbook - Fundamentals 2021, chapter 17, equations 12 to 14.
    assert combined_outdoor_air(0.040, 0.0, 0.030) == pytest.approx(0.055)
    assert combined_outdoor_air(0.010, 0.0, 0.100) == pytest.approx(0.100)
    assert combined_outdoor_air(0.040, 0.050, 0.050) == pytest.approx(0.090)
    assert combined_outdoor_air(0.040, 0.020, 0.050, balanced=0.010) == pytest.approx(0.085)


@pytest.mark.parametrize("exponent", [0.49, 1.01])
def test_exponent_outside_orifice_and_laminar(exponent: float) -> None:
    with pytest.raises(OutOfRange, match="exponent"):
        flow_at_pressure(0.5, 4.0, exponent)


@pytest.mark.parametrize(
    "call",
    [
        lambda: flow_from_air_changes(3.0, 0.0),
        lambda: air_changes_from_flow(-1.0, 100.0),
        lambda: combined_outdoor_air(0.1, -0.1, 0.0),
        lambda: effective_leakage_area(0.1, density=0.0),
    ],
)
def test_impossible_input(call) -> None:
    with pytest.raises(ValueError, match="must"):
        call()
