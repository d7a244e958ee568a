"""What a circuit takes of the static pressure: along the ways of a tree, or, where ducts close a ring, by its solution.

In a ring the air of an outlet comes by two ways, so that no run has a design airflow of its own. Every outlet is given
its design airflow, the flows between are solved, and the outlet whose way takes most tells what the mover must lift.
"""

from collections.abc import Iterable
from math import inf

from checker.case import CannotJudge, Case, Missing, gather
from checker.quantities.circuits import Circuit
from checker.quantities.damper_balance import free_joint
from checker.quantities.duct_graph import sketch
from checker.quantities.duct_mesh import HELD, Passage
from checker.quantities.duct_mesh_walk import closes_rings, has_ring
from checker.quantities.duct_network import Answer, DuctNetwork, circuit_passages, solve
from checker.quantities.duct_parts import items_of
from checker.quantities.duct_ways import Share, valued, worst_shares
from checker.quantities.mover_models import MoverModel
from checker.quantities.solved_airflows import terminal_flow

Shares = tuple[float, list[Share], list[Share]]


def shares_of(case: Case, circuit: Circuit, loaded: bool) -> Shares:
    """(airflow, shares by their lower bounds, shares by their upper bounds), filters clean or loaded."""
    ring = ring_of(case, circuit)
    return worst_shares(case, circuit, loaded) if ring is None else ring_shares(case, circuit, *ring, loaded)


def ring_of(case: Case, circuit: Circuit) -> tuple[Passage, tuple[Passage, ...]] | None:
    """The mover's passage and all that shares its air, where its runs are no tree but hang together; else None."""
    system = circuit.system
    if system is None or circuit.duct is not None:
        return None
    found = sketch(case, system)
    if not (found.rings or found.loose) or not closes_rings(case, system):
        return None
    try:
        center, passages = circuit_passages(case, circuit)
    except (Missing, CannotJudge):
        return None
    return (center, passages) if has_ring(passages) else None


def ring_shares(case: Case, circuit: Circuit, center: Passage, passages: Iterable[Passage], loaded: bool) -> Shares:
    """The shares of a circuit with a ring. Raises Missing for an outlet without a design airflow."""
    known = tuple(passages)
    if sum(each.kind == "mover" for each in known) > 1:
        raise CannotJudge("several fans move the air of its ring")
    items = items_of(case, circuit, known, loaded)
    model = MoverModel("its design airflow", None, 0.0, inf)
    network = DuctNetwork(known, items, {center.key: model}, center, 1.0, 0.0)
    flows = gather([lambda each=each: terminal_flow(case, each) for each in network.terminals])  # type: ignore[misc]
    taken = dict(zip((each.key for each in network.terminals), flows, strict=True))
    unbounded = {key: [item._replace(high=item.high or item.low) for item in found] for key, found in items.items()}
    least = along(network, solve(network, (), taken))
    most = along(network, solve(network._replace(items=unbounded), None, taken))
    return sum(flows), least, most


def along(network: DuctNetwork, answer: Answer) -> list[Share]:
    """What the costliest way takes, at the flows of a solution: from where air comes in to where it goes out."""
    center, outgoing = network.center, network.center.outgoing
    before, after = (center.end, center.start) if outgoing else (center.start, center.end)
    last = max(network.terminals, key=lambda each: taken_by(network, answer, each))
    way = [*followed(network, answer, before, set(HELD), outgoing), center]
    way += [*followed(network, answer, free_joint(last), {after}, outgoing), last]
    return [share for each in way for share in valued(network.items[each.key], abs(answer.flows[each.key]))]


def taken_by(network: DuctNetwork, answer: Answer, terminal: Passage) -> float:
    """Pressure in Pa between rooms and mover that the way to a terminal takes, but for a sum that all share."""
    sign = -1.0 if network.center.outgoing else 1.0
    return sum(answer.losses[terminal.key].values()) - sign * answer.pressures[free_joint(terminal)]


def followed(network: DuctNetwork, answer: Answer, joint: str, ends: set[str], downwind: bool) -> list[Passage]:
    """The passages by which most air comes to a joint (or leaves it, `downwind`), one after the other up to an end."""
    found: list[Passage] = []
    while joint not in ends:
        beside = [(passage, other) for passage, other in moving(network, answer, joint, downwind) if passage not in found]
        if not beside:
            break
        passage, joint = max(beside, key=lambda each: abs(answer.flows[each[0].key]))
        found.append(passage)
    return found


def moving(network: DuctNetwork, answer: Answer, joint: str, downwind: bool) -> Iterable[tuple[Passage, str]]:
    """Passages whose air leaves a joint downwind or comes to it upwind, each with its other joint."""
    for each in network.passages:
        if each.kind != "mover":
            flow = answer.flows[each.key] * (1.0 if downwind else -1.0)
            if each.start == joint and flow > 0.0:
                yield each, each.end
            elif each.end == joint and flow < 0.0:
                yield each, each.start
