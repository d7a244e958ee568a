"""Pressure of a house against outdoors under its fans, as one zone.

Units: Pa, m3/s, m, m2, K. Pressure is house minus outdoors, so exhaust makes it negative; `net_exhaust` is
fan exhaust minus fan supply, and inflow through a path is positive.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from checker.physics.air import STANDARD_DENSITY, STANDARD_PRESSURE, STANDARD_VISCOSITY
from checker.physics.arguments import require_finite, require_positive
from checker.physics.infiltration import (
    LEAKAGE_EXPONENT,
    flow_at_pressure,
    require_flow_exponent,
)
from checker.physics.makeup_opening import ORIFICE_COEFFICIENT, SMOOTH_ROUGHNESS, duct_flow, opening_flow
from checker.physics.scalar_root import bracketed_root
from checker.physics.validity import OutOfRange
from checker.record import Record

HIGHEST_PRESSURE = 50.0
"""Pa; beyond the test pressure neither the power law nor a rated fan flow can be trusted."""

REVERSED_DAMPER_SHARE = 1e-3
"""Share of its forward flow that a one-way damper leaks when pushed shut."""

_GRAVITY_OVER_GAS_CONSTANT = 0.0342  # K/m, of the stack equation
_SEARCH_LIMIT = 1000.0  # Pa
_TOLERANCE = 1e-7  # Pa


class Path(Record):
    """A way for outdoor air: `flow` gives m3/s at a pressure difference >= 0, `height` m above the level the
    house pressure is stated at, `one_way` a damper that only lets air in."""

    flow: Callable[[float], float]
    height: float = 0.0
    one_way: bool = False


def envelope(leakage_flow: float, exponent: float = LEAKAGE_EXPONENT, height: float = 0.0) -> Path:
    """Path of leakage given by its flow in m3/s at 50 Pa; split it over heights where stack matters."""
    require_positive(leakage_flow=leakage_flow)
    require_flow_exponent(exponent)
    return Path(lambda pressure: flow_at_pressure(leakage_flow, pressure, exponent), height)


def passive_opening(
    area: float,
    discharge_coefficient: float = ORIFICE_COEFFICIENT,
    height: float = 0.0,
    one_way: bool = False,
    density: float = STANDARD_DENSITY,
) -> Path:
    """Path of a plain opening of free `area` m2. ValueError for impossible input."""
    require_positive(area=area)
    return Path(
        lambda pressure: opening_flow(area, pressure, discharge_coefficient, density), height, one_way
    )


def makeup_duct(
    diameter: float,
    length: float,
    loss_coefficient: float,
    roughness: float = SMOOTH_ROUGHNESS,
    height: float = 0.0,
    one_way: bool = False,
    density: float = STANDARD_DENSITY,
    viscosity: float = STANDARD_VISCOSITY,
) -> Path:
    """Path of a round duct to outdoors; `diameter`, `length` (fittings may be in it), `roughness` m."""
    require_positive(diameter=diameter)
    return Path(
        lambda pressure: duct_flow(
            pressure, diameter, length, loss_coefficient, roughness, density, viscosity
        ),
        height,
        one_way,
    )


def house_pressure(
    net_exhaust: float,
    paths: Sequence[Path],
    indoor_temperature: float | None = None,
    outdoor_temperature: float | None = None,
) -> float:
    """House pressure in Pa, at height 0, at which inflow through all paths makes up the net exhaust.

    `net_exhaust` m3/s of either sign; both temperatures in K, or neither, for stack effect. ValueError for
    impossible input or no path, OutOfRange beyond 50 Pa, NoSolution when no pressure balances the flows.
    Source: mass balance; ASHRAE Handbook - Fundamentals 2021, chapter 16.
    """
    require_finite(net_exhaust=net_exhaust)
    if not paths:
        raise ValueError("a house needs at least one path for air")
    gradient = _stack_gradient(indoor_temperature, outdoor_temperature)
    if net_exhaust == 0.0 and all(gradient * path.height == 0.0 for path in paths):
        return 0.0

    def surplus(pressure: float) -> float:
        return sum(_inflow(path, pressure, gradient) for path in paths) - net_exhaust

    reach = 1.0
    while surplus(-reach) < 0.0 or surplus(reach) > 0.0:
        if reach > _SEARCH_LIMIT:
            raise OutOfRange("house pressure", "the balance lies far beyond 50 Pa")
        reach *= 2.0
    pressure = bracketed_root(surplus, -reach, reach, _TOLERANCE, "house pressure")
    _require_within_range(pressure)
    return pressure


def path_inflows(
    pressure: float,
    paths: Sequence[Path],
    indoor_temperature: float | None = None,
    outdoor_temperature: float | None = None,
) -> tuple[float, ...]:
    """Flow in m3/s into the house by each path at a house pressure in Pa; negative is out of the house."""
    require_finite(pressure=pressure)
    gradient = _stack_gradient(indoor_temperature, outdoor_temperature)
    return tuple(_inflow(path, pressure, gradient) for path in paths)


def stack_pressure(
    height: float,
    indoor_temperature: float,
    outdoor_temperature: float,
    barometric_pressure: float = STANDARD_PRESSURE,
) -> float:
    """Stack pressure in Pa over a height in m: 0.0342 p h (1/To - 1/Ti); positive when it is warmer inside.

    Temperatures K. ValueError for impossible input.
    Source: ASHRAE Handbook - Fundamentals 2021, chapter 16 (stack pressure).
    """
    require_finite(height=height)
    require_positive(
        indoor_temperature=indoor_temperature,
        outdoor_temperature=outdoor_temperature,
        barometric_pressure=barometric_pressure,
    )
    drive = 1.0 / outdoor_temperature - 1.0 / indoor_temperature
    return _GRAVITY_OVER_GAS_CONSTANT * barometric_pressure * height * drive


def _stack_gradient(indoor_temperature: float | None, outdoor_temperature: float | None) -> float:
    if indoor_temperature is None and outdoor_temperature is None:
        return 0.0
    if indoor_temperature is None or outdoor_temperature is None:
        raise ValueError("stack effect needs both the indoor and the outdoor temperature")
    return stack_pressure(1.0, indoor_temperature, outdoor_temperature)


def _inflow(path: Path, pressure: float, gradient: float) -> float:
    drive = -(pressure + gradient * path.height)
    if drive >= 0.0:
        return path.flow(drive)
    return -path.flow(-drive) * (REVERSED_DAMPER_SHARE if path.one_way else 1.0)


def _require_within_range(pressure: float) -> None:
    if abs(pressure) > HIGHEST_PRESSURE * (1.0 + 1e-9):
        raise OutOfRange("house pressure", f"{abs(pressure):.0f} Pa is beyond {HIGHEST_PRESSURE:g} Pa")
