"""How the air of a duct system is shared: between branches, between rooms and loads, supply and return."""

from collections.abc import Callable
from functools import partial

from checker.case import CannotJudge, Case, Missing, NotApplicable, gather, path_of, quantity
from checker.design.airway import Run
from checker.design.ducts import DuctSystem
from checker.design.equipment import Equipment
from checker.design.rooms import Room
from checker.quantities.duct_flow import (
    flow_beyond_or_stated,
    greatest_flow,
    outlet_flow,
    run_flow,
    system_of,
)
from checker.quantities.duct_graph import Branch, Tree, is_return_outlet, mover_of, sketch, tree
from checker.quantities.duct_mesh_walk import closes_rings
from checker.quantities.duct_scope import comfort_systems
from checker.quantities.duct_solution import division
from checker.quantities.duct_velocity import trees
from checker.record import Record


class Excess(Record):
    """What a branch takes with every damper open, m3/s: by design, and between two bounds; its damper."""

    design: float
    low: float
    high: float
    has_damper: bool

    def worksheet_lines(self, system: str) -> list[str]:
        """What the branch takes, on one line."""
        from checker.quantities.solved_words import excess_lines

        return excess_lines(self, system)


def balanced_runs(case: Case) -> list[Run]:
    """The last supply runs of systems that have several."""
    found = []
    for _, drawn in trees(case):
        leaves = [branch for branch in drawn.leaves("supply") if not drawn.is_outdoors(branch)]
        if len(leaves) > 1:
            found += [branch.run for branch in leaves]
    return found


def has_damper(run: Run) -> bool:
    """Whether a run has a volume damper."""
    return bool(run.balancing_damper) or "damper" in run.pieces


@quantity()
def excess(case: Case, run: Run) -> Excess:
    """What a last run takes undamped. A damper anywhere on its own way answers; an unknown one is Missing."""
    system = system_of(run)
    found = tree(case, system)
    leaves = found.leaves("supply")
    own = [
        each.run
        for each in found.way(found.branches[run.name])
        if not all(each in found.way(leaf) for leaf in leaves)
    ]
    design = run_flow(case, run)
    if any(has_damper(each) for each in own):
        return Excess(design, 0.0, 0.0, True)
    solved = division(case, system)
    ends = (solved.low[run.name], solved.high[run.name])
    tolerance: float = case.limit("room-airflow-tolerance")
    over = [end > design * (1.0 + tolerance) for end in ends]
    if all(over):
        case.get(run, "balancing_damper")
    elif any(over):
        if run.balancing_damper is None:
            raise Missing(path_of(run, "balancing_damper"))
        raise CannotJudge("whether it takes more than its share depends on how the ducts are made and laid")
    return Excess(design, min(ends), max(ends), False)


class RoomShare(Record):
    """A room's share of the airflow and of the loads of the rooms that a system serves."""

    room: str
    airflow: float
    least: float
    most: float

    def worksheet_lines(self, system: str) -> list[str]:
        """The shares on one line."""
        from checker.quantities.solved_words import room_share_lines

        return room_share_lines(self, system)


def flows_by_room(case: Case, system: DuctSystem) -> dict[str, float]:
    """Design supply airflow of a system by room, m3/s. Raises Missing."""
    flows: dict[str, float] = {}
    routes: list[tuple[str, Callable[[], float]]] = [
        (outlet.room, partial(outlet_flow, case, outlet))
        for outlet in system.outlets.values()
        if outlet.room in case.design.rooms and outlet.kind != "transfer grille" and not is_return_outlet(outlet)
    ]
    if system.runs:
        found = tree(case, system)
        for branch in found.leaves("supply"):
            room = only_room(branch)
            if room in case.design.rooms and not branch.outlets:
                routes.append((room, partial(flow_beyond_or_stated, case, found, branch)))
    values = gather([route for _, route in routes])
    for (room, _), value in zip(routes, values, strict=True):
        flows[room] = flows.get(room, 0.0) + value
    return flows


def only_room(branch: Branch) -> str | None:
    """The one room that a last run leads to."""
    if branch.end is not None and branch.end.kind == "room":
        return branch.end.name
    return branch.run.serves[0] if len(branch.run.serves) == 1 else None


@quantity()
def room_shares(case: Case, system: DuctSystem) -> list[RoomShare]:
    """Shares of airflow and load by room, for the kinds of load that the rooms state."""
    flows = flows_by_room(case, system)
    rooms = [case.design.rooms[name] for name in flows]
    fields = [field for field in ("heating_load", "cooling_load") if any(getattr(room, field) for room in rooms)]
    if len(rooms) < 2 or not fields:
        raise NotApplicable("fewer than two rooms with stated loads are served")
    routes: list[Callable[[], float]] = [partial(case.get, room, field) for field in fields for room in rooms]
    loads = gather(routes)
    total = sum(flows.values())
    if total <= 0.0:
        raise Missing(path_of(system, "airflow"))
    found = []
    for place, room in enumerate(rooms):
        shares = []
        for number in range(len(fields)):
            own = loads[number * len(rooms) : (number + 1) * len(rooms)]
            if sum(own) > 0.0:
                shares.append(own[place] / sum(own))
        found.append(RoomShare(room.name, flows[room.name] / total, min(shares), max(shares)))
    return found


@quantity("airflow", "sum of the return grilles and outdoor-air ducts")
def returned(case: Case, system: DuctSystem) -> float:
    """Air that comes back to a system's mover by design. NotApplicable where a grille hangs on no run."""
    found = drawn_returns(case, system)
    if any(is_return_outlet(outlet) for outlet in found.loose_outlets):
        raise NotApplicable("a return grille is joined to no run, which is judged by itself")
    leaves = found.leaves("return")
    if not [leaf for leaf in leaves if not found.is_outdoors(leaf)]:
        raise NotApplicable("no ducted return is described")
    air = sum(gather([partial(return_flow, case, found, leaf) for leaf in leaves]))
    mover = mover_of(case, system)
    if isinstance(mover, Equipment) and mover.outdoor_air is not None and not any(map(found.is_outdoors, leaves)):
        air += float(case.get(mover.outdoor_air, "airflow"))
    return air


def drawn_returns(case: Case, system: DuctSystem) -> Tree:
    """The tree of a system; a ring among its supply ducts alone does not matter to what comes back."""
    found = sketch(case, system)
    on_supply = all(name in found.branches and found.branches[name].side == "supply" for name in found.rings)
    if found.rings and on_supply and not found.loose and closes_rings(case, system):
        return found
    return tree(case, system)


def return_flow(case: Case, found: Tree, leaf: Branch) -> float:
    """Airflow of a last return run; a joint that nothing draws through is the run itself."""
    if leaf.outlets:
        system = system_of(leaf.run)
        return sum(gather([partial(outlet_flow, case, system.outlets[name]) for name in leaf.outlets]))
    return run_flow(case, leaf.run)


class Range(Record):
    """Least and greatest airflow of a mover, m3/s."""

    low: float
    high: float

    def worksheet_lines(self, system: str) -> list[str]:
        """Both ends on one line."""
        from checker.quantities.solved_words import range_lines

        return range_lines(self, system)


@quantity()
def mover_range(case: Case, system: DuctSystem) -> Range:
    """What the settings of a mover, its rated airflow and its curves reach."""
    mover = mover_of(case, system)
    flows = [greatest_flow(setting) for setting in mover.settings.values() if greatest_flow(setting) > 0.0]
    low = min(flows) if len(flows) > 1 else 0.0
    if isinstance(mover, Equipment) and mover.airflow is not None:
        flows.append(mover.airflow)
    for curve in getattr(mover, "curves", {}).values():
        flows += [point.airflow for point in curve.points if point.airflow is not None]
    if not flows:
        raise Missing(path_of(mover, "airflow" if isinstance(mover, Equipment) else "settings"))
    return Range(low, max(flows))


class Served(Record):
    """A room that one system alone heats or cools. `path` is the room's."""

    path: str
    name: str
    room: Room
    system: DuctSystem


def served_rooms(case: Case) -> list[Served]:
    """Rooms that one duct system serves, and no other equipment, whose supply temperature is stated."""
    holders: dict[str, list[DuctSystem]] = {}
    for system in comfort_systems(case):
        rooms = {outlet.room for outlet in system.outlets.values() if not is_return_outlet(outlet)}
        rooms |= {only_room(branch) for branch in sketch(case, system).leaves("supply")}
        for name in sorted(room for room in rooms if room in case.design.rooms):
            holders.setdefault(name, []).append(system)
    found = []
    for name, own in holders.items():
        room, system = case.design.rooms[name], own[0]
        others = [each for each in case.design.equipment.values() if name in each.serves]
        alone = len(own) == 1 and all(each is mover_of(case, system) for each in others)
        tempered = system.supply_temperature is not None or system.greatest_supply_temperature is not None
        if alone and tempered and (room.heating_load is not None or room.cooling_load is not None):
            found.append(Served(room.path, name, room, system))
    return found


@quantity("airflow")
def room_airflow(case: Case, served: Served) -> float:
    """Supply airflow of a room by design."""
    flows = flows_by_room(case, served.system)
    if served.name not in flows:
        raise Missing(path_of(served.room, "supply"))
    return flows[served.name]

