"""How a heat pump runs in milder weather than the design day: where its least capacity meets the load."""


from checker.case import Case, NotApplicable, quantity
from checker.design.equipment import Capacity, Equipment
from checker.design.fields import HeatRate, Share, Temperature
from checker.physics.entering_air import at_entering
from checker.physics.heat_pump import LoadLine, PerformancePoint, balance_points
from checker.quantities.equipment import (
    Group,
    all_heating,
    burns,
    indoor_units,
    is_heat_pump,
    outdoor_of,
)
from checker.quantities.heat_pump import group_line, heating_told
from checker.quantities.ventilating_handlers import winter_indoor
from checker.record import Record


class Steady(Record):
    """The warmest outdoor temperature at which a heat pump still runs without a stop, and its least capacity there.

    `share`: that capacity over the load of the winter design day.
    """

    temperature: Temperature
    least: HeatRate
    share: Share


def tells_least_by_outdoors(capacity: Capacity) -> bool:
    """Whether the maker's table gives the least capacity at two outdoor temperatures or more."""
    return len({each.outdoor for each in capacity.points if None not in (each.outdoor, each.least)}) > 1


def least_points(case: Case, unit: Equipment, capacity: Capacity) -> list[PerformancePoint]:
    """The least capacity by outdoor temperature, as far as the maker's table tells it, for the room air of the house."""
    rows = []
    for each in capacity.points:
        outdoor, least = case.maybe(each, "outdoor"), case.maybe(each, "least")
        if outdoor is not None and least is not None:
            rows.append((case.maybe(each, "entering_dry_bulb"), PerformancePoint(float(outdoor), float(least))))
    return at_entering(rows, winter_indoor(case, unit))


def turning_down(case: Case) -> list[Group]:
    """Single heat pumps whose least heating capacity is stated; several heads of one outdoor unit left out."""
    found = []
    for group in all_heating(case):
        unit = group.units[0]
        if len(group.units) > 1 or burns(unit) or not is_heat_pump(case, unit):
            continue
        outdoor, capacity = outdoor_of(case, unit), heating_told(case, unit)
        shared = outdoor is not None and len(indoor_units(case, outdoor)) > 1
        if not shared and (case.speaks_of(capacity, "least") or tells_least_by_outdoors(capacity)):
            found.append(group)
    return found


def meeting(case: Case, unit: Equipment, line: LoadLine) -> float | None:
    """Outdoor temperature in K at which least capacity and load are equal; None where the load is always less."""
    capacity = heating_told(case, unit)
    if tells_least_by_outdoors(capacity):
        found = balance_points(least_points(case, unit, capacity), line)
        return found[-1] if found else None
    return float(line.zero - float(case.get(capacity, "least")) / line.conductance)


@quantity("", "least capacity = load", "arithmetic on the load line")
def steady(case: Case, group: Group) -> Steady:
    """Down from where a heat pump runs without a stop. NotApplicable where not even the design day keeps it running."""
    line = group_line(case, group)
    if line.load <= 0.0:
        raise NotApplicable("its rooms lose no heat")
    found = meeting(case, group.units[0], line)
    if found is None or found <= line.design:
        raise NotApplicable("its least capacity is above the load of the coldest day, which is judged by itself")
    return Steady(found, line.at(found), line.at(found) / line.load)
