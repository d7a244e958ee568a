"""Loss coefficients, local losses and equivalent lengths."""

from math import sqrt

import fluids
import pytest

from checker.physics.fittings import (
    COEFFICIENTS,
    coefficient_of_length,
    contraction_coefficient,
    elbow_angle_factor,
    expansion_coefficient,
    fitting_loss,
    gored_elbow_coefficient,
    length_of_coefficient,
    on_other_section,
    opening_coefficient,
    smooth_elbow_coefficient,
)
from checker.physics.friction import friction_per_metre, round_area, velocity, velocity_pressure
from checker.physics.validity import OutOfRange

CFM = 4.719474e-4
FOOT = 0.3048
INCH = 0.0254
INCH_WATER = 249.089
FPM = 0.00508
SMOOTH = 0.09e-3


def test_main_of_a_branching_example() -> None:
    # Published worked example (air conditioning textbook): 400 cfm, 10 in. x 50 ft, plenum exit 0.85.
    friction = friction_per_metre(400 * CFM, 10 * INCH, SMOOTH) * 50 * FOOT
    loss = friction + fitting_loss(0.85, 400 * CFM, round_area(10 * INCH))
    assert loss / INCH_WATER == pytest.approx(0.0735, rel=0.04)


def test_branch_of_the_same_example() -> None:
    # 120 cfm, 6 in. x 40 ft, take-off 0.48 on the upstream velocity of 733 fpm, elbows 0.37: 0.0813 in.
    area = round_area(6 * INCH)
    take_off = 0.48 * velocity_pressure(733 * FPM)
    elbows = 2 * fitting_loss(0.37, 120 * CFM, area)
    friction = friction_per_metre(120 * CFM, 6 * INCH, SMOOTH) * 40 * FOOT
    assert (take_off + elbows + friction) / INCH_WATER == pytest.approx(0.0813, rel=0.04)


def test_series_of_two_ducts() -> None:
    # Fluid Mechanics textbook, example 14.6: Fanning factor 0.008, 0.15 m x 10 m and 0.30 m x 26 m, K 4 on
    # the first; 0.2 and 0.8 m3/s of air of 1.2 kg/m3 need 684.5 N/m2 of the fan.
    small, large = velocity(0.2, round_area(0.15)), velocity(0.8, round_area(0.30))
    first = velocity_pressure(small, 1.2) * (4 + 4 * 0.008 * 10 / 0.15)
    second = velocity_pressure(large, 1.2) * 4 * 0.008 * 26 / 0.30
    assert first + second == pytest.approx(684.5, rel=0.002)
    coefficient = 4 + 4 * 0.008 * 10 / 0.15
    assert fitting_loss(coefficient, 0.2, round_area(0.15), 1.2) == pytest.approx(first, rel=1e-12)


# Principles of HVAC, 9th edition, supplement, fittings 1-1 and 1-2; duct fitting database CD3-10.
@pytest.mark.parametrize(
    ("kind", "value"),
    [
        ("entry, flush with a wall", 0.50),
        ("entry, sharp projecting duct", 1.0),
        ("entry, bellmouth, r/D 0.2", 0.03),
        ("elbow, round, 7 gores, r/D 2.5, 90 degrees", 0.11),
    ],
)
def test_sourced_coefficients(kind: str, value: float) -> None:
    assert COEFFICIENTS[kind].value == value
    assert "memory" not in COEFFICIENTS[kind].source


def test_elbows_by_radius() -> None:
    # ASHRAE duct fitting database, smooth and 5-piece round elbows, from memory.
    assert [smooth_elbow_coefficient(r).value for r in (0.75, 1.0, 1.5, 2.0)] == [0.33, 0.22, 0.15, 0.13]
    assert smooth_elbow_coefficient(1.25).value == pytest.approx(0.185)
    assert [gored_elbow_coefficient(r).value for r in (1.0, 1.5)] == [0.33, 0.24]
    assert elbow_angle_factor(45) == 0.6
    assert elbow_angle_factor(67.5) == pytest.approx(0.8)
    for outside in (0.7, 2.1):
        with pytest.raises(OutOfRange, match="smooth elbow"):
            smooth_elbow_coefficient(outside)
    with pytest.raises(OutOfRange, match="elbow angle"):
        elbow_angle_factor(30)


def test_expansion_and_contraction_against_fluids() -> None:
    expansion = expansion_coefficient(round_area(0.1), round_area(0.2))
    assert expansion.value == pytest.approx(fluids.diffuser_sharp(Di1=0.1, Di2=0.2), rel=1e-9)
    assert expansion.section == "upstream"
    contraction = contraction_coefficient(round_area(0.2), round_area(0.1))
    library = fluids.fittings.contraction_conical_Crane(Di1=0.2, Di2=0.1, angle=180)
    assert contraction.value == pytest.approx(library, rel=1e-9)
    assert contraction.section == "downstream"
    with pytest.raises(ValueError, match="expansion"):
        expansion_coefficient(0.2, 0.1)
    with pytest.raises(ValueError, match="contraction"):
        contraction_coefficient(0.1, 0.2)


def test_a_coefficient_moves_to_another_section() -> None:
    moved = on_other_section(0.48, round_area(0.15), round_area(0.20))
    here = fitting_loss(0.48, 0.1, round_area(0.15))
    assert fitting_loss(moved, 0.1, round_area(0.20)) == pytest.approx(here, rel=1e-12)


# Published table of transfer grille areas for 3 Pa, printed to 0.1 in2.
@pytest.mark.parametrize(("cfm", "square_inches"), [(50, 27.0), (100, 54.0), (200, 107.9), (350, 188.9)])
def test_transfer_openings_by_the_orifice_equation(cfm: float, square_inches: float) -> None:
    # Q = 1.07 A sqrt(dp) in cfm, in2 and Pa is a discharge coefficient of 0.607 in air of 1.2 kg/m3.
    discharge = 1.07 * CFM / INCH**2 / sqrt(2 / 1.2041)
    loss = fitting_loss(opening_coefficient(discharge), cfm * CFM, square_inches * INCH**2)
    assert loss == pytest.approx(3.0, rel=0.004)


def test_misprinted_transfer_opening() -> None:
    # The same table prints 14.4 in2 at 275 cfm, a dropped digit of 148.4.
    discharge = 1.07 * CFM / INCH**2 / sqrt(2 / 1.2041)
    printed = fitting_loss(opening_coefficient(discharge), 275 * CFM, 14.4 * INCH**2)
    right = fitting_loss(opening_coefficient(discharge), 275 * CFM, 148.4 * INCH**2)
    assert printed > 300
    assert right == pytest.approx(3.0, rel=0.004)


def test_equivalent_length_and_coefficient_are_inverse() -> None:
    length = length_of_coefficient(0.68, 200 * CFM, 6 * INCH, SMOOTH)
    assert coefficient_of_length(length, 200 * CFM, 6 * INCH, SMOOTH) == pytest.approx(0.68, rel=1e-12)
    by_length = friction_per_metre(200 * CFM, 6 * INCH, SMOOTH) * length
    assert by_length == pytest.approx(fitting_loss(0.68, 200 * CFM, round_area(6 * INCH)), rel=1e-9)


def test_signs_and_refusals() -> None:
    assert fitting_loss(1.0, -0.1, 0.02) == -fitting_loss(1.0, 0.1, 0.02)
    assert fitting_loss(-0.3, 0.1, 0.02) < 0.0
    with pytest.raises(ValueError, match=r"below -0\.5"):
        fitting_loss(-0.6, 0.1, 0.02)
    with pytest.raises(ValueError, match="must not exceed 1"):
        opening_coefficient(1.1)
    with pytest.raises(ValueError, match="airflow"):
        length_of_coefficient(0.5, 0.0, 0.15, SMOOTH)
    with pytest.raises(ValueError, match="area"):
        fitting_loss(1.0, 0.1, 0.0)
