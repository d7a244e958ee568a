"""Dryer exhaust duct length."""

import pytest

from checker.physics.dryer_length import (
    FITTING_ALLOWANCES,
    Elbow,
    developed_length,
    fitting_allowance,
)
from checker.physics.validity import OutOfRange

FT = 0.3048


def test_thirty_five_feet_less_fittings() -> None:
    fittings = [(Elbow("mitered", 4, 90), 3), (Elbow("mitered", 4, 45), 1)]
    assert fitting_allowance(fittings) / FT == pytest.approx(17.5)
    assert developed_length(17.5 * FT, fittings) / FT == pytest.approx(35.0)
    assert fitting_allowance([]) == 0.0


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
    ],
)
def test_impossible_input(call) -> None:
    with pytest.raises(ValueError, match="must"):
        call()
