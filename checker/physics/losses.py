"""What stands in the way of air in a network edge: pressure loss and its slope against airflow.

Each part answers `loss(flow)` with (loss in Pa, d loss / d flow in Pa s/m3), signed like the flow in m3/s,
and `check(flow)` raises OutOfRange when the settled flow lies outside the validity of the part.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import pi
from typing import TypeAlias

from checker.physics.air import STANDARD_DENSITY, STANDARD_VISCOSITY
from checker.physics.arguments import require_finite, require_not_negative, require_positive
from checker.physics.devices import check_exponent, check_points, drop_from_points, power_law_at
from checker.physics.fan import FanCurve
from checker.physics.friction import (
    HIGHEST_RELATIVE_ROUGHNESS,
    HIGHEST_REYNOLDS,
    LAMINAR_LIMIT,
    TURBULENT_LIMIT,
    colebrook,
    friction_factor_and_slope,
)
from checker.physics.validity import OutOfRange


class Duct:
    """Straight duct by Darcy-Weisbach and Colebrook.

    `diameter` (of a rectangle or oval: the equivalent diameter for friction), `length`, `roughness` m;
    `multiplier` on the friction, for compressed flexible duct.
    """

    __slots__ = ("_friction", "_laminar", "_relative_roughness", "_reynolds")

    def __init__(
        self,
        diameter: float,
        length: float,
        roughness: float,
        multiplier: float = 1.0,
        density: float = STANDARD_DENSITY,
        viscosity: float = STANDARD_VISCOSITY,
    ) -> None:
        require_positive(diameter=diameter, length=length, multiplier=multiplier)
        require_positive(density=density, viscosity=viscosity)
        require_not_negative(roughness=roughness)
        area = pi * diameter * diameter / 4.0
        self._relative_roughness = roughness / diameter
        if self._relative_roughness > HIGHEST_RELATIVE_ROUGHNESS:
            raise OutOfRange(
                "Colebrook friction", f"roughness over diameter {self._relative_roughness:.3g} is above 0.05"
            )
        self._reynolds = density * diameter / (viscosity * area)
        self._friction = multiplier * length / diameter * 0.5 * density / (area * area)
        self._laminar = 64.0 * self._friction / self._reynolds

    def loss(self, flow: float) -> tuple[float, float]:
        """Loss in Pa and slope in Pa s/m3; beyond the highest Reynolds number the factor is held."""
        size = abs(flow)
        reynolds = size * self._reynolds
        if reynolds <= LAMINAR_LIMIT:
            return self._laminar * flow, self._laminar
        turbulent = colebrook if reynolds >= TURBULENT_LIMIT else friction_factor_and_slope
        factor, steepness = turbulent(min(reynolds, HIGHEST_REYNOLDS), self._relative_roughness)
        per_flow = self._friction * factor * size
        return per_flow * flow, per_flow * (2.0 + steepness)

    def check(self, flow: float) -> None:
        """OutOfRange above the highest Reynolds number of the friction formula."""
        if abs(flow) * self._reynolds > HIGHEST_REYNOLDS:
            raise OutOfRange("Colebrook friction", "Reynolds number is above 1e7")


class Resistance:
    """Turbulent loss: coefficient * density * velocity**2 / 2 in a section of `area` m2.

    Fittings, grilles, openings (with the coefficient 1 / discharge coefficient**2). `backward` multiplies the
    airflow that the same pressure would drive the other way: 1 for a fitting, 0.001 for a backdraft damper.
    """

    __slots__ = ("_backward", "_forward")

    def __init__(
        self, coefficient: float, area: float, density: float = STANDARD_DENSITY, backward: float = 1.0
    ) -> None:
        require_positive(coefficient=coefficient, area=area, density=density, backward=backward)
        self._forward = 0.5 * coefficient * density / (area * area)
        self._backward = self._forward / (backward * backward)

    def loss(self, flow: float) -> tuple[float, float]:
        """Loss in Pa and slope in Pa s/m3."""
        per_flow = self._forward * flow if flow >= 0.0 else -self._backward * flow
        return per_flow * flow, 2.0 * per_flow

    def check(self, flow: float) -> None:
        """Holds for every airflow."""


class Device:
    """A device with one rated point (Pa at m3/s) and the exponent of its power law, 1 to 2."""

    __slots__ = ("_coefficient", "_exponent")

    def __init__(
        self, rated_drop: float, rated_airflow: float, exponent: float, density_ratio: float = 1.0
    ) -> None:
        require_positive(rated_drop=rated_drop, rated_airflow=rated_airflow, density_ratio=density_ratio)
        check_exponent(exponent)
        self._exponent = exponent
        self._coefficient = rated_drop * float(density_ratio ** (exponent - 1.0) / rated_airflow**exponent)

    def loss(self, flow: float) -> tuple[float, float]:
        """Loss in Pa and slope in Pa s/m3."""
        per_flow = self._coefficient * float(abs(flow) ** (self._exponent - 1.0))
        return per_flow * flow, self._exponent * per_flow

    def check(self, flow: float) -> None:
        """Holds for every airflow; how far a single rating reaches is for the caller to say."""


class DeviceCurve:
    """A device with two or more points (m3/s, Pa), log-log between them and carried on beyond."""

    __slots__ = ("_points",)

    def __init__(self, points: Sequence[tuple[float, float]]) -> None:
        check_points(points)
        self._points = tuple(points)

    def loss(self, flow: float) -> tuple[float, float]:
        """Loss in Pa and slope in Pa s/m3."""
        size = abs(flow)
        if size == 0.0:
            first_flow, first_drop = self._points[0]
            return 0.0, first_drop / first_flow
        coefficient, exponent = power_law_at(size, self._points)
        per_flow = coefficient * float(size ** (exponent - 1.0))
        return per_flow * flow, exponent * per_flow

    def check(self, flow: float) -> None:
        """OutOfRange below half the first or above one and a half times the last airflow, or for no flow."""
        if flow == 0.0:
            raise OutOfRange("device pressure drop", "no air flows")
        drop_from_points(abs(flow), self._points)


class Leak:
    """Leakage flow = coefficient * pressure ** exponent; coefficient in m3/s at 1 Pa, exponent 0.5 to 1."""

    __slots__ = ("_coefficient", "_power")

    def __init__(self, coefficient: float, exponent: float) -> None:
        require_positive(coefficient=coefficient)
        require_finite(exponent=exponent)
        if not 0.5 <= exponent <= 1.0:
            raise ValueError(f"leakage exponent must lie between 0.5 and 1, got {exponent:g}")
        self._coefficient = coefficient
        self._power = 1.0 / exponent

    def loss(self, flow: float) -> tuple[float, float]:
        """Loss in Pa and slope in Pa s/m3."""
        ratio = abs(flow) / self._coefficient
        per_flow = float(ratio ** (self._power - 1.0)) / self._coefficient
        return per_flow * flow, self._power * per_flow

    def check(self, flow: float) -> None:
        """Holds for every airflow."""


class Fan:
    """A fan that lifts the pressure from the start to the end of its edge by its curve."""

    __slots__ = ("curve",)

    def __init__(self, curve: FanCurve) -> None:
        self.curve = curve

    def loss(self, flow: float) -> tuple[float, float]:
        """The negative pressure rise in Pa and its slope in Pa s/m3."""
        pressure, slope = self.curve.stable_pressure(flow)
        return -pressure, -slope

    def check(self, flow: float) -> None:
        """OutOfRange outside the stable part of the curve."""
        self.curve.check_operation(flow)


class PressureRise:
    """A constant pressure rise in Pa from the start to the end of the edge: stack effect, a held pressure."""

    __slots__ = ("_rise",)

    def __init__(self, rise: float) -> None:
        require_finite(rise=rise)
        self._rise = rise

    def loss(self, flow: float) -> tuple[float, float]:
        """The negative rise in Pa, and no slope."""
        return -self._rise, 0.0

    def check(self, flow: float) -> None:
        """Holds for every airflow."""


Part: TypeAlias = Duct | Resistance | Device | DeviceCurve | Leak | Fan | PressureRise
