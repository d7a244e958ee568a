"""Air circuits: a mover at a setting with the ducts that its air goes through, one node for each budget."""


from checker.case import CannotJudge, Case, Missing, path_of, quantity
from checker.design.airway import Airway
from checker.design.ducts import DuctSystem
from checker.design.equipment import Equipment
from checker.design.fans import Fan, Setting
from checker.quantities.duct_flow import fastest, greatest_flow, mover_setting, system_flow
from checker.quantities.duct_graph import DUCTED_KINDS, Mover, mover_of, sketch
from checker.quantities.duct_scope import ROLES, mover_or_none, systems, systems_of
from checker.quantities.movers import airflow, exhaust_flow, supply_flow
from checker.record import Record

WITHOUT_DUCT = frozenset({"through-the-wall", "wall", "attic", "whole-house cooling"})


class Circuit(Record):
    """One circuit: `system` where its ducts stand under `ducts`, `duct` where they are one line.

    `outgoing` marks the side of a recovery unit that takes air out.
    """

    path: str
    name: str
    mover: Mover | None
    setting: Setting | None
    system: DuctSystem | None
    duct: Airway | None
    outgoing: bool = False

    @property
    def is_bare(self) -> bool:
        """Whether nothing is said of its ducts."""
        return self.duct is None and (self.system is None or not self.system.runs)


def circuits(case: Case) -> list[Circuit]:
    """Every circuit of supply, recovery and room-air fans and of equipment with ducts."""
    found: list[Circuit] = []
    for fan in case.design.fans.values():
        if fan.role in ROLES:
            found += fan_circuits(case, fan)
    for unit in case.design.equipment.values():
        own = systems_of(case, unit)
        found += [system_circuit(case, system, unit) for system in with_supply(case, own)]
        if not own and unit.kind in DUCTED_KINDS:
            found.append(Circuit(unit.path, unit.name, unit, None, None, None))
    for system in systems(case):
        if mover_or_none(case, system) is None:
            found.append(Circuit(system.path, system.name, None, None, system, None))
    return found


def ducted_circuits(case: Case) -> list[Circuit]:
    """Circuits whose ducts the file describes."""
    return [each for each in circuits(case) if not each.is_bare]


def fan_circuits(case: Case, fan: Fan) -> list[Circuit]:
    """Circuits of one fan: by its systems, else by its duct in one line at each setting that can be judged."""
    own = [system for system in systems_of(case, fan) if system.runs]
    if own:
        found = [system_circuit(case, system, fan) for system in with_supply(case, own)]
        if fan.role == "recovery":
            found += [each._replace(path=f"{each.path}.runs", outgoing=True) for each in found]
        return found
    beside = next(iter(systems_of(case, fan)), None)
    setting = fastest(case, fan.settings)
    if fan.role == "recovery":
        pairs = ((fan.duct, False), (fan.exhaust_duct, True))
        there = [Circuit(duct.path, fan.name, fan, setting, beside, duct, out) for duct, out in pairs if duct is not None]
        if not there and fan.kind in WITHOUT_DUCT:
            return []
        return there or [Circuit(fan.path, fan.name, fan, setting, beside, None)]
    if fan.duct is None and stands_in_runs(case, fan):
        return []
    if fan.duct is None:
        bare = fan.kind in WITHOUT_DUCT or fan.role == "recirculating"
        return [] if bare else [Circuit(fan.path, fan.name, fan, setting, beside, None)]
    judged = [each for each in fan.settings.values() if each is setting or each.static is not None]
    if not judged:
        return [Circuit(fan.duct.path, fan.name, fan, None, beside, fan.duct)]
    return [Circuit(each.path, fan.name, fan, each, beside, fan.duct) for each in judged]


def stands_in_runs(case: Case, fan: Fan) -> bool:
    """Whether runs of another mover's system begin or end at a fan: it is solved together with that."""
    return any(fan.name in (run.from_, run.to) for system in case.design.ducts.values() for run in system.runs.values())


def with_supply(case: Case, own: list[DuctSystem]) -> list[DuctSystem]:
    """Of the systems of one mover those with supply runs; one that only returns belongs to the others."""
    supplying = [each for each in own if not each.runs or sketch(case, each).leaves("supply")]
    return supplying or own


def system_circuit(case: Case, system: DuctSystem, mover: Mover) -> Circuit:
    """The circuit of a system at the setting it is designed at."""
    return Circuit(system.path, mover.name, mover, mover_setting(case, system), system, None)


@quantity("airflow", "that of the setting, or the design airflow of the duct system")
def circuit_flow(case: Case, circuit: Circuit) -> float:
    """Airflow that a circuit is judged at. Raises CannotJudge where it is none."""
    flow = stated_flow(case, circuit)
    if flow <= 0.0:
        raise CannotJudge(f"{circuit.name} moves no air at the setting that is judged")
    return flow


def stated_flow(case: Case, circuit: Circuit) -> float:
    """Airflow of a circuit by its system or its setting. Raises Missing."""
    if circuit.system is not None and circuit.system.runs:
        if circuit.outgoing and circuit.setting is not None:
            return exhaust_flow(case, circuit.setting)
        mover_of(case, circuit.system)
        return system_flow(case, circuit.system)
    if circuit.setting is None:
        if isinstance(circuit.mover, Equipment):
            return float(case.get(circuit.mover, "airflow"))
        raise Missing(path_of(circuit.mover, "settings"))
    if isinstance(circuit.mover, Fan) and circuit.mover.role == "recovery":
        return exhaust_flow(case, circuit.setting) if circuit.outgoing else supply_flow(case, circuit.setting)
    return airflow(case, circuit.setting)


def at_setting(circuit: Circuit) -> str:
    """The mover and its setting, as messages call them."""
    setting = circuit.setting
    if setting is None or isinstance(circuit.mover, Equipment) or greatest_flow(setting) == 0.0:
        return circuit.name
    return f"{circuit.name} at {setting.name}"
