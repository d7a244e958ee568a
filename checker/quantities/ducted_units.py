"""Equipment that moves room air through ducts, and how much duct carries what it supplies."""

from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.design.airway import Run
from checker.design.ducts import DuctSystem
from checker.design.equipment import Equipment
from checker.quantities.duct_graph import sketch
from checker.quantities.duct_scope import systems_of
from checker.quantities.filters import filters_serving, unassigned

DUCTED = ("slim duct unit", "air handler", "furnace", "packaged unit", "evaporative cooler")


def ducted_units(case: Case) -> list[Equipment]:
    """Units of a ducted kind, and others that a duct system names as its mover."""
    return [unit for unit in case.design.equipment.values() if unit.kind in DUCTED or systems_of(case, unit)]


def supply_runs(case: Case, system: DuctSystem) -> list[Run]:
    """Runs of a system that are not known to lead back to the mover."""
    try:
        branches = sketch(case, system).branches
    except Missing:
        branches = {}
    back = {name for name, branch in branches.items() if branch.side == "return"}
    return [run for name, run in system.runs.items() if name not in back]


@quantity("length", "sum of the supply runs")
def supply_length(case: Case, unit: Equipment) -> float:
    """Length of the supply ducts of a unit together, as far as stated."""
    return sum(run.length or 0.0 for system in systems_of(case, unit) for run in supply_runs(case, system))


def open_lengths(case: Case, unit: Equipment) -> tuple[str, ...]:
    """Paths that would complete the length of the supply ducts."""
    systems = systems_of(case, unit)
    if not systems:
        return ("ducts",)
    bare = [path_of(system, "runs") for system in systems if not system.runs]
    runs = [run for system in systems for run in supply_runs(case, system)]
    return (*bare, *(path_of(run, "length") for run in runs if run.length is None))


@quantity()
def best_merv(case: Case, unit: Equipment) -> float:
    """The highest MERV among the filters of a unit. Raises NotApplicable where it plainly has none."""
    filters = filters_serving(case, unit)
    if not filters:
        if lacks_filter(case, unit):
            raise NotApplicable("no filter is drawn for it")
        raise Missing(path_of(unit, "filter"))
    absent = [path_of(each, "merv") for each in filters if each.merv is None]
    if absent:
        raise Missing(*absent)
    return max(float(case.get(each, "merv")) for each in filters)


def lacks_filter(case: Case, unit: Equipment) -> bool:
    """Whether the filters are listed and none of them is this unit's, nor one inside it."""
    if filters_serving(case, unit) or case.maybe(unit, "internal_filter"):
        return False
    return case.stated("filters") and not unassigned(case) and path_of(unit, "filter") not in case.design.tbd


def is_filtered_by_standard(case: Case, unit: Equipment, limit: str) -> bool:
    """Whether its supply ducts are long enough for the filter that a requirement asks for.

    Raises Missing for lengths on which that depends, where the filter is coarser.
    """
    if unit.kind == "evaporative cooler":
        return False
    if supply_length(case, unit) > case.limit("filter-duct-length"):
        return True
    gaps = open_lengths(case, unit)
    if gaps and best_merv(case, unit) < case.limit(limit):
        raise Missing(*gaps)
    return bool(gaps)
