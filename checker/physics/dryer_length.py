"""Length of a clothes-dryer exhaust duct with its fittings.

Units: m; angles in degrees. The transition duct at the dryer is not part of the length.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from types import MappingProxyType

from checker.physics.arguments import require_not_negative
from checker.physics.validity import OutOfRange
from checker.record import Record

FOOT = 0.3048
INCH = 0.0254


class Elbow(Record):
    """A kind of elbow: `radius` in inches and `smooth` or `mitered` (`construction`), and its angle."""

    construction: str
    radius_inches: int
    angle: int


FITTING_ALLOWANCES: Mapping[Elbow, float] = MappingProxyType(
    {
        Elbow("mitered", 4, 45): 2.5 * FOOT,
        Elbow("mitered", 4, 90): 5.0 * FOOT,
        Elbow("smooth", 6, 45): 1.0 * FOOT,
        Elbow("smooth", 6, 90): 1.0 * FOOT + 9.0 * INCH,
        Elbow("smooth", 8, 45): 1.0 * FOOT,
        Elbow("smooth", 8, 90): 1.0 * FOOT + 7.0 * INCH,
        Elbow("smooth", 10, 45): 9.0 * INCH,
        Elbow("smooth", 10, 90): 1.0 * FOOT + 6.0 * INCH,
    }
)
"""m for each elbow; IRC Table M1502.4.5.1 (2015, 2018), Table M1502.4.6.1 (2021, 2024)."""


def fitting_allowance(
    fittings: Sequence[tuple[Elbow, int]], allowances: Mapping[Elbow, float] = FITTING_ALLOWANCES
) -> float:
    """Length in m that counts for the fittings, given as (elbow, number of them).

    ValueError for a negative number; OutOfRange for an elbow the allowances do not list.
    Source: IRC Table M1502.4.5.1 (2015, 2018), Table M1502.4.6.1 (2021, 2024).
    """
    total = 0.0
    for elbow, number in fittings:
        require_not_negative(number_of_elbows=number)
        if elbow not in allowances:
            raise OutOfRange(
                "dryer duct fittings",
                f"no allowance for a {elbow.angle} degree {elbow.construction} elbow"
                f" of {elbow.radius_inches} in radius",
            )
        total += number * allowances[elbow]
    return total


def developed_length(
    straight: float,
    fittings: Sequence[tuple[Elbow, int]],
    allowances: Mapping[Elbow, float] = FITTING_ALLOWANCES,
) -> float:
    """Straight length plus the fittings' allowances, m. Errors and source as `fitting_allowance`."""
    require_not_negative(straight=straight)
    return straight + fitting_allowance(fittings, allowances)
