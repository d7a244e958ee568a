"""Leakage, leakage area and design-hour infiltration."""

from math import sqrt

import pytest

from checker.physics.infiltration import (
    UNIT_LEAKAGE_AREA,
    air_changes_from_flow,
    combined_in_quadrature,
    combined_outdoor_air,
    design_infiltration,
    effective_leakage_area,
    equivalent_leakage_area,
    flow_at_pressure,
    flow_at_test_pressure,
    flow_from_air_changes,
    normalized_leakage,
    rule_of_thumb_infiltration,
)
from checker.physics.validity import OutOfRange

CFM = 0.3048**3 / 60.0
IN2 = 0.0254**2
FT3 = 0.3048**3


def test_air_changes_and_flow() -> None:
    # 18,000 ft3 at 0.77 air changes per hour at 50 Pa is 231 cfm.
    flow = flow_from_air_changes(0.77, 18_000 * FT3)
    assert flow / CFM == pytest.approx(231.0, rel=1e-12)
    assert air_changes_from_flow(flow, 18_000 * FT3) == pytest.approx(0.77, rel=1e-12)


def test_power_law_and_back() -> None:
    at_four = flow_at_pressure(1000 * CFM, 4.0)
    assert at_four / CFM == pytest.approx(1000 * (4 / 50) ** 0.65, rel=1e-12)
    assert flow_at_test_pressure(at_four, 4.0) / CFM == pytest.approx(1000.0, rel=1e-12)
    assert flow_at_pressure(1.0, 0.0) == 0.0


def test_leakage_areas_from_flow_at_50_pascal() -> None:
    # Published trade conversions: ELA (4 Pa) in in2 is CFM50 / 18, EqLA (10 Pa) is CFM50 / 10.
    assert effective_leakage_area(1800 * CFM) / IN2 == pytest.approx(1800 / 18, rel=0.012)
    assert effective_leakage_area(1820 * CFM) / IN2 == pytest.approx(100.0, rel=0.001)
    assert equivalent_leakage_area(1000 * CFM) / IN2 == pytest.approx(1000 / 10, rel=0.04)
    assert equivalent_leakage_area(969 * CFM) / IN2 == pytest.approx(100.0, rel=0.001)


def test_normalized_leakage_definition() -> None:
    # ASHRAE 62.2, 4.1.2: 1000 x area / floor area at a height of 2.5 m.
    assert normalized_leakage(0.05, 200.0, 2.5) == pytest.approx(0.25)
    assert normalized_leakage(0.05, 200.0, 5.0) == pytest.approx(0.25 * 2**0.4)


def test_rule_of_thumb() -> None:
    # Vermont worksheet: 2,480 cfm at 50 Pa over 12.4 is 200 cfm.
    assert rule_of_thumb_infiltration(2480 * CFM, 12.4) / CFM == pytest.approx(200.0, rel=1e-12)


def test_design_infiltration_of_the_handbook_house() -> None:
    # ASHRAE Handbook - Fundamentals 2021, chapter 17, equations 8 to 10: 340 m2 exposed, "good", height 3 m.
    area = 340.0 * UNIT_LEAKAGE_AREA["good"]
    assert area * 1e4 == pytest.approx(476.0)
    assert design_infiltration(area, 3.0, 25.0, "heating") * 1e3 == pytest.approx(36.8, rel=0.005)
    assert design_infiltration(area, 3.0, 9.0, "cooling") * 1e3 == pytest.approx(16.8, rel=0.005)


@pytest.mark.parametrize(
    ("outdoor", "season", "printed"),
    [
        # ASHRAE Handbook - Fundamentals 2021, chapter 17, Table 5, height 2.5 m, L/(s cm2).
        (-40, "heating", 0.10),
        (-30, "heating", 0.095),
        (-20, "heating", 0.086),
        (-10, "heating", 0.077),
        (0, "heating", 0.069),
        (10, "heating", 0.060),
        (30, "cooling", 0.031),
        (35, "cooling", 0.035),
        (40, "cooling", 0.040),
    ],
)
def test_driving_force_table(outdoor: float, season: str, printed: float) -> None:
    indoor = 20.0 if season == "heating" else 24.0
    half_digit = 0.005 if outdoor == -40 else 0.0005  # that cell is printed with two decimals
    drive = design_infiltration(1e-4, 2.5, indoor - outdoor, season) * 1e3  # type: ignore[arg-type]
    assert drive == pytest.approx(printed, abs=half_digit + 1e-12)


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


def test_quadrature_is_a_different_answer() -> None:
    assert combined_in_quadrature(0.040, 0.0, 0.030) == pytest.approx(0.050)
    assert combined_in_quadrature(0.040, 0.020, 0.050, 0.010) == pytest.approx(sqrt(25e-4) + 0.030)


@pytest.mark.parametrize("exponent", [0.49, 1.01])
def test_exponent_outside_orifice_and_laminar(exponent: float) -> None:
    with pytest.raises(OutOfRange, match="exponent"):
        flow_at_pressure(0.5, 4.0, exponent)


@pytest.mark.parametrize(
    "call",
    [
        lambda: flow_from_air_changes(3.0, 0.0),
        lambda: flow_at_test_pressure(0.1, 0.0),
        lambda: air_changes_from_flow(-1.0, 100.0),
        lambda: normalized_leakage(0.0, 100.0, 2.5),
        lambda: rule_of_thumb_infiltration(1.0, 0.0),
        lambda: combined_outdoor_air(0.1, -0.1, 0.0),
        lambda: effective_leakage_area(0.1, density=0.0),
    ],
)
def test_impossible_input(call) -> None:
    with pytest.raises(ValueError, match="must"):
        call()
