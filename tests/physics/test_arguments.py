"""Refusals of impossible numbers."""

from math import inf, nan

import pytest

from checker.physics.arguments import (
    require_finite,
    require_fraction,
    require_not_negative,
    require_positive,
)


@pytest.mark.parametrize("value", [0.0, -1.0, nan, inf])
def test_a_positive_number_is_wanted(value: float) -> None:
    with pytest.raises(ValueError, match="floor area must be"):
        require_positive(floor_area=value)


@pytest.mark.parametrize("value", [-1e-9, nan, inf])
def test_a_number_not_below_zero_is_wanted(value: float) -> None:
    with pytest.raises(ValueError, match="flow must"):
        require_not_negative(flow=value)


@pytest.mark.parametrize("value", [-0.1, 1.1, nan])
def test_a_fraction_is_wanted(value: float) -> None:
    with pytest.raises(ValueError, match="share must"):
        require_fraction(share=value)


def test_good_numbers_pass_and_the_first_bad_one_is_named() -> None:
    require_positive(a=1.0, b=2)
    require_not_negative(a=0.0)
    require_fraction(a=0.0, b=1.0)
    with pytest.raises(ValueError, match="second must be a finite number"):
        require_finite(first=1.0, second=inf, third=nan)
