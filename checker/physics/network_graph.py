"""The records of an air network: places with a pressure and the paths between them."""

from __future__ import annotations

from collections.abc import Sequence

from checker.physics.arguments import require_finite
from checker.physics.losses import Fan, Part
from checker.physics.validity import NoSolution

START_FLOW = 0.05
"""Airflow in m3/s, in the declared direction, from which a network is solved."""


class Node:
    """A place with one pressure: held at `pressure` Pa, or free (None) with `demand` m3/s taken out there."""

    __slots__ = ("demand", "name", "pressure")

    def __init__(self, name: str, pressure: float | None = None, demand: float = 0.0) -> None:
        require_finite(pressure=0.0 if pressure is None else pressure, demand=demand)
        self.name = name
        self.pressure = pressure
        self.demand = demand


class Edge:
    """A path from `start` to `end` with parts in series, or with a flow that is held (`fixed_flow`, m3/s)."""

    __slots__ = ("end", "fixed_flow", "name", "parts", "start")

    def __init__(
        self, name: str, start: str, end: str, parts: Sequence[Part] = (), fixed_flow: float | None = None
    ) -> None:
        if start == end:
            raise ValueError(f"edge {name} starts and ends at {start}")
        if (fixed_flow is None) == (not parts):
            raise ValueError(f"edge {name} needs either parts or a fixed flow")
        require_finite(fixed_flow=fixed_flow or 0.0)
        self.name = name
        self.start = start
        self.end = end
        self.parts = tuple(parts)
        self.fixed_flow = fixed_flow
        if parts and self.loss(START_FLOW)[1] <= 0.0 and not self.has_fan:
            raise ValueError(f"edge {name} has no resistance")

    @property
    def has_fan(self) -> bool:
        """Whether a fan with a curve is among the parts."""
        return any(isinstance(part, Fan) for part in self.parts)

    def loss(self, flow: float) -> tuple[float, float]:
        """Loss of all parts in Pa and its slope in Pa s/m3 at `flow` m3/s."""
        loss = slope = 0.0
        for part in self.parts:
            own, steepness = part.loss(flow)
            loss += own
            slope += steepness
        return loss, slope


def check_network(nodes: Sequence[Node], edges: Sequence[Edge]) -> None:
    """ValueError for unknown or duplicate names, NoSolution when a free node reaches no held pressure."""
    _check_names([node.name for node in nodes], "node")
    _check_names([edge.name for edge in edges], "edge")
    known = {node.name for node in nodes}
    for edge in edges:
        for end in (edge.start, edge.end):
            if end not in known:
                raise ValueError(f"edge {edge.name} ends at {end}, which is no node")
    _check_reference(nodes, [edge for edge in edges if edge.fixed_flow is None])


def _check_names(names: Sequence[str], what: str) -> None:
    seen: set[str] = set()
    for name in names:
        if name in seen:
            raise ValueError(f"{what} {name} is there twice")
        seen.add(name)


def _check_reference(nodes: Sequence[Node], edges: Sequence[Edge]) -> None:
    around: dict[str, list[str]] = {node.name: [] for node in nodes}
    for edge in edges:
        around[edge.start].append(edge.end)
        around[edge.end].append(edge.start)
    waiting = [node.name for node in nodes if node.pressure is not None]
    reached = set(waiting)
    while waiting:
        for other in around[waiting.pop()]:
            if other not in reached:
                reached.add(other)
                waiting.append(other)
    for node in nodes:
        if node.name not in reached:
            raise NoSolution("air network", f"{node.name} is not connected to any held pressure")
