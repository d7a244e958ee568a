"""What takes pressure in each passage of a mesh of ducts, at best and at worst."""

from collections.abc import Sequence
from functools import partial

from checker.case import CannotJudge, Case, Missing, gather
from checker.design.airway import Airway, Run
from checker.design.ducts import DuctSystem, Outlet
from checker.design.fans import Fan
from checker.design.filters import Filter
from checker.physics.losses import Device, Part, Resistance
from checker.quantities.circuits import Circuit, circuit_flow
from checker.quantities.duct_flow import outlet_flow, run_flow
from checker.quantities.duct_losses import TERMINALS, Item, duct_items, opening_item
from checker.quantities.duct_mesh import OUTDOORS, ROOMS, Passage, named_end
from checker.quantities.duct_scope import systems_of
from checker.quantities.duct_ways import filters_of, grilles_are_counted, loss_item
from checker.quantities.filter_losses import filter_item

NEGLIGIBLE = Resistance(1e-3, 1.0)


def parts_at(items: list[Item], worst: bool) -> list[Part]:
    """The parts of items at one of their bounds. Raises Missing where the upper one is not known."""
    unknown = [item.ask for item in items if item.high is None]
    if worst and unknown:
        raise Missing(*unknown)
    return [part for item in items for part in ((item.high or ()) if worst else item.low)] or [NEGLIGIBLE]


def items_of(
    case: Case, circuit: Circuit, passages: Sequence[Passage], loaded: bool = False
) -> dict[str, list[Item]]:
    """The items of every passage by its key, filters clean or loaded. Raises Missing with all that any of them lacks."""
    routes = [partial(passage_items, case, circuit, each, loaded) for each in passages]
    return {each.key: items for each, items in zip(passages, gather(routes), strict=True)}


def passage_items(case: Case, circuit: Circuit, passage: Passage, loaded: bool = False) -> list[Item]:
    """What takes pressure in one passage."""
    thing = passage.thing
    if isinstance(thing, Run):
        return run_items(case, circuit, passage, thing)
    if isinstance(thing, Airway):
        return one_line_items(case, circuit, thing)
    if isinstance(thing, Outlet):
        return outlet_items(case, thing, loaded)
    if isinstance(thing, Filter):
        return [filter_item(case, thing, flow_through(case, circuit, passage), loaded)]
    served = circuit if thing is circuit.mover else Circuit(thing.path, thing.name, thing, None, passage.system, None)
    flow = circuit_flow(case, circuit)
    found = [filter_item(case, each, flow, loaded) for each in filters_of(case, served)]
    if thing is circuit.mover and not circuit.outgoing:
        # A coil that two systems of one mover both list is one coil.
        losses = {name: loss for each in systems_of(case, thing) for name, loss in each.losses.items()}
        found += [loss_item(case, loss, flow) for loss in losses.values() if not case.maybe(loss, "inside")]
    return found


def run_items(case: Case, circuit: Circuit, passage: Passage, run: Run) -> list[Item]:
    """A run, with the opening that it draws from and the grille that it opens by."""
    found = list(duct_items(case, run))
    system: DuctSystem = run.up
    end = named_end(case, system, run, "from_")
    if passage.start == OUTDOORS and end is not None and end.kind == "opening" and not TERMINALS & set(run.pieces):
        found.append(opening_item(case, case.design.openings[end.name], run.size))
    if ROOMS in (passage.start, passage.end) and not grilles_are_counted(system):
        found += grille_allowance(case, f"grille of {run.name}", flow_through(case, circuit, passage), "")
    return found


def grille_allowance(case: Case, label: str, flow: float, ask: str) -> list[Item]:
    """A grille of which nothing is known: from no loss to the usual allowance."""
    if flow <= 0.0:
        return []
    return [Item(label, (), (Device(case.limit("outlet-drop"), flow, 2.0),), ask)]


def outlet_items(case: Case, outlet: Outlet, loaded: bool = False) -> list[Item]:
    """A register or grille with the filter in it."""
    system: DuctSystem = outlet.up
    flow, drop = outlet_flow(case, outlet), case.maybe(outlet, "pressure_drop")
    label = f"outlet {outlet.name}"
    found: list[Item] = []
    if drop and flow > 0.0:
        part = (Device(drop, flow, 2.0),)
        found = [Item(label, part, part)]
    elif drop is None and not grilles_are_counted(system):
        found = grille_allowance(case, label, flow, f"{outlet.path}.pressure_drop")
    if outlet.filter in case.design.filters:
        found.append(filter_item(case, case.design.filters[outlet.filter], flow, loaded))
    return found


def flow_through(case: Case, circuit: Circuit, passage: Passage) -> float:
    """Design airflow of a passage; in a ring, whose parts have none, that of the whole circuit."""
    thing = passage.thing
    if isinstance(thing, Outlet):
        return outlet_flow(case, thing)
    if isinstance(thing, Run):
        try:
            return run_flow(case, thing)
        except CannotJudge:
            return circuit_flow(case, circuit)
    return circuit_flow(case, circuit)


def design_flow(case: Case, passage: Passage) -> float | None:
    """Design airflow of a passage as a table shows it; None where the design gives it none."""
    try:
        if isinstance(passage.thing, Outlet):
            return outlet_flow(case, passage.thing)
        return run_flow(case, passage.thing) if isinstance(passage.thing, Run) else None
    except (CannotJudge, Missing):
        return None


def one_line_items(case: Case, circuit: Circuit, duct: Airway) -> list[Item]:
    """A duct in one line, with the opening that it draws from and the grille that it ends in."""
    fan = circuit.mover
    assert isinstance(fan, Fan)
    found = list(duct_items(case, duct))
    if not circuit.outgoing and not TERMINALS & set(duct.pieces):
        openings = [case.design.openings[name] for name in fan.from_ if name in case.design.openings]
        found += [opening_item(case, each, duct.size) for each in openings[:1]]
    if circuit.system is None and any(name in case.design.rooms for name in (*fan.to, *fan.room)):
        found += grille_allowance(case, "its grille", circuit_flow(case, circuit), f"ducts.{fan.name}.losses")
    return found
