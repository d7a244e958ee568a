"""The equations of an air network: continuity at every free node, loss along every edge."""

from __future__ import annotations

from collections.abc import Sequence

from checker.physics.network_graph import Edge, Node, check_network
from checker.physics.sparse import pattern_of

LEAST_SLOPE = 1e-3
"""Floor in Pa s/m3 under the slope of a loss, for edges whose loss is flat at no flow. It slows the search a
little and does not move the solution."""


class NetworkEquations:
    """The balance of one network in numbered form; flows in m3/s, pressures and losses in Pa."""

    __slots__ = (
        "_demand",
        "_ends",
        "_held",
        "_pairs",
        "_pattern",
        "_size",
        "edges",
        "fixed",
        "index",
        "nodes",
    )

    def __init__(self, nodes: Sequence[Node], edges: Sequence[Edge]) -> None:
        check_network(nodes, edges)
        self.nodes = nodes
        self.edges = [edge for edge in edges if edge.fixed_flow is None]
        self.fixed = [(edge, edge.fixed_flow) for edge in edges if edge.fixed_flow is not None]
        self._held = {node.name: node.pressure for node in nodes if node.pressure is not None}
        free = [node for node in nodes if node.pressure is None]
        self.index = {node.name: number for number, node in enumerate(free)}
        self._size = len(free)
        self._demand = [node.demand for node in free]
        for edge, flow in self.fixed:
            for end, sign in ((edge.start, 1.0), (edge.end, -1.0)):
                if end in self.index:
                    self._demand[self.index[end]] += sign * flow
        self._number()

    def _number(self) -> None:
        places: dict[tuple[int, int], int] = {}
        self._ends: list[tuple[int, int]] = []
        self._pairs: list[int] = []
        for edge in self.edges:
            start, end = self.index.get(edge.start, -1), self.index.get(edge.end, -1)
            self._ends.append((start, end))
            pair = (start, end) if start < end else (end, start)
            self._pairs.append(places.setdefault(pair, len(places)) if pair[0] >= 0 else -1)
        self._pattern = pattern_of(self._size, tuple(places))

    def pressures(self, flows: Sequence[float], state: Sequence[tuple[float, float]]) -> list[float]:
        """Free pressures that balance the linearised edges, in Pa."""
        diagonal = [0.0] * self._size
        off_diagonal = [0.0] * (max(self._pairs, default=-1) + 1)
        right = [-demand for demand in self._demand]
        for k, (start, end) in enumerate(self._ends):
            loss, slope = state[k]
            conductance = 1.0 / max(slope, LEAST_SLOPE)
            carried = flows[k] - loss * conductance
            if start >= 0:
                diagonal[start] += conductance
                right[start] -= carried
                if end < 0:
                    right[start] += conductance * self._held[self.edges[k].end]
            if end >= 0:
                diagonal[end] += conductance
                right[end] += carried
                if start < 0:
                    right[end] += conductance * self._held[self.edges[k].start]
            if self._pairs[k] >= 0:
                off_diagonal[self._pairs[k]] -= conductance
        return self._pattern.solve(diagonal, off_diagonal, right)

    def gradients(self, pressures: Sequence[float]) -> list[float]:
        """Pressure at the start less pressure at the end of every edge, in Pa."""
        held, edges = self._held, self.edges
        return [
            (pressures[start] if start >= 0 else held[edges[k].start])
            - (pressures[end] if end >= 0 else held[edges[k].end])
            for k, (start, end) in enumerate(self._ends)
        ]

    def imbalance(self, flows: Sequence[float]) -> float:
        """Greatest airflow in m3/s that appears or vanishes at a free node."""
        left = list(self._demand)
        for flow, (start, end) in zip(flows, self._ends, strict=True):
            if start >= 0:
                left[start] += flow
            if end >= 0:
                left[end] -= flow
        return max((abs(amount) for amount in left), default=0.0)

    def advance(
        self,
        flows: Sequence[float],
        state: Sequence[tuple[float, float]],
        steps: Sequence[float],
        gradients: Sequence[float],
        search: bool,
    ) -> tuple[list[float], list[tuple[float, float]]]:
        """Flows and losses after the step, shortened while the energy content would rise at its end."""
        share = 1.0
        downhill = sum((g - loss) * step for g, (loss, _), step in zip(gradients, state, steps, strict=True))
        while True:
            moved = [flow + share * step for flow, step in zip(flows, steps, strict=True)]
            fresh = [edge.loss(flow) for edge, flow in zip(self.edges, moved, strict=True)]
            uphill = sum(
                (loss - g) * step for g, (loss, _), step in zip(gradients, fresh, steps, strict=True)
            )
            if not search or uphill <= 0.5 * downhill or share < 1e-6:
                return moved, fresh
            share *= max(0.1, downhill / (downhill + uphill))
