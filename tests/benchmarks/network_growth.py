"""How the time to solve a duct tree grows with its nodes, against dense solves of the same linear systems.

Run it by hand: python tests/benchmarks/network_growth.py
"""

import sys
from math import pi
from pathlib import Path
from statistics import median
from time import perf_counter

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

import numpy as np

from checker.physics.fan import FanCurve
from checker.physics.losses import Device, Duct, Fan, Leak, Resistance
from checker.physics.network import Edge, Node, solve_network

SIZES = (12, 25, 50, 100, 200, 400, 800)
REPEATS = 5
SPEED = 4.0  # m/s in every duct


def duct_tree(size: int) -> tuple[list[Node], list[Edge]]:
    """A fan, a binary tree of leaky ducts and a grille at every end."""
    flow = 0.02 * size
    curve = FanCurve([(0.0, 300.0), (0.5 * flow, 270.0), (flow, 150.0), (1.3 * flow, 0.0)], "total")
    nodes = [Node("outdoors", 0.0), Node("n0")]
    edges = [Edge("fan", "outdoors", "n0", [Fan(curve), Resistance(1.0, 0.05 * size**0.5)])]
    for number in range(1, size):
        share = flow / 2 ** ((number + 1).bit_length() - 1)
        diameter = 2.0 * (share / (pi * SPEED)) ** 0.5
        nodes.append(Node(f"n{number}"))
        parts = [Duct(diameter, 4.0, 0.09e-3), Resistance(0.5, share / SPEED)]
        edges.append(Edge(f"duct-{number}", f"n{(number - 1) // 2}", f"n{number}", parts))
        edges.append(Edge(f"leak-{number}", f"n{number}", "outdoors", [Leak(1e-5, 0.65)]))
        if 2 * number + 1 >= size:
            edges.append(Edge(f"grille-{number}", f"n{number}", "outdoors", [Device(10.0, share, 2.0)]))
    return nodes, edges


def dense_system(nodes: list[Node], edges: list[Edge], flows: dict[str, float]) -> np.ndarray:
    """The matrix of the last pass, whose pattern is that of every pass."""
    index = {node.name: number for number, node in enumerate(n for n in nodes if n.pressure is None)}
    matrix = np.zeros((len(index), len(index)))
    for edge in edges:
        conductance = 1.0 / max(edge.loss(flows[edge.name])[1], 1e-3)
        places = [index[end] for end in (edge.start, edge.end) if end in index]
        for place in places:
            matrix[place, place] += conductance
        if len(places) == 2:
            matrix[places[0], places[1]] -= conductance
            matrix[places[1], places[0]] -= conductance
    return matrix


def main() -> None:
    print(f"{'nodes':>6} {'edges':>6} {'passes':>6} {'network ms':>11} {'dense ms':>9} {'ratio':>6}")
    for size in SIZES:
        nodes, edges = duct_tree(size)
        times, dense_times = [], []
        for _ in range(REPEATS):
            begun = perf_counter()
            solution = solve_network(nodes, edges)
            times.append(perf_counter() - begun)
        matrix = dense_system(nodes, edges, solution.flows)
        right = np.ones(len(matrix))
        for _ in range(REPEATS):
            begun = perf_counter()
            for _ in range(solution.passes):
                np.linalg.solve(matrix, right)
            dense_times.append(perf_counter() - begun)
        ours, dense = median(times) * 1e3, median(dense_times) * 1e3
        print(f"{size:6} {len(edges):6} {solution.passes:6} {ours:11.2f} {dense:9.2f} {ours / dense:6.2f}")


if __name__ == "__main__":
    main()
