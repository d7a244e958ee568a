"""The bracketed root against scipy."""

from math import cos, exp

import pytest
from scipy.optimize import bisect

from checker.physics.scalar_root import bracketed_root
from checker.physics.validity import NoSolution

FUNCTIONS = [
    (lambda x: x**3 - 2.0, 0.0, 5.0),
    (lambda x: cos(x) - x, 0.0, 1.0),
    (lambda x: 1.0 - exp(x) / 7.0, -10.0, 10.0),
    (lambda x: abs(x) ** 0.65 * (1.0 if x > 0.0 else -1.0) + 0.4, -50.0, 50.0),
    (lambda x: x**9, -1.0, 3.0),
    (lambda x: 1e-12 if x > 0.3 else -1.0, 0.0, 1.0),
]


@pytest.mark.parametrize(("function", "low", "high"), FUNCTIONS)
def test_agrees_with_plain_bisection(function, low, high) -> None:
    root = bracketed_root(function, low, high, 1e-11, "test")
    assert root == pytest.approx(bisect(function, low, high, xtol=1e-13), abs=2e-11)


def test_a_smooth_function_needs_few_looks() -> None:
    looks: list[float] = []

    def counted(x: float) -> float:
        looks.append(x)
        return exp(x) - 3.0

    bracketed_root(counted, -20.0, 20.0, 1e-12, "test")
    assert len(looks) <= 20


def test_a_root_at_an_end_is_returned_as_it_is() -> None:
    assert bracketed_root(lambda x: x - 2.0, 2.0, 3.0, 1e-9, "test") == 2.0
    assert bracketed_root(lambda x: x - 3.0, 2.0, 3.0, 1e-9, "test") == 3.0


def test_no_change_of_sign_is_no_solution() -> None:
    with pytest.raises(NoSolution) as caught:
        bracketed_root(lambda x: x * x + 1.0, -1.0, 1.0, 1e-9, "parabola")
    assert caught.value.method == "parabola"
