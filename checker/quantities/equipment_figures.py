"""Equipment beside its load, for a page that shows the house: ratios, least capacity, balance point, backup."""

from functools import partial

from checker.case import CannotJudge, Case, Missing, NotApplicable, gather, path_of, quantity
from checker.design.equipment import Capacity, Equipment
from checker.quantities.equipment import Group, is_heat_pump
from checker.quantities.heat_pump import (
    backup_capacity,
    backup_of,
    balance,
    compressors,
    group_heat,
    heating_of,
    heating_told,
)
from checker.quantities.sizing import cooling_of, cooling_total, least_of, sensible_extent
from checker.quantities.unit_loads import group_cooling_sensible, group_cooling_total, group_heating_load


def over(capacity: float, load: float) -> float:
    """Capacity over load. NotApplicable without a load."""
    if load <= 0.0:
        raise NotApplicable("its rooms have no such load")
    return capacity / load


def least_together(case: Case, pairs: list[tuple[Equipment, Capacity]]) -> float:
    """The least at which one of several units can run, W. Raises Missing with what would tell it."""
    found = gather([partial(least_of, case, unit, capacity) for unit, capacity in pairs])
    asked = [path_of(capacity, "least") for least, (_, capacity) in zip(found, pairs, strict=True) if least is None]
    if asked:
        raise Missing(*asked)
    return min(least for least in found if least is not None)


@quantity("", "output at design / heating load")
def heating_ratio(case: Case, group: Group) -> float:
    """Heat that a group delivers at winter design over the load of its rooms."""
    return over(*gather([partial(group_heat, case, group), partial(group_heating_load, case, group)]))


@quantity("heat_rate")
def least_heating(case: Case, group: Group) -> float:
    """Least heat at which one heat pump of a group can run."""
    pumps = [unit for unit in group.units if is_heat_pump(case, unit)]
    if not pumps:
        raise NotApplicable("no heat pump, whose least capacity would matter")
    return least_together(case, [(unit, heating_told(case, unit)) for unit in pumps])


@quantity("temperature", "capacity = load")
def balance_point(case: Case, group: Group) -> float:
    """Outdoor temperature at which a heat pump just meets its load. NotApplicable without performance points."""
    if not any(heating_of(pump).points for pump in compressors(case, group)):
        raise NotApplicable("no performance points are stated")
    found = balance(case, group)
    if found.temperature is None:
        short = found.short_at_design
        raise NotApplicable("it falls short at every temperature" if short else "it meets the load at every temperature")
    return found.temperature


@quantity("heat_rate", "sum over the units")
def group_backup(case: Case, group: Group) -> float:
    """Backup heat of a group. NotApplicable where none of its units has any."""
    units = [unit for unit in group.units if backup_of(case, unit) is not None]
    if not units:
        raise NotApplicable("no backup is stated")
    return sum(gather([partial(backup_capacity, case, unit) for unit in units]))


@quantity("heat_rate", "sensible and latent load of the rooms served")
def total_cooling_load(case: Case, group: Group) -> float:
    """Total cooling load of a group. Raises Missing for what would tell the latent part."""
    span = group_cooling_total(case, group)
    if span.missing:
        raise Missing(*span.missing)
    return span.high


@quantity("heat_rate", "as stated at design")
def sensible_cooling(case: Case, group: Group) -> float:
    """Sensible cooling capacity of a group. Raises Missing where a unit does not state it."""
    found = sensible_extent(case, group)
    if found.asked:
        raise Missing(*found.asked)
    return found.full


@quantity("", "sensible capacity / sensible load")
def sensible_ratio(case: Case, group: Group) -> float:
    """Sensible cooling capacity of a group over the sensible load of its rooms."""
    return over(*gather([partial(sensible_cooling, case, group), partial(group_cooling_sensible, case, group)]))


@quantity("", "total capacity / total load")
def cooling_ratio(case: Case, group: Group) -> float:
    """Total cooling capacity of a group over its total load."""
    return over(*gather([partial(cooling_total, case, group), partial(total_cooling_load, case, group)]))


@quantity("heat_rate")
def least_cooling(case: Case, group: Group) -> float:
    """Least cooling at which one unit of a group can run."""
    return least_together(case, [(unit, cooling_of(case, unit)) for unit in group.units])


@quantity()
def served(case: Case, group: Group) -> str:
    """The rooms of a group in words. Raises Missing where a unit does not tell."""
    if group.lacking:
        raise Missing(*group.lacking)
    if not group.rooms:
        raise CannotJudge("no room is heated or cooled")
    return "the whole house" if group.whole_house else ", ".join(group.rooms)
