"""The exhaust duct length table, cell for cell."""

from math import inf, pi

import pytest

from checker.physics.exhaust_length import (
    FLEX_ROUGHNESS,
    SMOOTH_ROUGHNESS,
    allowed_length,
    length_after_elbows,
    table_diameter,
    tabulated_length,
)

CFM = 0.3048**3 / 60.0
FT = 0.3048
IN = 0.0254
NL = inf
X = 0
FLOWS = (50, 80, 100, 125, 150, 200, 250, 300)

# IRC 2015 Table M1506.2, IRC 2018 to 2024 Table M1504.2, and ASHRAE 62.2: ft by diameter in inches and cfm.
FLEX = {
    3: (X, X, X, X, X, X, X, X),
    4: (56, 4, X, X, X, X, X, X),
    5: (NL, 81, 42, 16, 2, X, X, X),
    6: (NL, NL, 158, 91, 55, 18, 1, X),
    7: (NL, NL, NL, NL, 161, 78, 40, 19),
    8: (NL, NL, NL, NL, NL, 189, 111, 69),
}
SMOOTH = {
    3: (5, X, X, X, X, X, X, X),
    4: (114, 31, 10, X, X, X, X, X),
    5: (NL, 152, 91, 51, 28, 4, X, X),
    6: (NL, NL, NL, 168, 112, 53, 25, 9),
    7: (NL, NL, NL, NL, NL, 148, 88, 54),
    8: (NL, NL, NL, NL, NL, NL, 198, 133),
}
CELLS = [
    (diameter, flow, roughness, cell)
    for table, roughness in ((FLEX, FLEX_ROUGHNESS), (SMOOTH, SMOOTH_ROUGHNESS))
    for diameter, cells in table.items()
    for flow, cell in zip(FLOWS, cells, strict=True)
]


@pytest.mark.parametrize(("diameter", "flow", "roughness", "cell"), CELLS)
def test_printed_cell(diameter: int, flow: int, roughness: float, cell: float) -> None:
    length = tabulated_length(flow * CFM, diameter * IN, roughness) / FT
    if cell in (X, NL):
        assert length == cell
    else:
        assert length == pytest.approx(cell, abs=1.0 + 1e-9)


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


def test_elbows_take_fifteen_feet_each() -> None:
    # IRC Table M1504.2 note c.
    assert length_after_elbows(56 * FT, 2) / FT == pytest.approx(26.0)
    assert length_after_elbows(20 * FT, 2) == 0.0
    assert length_after_elbows(inf, 4) == inf


def test_duct_that_is_not_round() -> None:
    # IRC Table M1504.2 note c: 4 x area / perimeter; a round duct keeps its diameter.
    assert table_diameter(pi * 0.15**2 / 4, pi * 0.15) == pytest.approx(0.15)
    assert table_diameter(3.25 * 10, 26.5) == pytest.approx(4.906, abs=0.001)


@pytest.mark.parametrize(
    "call",
    [
        lambda: allowed_length(0.0, 0.1, 1e-4),
        lambda: allowed_length(0.05, 0.0, 1e-4),
        lambda: allowed_length(0.05, 0.1, 0.0),
        lambda: length_after_elbows(-1.0, 0),
        lambda: length_after_elbows(float("nan"), 0),
        lambda: length_after_elbows(1.0, -1),
        lambda: table_diameter(1.0, 0.0),
    ],
)
def test_impossible_input(call) -> None:
    with pytest.raises(ValueError, match="must"):
        call()
