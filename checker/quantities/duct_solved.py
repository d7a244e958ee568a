"""A solved duct system: operating point, flow in every run and outlet, pressures, and what dampers must take."""

from typing import NamedTuple

from checker.case import CannotJudge, Case, quantity
from checker.physics.scalar_root import bracketed_root
from checker.quantities.circuits import Circuit, at_setting, circuit_flow
from checker.quantities.duct_graph import mover_of
from checker.quantities.duct_mesh import HELD, Passage
from checker.quantities.duct_mesh_walk import joint_names
from checker.quantities.duct_network import Answer, DuctNetwork, duct_network, solve
from checker.quantities.duct_parts import design_flow
from checker.quantities.duct_ways import worst_shares

SHARE_TOLERANCE = 1e-4


class Balance(NamedTuple):
    """With ideal dampers: the share of its design that every terminal gets, what each damper takes in Pa by the key
    of its terminal, and the terminal whose damper takes nothing because its way takes most."""

    share: float
    takes: dict[str, float]
    critical: str


class Bound(NamedTuple):
    """The network with its losses at one end of what the file leaves open; `balance` None where nothing can be set."""

    answer: Answer
    balance: Balance | None


class SolvedSystem(NamedTuple):
    """A circuit's network and its solution with dampers open, with all losses at best (`low`) and at worst (`high`).

    `design` is its design airflow in m3/s, `designs` those of its passages by key, `joints` the names of its joints.
    """

    name: str
    system: str
    design: float
    network: DuctNetwork
    designs: dict[str, float | None]
    joints: dict[str, str]
    low: Bound
    high: Bound

    def flow(self, bound: Bound) -> float:
        """Airflow of the mover at a bound, m3/s."""
        return bound.answer.flows[self.network.centre.key]

    def worksheet_lines(self, system: str) -> list[str]:
        """The network as tables, in trade or metric units."""
        from checker.quantities.solved_sheet import solved_lines

        return solved_lines(self, system)


@quantity("", "flows and pressures that balance at every joint", "global gradient method for networks, 1988")
def solved_system(case: Case, circuit: Circuit) -> SolvedSystem:
    """The circuit solved. Raises Missing for what no bound replaces, CannotJudge where there is no solution."""
    if circuit.mover is None:
        assert circuit.system is not None
        mover_of(case, circuit.system)
    if circuit.is_bare:
        worst_shares(case, circuit, loaded=False)
    network = network_of(case, circuit)
    designs = {each.key: design_flow(case, each) for each in network.passages}
    if circuit.duct is not None:
        designs = dict.fromkeys(designs, circuit_flow(case, circuit))
    low, high = (Bound(solve(network, end), balance(network, designs, end)) for end in ((), None))
    return SolvedSystem(
        at_setting(circuit),
        circuit.system.name if circuit.system is not None else circuit.name,
        circuit_flow(case, circuit),
        network, designs, joint_names(list(network.passages)), low, high,
    )  # fmt: skip


@quantity()
def network_of(case: Case, circuit: Circuit) -> DuctNetwork:
    """The network of a circuit, not yet solved."""
    return duct_network(case, circuit)


def balance(network: DuctNetwork, designs: dict[str, float | None], worst: tuple[str, ...] | None) -> Balance | None:
    """The best that dampers at every terminal can do; None with several movers or without design airflows."""
    wanted = {each.key: designs[each.key] or 0.0 for each in network.terminals}
    whole = sum(wanted.values())
    if len(network.models) > 1 or whole <= 0.0 or min(wanted.values()) <= 0.0:
        return None
    model = network.model
    share = model.flow / whole
    if model.curve is not None:
        curve = model.curve
        least, most = curve.lowest_stable_flow / whole * (1.0 + 1e-6), curve.free_flow / whole * (1.0 - 1e-6)

        def spare(share: float) -> float:
            try:
                return min(takes_at(network, wanted, share, worst).values())
            except CannotJudge:  # leakage takes the fan beyond its free airflow
                return -1.0

        if spare(least) <= 0.0:
            return None
        share = bracketed_root(spare, least, most, SHARE_TOLERANCE, "balance of the dampers")
    takes = takes_at(network, wanted, share, worst)
    critical = min(takes, key=lambda key: takes[key])
    return Balance(share, {key: max(value - takes[critical], 0.0) for key, value in takes.items()}, critical)


def takes_at(
    network: DuctNetwork, wanted: dict[str, float], share: float, worst: tuple[str, ...] | None
) -> dict[str, float]:
    """Pressure in Pa that is left for a damper at every terminal that gets this share of its design."""
    answer = solve(network, worst, {key: share * flow for key, flow in wanted.items()})
    sign = -1.0 if network.centre.outgoing else 1.0
    return {
        each.key: sign * answer.pressures[free_joint(each)] - sum(answer.losses[each.key].values())
        for each in network.terminals
    }


def free_joint(terminal: Passage) -> str:
    """The joint at which a terminal leaves the ducts."""
    return terminal.end if terminal.start in HELD else terminal.start
