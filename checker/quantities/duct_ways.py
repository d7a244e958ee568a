"""What takes pressure along the ways of a circuit: runs, filters, coils, openings and grilles, in Pa."""

from collections.abc import Iterable
from functools import partial
from itertools import chain

from checker.case import Case, Missing, gather, path_of
from checker.design.ducts import DuctSystem, Loss
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.design.fields import Pressure
from checker.design.filters import Filter
from checker.physics.losses import Device
from checker.quantities.circuits import Circuit, circuit_flow
from checker.quantities.duct_flow import outlet_flow, run_flow
from checker.quantities.duct_graph import Branch, Side, Tree, tree
from checker.quantities.duct_losses import TERMINALS, Item, duct_items, opening_item
from checker.quantities.duct_scope import systems_of
from checker.quantities.filter_losses import filter_item
from checker.record import Record

COIL_EXPONENTS = (1.7, 2.0)


class Share(Record):
    """What one thing takes of the static pressure, Pa, between two bounds; `ask` is the key that would tell."""

    name: str
    low: Pressure
    high: Pressure
    ask: str


def valued(items: Iterable[Item], flow: float) -> list[Share]:
    """Items at an airflow."""
    return [Share(item.name, *item.bounds(flow), item.ask) for item in items]


def filters_of(case: Case, circuit: Circuit) -> list[Filter]:
    """Filters that all air of a circuit passes and that its rating does not already count."""
    mover, system = circuit.mover, circuit.system
    elsewhere: set[str | None] = set()
    if system is not None:
        elsewhere = {outlet.filter for outlet in system.outlets.values()}
        elsewhere |= {end for run in system.runs.values() for end in (run.from_, run.to)}
    inside = isinstance(mover, Equipment) and bool(case.maybe(mover, "internal_filter"))
    found = []
    for name, filter_ in case.design.filters.items():
        own = isinstance(mover, Fan | Equipment) and mover.filter == name
        served = {mover.name if mover is not None else "", system.name if system is not None else ""}
        if name in elsewhere or not (own or served & set(filter_.serves)) or (own and inside):
            continue
        place = case.maybe(filter_, "place") or ""
        if place.startswith("recovery core") or (place == "exhaust inlet") != circuit.outgoing:
            continue
        found.append(filter_)
    return found


def loss_item(case: Case, loss: Loss, design_flow: float) -> Item:
    """A coil, heater or other component of a system."""
    drop = case.maybe(loss, "drop")
    if drop is None:
        return Item(loss.name, (), None, path_of(loss, "drop"))
    if drop == 0.0:
        return Item(loss.name, (), ())
    at = case.maybe(loss, "at") or design_flow
    ends = sorted(COIL_EXPONENTS, reverse=design_flow < at)
    return Item(loss.name, (Device(drop, at, ends[0]),), (Device(drop, at, ends[1]),))


def whole_flow_shares(case: Case, circuit: Circuit, flow: float, loaded: bool) -> list[Share]:
    """What all the air of a circuit passes: its filters and other components."""
    items = [filter_item(case, each, flow, loaded) for each in filters_of(case, circuit)]
    if circuit.mover is not None and not circuit.outgoing:
        # A coil that two systems of one mover both list is one coil.
        losses = {name: loss for system in systems_of(case, circuit.mover) for name, loss in system.losses.items()}
        items += [loss_item(case, loss, flow) for loss in losses.values() if not case.maybe(loss, "inside")]
    return valued(items, flow)


def outlet_shares(case: Case, system: DuctSystem, name: str, loaded: bool) -> list[Share]:
    """A register or grille with the filter in it; without a stated drop it takes up to the usual allowance."""
    outlet = system.outlets[name]
    flow = outlet_flow(case, outlet)
    drop = case.maybe(outlet, "pressure_drop")
    found = [Share(f"outlet {name}", drop, drop, "")] if drop is not None else []
    if drop is None and not grilles_are_counted(system):
        found = [Share(f"outlet {name}", 0.0, case.limit("outlet-drop"), path_of(outlet, "pressure_drop"))]
    if outlet.filter in case.design.filters:
        found += valued([filter_item(case, case.design.filters[outlet.filter], flow, loaded)], flow)
    return found


def grilles_are_counted(system: DuctSystem) -> bool:
    """Whether the system's own list of losses has its registers and grilles."""
    return any(word in name.lower() for name in system.losses for word in ("register", "grille", "outlet", "diffuser"))


def branch_shares(case: Case, branch: Branch, loaded: bool) -> list[Share]:
    """A run with the filters and the outdoor opening at its ends, without its outlets."""
    flow = run_flow(case, branch.run)
    items = duct_items(case, branch.run)
    items = [*items, *(filter_item(case, case.design.filters[name], flow, loaded) for name in branch.filters)]
    end = branch.end
    drawn = branch.side == "return" and end is not None and end.kind == "opening"
    if end is not None and drawn and not TERMINALS & set(branch.run.pieces):
        items.append(opening_item(case, case.design.openings[end.name], branch.run.size))
    return valued(items, flow)


def open_end_shares(case: Case, system: DuctSystem, branch: Branch) -> list[Share]:
    """The grille at the end of a run that leads to a room without naming its outlet."""
    to_room = bool(branch.run.serves) or (branch.end is not None and branch.end.kind == "room")
    if not to_room or grilles_are_counted(system):
        return []
    return [Share(f"grille of {branch.run.name}", 0.0, case.limit("outlet-drop"), path_of(system, "outlets"))]


def ways(case: Case, system: DuctSystem, found: Tree, branches: list[Branch], loaded: bool) -> list[list[Share]]:
    """The shares along every way from the mover to an outlet or an open end."""
    routes = [partial(branch_shares, case, each, loaded) for each in found.branches.values()]
    by_run = dict(zip(found.branches, gather(routes), strict=True))
    result = []
    for branch in branches:
        along = list(dict.fromkeys(chain.from_iterable(by_run[each.run.name] for each in found.way(branch))))
        result += [[*along, *outlet_shares(case, system, name, loaded)] for name in branch.outlets]
        if not branch.farther and not branch.outlets:
            result.append([*along, *open_end_shares(case, system, branch)])
    return result


def costliest(found: list[list[Share]]) -> tuple[list[Share], list[Share]]:
    """The way with the greatest lower bound, and that with the greatest upper bound."""
    if not found:
        return [], []
    return max(found, key=lambda way: sum(each.low for each in way)), max(
        found, key=lambda way: sum(each.high for each in way)
    )


def sides_of(circuit: Circuit, found: Tree) -> list[list[Branch]]:
    """The branches on the two sides of the mover that belong to a circuit."""
    recovery = isinstance(circuit.mover, Fan) and circuit.mover.role == "recovery"
    sides: list[Side] = ["supply", "return"]
    result = []
    for side in sides:
        own = [branch for branch in found.branches.values() if branch.side == side]
        outdoors = [branch for branch in own if found.is_outdoors(branch)]
        indoors = [branch for branch in own if branch not in outdoors]
        if recovery:
            result.append(outdoors if (side == "return") != circuit.outgoing else indoors)
        else:
            result.append(indoors or outdoors)
    return result


def one_line_shares(case: Case, circuit: Circuit, flow: float) -> list[Share]:
    """A duct in one line, with the opening it draws from and the grille it ends in."""
    duct, fan = circuit.duct, circuit.mover
    assert duct is not None
    assert isinstance(fan, Fan)
    items = list(duct_items(case, duct))
    if not circuit.outgoing and not TERMINALS & set(duct.pieces):
        openings = [case.design.openings[name] for name in fan.from_ if name in case.design.openings]
        items += [opening_item(case, each, duct.size) for each in openings[:1]]
    shares = valued(items, flow)
    if circuit.system is None and any(name in case.design.rooms for name in (*fan.to, *fan.room)):
        shares.append(Share("its grille", 0.0, case.limit("outlet-drop"), f"ducts.{fan.name}.losses"))
    return shares


def worst_shares(case: Case, circuit: Circuit, loaded: bool) -> tuple[float, list[Share], list[Share]]:
    """(airflow, shares by their lower bounds, shares by their upper bounds)."""
    system = circuit.system
    if circuit.is_bare:
        fan = isinstance(circuit.mover, Fan)
        raise Missing(path_of(circuit.mover, "duct") if fan else path_of(system, "runs") if system else "ducts")
    flow = circuit_flow(case, circuit)
    whole = whole_flow_shares(case, circuit, flow, loaded)
    if circuit.duct is not None:
        shares = [*whole, *one_line_shares(case, circuit, flow)]
        return flow, shares, shares
    assert system is not None
    assert circuit.mover is not None
    beside = [each for each in systems_of(case, circuit.mover) if each is not system and each.runs]
    least, most = list(whole), list(whole)
    for side in (0, 1):
        for each in (system, *beside):
            found = tree(case, each)
            branches = sides_of(circuit, found)[side]
            if branches:
                low, high = costliest(ways(case, each, found, branches, loaded))
                least += low
                most += high
                break
    return flow, least, most
