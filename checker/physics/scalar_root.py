"""The root of one monotone function of one number, held inside a bracket."""

from collections.abc import Callable

from checker.physics.arguments import require_positive
from checker.physics.validity import NoSolution

_PASSES = 200
_RELATIVE_SPACING = 4e-16  # a bracket cannot shrink below the spacing of the numbers themselves


def bracketed_root(
    function: Callable[[float], float], low: float, high: float, tolerance: float, method: str
) -> float:
    """Where `function` changes sign between `low` and `high`, to within `tolerance` (unit of the bracket).

    Bisection with steps of inverse quadratic interpolation where they are safe; it never leaves the bracket.
    NoSolution, naming `method`, when both ends have the same sign.
    Source: Chandrupatla, "A new hybrid quadratic/bisection algorithm for finding the zero of a nonlinear
    function without using derivatives", 1997.
    """
    require_positive(tolerance=tolerance)
    near, far = high, low
    at_near, at_far = function(near), function(far)
    if at_near == 0.0 or at_far == 0.0:
        return far if at_far == 0.0 else near
    if (at_near > 0.0) == (at_far > 0.0):
        raise NoSolution(method, f"no change of sign between {low:g} and {high:g}")
    share = 0.5
    for _ in range(_PASSES):
        guess = near + share * (far - near)
        at_guess = function(guess)
        if (at_guess > 0.0) == (at_near > 0.0):
            left, at_left = near, at_near
        else:
            left, at_left = far, at_far
            far, at_far = near, at_near
        near, at_near = guess, at_guess
        best, at_best = (near, at_near) if abs(at_near) < abs(at_far) else (far, at_far)
        least_share = (_RELATIVE_SPACING * abs(best) + tolerance) / abs(far - near)
        if at_best == 0.0 or least_share > 0.5:
            return best
        share = 0.5
        place, rise = (near - far) / (left - far), (at_near - at_far) / (at_left - at_far)
        if rise * rise < place and (1.0 - rise) ** 2 < 1.0 - place:
            share = at_near / (at_far - at_near) * at_left / (at_far - at_left)
            share += (
                (left - near) / (far - near) * at_near / (at_left - at_near) * at_far / (at_left - at_far)
            )
        share = min(1.0 - least_share, max(least_share, share))
    raise NoSolution(method, f"not settled after {_PASSES} passes")
