"""Which duct systems and ducts the duct rules look at: those of equipment, supply, recovery and room-air fans."""

from checker.case import Case, Missing
from checker.design.airway import Airway, Run
from checker.design.ducts import DuctSystem, Outlet
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.design.hoods import Hood
from checker.quantities.duct_graph import Mover, mover_of

ROLES = frozenset({"supply", "recovery", "recirculating"})


def mover_or_none(case: Case, system: DuctSystem) -> Mover | None:
    """The mover of a system; None where nothing tells."""
    try:
        return mover_of(case, system)
    except Missing:
        return None


def is_in_scope(mover: Mover | None) -> bool:
    """Whether the mover is no exhaust fan, hood, transfer fan or booster."""
    return not isinstance(mover, Hood) and (not isinstance(mover, Fan) or mover.role is None or mover.role in ROLES)


def systems(case: Case) -> list[DuctSystem]:
    """Duct systems that carry supply, recovered or room air."""
    return [each for each in case.design.ducts.values() if is_in_scope(mover_or_none(case, each))]


def comfort_systems(case: Case) -> list[DuctSystem]:
    """Duct systems of heating and cooling equipment."""
    return [each for each in systems(case) if isinstance(mover_or_none(case, each), Equipment)]


def runs(case: Case) -> list[Run]:
    """Runs of those systems."""
    return [run for system in systems(case) for run in system.runs.values()]


def outlets(case: Case) -> list[Outlet]:
    """Outlets of those systems."""
    return [outlet for system in systems(case) for outlet in system.outlets.values()]


def systems_of(case: Case, mover: Mover) -> list[DuctSystem]:
    """Duct systems that a mover serves."""
    return [each for each in systems(case) if mover_or_none(case, each) is mover]


def one_line_ducts(case: Case) -> list[Airway]:
    """Ducts given in one line under supply and recovery fans that have no runs elsewhere."""
    found = []
    for fan in case.design.fans.values():
        if fan.role in ROLES and not any(system.runs for system in systems_of(case, fan)):
            found += [duct for duct in (fan.duct, fan.exhaust_duct) if duct is not None]
    return found


def ducts(case: Case) -> list[Airway]:
    """Every duct in scope: runs, and ducts in one line."""
    return [*runs(case), *one_line_ducts(case)]
