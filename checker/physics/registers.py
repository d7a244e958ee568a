"""Registers and grilles: face velocity, throw, noise by velocity.

Units: m3/s, m2, m/s, m.
"""

from __future__ import annotations

from checker.physics.arguments import require_not_negative, require_positive
from checker.physics.validity import OutOfRange
from checker.record import Record

FREE_SHARE = 0.75
"""Free area over face area of a grille or register of unknown make, common practice."""

THROW_CONSTANTS: dict[str, float] = {
    "sidewall grille, straight": 5.7,
    "sidewall grille, wide": 4.2,
    "sidewall linear, straight": 4.7,
    "sidewall linear, wide": 1.6,
    "ceiling, 360 degree cone": 1.1,
    "ceiling, four-way": 3.8,
    "ceiling slot, along the surface": 5.5,
    "ceiling slot, free": 3.9,
}
"""Throw constant in the third zone: ASHRAE Handbook - Fundamentals 2021, chapter 20, Table 1."""

AREA_SHARES: dict[str, float] = {"grille": 0.80, "linear": 0.50}
"""Effective over core area, same table; ceiling cones and four-way outlets take the neck area."""

LOW_VELOCITY = 0.254
"""Terminal velocity in m/s (50 fpm, which the handbook rounds to 0.25 m/s) where the fourth zone is reached."""

LOW_VELOCITY_SHARE = 0.70

_FOOT_PER_MINUTE = 0.00508
_SUPPLY_BANDS = ((300, 15, 20), (350, 20, 25), (425, 25, 30), (500, 30, 35), (575, 35, 40), (650, 40, 45))
_RETURN_BANDS = ((360, 15, 20), (420, 20, 25), (510, 25, 30), (600, 30, 35), (690, 35, 40), (780, 40, 45))
_LOWEST_SUPPLY = 250
_LOWEST_RETURN = 300


class NoiseBand(Record):
    """Noise criterion (NC) between `low` and `high`."""

    low: int
    high: int


def face_velocity(airflow: float, face_area: float) -> float:
    """Velocity in m/s over the whole face: airflow m3/s over face area m2."""
    require_not_negative(airflow=airflow)
    require_positive(face_area=face_area)
    return airflow / face_area


def free_velocity(airflow: float, face_area: float, free_share: float = FREE_SHARE) -> float:
    """Velocity in m/s through the free area; `free_share` above 0 and up to 1, 0.75 as common practice."""
    require_positive(free_share=free_share)
    if free_share > 1.0:
        raise ValueError(f"free share must not exceed 1, got {free_share:g}")
    return face_velocity(airflow, face_area) / free_share


def throw(airflow: float, effective_area: float, constant: float, terminal_velocity: float) -> float:
    """Isothermal throw in m to a terminal velocity in m/s of a jet along a surface.

    `airflow` m3/s, `effective_area` m2, `constant` from the table. At a terminal velocity of 50 fpm
    (0.25 m/s) and below, 70 % is taken (the fourth zone). A jet in free air reaches 0.707 of it.
    Source: ASHRAE Handbook - Fundamentals 2021, chapter 20 "Space Air Diffusion", equations 4 and 5.
    """
    require_not_negative(airflow=airflow)
    require_positive(effective_area=effective_area, constant=constant, terminal_velocity=terminal_velocity)
    distance = constant * airflow / (terminal_velocity * float(effective_area**0.5))
    return distance * LOW_VELOCITY_SHARE if _in_fourth_zone(terminal_velocity) else distance


def scaled_throw(
    listed_throw: float, listed_airflow: float, listed_terminal: float, airflow: float, terminal: float
) -> float:
    """Throw in m from a maker's listed throw at another airflow and terminal velocity: ~ Q and ~ 1/V.

    OutOfRange when either velocity is at or below 50 fpm and the other is not: the jet decays faster there.
    Source: same equations.
    """
    require_positive(
        listed_throw=listed_throw, listed_airflow=listed_airflow, listed_terminal=listed_terminal
    )
    require_not_negative(airflow=airflow)
    require_positive(terminal=terminal)
    if _in_fourth_zone(listed_terminal) != _in_fourth_zone(terminal):
        raise OutOfRange("throw scaling", "one terminal velocity is in the fourth zone, the other is not")
    return listed_throw * airflow / listed_airflow * listed_terminal / terminal


def _in_fourth_zone(terminal_velocity: float) -> bool:
    return terminal_velocity <= LOW_VELOCITY * (1.0 + 1e-9)


def supply_noise(velocity: float) -> NoiseBand:
    """NC band of a supply outlet in a lined duct by the velocity in m/s through its free area.

    OutOfRange above 3.30 m/s (650 fpm). Add 5 to 10 for a damper in the neck. Margin 5.
    Source: Architectural Acoustics, table of free-opening velocities at outlets.
    """
    return _band("supply outlet noise", velocity, _LOWEST_SUPPLY, _SUPPLY_BANDS)


def return_noise(velocity: float) -> NoiseBand:
    """NC band of a return inlet; OutOfRange above 3.96 m/s (780 fpm). Otherwise as `supply_noise`."""
    return _band("return inlet noise", velocity, _LOWEST_RETURN, _RETURN_BANDS)


def _band(method: str, velocity: float, lowest: int, bands: tuple[tuple[int, int, int], ...]) -> NoiseBand:
    require_not_negative(velocity=velocity)
    if velocity < lowest * _FOOT_PER_MINUTE:
        return NoiseBand(0, bands[0][1])
    for upper, low, high in bands:
        if velocity <= upper * _FOOT_PER_MINUTE * (1.0 + 1e-12):
            return NoiseBand(low, high)
    top = bands[-1][0] * _FOOT_PER_MINUTE
    raise OutOfRange(method, f"velocity {velocity:.3g} m/s is above the table's {top:.3g} m/s")
