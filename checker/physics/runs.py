"""Pressure losses along the runs of a branching duct system at given airflows.

Units: m3/s, Pa, m2, kg/m3. Source: ASHRAE Handbook - Fundamentals 2021, chapter 21 "Duct Design" (balancing).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import NamedTuple

from checker.physics.air import STANDARD_DENSITY
from checker.physics.arguments import require_not_negative, require_positive
from checker.physics.friction import velocity, velocity_pressure
from checker.physics.network_graph import Edge
from checker.physics.validity import NoSolution


class Run(NamedTuple):
    """One run from the root to a terminal: its edges in order and its loss in Pa."""

    edges: tuple[str, ...]
    loss: float


def run_losses(edges: Sequence[Edge], flows: Mapping[str, float], root: str) -> dict[str, Run]:
    """Run by terminal node of the tree that hangs at `root`, supply or return, at the flows by edge name.

    ValueError when a flow is missing or no edge touches the root; NoSolution when the edges form a loop,
    whose runs are not defined. Edges that do not hang at the root are left out.
    """
    around: dict[str, list[Edge]] = {}
    for edge in edges:
        around.setdefault(edge.start, []).append(edge)
        around.setdefault(edge.end, []).append(edge)
    if root not in around:
        raise ValueError(f"no edge touches {root}")
    runs: dict[str, Run] = {}
    reached = {root}
    waiting: list[tuple[str, str, Run]] = [(root, "", Run((), 0.0))]
    while waiting:
        place, arrived_by, so_far = waiting.pop()
        onward = [edge for edge in around[place] if edge.name != arrived_by]
        if not onward:
            runs[place] = so_far
        for edge in onward:
            other = edge.end if edge.start == place else edge.start
            if other in reached:
                raise NoSolution("duct runs", f"{edge.name} closes a loop")
            reached.add(other)
            if edge.name not in flows:
                raise ValueError(f"no airflow given for {edge.name}")
            loss = so_far.loss + edge.loss(flows[edge.name])[0]
            waiting.append((other, edge.name, Run((*so_far.edges, edge.name), loss)))
    return runs


def longest_run(runs: Mapping[str, Run]) -> str:
    """Terminal of the run with the greatest loss; ValueError when there are none."""
    if not runs:
        raise ValueError("there are no runs")
    return max(runs, key=lambda terminal: runs[terminal].loss)


def excess_pressures(runs: Mapping[str, Run]) -> dict[str, float]:
    """Pressure in Pa that a damper in each run must take to balance it with the longest run."""
    greatest = runs[longest_run(runs)].loss
    return {terminal: greatest - run.loss for terminal, run in runs.items()}


def damper_coefficient(
    excess: float, airflow: float, area: float, density: float = STANDARD_DENSITY
) -> float:
    """Loss coefficient of the damper that takes `excess` Pa at `airflow` m3/s in a section of `area` m2."""
    require_not_negative(excess=excess)
    require_positive(airflow=airflow)
    return excess / velocity_pressure(velocity(airflow, area), density)
