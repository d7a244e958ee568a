"""Steady airflow in a network of ducts, openings, leaks and fans: trees, loops, several fans.

Units: m3/s, Pa. Method: the global gradient algorithm for pipe networks (1988), with a line search: the flows
are those of least energy content, a convex problem as long as every loss rises with its flow.
"""

from __future__ import annotations

from collections.abc import Sequence

from checker.physics.losses import Fan
from checker.physics.network_equations import LEAST_SLOPE, NetworkEquations
from checker.physics.network_graph import START_FLOW, Edge, Node
from checker.physics.validity import NoSolution, OutOfRange
from checker.record import Record

__all__ = ["Edge", "Node", "Solution", "solve_network"]

TOLERANCE = 1e-9
LARGEST_IMBALANCE = 1e-6
MOST_PASSES = 200

_METHOD = "air network"


class Solution(Record):
    """Pressure by node and flow by edge (negative: against its direction), and how they were reached.

    `extrapolated` names the fans that run beyond their last printed point.
    """

    pressures: dict[str, float]
    flows: dict[str, float]
    passes: int
    extrapolated: tuple[str, ...]


def solve_network(nodes: Sequence[Node], edges: Sequence[Edge]) -> Solution:
    """Pressures and flows that balance.

    ValueError for unknown or duplicate names; NoSolution when a free node is not connected to a held
    pressure, a fan moves no air, or the search does not settle; OutOfRange when a part ends outside its
    validity.
    """
    system = NetworkEquations(nodes, edges)
    flows = [START_FLOW] * len(system.edges)
    state = [edge.loss(flow) for edge, flow in zip(system.edges, flows, strict=True)]
    for number in range(1, MOST_PASSES + 1):
        pressures = system.pressures(flows, state)
        gradients = system.gradients(pressures)
        steps = [
            (gradient - loss) / max(slope, LEAST_SLOPE)
            for gradient, (loss, slope) in zip(gradients, state, strict=True)
        ]
        # The first step only brings the flows into balance, so there is nothing to search along yet.
        flows, state = system.advance(flows, state, steps, gradients, search=number > 1)
        if all(abs(step) < TOLERANCE for step in steps):
            return _settled(system, flows, pressures, number)
    worst = max(range(len(steps)), key=lambda k: abs(steps[k]))
    raise NoSolution(_METHOD, f"not settled after {MOST_PASSES} passes, worst at {system.edges[worst].name}")


def _settled(
    system: NetworkEquations, flows: Sequence[float], pressures: Sequence[float], passes: int
) -> Solution:
    extrapolated = []
    if system.imbalance(flows) > LARGEST_IMBALANCE:
        raise NoSolution(_METHOD, "the flows do not balance: losses differ by too many orders of magnitude")
    for edge, flow in zip(system.edges, flows, strict=True):
        if edge.has_fan and abs(flow) < TOLERANCE:
            raise NoSolution(_METHOD, f"the fan of {edge.name} moves no air")
        for part in edge.parts:
            try:
                part.check(flow)
            except OutOfRange as refusal:
                raise OutOfRange(refusal.method, f"{edge.name}: {refusal.reason}") from refusal
            if isinstance(part, Fan) and part.curve.is_extrapolated(flow):
                extrapolated.append(edge.name)
    by_edge = {edge.name: flow for edge, flow in zip(system.edges, flows, strict=True)}
    by_edge.update({edge.name: flow for edge, flow in system.fixed})
    by_node = {
        node.name: pressures[system.index[node.name]] if node.pressure is None else node.pressure
        for node in system.nodes
    }
    return Solution(by_node, by_edge, passes, tuple(extrapolated))
