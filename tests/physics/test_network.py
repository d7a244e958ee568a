"""Air networks: regression systems with independent solutions, and laws every network keeps."""

from collections.abc import Sequence
from math import pi, sqrt

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq, fsolve

from checker.physics.fan import FanCurve
from checker.physics.friction import friction_per_meter, round_area, velocity_pressure
from checker.physics.losses import Device, Duct, Fan, Leak, Part, PressureRise, Resistance
from checker.physics.network import Edge, Node, Solution, solve_network
from checker.physics.validity import NoSolution, OutOfRange

CFM = 4.719474e-4
FOOT = 0.3048
INCH = 0.0254
INCH_WATER = 249.089
SMOOTH = 0.09e-3
CATALOGUE = [(0, 0.90), (250, 0.95), (500, 0.90), (750, 0.75), (1000, 0.40), (1200, 0.0)]
CURVE = FanCurve([(cfm * CFM, inches * INCH_WATER) for cfm, inches in CATALOGUE], "total")


def duct(diameter: float, length: float = 5.0, coefficient: float = 1.0) -> list[Part]:
    return [Duct(diameter, length, SMOOTH), Resistance(coefficient, round_area(diameter))]


def duct_loss(flow: float, diameter: float, length: float = 5.0, coefficient: float = 1.0) -> float:
    speed = flow / (pi * diameter**2 / 4)
    local = coefficient * velocity_pressure(speed) * np.sign(flow)
    return length * friction_per_meter(flow, diameter, SMOOTH) + float(local)


def imbalance(nodes: Sequence[Node], edges: Sequence[Edge], solution: Solution) -> float:
    taken = {node.name: node.demand for node in nodes}
    for edge in edges:
        taken[edge.start] += solution.flows[edge.name]
        taken[edge.end] -= solution.flows[edge.name]
    return max((abs(taken[node.name]) for node in nodes if node.pressure is None), default=0.0)


def ring(crossed: float) -> Solution:
    nodes = [Node("source", 50.0), Node("a"), Node("b"), Node("sink", 0.0)]
    edges = [
        Edge("source-a", "source", "a", duct(0.15)),
        Edge("source-b", "source", "b", duct(crossed)),
        Edge("a-b", "a", "b", duct(0.15)),
        Edge("a-sink", "a", "sink", duct(crossed)),
        Edge("b-sink", "b", "sink", duct(0.15)),
    ]
    return solve_network(nodes, edges)


def test_fan_against_one_duct() -> None:
    # Fluid Mechanics: Fundamentals and Applications, example 14-1, about 650 cfm at 0.83 in. w.g.
    rho, mu = 1.184, 1.184 * 1.562e-5
    parts: list[Part] = [
        Duct(0.230, 13.4, 0.15e-3, density=rho, viscosity=mu),
        Resistance(1.3 + 5 * 0.21 + 1.8 + 1.05, round_area(0.230), rho),
        Fan(CURVE),
    ]
    solution = solve_network([Node("in", 0.0), Node("out", 0.0)], [Edge("run", "in", "out", parts)])

    def surplus(flow: float) -> float:
        friction = 13.4 * friction_per_meter(flow, 0.230, 0.15e-3, rho, mu)
        return CURVE.pressure(flow) - friction - 5.20 * velocity_pressure(flow / round_area(0.230), rho)

    assert solution.flows["run"] == pytest.approx(brentq(surplus, 0.1, 0.5, xtol=1e-13), abs=1e-8)
    assert solution.flows["run"] / CFM == pytest.approx(650, rel=0.02)
    assert solution.extrapolated == ()


def test_branching_example_held_at_its_plenum_pressure() -> None:
    # Published branching example (air conditioning textbook) with the plenum held at 0.1548 in. w.g.:
    # 465.5 / 362.4 / 103.1 cfm by an independent solution.
    tee = 0.48 * (733.385 / 611.154) ** 2
    nodes = [Node("plenum", 0.1548 * INCH_WATER), Node("tee"), Node("two", 0.0), Node("three", 0.0)]
    main: list[Part] = duct(10 * INCH, 50 * FOOT, 0.85)
    edges = [
        Edge("main", "plenum", "tee", main),
        Edge("straight", "tee", "two", [Duct(9 * INCH, 40 * FOOT, SMOOTH)]),
        Edge("branch", "tee", "three", duct(6 * INCH, 40 * FOOT, tee + 2 * 0.37)),
    ]
    flows = solve_network(nodes, edges).flows

    def residuals(x: Sequence[float]) -> list[float]:
        q2, q3, p = x[0] * 0.1, x[1] * 0.1, x[2] * 10
        return [
            0.1548 * INCH_WATER - p - duct_loss(q2 + q3, 10 * INCH, 50 * FOOT, 0.85),
            p - 40 * FOOT * friction_per_meter(q2, 9 * INCH, SMOOTH),
            p - duct_loss(q3, 6 * INCH, 40 * FOOT, tee + 2 * 0.37),
        ]

    root = fsolve(residuals, [1.5, 0.5, 1.0], xtol=1e-13)
    assert flows["straight"] == pytest.approx(root[0] * 0.1, abs=1e-8)
    assert flows["branch"] == pytest.approx(root[1] * 0.1, abs=1e-8)
    assert flows["main"] == pytest.approx(flows["straight"] + flows["branch"], abs=1e-9)


def test_symmetric_ring_carries_nothing_across() -> None:
    solution = ring(0.15)
    one_path = brentq(lambda q: 2 * duct_loss(q, 0.15) - 50, 1e-3, 1.0, xtol=1e-14)
    assert solution.flows["source-a"] == pytest.approx(one_path, abs=1e-9)
    assert solution.flows["source-a"] == pytest.approx(0.08566, abs=5e-6)
    assert solution.flows["a-b"] == pytest.approx(0.0, abs=1e-9)


def test_crossed_ring() -> None:
    solution = ring(0.10)

    def residuals(x: Sequence[float]) -> list[float]:
        p_a, p_b = x[0], x[1]
        flow = [
            brentq(lambda q, d=d, dp=dp: duct_loss(q, d) - dp, -1, 1, xtol=1e-15)
            for d, dp in ((0.15, 50 - p_a), (0.10, 50 - p_b), (0.15, p_a - p_b), (0.10, p_a), (0.15, p_b))
        ]
        return [flow[0] - flow[2] - flow[3], flow[1] + flow[2] - flow[4]]

    p_a, p_b = fsolve(residuals, [30.0, 20.0], xtol=1e-13)
    assert solution.pressures["a"] == pytest.approx(p_a, abs=1e-6)
    assert solution.pressures["b"] == pytest.approx(p_b, abs=1e-6)
    assert solution.pressures["a"] == pytest.approx(28.431, abs=5e-4)
    assert solution.flows["source-a"] == pytest.approx(0.079345, abs=5e-7)
    assert solution.flows["source-b"] == pytest.approx(0.035693, abs=5e-7)
    assert solution.flows["a-b"] == pytest.approx(0.043652, abs=5e-7)


def house(exhaust_cfm: float, inlet_feet: float | None) -> Solution:
    edges = [
        Edge("leaks", "outdoors", "house", [Leak(231 * CFM / 50**0.65, 0.65)]),
        Edge("exhaust", "house", "outdoors", fixed_flow=exhaust_cfm * CFM),
    ]
    if inlet_feet is not None:
        edges.append(Edge("inlet", "outdoors", "house", [Duct(6 * INCH, inlet_feet * FOOT, SMOOTH)]))
    return solve_network([Node("outdoors", 0.0), Node("house")], edges)


def test_house_without_inlet_is_the_power_law() -> None:
    # Published question: 18,000 ft3 at 0.77 air changes at 50 Pa (231 cfm), 150 cfm exhaust.
    pressure = house(150, None).pressures["house"]
    assert pressure == pytest.approx(-50 * (150 / 231) ** (1 / 0.65), abs=1e-6)
    assert pressure == pytest.approx(-25.73, abs=0.005)


@pytest.mark.parametrize(
    ("exhaust", "feet", "pressure", "leaks", "inlet"),
    [(150, 100, -10.250, 82.46, 67.54), (400, 60, -41.73, 205.4, 194.6)],
)
def test_house_with_inlet(exhaust: float, feet: float, pressure: float, leaks: float, inlet: float) -> None:
    # Regression values of an independent nodal solution, checked here by a bracketing root.
    solution = house(exhaust, feet)

    def surplus(dp: float) -> float:
        through = brentq(
            lambda q: feet * FOOT * friction_per_meter(q, 6 * INCH, SMOOTH) - dp, 0, 1, xtol=1e-15
        )
        return through + 231 * CFM * (dp / 50) ** 0.65 - exhaust * CFM

    assert solution.pressures["house"] == pytest.approx(-brentq(surplus, 0.1, 100, xtol=1e-12), abs=1e-5)
    assert solution.pressures["house"] == pytest.approx(pressure, abs=0.005)
    assert solution.flows["leaks"] / CFM == pytest.approx(leaks, abs=0.05)
    assert solution.flows["inlet"] / CFM == pytest.approx(inlet, abs=0.05)
    assert solution.flows["exhaust"] == exhaust * CFM


def trunk(branches: int) -> tuple[list[Node], list[Edge]]:
    big = FanCurve([(0.4, 400.0), (0.7, 300.0), (1.0, 150.0)], "total")
    nodes, edges = [Node("room", 0.0), Node("t0")], [Edge("fan", "room", "t0", [Fan(big), *duct(0.45)])]
    for number in range(1, branches + 1):
        nodes.append(Node(f"t{number}"))
        edges.append(Edge(f"trunk-{number}", f"t{number - 1}", f"t{number}", duct(0.45, 1.5, 0.05)))
        outlet: list[Part] = [Duct(0.125, 3.0, SMOOTH), Device(5.0, 0.05, 2.0)]
        edges.append(Edge(f"grille-{number}", f"t{number}", "room", outlet))
    return nodes, edges


def test_trunk_with_14_branches_against_a_dense_solver() -> None:
    nodes, edges = trunk(14)
    solution = solve_network(nodes, edges)
    assert imbalance(nodes, edges, solution) < 1e-6
    free = [node.name for node in nodes if node.pressure is None]

    def residuals(x: np.ndarray) -> list[float]:
        flows = dict(zip([edge.name for edge in edges], x[: len(edges)] * 0.1, strict=True))
        pressures = dict(zip(free, x[len(edges) :] * 100, strict=True)) | {"room": 0.0}
        along = [pressures[e.start] - pressures[e.end] - e.loss(flows[e.name])[0] for e in edges]
        at = [
            sum(flows[e.name] for e in edges if e.start == n)
            - sum(flows[e.name] for e in edges if e.end == n)
            for n in free
        ]
        return along + at

    start = np.array([solution.flows[e.name] * 10 + 0.2 for e in edges] + [1.0] * len(free))
    root, _, status, message = fsolve(residuals, start, full_output=True, xtol=1e-12)
    assert status == 1, message
    for number, edge in enumerate(edges):
        assert solution.flows[edge.name] == pytest.approx(root[number] * 0.1, abs=1e-7)


def test_two_fans_share_a_duct() -> None:
    # Identical fans in parallel: each moves half of what the common duct carries.
    edges = [
        Edge("one", "in", "box", [Fan(CURVE), Resistance(1.0, 0.05)]),
        Edge("other", "in", "box", [Fan(CURVE), Resistance(1.0, 0.05)]),
        Edge("common", "box", "out", duct(0.3, 20.0, 3.0)),
    ]
    solution = solve_network([Node("in", 0.0), Node("box"), Node("out", 0.0)], edges)
    assert solution.flows["one"] == pytest.approx(solution.flows["other"], abs=1e-9)

    def surplus(flow: float) -> float:
        own = CURVE.pressure(flow) - velocity_pressure(flow / 0.05)
        return own - duct_loss(2 * flow, 0.3, 20.0, 3.0)

    assert solution.flows["one"] == pytest.approx(brentq(surplus, 0.12, 0.56, xtol=1e-13), abs=1e-8)


def test_supply_and_return_fans_with_a_leaky_duct() -> None:
    # Air is conserved with leaks to the attic on the supply side, and the house goes below the attic's pressure.
    edges = [
        Edge("blower", "return", "supply", [Fan(CURVE), Resistance(2.0, 0.06)]),
        Edge("outlets", "supply", "house", [Device(20.0, 0.4, 2.0)]),
        Edge("duct leaks", "supply", "attic", [Leak(0.002, 0.65)]),
        Edge("inlet", "house", "return", [Device(15.0, 0.4, 1.9)]),
        Edge("house leaks", "attic", "house", [Leak(0.01, 0.65)]),
    ]
    nodes = [Node("attic", 0.0), Node("house"), Node("supply"), Node("return")]
    solution = solve_network(nodes, edges)
    assert imbalance(nodes, edges, solution) < 1e-9
    assert solution.flows["duct leaks"] == pytest.approx(solution.flows["house leaks"], abs=1e-9)
    assert solution.pressures["house"] == pytest.approx(
        -((solution.flows["duct leaks"] / 0.01) ** (1 / 0.65)), abs=1e-5
    )


def test_backdraft_damper_and_stack() -> None:
    # A damper lets a thousandth of the air back; the stack head drives it.
    def flow(rise: float) -> float:
        parts: list[Part] = [PressureRise(rise), Resistance(1.0, 0.01, backward=1e-3)]
        return solve_network([Node("a", 0.0), Node("b", 0.0)], [Edge("path", "a", "b", parts)]).flows["path"]

    assert flow(5.0) == pytest.approx(0.01 * sqrt(2 * 5.0 / 1.2041), abs=1e-9)
    assert flow(-5.0) == pytest.approx(-1e-3 * flow(5.0), abs=1e-9)


@settings(max_examples=60, deadline=None)
@given(st.data())
def test_random_networks_balance(data: st.DataObject) -> None:
    count = data.draw(st.integers(2, 9))
    size = st.floats(0.08, 0.3)
    nodes = [Node("out", 0.0)]
    edges: list[Edge] = []
    for number in range(count):
        nodes.append(Node(f"n{number}", demand=data.draw(st.sampled_from([0.0, 0.02, -0.03]))))
        origin = nodes[data.draw(st.integers(0, number))].name
        edges.append(Edge(f"tree-{number}", origin, f"n{number}", duct(data.draw(size))))
    for number in range(data.draw(st.integers(0, 5))):
        ends = data.draw(
            st.lists(st.sampled_from([n.name for n in nodes]), min_size=2, max_size=2, unique=True)
        )
        kind = data.draw(st.sampled_from(["duct", "leak", "fan"]))
        parts: dict[str, list[Part]] = {
            "duct": duct(data.draw(size)),
            "leak": [Leak(0.003, 0.65)],
            "fan": [PressureRise(40.0), *duct(data.draw(size))],
        }
        edges.append(Edge(f"extra-{number}", ends[0], ends[1], parts[kind]))
    solution = solve_network(nodes, edges)
    assert imbalance(nodes, edges, solution) < 1e-8
    for edge in edges:
        drop = solution.pressures[edge.start] - solution.pressures[edge.end]
        assert edge.loss(solution.flows[edge.name])[0] == pytest.approx(drop, abs=1e-4)


@pytest.mark.parametrize(
    "part",
    [
        Duct(0.15, 10.0, SMOOTH),
        Resistance(1.2, 0.02),
        Resistance(1.2, 0.02, backward=0.001),
        Device(50.0, 0.1, 1.3),
        Leak(0.002, 0.65),
        Fan(CURVE),
    ],
)
@pytest.mark.parametrize("flow", [-0.31, -0.02, 1e-5, 0.03, 0.15, 0.4])
def test_slopes_are_derivatives(part: Part, flow: float) -> None:
    step = 1e-7 * abs(flow) + 1e-10
    change = part.loss(flow + step)[0] - part.loss(flow - step)[0]
    assert part.loss(flow)[1] == pytest.approx(change / (2 * step), rel=1e-4, abs=1e-6)


def test_fan_beyond_its_last_point_is_named() -> None:
    short = FanCurve([(0.2, 100.0), (0.3, 80.0), (0.4, 50.0)], "total")
    edges = [Edge("fan", "in", "out", [Fan(short), Resistance(1.0, 0.1)])]
    solution = solve_network([Node("in", 0.0), Node("out", 0.0)], edges)
    assert solution.extrapolated == ("fan",)
    assert 0.4 < solution.flows["fan"] < short.free_flow


def test_fan_in_stall_is_refused() -> None:
    edges = [Edge("fan", "in", "out", [Fan(CURVE), Resistance(1.0, 0.003)])]
    with pytest.raises(OutOfRange, match=r"fan: airflow .* left of the stable"):
        solve_network([Node("in", 0.0), Node("out", 0.0)], edges)


def test_fan_without_a_path_is_refused() -> None:
    falling = FanCurve([(0.0, 100.0), (0.3, 80.0), (0.4, 50.0)], "total")
    edges = [Edge("fan", "in", "box", [Fan(falling), Resistance(1.0, 0.05)])]
    with pytest.raises(NoSolution, match="moves no air"):
        solve_network([Node("in", 0.0), Node("box")], edges)


def test_absurd_scales_are_refused_and_not_answered() -> None:
    # 50 L/s forced through a leak of a tenth of a pinhole next to a wide opening.
    edges = [
        Edge("pinhole", "out", "box", [Leak(1e-9, 0.5)]),
        Edge("opening", "box", "room", [Resistance(1.0, 1.0)]),
    ]
    with pytest.raises(NoSolution):
        solve_network([Node("out", 0.0), Node("box"), Node("room", demand=0.05)], edges)


def test_unconnected_node_is_refused() -> None:
    edges = [
        Edge("path", "a", "b", [Resistance(1.0, 0.1)]),
        Edge("held", "b", "c", fixed_flow=0.1),
    ]
    with pytest.raises(NoSolution, match="a is not connected"):
        solve_network([Node("a"), Node("b"), Node("c", 0.0)], edges)


def test_impossible_networks() -> None:
    path = Edge("path", "a", "b", [Resistance(1.0, 0.1)])
    with pytest.raises(ValueError, match="node a is there twice"):
        solve_network([Node("a", 0.0), Node("a"), Node("b")], [path])
    with pytest.raises(ValueError, match="edge path is there twice"):
        solve_network([Node("a", 0.0), Node("b")], [path, path])
    with pytest.raises(ValueError, match="which is no node"):
        solve_network([Node("a", 0.0)], [path])
    with pytest.raises(ValueError, match="starts and ends"):
        Edge("path", "a", "a", [Resistance(1.0, 0.1)])
    with pytest.raises(ValueError, match="either parts or a fixed flow"):
        Edge("path", "a", "b")
    with pytest.raises(ValueError, match="no resistance"):
        Edge("path", "a", "b", [PressureRise(5.0)])
    with pytest.raises(ValueError, match="exponent"):
        Leak(0.01, 0.4)
