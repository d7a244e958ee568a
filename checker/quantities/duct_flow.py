"""Design airflows of duct systems: of the outlets, the runs, the system, and of ducts given in one line."""

from collections.abc import Callable
from functools import partial

from checker.case import Case, Missing, gather, path_of, quantity
from checker.design.airway import Airway, Run
from checker.design.ducts import DuctSystem, Outlet
from checker.design.equipment import Equipment
from checker.design.fans import Fan, Setting
from checker.design.rooms import Room
from checker.quantities.duct_graph import (
    Branch,
    Tree,
    is_return_outlet,
    mover_of,
    sketch,
    takes_all_back,
    tree,
)
from checker.quantities.movers import airflow, exhaust_flow, supply_flow


def system_of(node: Run | Outlet) -> DuctSystem:
    """The system that a run or outlet belongs to."""
    system: DuctSystem = node.up
    return system


def is_only_outlet(case: Case, outlet: Outlet) -> bool:
    """Whether its room has no other outlet of the same direction."""
    alike = [
        other
        for system in case.design.ducts.values()
        for other in system.outlets.values()
        if other.room == outlet.room and is_return_outlet(other) == is_return_outlet(outlet)
    ]
    return len(alike) == 1


def room_flow(case: Case, room: Room, outlet_kind: str | None) -> float:
    """Airflow that a room states for outlets of a kind. Raises Missing."""
    field = "return_" if outlet_kind in ("return grille", "filter grille") else "supply"
    if outlet_kind == "exhaust grille":
        field = "exhaust"
    if outlet_kind == "outdoor air outlet" and room.outdoor_air is not None:
        field = "outdoor_air"
    stated = case.maybe(room, field)
    if stated is None:
        raise Missing(path_of(room, field))
    return float(stated)


@quantity("airflow", "stated; else what its room states, where it is the only outlet there; else all that comes back")
def outlet_flow(case: Case, outlet: Outlet) -> float:
    """Design airflow of an outlet."""
    stated = case.maybe(outlet, "airflow")
    if stated is not None:
        return float(stated)
    room = case.design.rooms.get(outlet.room) if outlet.room is not None else None
    if room is not None and is_only_outlet(case, outlet):
        try:
            return room_flow(case, room, outlet.kind)
        except Missing:
            pass
    if takes_all_back(case, outlet):
        return system_flow(case, system_of(outlet))
    raise Missing(path_of(outlet, "airflow"))


@quantity("airflow", "stated; else the sum of the outlets beyond it")
def run_flow(case: Case, run: Run) -> float:
    """Design airflow of a run."""
    stated = case.maybe(run, "airflow")
    if stated is not None:
        return float(stated)
    system = system_of(run)
    found = tree(case, system)
    return first_known(
        case,
        partial(flow_beyond, case, found, found.branches[run.name]),
        partial(flow_of_the_only, case, found, run),
    )


def first_known(case: Case, *routes: Callable[[], float]) -> float:
    """The first route that gives a flow; else Missing, of what the file leaves to be decided where it says so."""
    gaps: list[Missing] = []
    for route in routes:
        try:
            return route()
        except Missing as gap:
            gaps.append(gap)
    raise next((gap for gap in gaps if case.design.tbd & set(gap.paths)), gaps[0])


def flow_beyond(case: Case, found: Tree, branch: Branch) -> float:
    """Sum of the outlets and runs beyond a branch, or of the rooms that it serves. Raises Missing."""
    system = system_of(branch.run)
    routes: list[Callable[[], float]] = [partial(outlet_flow, case, system.outlets[name]) for name in branch.outlets]
    routes += [partial(run_flow, case, found.branches[name].run) for name in branch.farther]
    if not routes:
        rooms = list(branch.run.serves)
        if branch.end is not None and branch.end.kind == "room":
            rooms = [branch.end.name]
        field = "supply" if branch.side == "supply" else "return_"
        nodes = [case.design.rooms[name] for name in rooms if name in case.design.rooms]
        if not nodes or any(getattr(node, field) is None for node in nodes):
            raise Missing(path_of(branch.run, "airflow"))
        routes = [partial(case.get, node, field) for node in nodes]
    return sum(gather(routes))


def flow_of_the_only(case: Case, found: Tree, run: Run) -> float:
    """Airflow of the only run that joins the mover on its side, indoors or outdoors. Raises Missing."""
    branch = found.branches[run.name]
    outdoors = found.is_outdoors(branch)
    beside = [
        each
        for each in found.branches.values()
        if each.side == branch.side and each.nearer is None and found.is_outdoors(each) == outdoors
    ]
    if branch.nearer is not None or len(beside) != 1:
        raise Missing(path_of(run, "airflow"))
    system = system_of(run)
    mover = mover_of(case, system)
    if outdoors and isinstance(mover, Equipment):
        if mover.outdoor_air is None:
            raise Missing(path_of(run, "airflow"))
        return float(case.get(mover.outdoor_air, "airflow"))
    if isinstance(mover, Fan) and mover.role == "recovery" and outdoors == (branch.side == "supply"):
        return flow_taken_out(case, found, system)
    return system_flow(case, system)


def flow_taken_out(case: Case, found: Tree, system: DuctSystem) -> float:
    """What a recovery unit takes out: by its grilles, else at its setting. Raises Missing."""
    leaves = [leaf for leaf in found.leaves("return") if not found.is_outdoors(leaf)]

    def by_grilles() -> float:
        if not leaves:
            raise Missing(path_of(system, "outlets"))
        return sum(gather([partial(flow_beyond_or_stated, case, found, leaf) for leaf in leaves]))

    def by_setting() -> float:
        setting = mover_setting(case, system)
        if setting is None:
            raise Missing(path_of(mover_of(case, system), "settings"))
        return exhaust_flow(case, setting)

    return first_known(case, by_grilles, by_setting)


def declared_flow(case: Case, system: DuctSystem) -> float:
    """Airflow that a system or its mover states. Raises Missing."""
    stated = case.maybe(system, "airflow")
    if stated is not None:
        return float(stated)
    try:
        return mover_flow(case, mover_setting(case, system), mover_of(case, system))
    except Missing as gap:
        if case.design.tbd & set(gap.paths):
            raise
        raise Missing(path_of(system, "airflow")) from None


def mover_setting(case: Case, system: DuctSystem) -> Setting | None:
    """The setting that a system is designed at: the one it names, else the mover's fastest."""
    mover = mover_of(case, system)
    named = case.maybe(system, "setting")
    if named is not None and named in mover.settings:
        chosen: Setting = mover.settings[named]
        return chosen
    return fastest(case, mover.settings)


def fastest(case: Case, settings: dict[str, Setting]) -> Setting | None:
    """The setting with the greatest airflow of those that state one; the first where none does."""
    stated = [setting for setting in settings.values() if greatest_flow(setting) > 0.0]
    if stated:
        return max(stated, key=greatest_flow)
    return next(iter(settings.values()), None)


def greatest_flow(setting: Setting) -> float:
    """The greatest airflow that a setting states, m3/s; zero where it states none."""
    return max(setting.airflow or 0.0, setting.supply_airflow or 0.0, setting.exhaust_airflow or 0.0)


def mover_flow(case: Case, setting: Setting | None, mover: object) -> float:
    """Airflow of a mover at a setting; for equipment else its rated airflow. Raises Missing."""
    if setting is None:
        if isinstance(mover, Equipment):
            return float(case.get(mover, "airflow"))
        raise Missing(path_of(mover, "settings"))
    if isinstance(mover, Fan) and mover.role == "recovery":
        return max(supply_flow(case, setting), exhaust_flow(case, setting))
    return airflow(case, setting)


@quantity("airflow", "stated; else the sum of the supply outlets; else that of the mover's setting")
def system_flow(case: Case, system: DuctSystem) -> float:
    """Design airflow of a system."""
    stated = case.maybe(system, "airflow")
    if stated is not None:
        return float(stated)
    return first_known(case, partial(sum_of_outlets, case, system), partial(declared_flow, case, system))


@quantity("airflow", "sum of the supply outlets, or of the last supply runs where they name none")
def sum_of_outlets(case: Case, system: DuctSystem) -> float:
    """What the outlets of a system deliver by design."""
    outlets = [each for each in system.outlets.values() if each.kind != "transfer grille" and not is_return_outlet(each)]
    if outlets and not any(
        branch.side == "supply" and not branch.outlets and not branch.is_dead_end
        for branch in sketch(case, system).leaves("supply")
    ):
        return sum(gather([partial(outlet_flow, case, outlet) for outlet in outlets]))
    found = tree(case, system)
    leaves = [branch for branch in found.leaves("supply") if not found.is_outdoors(branch)]
    if not leaves:
        raise Missing(path_of(system, "outlets"))
    return sum(gather([partial(flow_beyond_or_stated, case, found, branch) for branch in leaves]))


def flow_beyond_or_stated(case: Case, found: Tree, branch: Branch) -> float:
    """Airflow of a last branch without asking the system for it."""
    stated = case.maybe(branch.run, "airflow")
    return float(stated) if stated is not None else flow_beyond(case, found, branch)


@quantity("airflow")
def duct_flow(case: Case, duct: Airway) -> float:
    """Design airflow of a run, or of the duct that a supply or recovery fan has in one line."""
    if isinstance(duct, Run):
        return run_flow(case, duct)
    fan: Fan = duct.up
    setting = fastest(case, fan.settings)
    if setting is None:
        raise Missing(path_of(fan, "settings"))
    if fan.role == "recovery":
        return exhaust_flow(case, setting) if duct.name == "exhaust_duct" else supply_flow(case, setting)
    return airflow(case, setting)


def duct_label(duct: Airway) -> str:
    """What a duct is called in messages: the run's name, or the duct of its fan."""
    if isinstance(duct, Run):
        return str(duct.name)
    return f"the {str(duct.name).replace('_', ' ')} of {duct.up.name}"
