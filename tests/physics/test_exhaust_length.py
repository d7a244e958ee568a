"""The equation behind the exhaust duct length table; its printed cells are in tests/published."""


import pytest

from checker.physics.exhaust_length import (
    FLEX_ROUGHNESS,
    SMOOTH_ROUGHNESS,
    allowed_length,
)

CFM = 0.3048**3 / 60.0
FT = 0.3048
IN = 0.0254


def test_the_roughness_often_quoted_for_flex_does_not_reproduce_the_table() -> None:
    # With 0.003 ft a 4 in flexible duct at 50 cfm would be allowed far more than the printed 56 ft.
    assert allowed_length(50 * CFM, 4 * IN, 0.003 * FT) / FT > 66


@pytest.mark.parametrize(
    ("flow", "diameter", "roughness", "feet"),
    [
        # Regression values of the equation before rounding.
        (50, 4, FLEX_ROUGHNESS, 55.9),
        (80, 5, FLEX_ROUGHNESS, 81.1),
        (50, 5, FLEX_ROUGHNESS, 247.6),
        (50, 4, SMOOTH_ROUGHNESS, 113.6),
        (150, 6, SMOOTH_ROUGHNESS, 111.5),
    ],
)
def test_equation_before_rounding(flow: float, diameter: float, roughness: float, feet: float) -> None:
    assert allowed_length(flow * CFM, diameter * IN, roughness) / FT == pytest.approx(feet, abs=0.1)


def test_a_weaker_fan_gets_less_and_none_left_is_zero() -> None:
    full = allowed_length(80 * CFM, 5 * IN, SMOOTH_ROUGHNESS)
    assert allowed_length(80 * CFM, 5 * IN, SMOOTH_ROUGHNESS, 0.1 * 249.089) < full / 2
    assert allowed_length(300 * CFM, 3 * IN, FLEX_ROUGHNESS) == 0.0


@pytest.mark.parametrize(
    "call",
    [
        lambda: allowed_length(0.0, 0.1, 1e-4),
        lambda: allowed_length(0.05, 0.0, 1e-4),
        lambda: allowed_length(0.05, 0.1, 0.0),
    ],
)
def test_impossible_input(call) -> None:
    with pytest.raises(ValueError, match="must"):
        call()
