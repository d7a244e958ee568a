"""What a mover moves through its ducts: what reaches the outlet that is worst off, and what it settles at."""

from functools import partial

from checker.case import CannotJudge, Case, NotApplicable, gather, quantity
from checker.design.airway import Airway, Run
from checker.physics.air import STANDARD_DENSITY
from checker.physics.friction import velocity_pressure
from checker.quantities.circuits import Circuit, ducted_circuits
from checker.quantities.damper_balance import free_joint, way_to
from checker.quantities.duct_flow import outlet_flow, run_flow
from checker.quantities.duct_mesh import Passage
from checker.quantities.duct_network import DuctNetwork, solve
from checker.quantities.duct_solved import balances, designs_of, has_curve, network_of, solved_system
from checker.quantities.static_offer import holds_airflow
from checker.record import Record

DEPENDS = "it depends on how the ducts are made and laid, within what is usual"
NOT_PRINTED = "its ducts take it left of the stable, printed part of its curve, where nothing tells its airflow"
NOTHING = 1e-6


class Reach(Record):
    """What the outlet whose way takes most gets at best, m3/s, of its design, with dampers set to share the shortage.

    `low` and `high` are the shares of the design with losses at best and at worst; `is_less` as in a balance; `asks`
    are the keys that would bring them together.
    """

    system: str
    outlet: str
    wanted: float
    low: float
    high: float
    is_less: bool
    asks: tuple[str, ...]

    def worksheet_lines(self, system: str) -> list[str]:
        """What arrives, on one line."""
        from checker.quantities.solved_words import reach_lines

        return reach_lines(self, system)

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
        held_or_not_told(case, circuit)
    worst = next(each for each in network.terminals if each.key == low.critical)
    asks = [item.ask for each in (*way_to(network, worst), network.center) for item in network.items[each.key] if item.ask]
    name = circuit.system.name if circuit.system is not None else circuit.name
    return Reach(name, worst.name, designs[worst.key] or 0.0, low.share, high.share, low.is_less, tuple(dict.fromkeys(asks)))


def held_or_not_told(case: Case, circuit: Circuit) -> None:
    """Raise NotApplicable where a mover without a curve is not known to hold against what the ducts take."""
    try:
        solved = solved_system(case, circuit)
    except CannotJudge:
        solved = None
    if solved is None or solved.high is None:
        raise NotApplicable("no curve tells what comes where the ducts take more than its rated pressure")


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


class Moved(Record):
    """Airflow that a mover settles at, m3/s: with losses at best (less than that where `is_less`), and at worst."""

    low: float
    high: float
    is_less: bool

    def worksheet_lines(self, system: str) -> list[str]:
        """The airflow at best and at worst, on one line."""
        from checker.quantities.solved_words import moved_lines

        return moved_lines(self, system)


@quantity()
def moved(case: Case, circuit: Circuit) -> Moved:
    """What a mover with a curve moves with dampers open; `high` 0 where it is not known but smaller."""
    network = network_of(case, circuit)
    if len(network.models) > 1:
        raise NotApplicable("several fans move its air")
    curve = network.model.curve
    if curve is None:
        raise NotApplicable("no fan curve tells what it moves")
    key = network.center.key
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
    key = network.center.key
    rise = solve(network, None if worst else (), {key: flow}).rises[key]
    area = network.model.outlet_area
    return rise if area is None else rise + velocity_pressure(flow / area, STANDARD_DENSITY * network.density_ratio)


def is_damped(duct: object) -> bool:
    """Whether a duct has a volume damper."""
    return isinstance(duct, Airway) and (bool(duct.balancing_damper) or "damper" in duct.pieces)


def own_ducts(network: DuctNetwork, terminal: Passage) -> list[Airway]:
    """Ducts that carry the air of this terminal alone: itself, or the one run that ends at its joint."""
    if isinstance(terminal.thing, Airway):
        return [terminal.thing]
    joint = free_joint(terminal)
    beside = [each for each in network.passages if joint in (each.start, each.end) and each.key != terminal.key]
    return [each.thing for each in beside if isinstance(each.thing, Airway)] if len(beside) == 1 else []
