"""Dryer exhaust duct length."""

import pytest

from checker.physics.dryer_length import (
    FITTING_ALLOWANCES,
    Elbow,
    allowed_straight,
    allowed_with_elbows_included,
    developed_length,
    fitting_allowance,
)
from checker.physics.validity import OutOfRange

FT = 0.3048


@pytest.mark.parametrize(
    ("construction", "radius", "angle", "feet"),
    [
        # IRC Table M1502.4.5.1 (2015, 2018) and M1502.4.6.1 (2021, 2024).
        ("mitered", 4, 45, 2.5),
        ("mitered", 4, 90, 5.0),
        ("smooth", 6, 45, 1.0),
        ("smooth", 6, 90, 1.75),
        ("smooth", 8, 45, 1.0),
        ("smooth", 8, 90, 1.583),
        ("smooth", 10, 45, 0.75),
        ("smooth", 10, 90, 1.5),
    ],
)
def test_fitting_table(construction: str, radius: int, angle: int, feet: float) -> None:
    allowance = fitting_allowance([(Elbow(construction, radius, angle), 1)]) / FT
    assert allowance == pytest.approx(feet, abs=0.0005)


def test_thirty_five_feet_less_fittings() -> None:
    fittings = [(Elbow("mitered", 4, 90), 3), (Elbow("mitered", 4, 45), 1)]
    assert allowed_straight(35 * FT, fittings) / FT == pytest.approx(17.5)
    assert developed_length(17.5 * FT, fittings) / FT == pytest.approx(35.0)
    assert allowed_straight(35 * FT, [(Elbow("mitered", 4, 90), 8)]) == 0.0
    assert allowed_straight(35 * FT, []) == 35 * FT


def test_older_code_with_twenty_five_feet() -> None:
    # 2006-era IRC M1502: 25 ft, 2.5 ft for each 45 and 5 ft for each 90 degree bend.
    fittings = [(Elbow("mitered", 4, 90), 2), (Elbow("mitered", 4, 45), 2)]
    assert allowed_straight(25 * FT, fittings) / FT == pytest.approx(10.0)


@pytest.mark.parametrize(("elbows", "feet"), [(0, 14), (2, 14), (3, 12), (5, 8), (9, 0), (12, 0)])
def test_uniform_mechanical_code_form(elbows: int, feet: float) -> None:
    # Uniform Mechanical Code 504: 14 ft with two 90s included, 2 ft for each more.
    length = allowed_with_elbows_included(14 * FT, 2, 2 * FT, elbows) / FT
    assert length == pytest.approx(feet, abs=1e-12)


def test_an_elbow_without_an_allowance() -> None:
    with pytest.raises(OutOfRange, match="30 degree"):
        fitting_allowance([(Elbow("smooth", 6, 30), 1)])
    own = {**FITTING_ALLOWANCES, Elbow("smooth", 6, 30): 0.2}
    assert fitting_allowance([(Elbow("smooth", 6, 30), 2)], own) == pytest.approx(0.4)


@pytest.mark.parametrize(
    "call",
    [
        lambda: developed_length(-1.0, []),
        lambda: fitting_allowance([(Elbow("mitered", 4, 90), -1)]),
        lambda: allowed_straight(0.0, []),
        lambda: allowed_with_elbows_included(14.0, 2, 2.0, -1),
    ],
)
def test_impossible_input(call) -> None:
    with pytest.raises(ValueError, match="must"):
        call()
