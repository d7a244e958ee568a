"""A solved duct system: operating point, flow in every run and outlet, pressures, and what dampers must take."""


from checker.case import CannotJudge, Case, Missing, path_of, quantity
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.quantities.circuits import Circuit, at_setting, circuit_flow
from checker.quantities.damper_balance import Balance, balance
from checker.quantities.duct_graph import mover_of
from checker.quantities.duct_mesh_walk import joint_names
from checker.quantities.duct_network import Answer, DuctNetwork, check_held, duct_network, solve
from checker.quantities.duct_parts import design_flow
from checker.record import Record


class SolvedSystem(Record):
    """A circuit's network and its solution with dampers open: with all losses at best (`low`), and at worst (`high`).

    `high` is None where there is none, for the reason in `open`. `design` is the design airflow in m3/s, `designs`
    those of the passages by key, `joints` the names of the joints.
    """

    name: str
    system: str
    design: float
    network: DuctNetwork
    designs: dict[str, float | None]
    joints: dict[str, str]
    low: Answer
    high: Answer | None
    open: str
    balances: tuple[Balance | None, Balance | None]

    def flow(self, answer: Answer) -> float:
        """Airflow of the mover, m3/s."""
        return answer.flows[self.network.center.key]

    @property
    def worst(self) -> Answer:
        """The solution with all losses at worst. Raises CannotJudge where there is none."""
        if self.high is None:
            raise CannotJudge(self.open)
        return self.high

    def worksheet_lines(self, system: str) -> list[str]:
        """The network as tables, in trade or metric units."""
        from checker.quantities.solved_sheet import solved_lines

        return solved_lines(self, system)


@quantity()
def network_of(case: Case, circuit: Circuit) -> DuctNetwork:
    """The network of a circuit, not yet solved. Raises Missing where nothing is said of mover or ducts."""
    if circuit.mover is None:
        assert circuit.system is not None
        mover_of(case, circuit.system)
    if circuit.is_bare:
        fan = isinstance(circuit.mover, Fan)
        system = circuit.system
        raise Missing(path_of(circuit.mover, "duct") if fan else path_of(system, "runs") if system else "ducts")
    return duct_network(case, circuit)


@quantity("airflow")
def designs_of(case: Case, circuit: Circuit) -> dict[str, float | None]:
    """Design airflow of every passage, by key."""
    network = network_of(case, circuit)
    if circuit.duct is not None:
        return dict.fromkeys((each.key for each in network.passages), circuit_flow(case, circuit))
    return {each.key: design_flow(case, each) for each in network.passages}


@quantity()
def balances(case: Case, circuit: Circuit) -> tuple[Balance | None, Balance | None]:
    """What ideal dampers can do for the outlets, with all losses at best and at worst."""
    network, designs = network_of(case, circuit), designs_of(case, circuit)
    return balance(network, designs, ()), balance(network, designs, None)


@quantity("", "flows and pressures that balance at every joint", "global gradient method for pipe networks, 1988")
def solved_system(case: Case, circuit: Circuit) -> SolvedSystem:
    """The circuit solved. Raises Missing for what no bound replaces, CannotJudge where there is no solution."""
    network = network_of(case, circuit)
    low = solve(network, ())
    check_held(network, low, "take")
    high, reason = None, ""
    try:
        high = solve(network, None)
        check_held(network, high, "may take")
    except CannotJudge as why:
        high, reason = None, str(why)
    return SolvedSystem(
        at_setting(circuit),
        circuit.system.name if circuit.system is not None else circuit.name,
        circuit_flow(case, circuit),
        network, designs_of(case, circuit), joint_names(list(network.passages)), low, high, reason,
        balances(case, circuit),
    )  # fmt: skip


@quantity()
def solved_if_any(case: Case, circuit: Circuit) -> SolvedSystem | None:
    """The same for a reader of the worksheet; None where there is no solution."""
    try:
        return solved_system(case, circuit)
    except CannotJudge:
        return None


def has_curve(circuit: Circuit) -> bool:
    """Whether the mover of a circuit states curves."""
    mover = circuit.mover
    return isinstance(mover, Fan | Equipment) and bool(mover.curves)
