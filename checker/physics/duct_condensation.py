"""Condensation inside a duct that carries moist air through the cold.

Units: K, m, W/K, m2 K/W. Source: exponential approach of the air along the run, ASHRAE Handbook - Fundamentals,
chapter 4 "Heat Transfer", with the film resistances of a duct (common practice).
"""

from __future__ import annotations

from checker.physics.arguments import require_not_negative, require_positive
from checker.physics.condensation import SAFETY
from checker.physics.duct_heat import FILM_RESISTANCE, conductance, exit_temperature
from checker.physics.scalar_root import bracketed_root
from checker.physics.validity import NoSolution
from checker.record import Record

INNER_FILM = 0.03
"""m2 K/W, film between moving air and the inner wall, part of the films of a duct (common practice)."""

THICKEST = 10.0
"""m2 K/W beyond which no duct is insulated."""

_METHOD = "condensation inside a duct"


class Course(Record):
    """Air `entering` K a run of `perimeter` and `length` m amid `surroundings` K, carrying `capacity_flow` W/K."""

    entering: float
    surroundings: float
    perimeter: float
    length: float
    capacity_flow: float


def air_at_end(course: Course, insulation: float) -> float:
    """Air in K at the end of the run with `insulation` m2 K/W. ValueError for impossible input."""
    require_positive(length=course.length, capacity_flow=course.capacity_flow)
    whole = conductance(course.perimeter, course.length, insulation)
    return exit_temperature(course.entering, course.surroundings, whole, course.capacity_flow)


def wall_at_end(course: Course, insulation: float) -> float:
    """Inner wall in K at the end of the run, its coldest place when the surroundings are colder than the air."""
    air = air_at_end(course, insulation)
    return air - (air - course.surroundings) * INNER_FILM / (insulation + FILM_RESISTANCE)


def least_insulation_inside(course: Course, dew_point: float, safety: float = SAFETY) -> float:
    """Least insulation in m2 K/W that keeps the inner wall `safety` K above the dew point; 0 when bare will do.

    NoSolution when the air enters that near its dew point or no insulation up to 10 m2 K/W is enough.
    """
    require_not_negative(safety=safety)
    target = dew_point + safety
    if wall_at_end(course, 0.0) >= target:
        return 0.0
    if wall_at_end(course, THICKEST) < target:
        raise NoSolution(_METHOD, "no usual insulation keeps the wall above the dew point")
    return bracketed_root(lambda r: wall_at_end(course, r) - target, 0.0, THICKEST, 1e-9, _METHOD)
