"""Fan curves: interpolation, speed and density laws, static and total basis, efficacy.

Units: m3/s, Pa, W, kg/m3. Source: the fan laws as in ASHRAE Handbook - HVAC Systems and Equipment, chapter
"Fans"; interpolation between points is linear, which keeps to what the maker printed.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence
from itertools import pairwise

from checker.physics.arguments import require_finite, require_positive
from checker.physics.validity import NoSolution, OutOfRange

_METHOD = "fan curve"


class FanCurve:
    """Pressure rise of a fan against airflow at one speed and density.

    `points` are (airflow m3/s, pressure Pa), three or more, rising in airflow; the last two must fall in
    pressure and none may be negative. `basis` is "total" or "static". ValueError otherwise.
    """

    __slots__ = ("basis", "flows", "peak", "pressures")

    def __init__(self, points: Sequence[tuple[float, float]], basis: str) -> None:
        if basis not in ("total", "static"):
            raise ValueError(f"basis must be total or static, got {basis!r}")
        if len(points) < 3:
            raise ValueError("a fan curve needs three points or more")
        for flow, pressure in points:
            require_finite(airflow=flow, pressure=pressure)
            if flow < 0.0 or pressure < 0.0:
                raise ValueError("the points of a fan curve must not be negative")
        self.flows = tuple(flow for flow, _ in points)
        self.pressures = tuple(pressure for _, pressure in points)
        self.basis = basis
        if any(right <= left for left, right in pairwise(self.flows)):
            raise ValueError("the points of a fan curve must rise in airflow")
        if self.pressures[-1] >= self.pressures[-2]:
            raise ValueError("a fan curve must fall at its end")
        # Right of the last rise the curve only falls: operation there is stable.
        self.peak = max(
            (i for i in range(1, len(points)) if self.pressures[i] > self.pressures[i - 1]), default=0
        )

    @property
    def lowest_stable_flow(self) -> float:
        """Airflow in m3/s right of which the pressure only falls."""
        return self.flows[self.peak]

    @property
    def free_flow(self) -> float:
        """Airflow in m3/s at zero pressure, carried on with the last slope when the points stop before it."""
        slope = self.slope(self.flows[-1])
        return self.flows[-1] - self.pressures[-1] / slope

    def pressure(self, flow: float) -> float:
        """Pressure rise in Pa at `flow` m3/s.

        OutOfRange left of the first point and beyond the airflow of zero pressure.
        """
        if flow < self.flows[0] or flow > self.free_flow * (1.0 + 1e-12):
            raise OutOfRange(
                _METHOD,
                f"airflow {flow:.4g} m3/s is outside {self.flows[0]:.4g} to {self.free_flow:.4g} m3/s",
            )
        index = self._segment(flow)
        return self.pressures[index] + self.slope(flow) * (flow - self.flows[index])

    def slope(self, flow: float) -> float:
        """Change of pressure with airflow in Pa s/m3 on the segment nearest `flow` m3/s."""
        index = self._segment(flow)
        rise = self.pressures[index + 1] - self.pressures[index]
        return rise / (self.flows[index + 1] - self.flows[index])

    def stable_pressure(self, flow: float) -> tuple[float, float]:
        """Pressure in Pa and slope for a solver: the falling branch, carried on straight at both ends.

        Left of the peak the peak pressure stands in; a result there must be refused (`check_operation`).
        """
        if flow < self.lowest_stable_flow:
            return self.pressures[self.peak], 0.0
        index = self._segment(flow)
        slope = self.slope(flow)
        return self.pressures[index] + slope * (flow - self.flows[index]), slope

    def check_operation(self, flow: float) -> None:
        """OutOfRange when the fan would run left of its peak, backwards, or beyond its free airflow."""
        if flow < self.lowest_stable_flow * (1.0 - 1e-9):
            raise OutOfRange(
                _METHOD,
                f"airflow {flow:.4g} m3/s is left of the stable, printed part "
                f"from {self.lowest_stable_flow:.4g} m3/s",
            )
        if flow > self.free_flow * (1.0 + 1e-9):
            raise OutOfRange(
                _METHOD, f"airflow {flow:.4g} m3/s is beyond the free airflow {self.free_flow:.4g} m3/s"
            )

    def is_extrapolated(self, flow: float) -> bool:
        """Whether `flow` m3/s lies beyond the last printed point."""
        return flow > self.flows[-1]

    def airflow(self, pressure: float) -> float:
        """Airflow in m3/s on the stable branch at `pressure` Pa.

        NoSolution above the top pressure of that branch, OutOfRange below zero.
        """
        require_finite(pressure=pressure)
        if pressure < 0.0:
            raise OutOfRange(_METHOD, f"pressure {pressure:g} Pa is negative")
        if pressure > self.pressures[self.peak]:
            raise NoSolution(
                _METHOD,
                f"pressure {pressure:.4g} Pa is above the stable part's {self.pressures[self.peak]:.4g} Pa",
            )
        for i in range(self.peak, len(self.flows) - 1):
            high, low = self.pressures[i], self.pressures[i + 1]
            if low <= pressure <= high and high > low:
                share = (high - pressure) / (high - low)
                return self.flows[i] + share * (self.flows[i + 1] - self.flows[i])
        return self.flows[-1] + (pressure - self.pressures[-1]) / self.slope(self.flows[-1])

    def scaled(self, speed_ratio: float = 1.0, density_ratio: float = 1.0) -> FanCurve:
        """The curve at another speed and density: flow ~ N, pressure ~ N**2 and ~ density."""
        require_positive(speed_ratio=speed_ratio, density_ratio=density_ratio)
        lift = speed_ratio * speed_ratio * density_ratio
        points = zip(self.flows, self.pressures, strict=True)
        return FanCurve([(flow * speed_ratio, pressure * lift) for flow, pressure in points], self.basis)

    def _segment(self, flow: float) -> int:
        return min(max(bisect_right(self.flows, flow) - 1, 0), len(self.flows) - 2)


def efficiency(airflow: float, pressure: float, power: float) -> float:
    """Power that goes into the air over electric power, -; airflow m3/s, pressure Pa, power W."""
    require_positive(airflow=airflow, pressure=pressure, power=power)
    return airflow * pressure / power
