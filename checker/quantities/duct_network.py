"""The network of a mover's ducts, solved: what flows where, at best and at worst, and with dampers at their best.

Rooms and outdoors are held at 0 Pa. Thin air at elevation: flows and pressures are solved times the density
ratio, so that every loss follows its law in standard air. Source: similarity of flows at equal mass flow.
"""

from collections.abc import Callable, Collection, Sequence
from functools import partial

from checker.case import CannotJudge, Case, Missing, gather, quantity
from checker.physics.air import pressure_ratio
from checker.physics.losses import Leak, Part
from checker.physics.network import Edge, Node, Solution, solve_network
from checker.physics.validity import NoSolution, OutOfRange
from checker.quantities.circuits import Circuit
from checker.quantities.duct_graph import mover_of
from checker.quantities.duct_losses import Item
from checker.quantities.duct_mesh import HELD, OUTDOORS, ROOMS, Passage, mesh
from checker.quantities.duct_mesh_walk import check_joined, part_around
from checker.quantities.duct_parts import NEGLIGIBLE, items_of, parts_at
from checker.quantities.duct_scope import systems_of
from checker.quantities.leakage_class import known_leakage
from checker.quantities.mover_models import MoverModel, mover_model
from checker.record import Record

LEAKAGE_EXPONENT = 0.65
LEAKAGE_TEST = 25.0


class DuctNetwork(Record):
    """A mover's ducts ready to be solved: passages, their items, models of the movers, leakage m3/s at 25 Pa."""

    passages: tuple[Passage, ...]
    items: dict[str, list[Item]]
    models: dict[str, MoverModel]
    center: Passage
    density_ratio: float
    leakage: float

    @property
    def model(self) -> MoverModel:
        """The model of the mover whose circuit it is."""
        return self.models[self.center.key]

    def worksheet_lines(self, _system: str) -> list[str]:
        """What it is made of."""
        joints = {joint for each in self.passages for joint in (each.start, each.end)}
        kinds = [each.kind for each in self.passages]
        parts = ", ".join(f"{kinds.count(kind)} {kind}{'s' if kinds.count(kind) > 1 else ''}" for kind in dict.fromkeys(kinds))
        return [f"{len(joints)} joints and places, joined by {parts}"]

    @property
    def terminals(self) -> list[Passage]:
        """Passages by which the circuit meets the rooms."""
        return terminals_of(self.center, self.passages)


class Answer(Record):
    """Flow by passage in m3/s, pressure by joint and loss by item in Pa, rise by mover in Pa, leaks by joint."""

    flows: dict[str, float]
    pressures: dict[str, float]
    losses: dict[str, dict[str, float]]
    rises: dict[str, float]
    leaks: dict[str, float]
    extrapolated: tuple[str, ...]


def terminals_of(center: Passage, passages: Sequence[Passage]) -> list[Passage]:
    """Passages by which a circuit meets the rooms: where it blows, or where a side that takes air out draws."""
    side = "start" if center.outgoing else "end"
    return [each for each in passages if each.kind in ("run", "outlet") and getattr(each, side) == ROOMS]


@quantity()
def circuit_passages(case: Case, circuit: Circuit) -> tuple[Passage, tuple[Passage, ...]]:
    """(the mover's passage, all that shares its air). Raises Missing and CannotJudge where ducts hang nowhere."""
    mover = circuit.mover
    if mover is None:
        assert circuit.system is not None
        mover = mover_of(case, circuit.system)
    if circuit.duct is not None:
        both = one_line(circuit)
        return both[0], tuple(both)
    assert circuit.system is not None
    beside = [each for each in systems_of(case, mover) if each is not circuit.system and each.runs]
    every = mesh(case, [circuit.system, *beside])
    own = [each for each in every if each.thing is mover and each.outgoing == circuit.outgoing]
    if not own:
        raise CannotJudge(f"no duct of this side of {circuit.name} is described")
    passages = part_around(every, own[0])
    check_joined(every, passages)
    return own[0], tuple(passages)


def duct_network(case: Case, circuit: Circuit) -> DuctNetwork:
    """The network of a circuit. Raises Missing and CannotJudge as its parts do."""
    center, passages = circuit_passages(case, circuit)
    site = case.design.site
    elevation = case.maybe(site, "elevation") if site is not None else None
    routes = [partial(mover_model, case, circuit, each) for each in passages if each.kind == "mover"]
    items, made = gather_both(case, circuit, passages, routes)
    models = dict(zip((each.key for each in passages if each.kind == "mover"), made, strict=True))
    systems = {each.system.path: each.system for each in passages if each.system is not None and each.kind == "run"}
    leaks = [known_leakage(case, each) or 0.0 for each in systems.values()]
    return DuctNetwork(passages, items, models, center, pressure_ratio(elevation or 0.0), sum(leaks))


def gather_both(
    case: Case, circuit: Circuit, passages: Sequence[Passage], routes: Sequence[Callable[[], MoverModel]]
) -> tuple[dict[str, list[Item]], list[MoverModel]]:
    """Items and models, or Missing with all that either lacks."""
    absent: list[str] = []
    items: dict[str, list[Item]] = {}
    made: list[MoverModel] = []
    try:
        items = items_of(case, circuit, passages)
    except Missing as gap:
        absent += gap.paths
    try:
        made = gather(routes)
    except Missing as gap:
        absent += gap.paths
    if absent:
        raise Missing(*dict.fromkeys(absent))
    return items, made


def one_line(circuit: Circuit) -> list[Passage]:
    """A mover and its duct in one line."""
    mover, duct = circuit.mover, circuit.duct
    assert mover is not None
    assert duct is not None
    joint = f"out of {mover.path}"
    away, home = (OUTDOORS, ROOMS) if circuit.outgoing else (ROOMS, OUTDOORS)
    first = Passage("mover", mover, home, joint, None, circuit.outgoing)
    return [first, Passage("run", duct, joint, away, None, circuit.outgoing)]


def edges_of(network: DuctNetwork, worst: Collection[str]) -> list[Edge]:
    """Every passage as an edge; the items of a mover stand before it. `worst` are those at their upper bound."""
    edges = []
    ratio = network.density_ratio
    for passage in network.passages:
        items, start = network.items[passage.key], passage.start
        if passage.kind != "mover":
            edges.append(Edge(passage.key, start, passage.end, parts_at(items, passage.key in worst)))
            continue
        model = network.models[passage.key]
        if items:
            edges.append(Edge(f"before {passage.key}", start, f"at {passage.key}", parts_at(items, passage.key in worst)))
            start = f"at {passage.key}"
        if model.curve is not None:
            edges.append(Edge(passage.key, start, passage.end, model.parts(ratio)))
        else:
            edges.append(Edge(passage.key, start, passage.end, fixed_flow=model.flow * ratio))
    return edges


def leak_edges(network: DuctNetwork) -> list[Edge]:
    """Leakage, half of it on each ducted side of the mover and all of it at the mover: the most that it can be."""
    sides = [joint for joint in (network.center.end, network.center.start) if joint not in HELD]
    if network.leakage <= 0.0 or not sides:
        return []
    leak: list[Part] = [Leak(network.leakage / len(sides) / LEAKAGE_TEST**LEAKAGE_EXPONENT, LEAKAGE_EXPONENT)]
    return [Edge(f"leak {joint}", joint, OUTDOORS, leak) for joint in sides]


def solve(network: DuctNetwork, worst: Collection[str] | None, taken: dict[str, float] | None = None) -> Answer:
    """Solve with these passages at their upper bounds; None for all of them, with the leakage at its most.

    `taken` fixes the airflow of passages, m3/s, by key. Raises CannotJudge where there is no solution.
    """
    chosen = [each.key for each in network.passages] if worst is None else worst
    edges = edges_of(network, chosen) + (leak_edges(network) if worst is None else [])
    ratio = network.density_ratio
    fixed = {key: flow * ratio for key, flow in (taken or {}).items()}
    edges = [Edge(e.name, e.start, e.end, fixed_flow=fixed[e.name]) if e.name in fixed else e for e in edges]
    if fixed and network.center.key not in fixed and network.model.curve is None:
        # All that is taken fixes what the mover moves: a second fixed flow would leave its joint without a pressure.
        edges = [Edge(e.name, e.start, e.end, [NEGLIGIBLE]) if e.name == network.center.key else e for e in edges]
    joints = {joint for edge in edges for joint in (edge.start, edge.end)} - set(HELD)
    nodes = [*(Node(place, 0.0) for place in HELD), *(Node(joint) for joint in sorted(joints))]
    try:
        solution = solve_network(nodes, edges)
    except NoSolution as problem:
        raise CannotJudge(f"the duct network has no solution: {named(network, problem.reason)}") from None
    except OutOfRange as problem:
        raise CannotJudge(out_of_range(network, problem)) from None
    return answered(network, chosen, solution)


def out_of_range(network: DuctNetwork, problem: OutOfRange) -> str:
    """Why a solution is none, with the names that the file uses and without numbers in the wrong units."""
    reason = named(network, problem.reason)
    who = reason.partition(":")[0]
    if "left of the stable" in reason:
        return f"{who} would run left of the stable, printed part of its curve, where nothing tells its airflow"
    if "beyond the free airflow" in reason:
        return f"{who} would be driven beyond the end of its curve"
    return f"out of range: {reason}"


def check_held(network: DuctNetwork, answer: Answer, take: str) -> None:
    """Raise CannotJudge where a mover at a held airflow has to lift more than it is known for."""
    for passage in network.passages:
        model = network.models.get(passage.key)
        if model is not None and answer.rises[passage.key] > model.greatest * network.density_ratio * (1.0 + 1e-9):
            raise CannotJudge(f"{passage.name} is known by {model.words}; its ducts {take} more than that there")


def answered(network: DuctNetwork, worst: Collection[str], solution: Solution) -> Answer:
    """The solution in the air of the site."""
    ratio = network.density_ratio
    flows = {each.key: solution.flows[each.key] / ratio for each in network.passages}
    losses = {}
    for each in network.passages:
        flow = solution.flows[each.key]
        losses[each.key] = {
            item.name: sum(part.loss(flow)[0] for part in ((item.high or ()) if each.key in worst else item.low)) / ratio
            for item in network.items[each.key]
        }
    rises = {}
    for each in (one for one in network.passages if one.kind == "mover"):
        before = solution.pressures.get(f"at {each.key}", solution.pressures[each.start])
        rises[each.key] = (solution.pressures[each.end] - before) / ratio
    pressures = {joint: pressure / ratio for joint, pressure in solution.pressures.items()}
    leaks = {name[5:]: flow / ratio for name, flow in solution.flows.items() if name.startswith("leak ")}
    return Answer(flows, pressures, losses, rises, leaks, solution.extrapolated)


def named(network: DuctNetwork, reason: str) -> str:
    """A reason of the solver with the names that the file uses."""
    for passage in sorted(network.passages, key=lambda each: -len(each.key)):
        reason = reason.replace(passage.key, passage.name)
    return reason
