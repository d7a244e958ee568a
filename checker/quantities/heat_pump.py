"""What equipment delivers on the winter design day, and where a heat pump and its load are in balance."""

from functools import partial

from checker.case import CannotJudge, Case, Missing, NotApplicable, gather, path_of, quantity
from checker.design.equipment import Capacity, Equipment
from checker.design.fields import Temperature
from checker.design.performance import Backup
from checker.each import blank
from checker.physics.entering_air import at_entering
from checker.physics.heat_pump import (
    FURTHEST_BELOW,
    LoadLine,
    PerformancePoint,
    balance_points,
    capacity_at,
    load_line,
)
from checker.quantities.equipment import (
    BURNING_KINDS,
    Group,
    burns,
    first_told,
    indoor_units,
    is_heat_pump,
    outdoor_of,
)
from checker.quantities.unit_loads import group_heating_load
from checker.quantities.ventilating_handlers import winter_indoor, winter_outdoor
from checker.record import Record

RATING_TEMPERATURE = 281.4833333333333
"""47 F, at which heating capacity is rated."""


class Balance(Record):
    """The highest outdoor temperature at which capacity and load are equal; None where one always exceeds.

    `short_at_design`: whether the heat pump alone falls short at the design temperature, or at its coldest point.
    """

    temperature: Temperature | None
    short_at_design: bool


def heating_of(unit: Equipment) -> Capacity:
    """The heating capacity of a unit; an empty one where the file says nothing about it."""
    heating: Capacity = unit.heating or blank(Capacity, f"{unit.path}.heating")
    return heating


def joined_alone(case: Case, unit: Equipment) -> Equipment | None:
    """The outdoor unit that serves this indoor unit alone: what is said of one counts for both."""
    outdoor = outdoor_of(case, unit)
    return outdoor if outdoor is not None and len(indoor_units(case, outdoor)) == 1 else None


def heating_told(case: Case, unit: Equipment) -> Capacity:
    """The heating capacity of a unit, or of its outdoor unit where that alone states one and serves no other."""
    outdoor = joined_alone(case, unit)
    if unit.heating is None and outdoor is not None and outdoor.heating is not None:
        return outdoor.heating
    return heating_of(unit)


def backup_of(case: Case, unit: Equipment) -> Backup | None:
    """The backup of a unit, or of the outdoor unit that serves it alone; None where neither has one."""
    if path_of(unit, "backup") in case.design.tbd:
        raise Missing(path_of(unit, "backup"))
    outdoor = joined_alone(case, unit)
    own: Backup | None = unit.backup
    if own is not None or outdoor is None or path_of(unit, "backup") in case.design.stated_none:
        return own
    if path_of(outdoor, "backup") in case.design.tbd:
        raise Missing(path_of(outdoor, "backup"))
    theirs: Backup | None = outdoor.backup
    return theirs


def points_of(case: Case, heating: Capacity) -> list[tuple[float, float]]:
    """Outdoor temperature and capacity of each point of a table, whatever the room air. Raises Missing."""
    return [(float(outdoor), float(capacity)) for outdoor, capacity in
            (case.all(each, "outdoor", "capacity") for each in heating.points)]  # fmt: skip


def helped_by_fuel(case: Case, unit: Equipment) -> bool:
    """Whether a flame takes the place of a heat pump in the cold: its backup, or the furnace that it is joined to."""
    backup = backup_of(case, unit)
    kind = None if backup is None else case.maybe(backup, "kind")
    return kind == "fuel" or (kind is None and unit.kind in BURNING_KINDS)


def table_of(case: Case, unit: Equipment) -> list[PerformancePoint]:
    """The heating performance points of a unit, for the room air of the house where they tell of several.

    Raises Missing where it has none or one lacks a figure.
    """
    heating = heating_of(unit)
    if not heating.points:
        raise Missing(f"{unit.path}.heating.points")
    points = []
    for each in heating.points:
        outdoor, capacity = case.all(each, "outdoor", "capacity")
        power, least = case.maybe(each, "power") or 0.0, case.maybe(each, "least")
        entering = case.maybe(each, "entering_dry_bulb")
        points.append((entering, PerformancePoint(float(outdoor), float(capacity), power, least)))
    told = any(entering is not None for entering, _ in points)
    return at_entering(points, winter_indoor(case, unit)) if told else [point for _, point in points]


def lowest_operating(case: Case, unit: Equipment) -> float | None:
    """Outdoor temperature below which a heat pump does not run: its own limit or lock-out, or its outdoor unit's."""
    found = []
    for each in (unit, outdoor_of(case, unit)):
        if each is None:
            continue
        by_maker = each.by_maker
        limit = case.maybe(by_maker, "least_outdoor") if by_maker is not None else None
        lock = case.maybe(each.backup, "compressor_lock_out") if each.backup is not None else None
        found += [float(value) for value in (limit, lock) if value is not None]
    return max(found, default=None)


def stops_at_design(case: Case, unit: Equipment) -> bool:
    """Whether a heat pump is off at the winter design temperature; a furnace beside one goes on."""
    if burns(unit) or not is_heat_pump(case, unit):
        return False
    lowest = lowest_operating(case, unit)
    return lowest is not None and lowest > winter_outdoor(case, unit)


def at_design_by_outdoor_unit(case: Case, unit: Equipment, outdoor: Equipment) -> float:
    """Rated capacity of a unit times what its outdoor unit keeps of its own at the design temperature."""
    rated, base = gather(
        [lambda: float(case.get(heating_of(unit), "rated")), lambda: float(case.get(heating_of(outdoor), "rated"))]
    )
    cold = compressor_capacity(case, outdoor)
    if base <= 0.0:
        raise CannotJudge(f"{outdoor.name} is said to have no capacity")
    return rated * cold / base


@quantity(
    "heat_rate", "as stated at design; else from the performance table; else as its outdoor unit falls off",
)  # fmt: skip
def compressor_capacity(case: Case, unit: Equipment) -> float:
    """Heating capacity of a heat pump at the winter design temperature, backup left out."""
    if stops_at_design(case, unit):
        return 0.0
    heating, outdoor = heating_told(case, unit), outdoor_of(case, unit)
    stated = case.maybe(heating, "at_design")
    if stated is not None:
        return float(stated)
    if unit.heating is not None and heating.points:
        return capacity_at(table_of(case, unit), winter_outdoor(case, unit))
    if outdoor is not None and unit.heating is None and heating is outdoor.heating:
        return compressor_capacity(case, outdoor)
    known = None if outdoor is None else outdoor.heating
    if outdoor is not None and known is not None and (known.points or case.speaks_of(known, "at_design")):
        return at_design_by_outdoor_unit(case, unit, outdoor)
    return float(case.get(heating, "at_design"))


@quantity("heat_rate")
def backup_capacity(case: Case, unit: Equipment) -> float:
    """Heat that the backup of a unit adds, else an electric heater in its duct; nothing where none is stated."""
    backup = backup_of(case, unit)
    if backup is None:
        heater = unit.duct_heater
        if heater is None and unit.kind in BURNING_KINDS and path_of(unit, "backup") not in case.design.stated_none:
            raise Missing(f"{unit.path}.backup.power")
        return 0.0 if heater is None else float(case.get(heater, "power"))
    return float(case.get(backup, "power"))


@quantity("heat_rate", "output at design, backup included")
def heat_at_design(case: Case, unit: Equipment) -> float:
    """Heat that a unit delivers at the winter design temperature."""
    if is_heat_pump(case, unit) and not burns(unit):
        compressor, backup = gather(
            [partial(compressor_capacity, case, unit), partial(backup_capacity, case, unit)]
        )
        return max(compressor, backup) if helped_by_fuel(case, unit) else compressor + backup
    heating = heating_of(unit)
    if unit.kind == "electric heat":
        return first_told(case, (heating, "at_design"), (unit, "power"), (heating, "rated"))
    return first_told(case, (heating, "at_design"), (heating, "rated"))


@quantity("heat_rate", "sum over the units that share the rooms")
def group_heat(case: Case, group: Group) -> float:
    """Heat that a group delivers at the winter design temperature."""
    return sum(gather([partial(heat_at_design, case, unit) for unit in group.units]))


def temperature_of_no_load(case: Case, node: object) -> float:
    """Outdoor temperature at which no heat is wanted any more: 65 F, or the indoor temperature if that is lower."""
    return min(winter_indoor(case, node), float(case.limit("no-load-temperature")))


@quantity("", "load in a straight line from the design temperature to no load", "ASHRAE Handbook - Fundamentals")
def group_line(case: Case, group: Group) -> LoadLine:
    """The load line of the rooms of a group."""
    load, design = gather([lambda: group_heating_load(case, group), lambda: winter_outdoor(case, group)])
    zero = temperature_of_no_load(case, group)
    if design >= zero:
        raise NotApplicable("the winter design temperature asks for no heating")
    return load_line(load, design, zero)


def compressors(case: Case, group: Group) -> list[Equipment]:
    """The heat pumps whose own or whose outdoor unit's table tells the capacity of a group."""
    found: dict[str, Equipment] = {}
    for unit in group.units:
        if is_heat_pump(case, unit):
            outdoor = outdoor_of(case, unit)
            own = unit.heating is not None and unit.heating.points
            if outdoor is not None and not own and outdoor.heating is not None and outdoor.heating.points:
                if len(indoor_units(case, outdoor)) > 1:
                    raise CannotJudge(f"the table of {outdoor.name} is shared by several indoor units")
                unit = outdoor
            found[unit.path] = unit
    return list(found.values())


@quantity("", "capacity = load", "arithmetic on the load line and the performance table")
def balance(case: Case, group: Group) -> Balance:
    """Where the one heat pump of a group and the load of its rooms are in balance."""
    pumps = compressors(case, group)
    if len(pumps) != 1 or len(group.units) > 1:
        raise CannotJudge(f"{group.name} is more than one heat source: no single balance point")
    line = group_line(case, group)
    points = table_of(case, pumps[0])
    found = balance_points(points, line)
    coldest = max(line.design, min(each.temperature for each in points) - FURTHEST_BELOW)
    short = capacity_at(points, coldest) < line.at(coldest)
    return Balance(found[-1] if found else None, short)
