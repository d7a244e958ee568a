"""Velocities: in ducts, over the faces of outlets and through their free area, with the noise that follows."""

from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.design.airway import Airway, Run
from checker.design.ducts import DuctSystem, Outlet
from checker.physics import registers
from checker.physics.registers import return_noise, supply_noise
from checker.physics.validity import OutOfRange
from checker.quantities.duct_flow import duct_flow, outlet_flow
from checker.quantities.duct_graph import Branch, Side, Tree, is_return_outlet, tree
from checker.quantities.duct_scope import one_line_ducts, systems
from checker.quantities.make_up_fans import is_make_up_fan

QUIET_ROOMS = frozenset({"bedroom", "living", "dining", "office"})


def trees(case: Case) -> list[tuple[DuctSystem, Tree]]:
    """The trees that can be drawn. Raises Missing only where none can and an end is not stated."""
    found: list[tuple[DuctSystem, Tree]] = []
    absent: list[str] = []
    for system in systems(case):
        if not system.runs:
            continue
        try:
            found.append((system, tree(case, system)))
        except Missing as gap:
            absent += gap.paths
        except CannotJudge:
            continue
    if absent and not found:
        raise Missing(*absent)
    return found


def branches(case: Case, side: Side) -> list[tuple[Tree, Branch]]:
    """Branches on one side of their movers that do not lead outdoors."""
    return [
        (found, branch)
        for _, found in trees(case)
        for branch in found.branches.values()
        if branch.side == side and not found.is_outdoors(branch)
    ]


def supply_ducts(case: Case) -> list[Airway]:
    """Supply runs, and ducts in one line; that of a make-up fan runs beside a hood, whose noise covers it."""
    lines = [duct for duct in one_line_ducts(case) if not is_make_up_fan(case, duct.up)]
    return [*(branch.run for _, branch in branches(case, "supply")), *lines]


def return_runs(case: Case) -> list[Run]:
    """Return runs that draw from rooms."""
    return [branch.run for _, branch in branches(case, "return")]


@quantity("velocity", "airflow / inside area")
def velocity(case: Case, duct: Airway) -> float:
    """Mean velocity in a duct at its design airflow."""
    if case.maybe(duct, "velocity_limit_by") is not None:
        raise NotApplicable("its velocity is judged by the source that the file names")
    flow, area = duct_flow(case, duct), case.get(duct, "size").area
    return flow / float(area)


@quantity("velocity", "airflow / face area")
def face_velocity(case: Case, outlet: Outlet) -> float:
    """Velocity over the whole face of an outlet."""
    return registers.face_velocity(outlet_flow(case, outlet), float(case.get(outlet, "size").area))


@quantity("velocity", "airflow / free area; three quarters of the face where the free area is not stated")
def free_velocity(case: Case, outlet: Outlet) -> float:
    """Velocity through the free area of an outlet."""
    free = case.maybe(outlet, "free_area")
    if free is not None:
        return registers.face_velocity(outlet_flow(case, outlet), float(free))
    if outlet.size is None:
        raise Missing(path_of(outlet, "size"))
    return registers.free_velocity(outlet_flow(case, outlet), float(case.get(outlet, "size").area))


@quantity("", source="Architectural Acoustics, table of free-opening velocities")
def least_noise(case: Case, outlet: Outlet) -> float:
    """Lower end of the noise criterion (NC) band of an outlet; above the table its top stands in."""
    through = free_velocity(case, outlet)
    try:
        band = return_noise(through) if is_return_outlet(outlet) else supply_noise(through)
    except OutOfRange:
        return 45.0
    return float(band.low)


def quiet_outlets(case: Case) -> list[Outlet]:
    """Outlets in bedrooms, living rooms and the like whose size or free area the file gives."""
    return [
        outlet
        for system in systems(case)
        for outlet in system.outlets.values()
        if outlet.room in case.design.rooms
        and case.design.rooms[outlet.room].use in QUIET_ROOMS
        and (outlet.size is not None or outlet.free_area is not None or f"{outlet.path}.size" in case.design.tbd)
    ]


def sized_outlets(case: Case) -> list[Outlet]:
    """Outlets that blow into or draw from rooms and whose face size the file gives or leaves to be decided."""
    return [
        outlet
        for system in systems(case)
        for outlet in system.outlets.values()
        if outlet.kind != "transfer grille" and (outlet.size is not None or f"{outlet.path}.size" in case.design.tbd)
    ]
