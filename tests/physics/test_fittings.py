"""Loss coefficients, local losses and equivalent lengths."""

from math import sqrt

import fluids
import pytest

from checker.physics.fittings import (
    contraction_coefficient,
    elbow_angle_factor,
    expansion_coefficient,
    gored_elbow_coefficient,
    on_other_section,
    opening_coefficient,
    rectangular_elbow_coefficient,
    smooth_elbow_coefficient,
)
from checker.physics.friction import round_area
from checker.physics.losses import Resistance
from checker.physics.validity import OutOfRange

CFM = 4.719474e-4
INCH = 0.0254


def test_elbows_by_radius() -> None:
    # HVAC Systems - Duct Design (SMACNA), Table 14-10 A, B, F and note 1.
    assert [smooth_elbow_coefficient(r).value for r in (0.5, 0.75, 1.0, 1.5, 2.0, 2.5)] == [
        0.71, 0.33, 0.22, 0.15, 0.13, 0.12]  # fmt: skip
    assert smooth_elbow_coefficient(1.25).value == pytest.approx(0.185)
    assert [gored_elbow_coefficient(r).value for r in (0.75, 1.0, 1.5, 2.0)] == [0.46, 0.33, 0.24, 0.19]
    assert [gored_elbow_coefficient(1.5, gores).value for gores in (3, 4, 5)] == [0.34, 0.27, 0.24]
    assert rectangular_elbow_coefficient(1.0, 1.0).value == 0.21
    assert rectangular_elbow_coefficient(0.75, 0.25).value == 0.57
    assert rectangular_elbow_coefficient(1.75, 2.0).value == pytest.approx(0.135)
    assert [elbow_angle_factor(angle) for angle in (30, 45, 60, 90, 180)] == [0.45, 0.60, 0.78, 1.0, 1.4]
    assert elbow_angle_factor(67.5) == pytest.approx(0.84)


def test_elbows_beyond_their_tables() -> None:
    for outside in (0.45, 2.6):
        with pytest.raises(OutOfRange, match="smooth elbow"):
            smooth_elbow_coefficient(outside)
    for outside, gores in ((0.7, 5), (2.1, 3), (1.5, 7)):
        with pytest.raises(OutOfRange, match="gored elbow"):
            gored_elbow_coefficient(outside, gores)
    with pytest.raises(OutOfRange, match="rectangular elbow"):
        rectangular_elbow_coefficient(1.0, 0.2)
    with pytest.raises(OutOfRange, match="elbow angle"):
        elbow_angle_factor(181)


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
    here = Resistance(0.48, round_area(0.15)).loss(0.1)
    assert Resistance(moved, round_area(0.20)).loss(0.1) == pytest.approx(here, rel=1e-12)


# Published table of transfer grille areas for 3 Pa, printed to 0.1 in2.
@pytest.mark.parametrize(("cfm", "square_inches"), [(50, 27.0), (100, 54.0), (200, 107.9), (350, 188.9)])
def test_transfer_openings_by_the_orifice_equation(cfm: float, square_inches: float) -> None:
    # Q = 1.07 A sqrt(dp) in cfm, in2 and Pa is a discharge coefficient of 0.607 in air of 1.2 kg/m3.
    discharge = 1.07 * CFM / INCH**2 / sqrt(2 / 1.2041)
    loss, _ = Resistance(opening_coefficient(discharge), square_inches * INCH**2).loss(cfm * CFM)
    assert loss == pytest.approx(3.0, rel=0.004)


def test_signs_and_refusals() -> None:
    assert Resistance(1.0, 0.02).loss(-0.1)[0] == -Resistance(1.0, 0.02).loss(0.1)[0]
    with pytest.raises(ValueError, match="must not exceed 1"):
        opening_coefficient(1.1)
    with pytest.raises(ValueError, match="area"):
        Resistance(1.0, 0.0)
