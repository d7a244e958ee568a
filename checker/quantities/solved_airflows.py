"""What a solved duct system tells of its parts: what arrives at best, what runs backward, outdoor air, rings."""

from functools import partial
from typing import NamedTuple

from checker.case import CannotJudge, Case, Missing, NotApplicable, gather, path_of, quantity
from checker.design.airway import Run
from checker.design.equipment import Equipment, OutdoorAirDuct
from checker.quantities.circuits import Circuit, circuit_flow, ducted_circuits
from checker.quantities.damper_balance import Balance, free_joint
from checker.quantities.duct_balance import has_damper
from checker.quantities.duct_flow import outlet_flow, run_flow
from checker.quantities.duct_mesh import HELD, OUTDOORS, Passage
from checker.quantities.duct_network import DuctNetwork, solve
from checker.quantities.duct_solved import balances, designs_of, has_curve, network_of, solved_system
from checker.quantities.mover_models import holds_airflow

DEPENDS = "it depends on how the ducts are made and laid, within what is usual"
NOTHING = 1e-6


class Reach(NamedTuple):
    """What the outlet whose way takes most gets at best, m3/s, of its design, with dampers set to share the shortage.

    `low` and `high` are the shares of the design with losses at best and at worst; `is_less` as in a balance.
    """

    outlet: str
    wanted: float
    low: float
    high: float
    is_less: bool

    @property
    def reached(self) -> float:
        """Airflow at best, m3/s."""
        return self.low * self.wanted


@quantity()
def reach(case: Case, circuit: Circuit) -> Reach:
    """What arrives at the outlet that is worst off. Raises CannotJudge where one rated point does not tell."""
    network, designs = network_of(case, circuit), designs_of(case, circuit)
    if len(network.models) > 1:
        raise NotApplicable("several fans move its air")
    absent = [each for each in network.terminals if designs[each.key] is None]
    gather([partial(terminal_flow, case, each) for each in absent])
    low, high = balances(case, circuit)
    if low is None or high is None:
        raise NotApplicable("no outlet to a room has a design airflow")
    if network.model.curve is None:
        solved_system(case, circuit)  # raises where the pressure that it is known for is not enough
    worst = next(each for each in network.terminals if each.key == low.critical)
    return Reach(worst.name, designs[worst.key] or 0.0, low.share, high.share, low.is_less)


def terminal_flow(case: Case, terminal: Passage) -> float:
    """Design airflow of a terminal. Raises Missing."""
    thing = terminal.thing
    return run_flow(case, thing) if isinstance(thing, Run) else outlet_flow(case, thing)  # type: ignore[arg-type]


def reaching_circuits(case: Case) -> list[Circuit]:
    """Circuits with runs, of fans with a curve and of blowers that hold their airflow, and of rated points."""
    return [each for each in ducted_circuits(case) if each.system is not None and each.duct is None]


def curved_circuits(case: Case) -> list[Circuit]:
    """Circuits whose ducts are described and whose mover has a curve and does not hold its airflow."""
    return [each for each in ducted_circuits(case) if has_curve(each) and not holds_airflow_of(each)]


def holds_airflow_of(circuit: Circuit) -> bool:
    """Whether the mover of a circuit holds its airflow."""
    return circuit.mover is not None and holds_airflow(circuit.mover)


class Moved(NamedTuple):
    """Airflow that a mover settles at, m3/s: with losses at best (less than that where `is_less`), and at worst."""

    low: float
    high: float
    is_less: bool


@quantity()
def moved(case: Case, circuit: Circuit) -> Moved:
    """What a mover with a curve moves with dampers open; `high` 0 where it is not known but smaller."""
    network = network_of(case, circuit)
    if len(network.models) > 1:
        raise NotApplicable("several fans move its air")
    curve = network.model.curve
    assert curve is not None
    key = network.centre.key
    if runs_left(network, worst=False):
        return Moved(curve.lowest_stable_flow, 0.0, True)
    low = solve(network, ()).flows[key]
    return Moved(low, 0.0 if runs_left(network, worst=True) else solve(network, None).flows[key], False)


def runs_left(network: DuctNetwork, worst: bool) -> bool:
    """Whether the ducts take more than the curve gives at the least airflow of its stable, printed part."""
    curve = network.model.curve
    assert curve is not None
    flow = curve.lowest_stable_flow
    if flow <= 0.0:
        return False
    return rise_at(network, flow, worst) > curve.pressure(flow) * network.density_ratio


def rise_at(network: DuctNetwork, flow: float, worst: bool) -> float:
    """Pressure in Pa that the mover has to lift at this airflow in m3/s."""
    key = network.centre.key
    rise = solve(network, None if worst else (), {key: flow}).rises[key]
    area = network.model.outlet_area
    return rise if area is None else rise + 0.5 * 1.2041 * network.density_ratio * (flow / area) ** 2


@quantity()
def throttles(case: Case, circuit: Circuit) -> bool:
    """Whether dampers can hold the airflow back: one on the way of all the air, or one on every last way."""
    network = network_of(case, circuit)
    runs = {each.key: each for each in network.passages if isinstance(each.thing, Run)}
    whole = circuit_flow(case, circuit)
    designs = designs_of(case, circuit)
    trunks = [each for each in runs.values() if (designs[each.key] or 0.0) >= whole * (1.0 - NOTHING)]
    if any(has_damper(each.thing) for each in trunks if isinstance(each.thing, Run)):
        return True
    ways = [own_runs(network, each) for each in network.terminals]
    bare = [way for way in ways if not any(has_damper(run) for run in way)]
    if not bare:
        return True
    unsaid = [run for way in bare for run in way if run.balancing_damper is None]
    if unsaid and all(any(run.balancing_damper is None for run in way) for way in bare):
        raise Missing(*(path_of(run, "balancing_damper") for run in unsaid))
    return False


def own_runs(network: DuctNetwork, terminal: Passage) -> list[Run]:
    """Runs that carry the air of this terminal alone: itself, or the one run that ends at its joint."""
    if isinstance(terminal.thing, Run):
        return [terminal.thing]
    joint = free_joint(terminal)
    beside = [each for each in network.passages if joint in (each.start, each.end) and each.key != terminal.key]
    return [each.thing for each in beside if isinstance(each.thing, Run)] if len(beside) == 1 else []


class Backward(NamedTuple):
    """An outlet, or an end outdoors, through which air goes against its design, and how much, m3/s."""

    name: str
    flow: float


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


class OutdoorAir(NamedTuple):
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


class Drawn(NamedTuple):
    """Outdoor air that a duct draws, m3/s: at most and at least."""

    most: float
    least: float


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


class RingOutlet(NamedTuple):
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
            network = network_of(case, circuit)
        except (Missing, CannotJudge):
            continue
        joints = {joint for each in network.passages for joint in (each.start, each.end)} - set(HELD)
        inner = [each for each in network.passages if each.start not in HELD and each.end not in HELD]
        if len(inner) >= len(joints):
            found += [RingOutlet(each.thing.path, each.name, each, circuit) for each in network.terminals]
    return found


@quantity()
def ring_flow(case: Case, outlet: RingOutlet) -> tuple[float, float]:
    """(least, greatest) airflow in m3/s of an outlet with dampers open, when the mover moves the design airflow."""
    network = network_of(case, outlet.circuit)
    taken = {network.centre.key: circuit_flow(case, outlet.circuit)}
    flows = [solve(network, end, taken).flows[outlet.terminal.key] for end in ((), None)]
    return min(flows), max(flows)


@quantity()
def ring_damper(case: Case, outlet: RingOutlet) -> bool | None:
    """Whether a damper stands on the outlet's own way; None where no run is its own. Missing where it is not said."""
    own = own_runs(network_of(case, outlet.circuit), outlet.terminal)
    if not own:
        return None
    if any(has_damper(run) for run in own):
        return True
    return bool(case.get(own[0], "balancing_damper"))


