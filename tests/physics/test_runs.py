"""Runs of a duct tree and their balance."""

import pytest

from checker.physics.friction import velocity_pressure
from checker.physics.losses import Device, Resistance
from checker.physics.network import Edge, Node, solve_network
from checker.physics.runs import damper_coefficient, excess_pressures, longest_run, run_losses
from checker.physics.validity import NoSolution

SUPPLY = [
    Edge("trunk", "plenum", "tee", [Device(10.0, 0.1, 2.0)]),
    Edge("near", "tee", "bath", [Device(8.0, 0.03, 2.0)]),
    Edge("far", "tee", "bedroom", [Device(15.0, 0.05, 2.0)]),
]
FLOWS = {"trunk": 0.1, "near": 0.03, "far": 0.05}


def test_losses_add_along_each_run() -> None:
    runs = run_losses(SUPPLY, FLOWS, "plenum")
    assert runs["bath"] == (("trunk", "near"), pytest.approx(18.0))
    assert runs["bedroom"] == (("trunk", "far"), pytest.approx(25.0))
    assert longest_run(runs) == "bedroom"
    assert excess_pressures(runs) == {"bath": pytest.approx(7.0), "bedroom": 0.0}


def test_return_side_counts_the_same() -> None:
    back = [
        Edge("grille", "hall", "box", [Device(6.0, 0.1, 2.0)]),
        Edge("drop", "box", "unit", [Device(4.0, 0.1, 2.0)]),
    ]
    assert run_losses(back, {"grille": 0.1, "drop": 0.1}, "unit")["hall"].loss == pytest.approx(10.0)


def test_damper_balances_the_network() -> None:
    runs = run_losses(SUPPLY, FLOWS, "plenum")
    coefficient = damper_coefficient(excess_pressures(runs)["bath"], 0.03, 0.01)
    assert coefficient * velocity_pressure(3.0) == pytest.approx(7.0)
    near = Edge("near", "tee", "bath", [Device(8.0, 0.03, 2.0), Resistance(coefficient, 0.01)])
    trunk = Edge("trunk", "plenum", "tee", [Device(10.0, 0.08, 2.0)])
    nodes = [Node("plenum", 25.0), Node("tee"), Node("bath", 0.0), Node("bedroom", 0.0)]
    flows = solve_network(nodes, [trunk, near, SUPPLY[2]]).flows
    assert flows["near"] == pytest.approx(0.03, abs=1e-8)
    assert flows["far"] == pytest.approx(0.05, abs=1e-8)


def test_refusals() -> None:
    loop = [*SUPPLY, Edge("tie", "bath", "bedroom", [Device(1.0, 0.01, 2.0)])]
    with pytest.raises(NoSolution, match="loop"):
        run_losses(loop, FLOWS | {"tie": 0.0}, "plenum")
    with pytest.raises(ValueError, match="no airflow given for far"):
        run_losses(SUPPLY, {"trunk": 0.1, "near": 0.03}, "plenum")
    with pytest.raises(ValueError, match="no edge touches attic"):
        run_losses(SUPPLY, FLOWS, "attic")
    with pytest.raises(ValueError, match="no runs"):
        longest_run({})
