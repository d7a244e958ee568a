"""Filters: whose air they clean, how much of it each of them sees, and what that does at its face.

A filter may be tied to its mover from either side: `filters.X.serves`, `fans.X.filter`, `equipment.X.filter`,
the `filter` of a grille, or a run that begins or ends at it.
"""

from collections.abc import Callable
from functools import partial

from checker.case import CannotJudge, Case, Missing, either, gather, path_of, quantity
from checker.design.ducts import DuctSystem, Outlet
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.design.filters import Filter
from checker.physics.devices import SIZE_ALLOWANCE, filter_face_area
from checker.quantities.duct_flow import fastest, outlet_flow, system_flow
from checker.quantities.duct_graph import Mover, is_return_outlet, mover_of
from checker.quantities.duct_scope import systems_of
from checker.quantities.movers import airflow, exhaust_flow, supply_flow

STOCK_INCHES = (
    (10, 10), (10, 20), (12, 12), (12, 20), (12, 24), (14, 20), (14, 25), (16, 16), (16, 20), (16, 25), (18, 24),
    (20, 20), (20, 25), (20, 30), (24, 24), (24, 30),
)  # fmt: skip
"""Nominal sides of filters that shops keep."""
INCH = 0.0254
OUTGOING_PLACES = ("exhaust inlet", "recovery core exhaust side")


def holders(case: Case, filter_: Filter) -> list[Outlet]:
    """Grilles that hold the filter."""
    return [
        outlet
        for system in case.design.ducts.values()
        for outlet in system.outlets.values()
        if outlet.filter == filter_.name
    ]


def crossed_by(case: Case, filter_: Filter) -> list[DuctSystem]:
    """Duct systems with a run that begins or ends at the filter."""
    found = []
    for system in case.design.ducts.values():
        ends = {end for run in system.runs.values() for end in (run.from_, run.to)}
        if filter_.name in ends and filter_.name not in (*system.runs, *system.outlets):
            found.append(system)
    return found


@quantity()
def movers_served(case: Case, filter_: Filter) -> tuple[Mover, ...]:
    """What moves the air that a filter cleans. Raises Missing where nothing tells."""
    design = case.design
    found: list[Mover] = []
    systems = crossed_by(case, filter_) + [outlet.up for outlet in holders(case, filter_)]
    for name in filter_.serves:
        mover = design.equipment.get(name) or design.fans.get(name) or design.hoods.get(name)
        if mover is not None:
            found.append(mover)
        elif name in design.ducts:
            systems.append(design.ducts[name])
    found += [unit for unit in design.equipment.values() if unit.filter == filter_.name]
    found += [fan for fan in design.fans.values() if fan.filter == filter_.name]
    gaps: list[str] = []
    for system in systems:
        try:
            found.append(mover_of(case, system))
        except Missing as gap:
            gaps.extend(gap.paths)
    if not found:
        raise Missing(*(gaps or [path_of(filter_, "serves")]))
    return tuple({mover.path: mover for mover in found}.values())


@quantity()
def filters_serving(case: Case, mover: Mover) -> tuple[Filter, ...]:
    """The filters of a mover, whichever side names the other."""
    found = []
    for filter_ in case.design.filters.values():
        try:
            served = movers_served(case, filter_)
        except Missing:
            continue
        if any(one is mover for one in served):
            found.append(filter_)
    return tuple(found)


def unassigned(case: Case) -> list[Filter]:
    """Filters of which nothing tells whose air they clean."""
    found = []
    for filter_ in case.design.filters.values():
        try:
            movers_served(case, filter_)
        except Missing:
            found.append(filter_)
    return found


def count(case: Case, filter_: Filter) -> float:
    """Equal filters side by side."""
    return float(case.maybe(filter_, "count") or 1.0)


def mover_flow(case: Case, mover: Mover, filter_: Filter) -> float:
    """The greatest airflow of a mover on the side of a filter, m3/s. Raises Missing."""
    setting = fastest(case, mover.settings)
    if isinstance(mover, Equipment):

        def by_setting() -> float:
            if setting is None:
                raise Missing(path_of(mover, "airflow"))
            return airflow(case, setting)

        routes: list[Callable[[], float]] = [lambda: float(case.get(mover, "airflow")), by_setting]
        routes += [partial(system_flow, case, system) for system in systems_of(case, mover)]
        try:
            return either(*routes)
        except Missing:
            raise Missing(path_of(mover, "airflow")) from None
    if setting is None:
        raise Missing(path_of(mover, "settings"))
    if isinstance(mover, Fan) and mover.role == "recovery":
        outgoing = case.maybe(filter_, "place") in OUTGOING_PLACES
        return exhaust_flow(case, setting) if outgoing else supply_flow(case, setting)
    return airflow(case, setting)


def share_in_grille(case: Case, filter_: Filter) -> float:
    """Airflow of the grille that holds the filter; of the busiest where several hold one of its kind."""
    held = holders(case, filter_)

    def whole() -> float:
        system: DuctSystem = held[0].up
        beside = [each for each in system.outlets.values() if is_return_outlet(each)]
        if len(beside) != 1:
            raise Missing(path_of(held[0], "airflow"))
        return sum(mover_flow(case, mover, filter_) for mover in movers_served(case, filter_))

    if len(held) == 1:
        return either(lambda: outlet_flow(case, held[0]), whole)
    return max(gather([partial(outlet_flow, case, outlet) for outlet in held]))


def beside_others(case: Case, filter_: Filter) -> bool:
    """Whether other filters in return grilles share the air of its mover, nobody knows how."""
    if case.maybe(filter_, "place") != "return grille":
        return False
    return any(
        other is not filter_ and other.place == "return grille"
        for mover in movers_served(case, filter_)
        for other in filters_serving(case, mover)
    )


@quantity("airflow", "stated; else that of its grille or of what it serves; shared by equal filters")
def filter_flow(case: Case, filter_: Filter) -> float:
    """Airflow through each filter, at the highest speed of what moves the air."""
    each = count(case, filter_)
    stated = case.maybe(filter_, "airflow")
    if stated is not None:
        return float(stated) / each
    held = holders(case, filter_)
    if held:
        return share_in_grille(case, filter_) / max(1.0, each / len(held))
    if beside_others(case, filter_):
        raise Missing(path_of(filter_, "airflow"))
    movers = movers_served(case, filter_)
    return sum(gather([partial(mover_flow, case, mover, filter_) for mover in movers])) / each


@quantity("small_area", "(width - 1/2 in) x (height - 1/2 in)", "common practice: 1/2 in under nominal")
def face_area(case: Case, filter_: Filter) -> float:
    """Face area of each filter: as stated, else by its nominal size."""
    stated = case.maybe(filter_, "face_area")
    if stated is not None:
        return float(stated)
    size = case.get(filter_, "size")
    if min(size.width, size.height) <= SIZE_ALLOWANCE:
        raise CannotJudge(f"{filter_.name} is too small to have a face")
    return filter_face_area(size.width, size.height)


def known_face(filter_: Filter) -> float | None:
    """Face area of each filter in m2 where the file tells it, for a hint that does without."""
    size = filter_.size
    if filter_.face_area is not None or size is None or min(size.width, size.height) <= SIZE_ALLOWANCE:
        return filter_.face_area
    return filter_face_area(size.width, size.height)


@quantity("velocity", "airflow / face area")
def face_velocity(case: Case, filter_: Filter) -> float:
    """Velocity over the face of each filter."""
    flow, area = gather([partial(filter_flow, case, filter_), partial(face_area, case, filter_)])
    return flow / area


def stock_size(area: float) -> str:
    """The smallest usual nominal size with this face area in m2, such as `16x20`; "" if none is large enough."""
    sides = sorted(STOCK_INCHES, key=lambda pair: pair[0] * pair[1])
    fitting = (pair for pair in sides if filter_face_area(pair[0] * INCH, pair[1] * INCH) >= area)
    found = next(fitting, None)
    return "" if found is None else f"{found[0]}x{found[1]}"


def served_filters(case: Case) -> list[tuple[Filter, tuple[Mover, ...]]]:
    """The filters of which it is known whose air they clean, with what moves it."""
    found = []
    for filter_ in case.design.filters.values():
        try:
            found.append((filter_, movers_served(case, filter_)))
        except Missing:
            continue
    return found
