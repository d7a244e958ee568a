"""What a solved duct system tells of its places: air that runs backward, outdoor air that is drawn in, outlets on rings."""


from checker.case import CannotJudge, Case, Missing, NotApplicable, quantity
from checker.design.equipment import Equipment, OutdoorAirDuct
from checker.quantities.circuits import Circuit, circuit_flow, ducted_circuits
from checker.quantities.duct_mesh import HELD, OUTDOORS, Passage, every_mover
from checker.quantities.duct_mesh_walk import has_ring
from checker.quantities.duct_network import DuctNetwork, circuit_passages, solve, terminals_of
from checker.quantities.duct_solved import network_of, solved_system
from checker.quantities.solved_airflows import (
    DEPENDS,
    NOTHING,
    is_damped,
    own_ducts,
    reaching_circuits,
    terminal_flow,
)
from checker.record import Record


def shared_circuits(case: Case) -> list[Circuit]:
    """Circuits whose runs name another fan than their mover's."""
    found = []
    for circuit in reaching_circuits(case):
        assert circuit.system is not None
        own = circuit.mover.name if circuit.mover is not None else ""
        known = {*circuit.system.runs, *circuit.system.outlets, own}
        ends = {end for run in circuit.system.runs.values() for end in (run.from_, run.to) if end not in known}
        if ends & every_mover(case).keys():
            found.append(circuit)
    return found


class Backward(Record):
    """An outlet, or an end outdoors, through which air goes against its design, and how much, m3/s."""

    name: str
    flow: float

    def worksheet_lines(self, system: str) -> list[str]:
        """What goes backward, on one line."""
        from checker.quantities.solved_words import backward_lines

        return backward_lines(self, system)


@quantity()
def backward(case: Case, circuit: Circuit) -> Backward | None:
    """The passage to rooms or outdoors with most air in the wrong direction; None where there is none."""
    solved = solved_system(case, circuit)
    found: list[Backward] = []
    unsure = False
    for each in solved.network.passages:
        if each.kind in ("run", "outlet") and (each.start in HELD or each.end in HELD):
            flows = (solved.low.flows[each.key], solved.worst.flows[each.key])
            if max(flows) < -NOTHING:
                found.append(Backward(each.name, -max(flows)))
            unsure = unsure or min(flows) < -NOTHING
    if unsure and not found:
        raise CannotJudge(DEPENDS)
    return max(found, key=lambda each: each.flow, default=None)


class OutdoorAir(Record):
    """An outdoor-air duct of a unit with the circuit whose return it opens into."""

    path: str
    name: str
    duct: OutdoorAirDuct
    circuit: Circuit


def outdoor_air_ducts(case: Case) -> list[OutdoorAir]:
    """Outdoor-air ducts that are drawn as runs from outdoors to a unit, without a fan of their own."""
    found = []
    for circuit in ducted_circuits(case):
        unit = circuit.mover
        if isinstance(unit, Equipment) and unit.outdoor_air is not None and circuit.system is not None:
            ends = {run.from_ for run in circuit.system.runs.values()}
            if ends & {"outdoors", *case.design.openings} and not ends & set(case.design.fans):
                found.append(OutdoorAir(unit.outdoor_air.path, unit.name, unit.outdoor_air, circuit))
    return found


@quantity("airflow")
def outdoor_airflow(case: Case, of: OutdoorAir) -> float:
    """Outdoor airflow that the design states."""
    return float(case.get(of.duct, "airflow"))


class Drawn(Record):
    """Outdoor air that a duct draws, m3/s: at most and at least."""

    most: float
    least: float

    def worksheet_lines(self, system: str) -> list[str]:
        """Outdoor air at most and at least, on one line."""
        from checker.quantities.solved_words import drawn_lines

        return drawn_lines(self, system)


@quantity()
def drawn_outdoor_air(case: Case, of: OutdoorAir) -> Drawn:
    """What the unit draws from outdoors: most with this duct at best and the other returns at worst, and contrary."""
    network = network_of(case, of.circuit)
    own = [each for each in network.passages if each.start == OUTDOORS and each.kind == "run"]
    if not own:
        raise NotApplicable("no duct from outdoors joins its return")
    alone = {each.key for each in own}
    others = {each.key for each in network.passages if each.start in HELD and each.key not in alone}
    others |= {each.key for each in network.passages if each.kind == "run" and leads_from(network, each, others)}
    most = solve(network, others)
    rest = [each.key for each in network.passages if each.key not in others]
    least = solve(network, rest)
    return Drawn(*(sum(answer.flows[each.key] for each in own) for answer in (most, least)))


def leads_from(network: DuctNetwork, run: Passage, firsts: set[str]) -> bool:
    """Whether all air of a run has come through passages that are among the first ones."""
    feeding = [each for each in network.passages if each.end == run.start and each.kind != "mover"]
    return bool(feeding) and all(each.key in firsts for each in feeding)


class RingOutlet(Record):
    """An outlet of a system with a ring. `path` is the outlet's."""

    path: str
    name: str
    terminal: Passage
    circuit: Circuit


def ring_outlets(case: Case) -> list[RingOutlet]:
    """Outlets of systems whose runs close a ring."""
    found = []
    for circuit in reaching_circuits(case):
        try:
            center, passages = circuit_passages(case, circuit)
        except (Missing, CannotJudge):
            continue
        if has_ring(passages):
            ends = terminals_of(center, passages)
            found += [RingOutlet(each.thing.path, each.name, each, circuit) for each in ends]
    return found


class RingShare(Record):
    """What an outlet on a ring takes at least with dampers open, and its design, m3/s; whether a damper is its own."""

    least: float
    design: float
    is_damped: bool

    def worksheet_lines(self, system: str) -> list[str]:
        """What the outlet takes, on one line."""
        from checker.quantities.solved_words import ring_lines

        return ring_lines(self, system)


@quantity()
def ring_share(case: Case, outlet: RingOutlet) -> RingShare:
    """What an outlet takes when the mover moves the design airflow. Raises Missing for an unsaid damper that matters."""
    network, design = network_of(case, outlet.circuit), terminal_flow(case, outlet.terminal)
    taken = {network.center.key: circuit_flow(case, outlet.circuit)}
    flows = [solve(network, end, taken).flows[outlet.terminal.key] for end in ((), None)]
    most = design * (1.0 + case.limit("room-airflow-tolerance"))
    own = own_ducts(network, outlet.terminal)
    if max(flows) <= most or any(map(is_damped, own)):
        return RingShare(min(flows), design, any(map(is_damped, own)))
    if min(flows) <= most:
        raise CannotJudge(DEPENDS)
    return RingShare(min(flows), design, bool(own) and bool(case.get(own[0], "balancing_damper")))
