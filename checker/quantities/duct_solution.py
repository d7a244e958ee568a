"""How the air of a system divides itself with every damper open: the duct network, solved at its design airflow."""


from checker.case import CannotJudge, Case, Missing, NotApplicable, quantity
from checker.design.ducts import DuctSystem
from checker.physics.losses import Device, Part, Resistance
from checker.physics.network import Edge, Node, solve_network
from checker.physics.validity import NoSolution, OutOfRange
from checker.quantities.circuits import Circuit
from checker.quantities.duct_flow import outlet_flow, run_flow
from checker.quantities.duct_graph import Branch, Tree, mover_of, tree
from checker.quantities.duct_losses import Item, duct_items
from checker.quantities.duct_solved import has_curve
from checker.quantities.duct_ways import grilles_are_counted
from checker.quantities.solved_airflows import moved
from checker.record import Record

NEGLIGIBLE = 1e-3


class Division(Record):
    """Airflow by run, m3/s, in the direction of the design: with the losses at best, and at worst."""

    low: dict[str, float]
    high: dict[str, float]

    def worksheet_lines(self, system: str) -> list[str]:
        """One line for each run."""
        from checker.quantities.solved_words import division_lines

        return division_lines(self, system)


def supply_tree(case: Case, system: DuctSystem) -> tuple[Tree, list[Branch]]:
    """The tree and its supply branches indoors."""
    found = tree(case, system)
    branches = [each for each in found.branches.values() if each.side == "supply" and not found.is_outdoors(each)]
    return found, branches


def parts_of(items: list[Item], worst: bool) -> list[Part]:
    """The parts of items at one of their bounds."""
    return [part for item in items for part in ((item.high or ()) if worst else item.low)]


def edges_of(case: Case, system: DuctSystem, worst: bool) -> list[Edge]:
    """The supply runs as edges from the mover to rooms whose pressure is held."""
    _, branches = supply_tree(case, system)
    known = {branch.run.name for branch in branches}
    usual: float = case.limit("outlet-drop")
    edges = []
    for branch in branches:
        start = f"run {branch.nearer}" if branch.nearer in known else "mover"
        parts = parts_of(duct_items(case, branch.run), worst) or [Resistance(NEGLIGIBLE, 1.0)]
        last = not branch.farther and not branch.outlets
        edges.append(Edge(branch.run.name, start, "rooms" if last else f"run {branch.run.name}", parts))
        for name in branch.outlets:
            outlet = system.outlets[name]
            drop = case.maybe(outlet, "pressure_drop")
            if drop is None and worst and not grilles_are_counted(system):
                drop = usual
            flow = outlet_flow(case, outlet)
            part: Part = Device(drop, flow, 2.0) if drop and flow > 0.0 else Resistance(NEGLIGIBLE, 1.0)
            edges.append(Edge(f"outlet {name}", f"run {branch.run.name}", "rooms", [part]))
    return edges


def divided(case: Case, system: DuctSystem, worst: bool) -> dict[str, float]:
    """Airflow by run at one bound of the losses. Raises CannotJudge where the network has no solution."""
    edges = edges_of(case, system, worst)
    _, branches = supply_tree(case, system)
    total = sum(run_flow(case, branch.run) for branch in branches if branch.nearer is None)
    names = {edge.start for edge in edges} | {edge.end for edge in edges} - {"rooms"}
    nodes = [Node("rooms", 0.0), *(Node(name) for name in sorted(names))]
    try:
        solution = solve_network(nodes, [*edges, Edge("whole", "rooms", "mover", fixed_flow=total)])
    except (NoSolution, OutOfRange) as problem:
        raise CannotJudge(f"the duct network has no solution: {problem.reason}") from None
    return {branch.run.name: solution.flows[branch.run.name] for branch in branches}


@quantity()
def division(case: Case, system: DuctSystem) -> Division:
    """How the design airflow of a system divides itself. Raises as the losses and the network do."""
    mover_of(case, system)
    return Division(divided(case, system, False), divided(case, system, True))


@quantity("airflow", "where the fan curve meets the ducts with all losses at best")
def airflow_at_best(case: Case, circuit: Circuit) -> float | None:
    """The most air that a fan with a curve moves; None where it has none or its network does not tell."""
    if not has_curve(circuit):
        return None
    try:
        return moved(case, circuit).low
    except (NotApplicable, CannotJudge, Missing):
        return None
