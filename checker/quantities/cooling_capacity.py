"""What equipment cools with on the summer design day: by its maker's table, by outdoor and entering air."""


from checker.case import Case, Missing, quantity
from checker.design.equipment import Capacity
from checker.design.fields import HeatRate
from checker.physics.cooling_table import CoolingPoint, cooling_at
from checker.physics.psychrometrics import wet_bulb
from checker.quantities.moist_air import indoor_summer, worked_out
from checker.quantities.ventilation_standard import site_of
from checker.record import Record


class TableCooling(Record):
    """Total and sensible capacity in W by the table; the sensible part None where it is not tabled."""

    total: HeatRate
    sensible: HeatRate | None


@quantity("temperature", "of the summer room air", "ASHRAE Handbook - Fundamentals, chapter 1")
def entering_wet_bulb(case: Case, node: object) -> float:
    """Wet bulb of the room air that enters the indoor unit in summer."""
    room = indoor_summer(case, node)
    return worked_out(lambda: wet_bulb(room.temperature, room.humidity_ratio, room.pressure))


@quantity("temperature")
def summer_outdoor(case: Case, _node: object) -> float:
    """Outdoor dry bulb on the summer design day."""
    summer = site_of(case).summer_design
    if summer is None:
        raise Missing("site.summer_design.dry_bulb")
    return float(case.get(summer, "dry_bulb"))


def has_cooling_table(case: Case, capacity: Capacity) -> bool:
    """Whether a cooling capacity comes with performance points, so that it can be read at the design conditions."""
    return not case.speaks_of(capacity, "at_design") and any(each.capacity is not None for each in capacity.points)


@quantity("", "straight lines between the maker's points", "common practice")
def table_cooling(case: Case, capacity: Capacity) -> TableCooling:
    """Cooling capacity by the maker's table on the summer design day. Raises Missing for a figure of a point."""
    points = []
    for each in capacity.points:
        outdoor, total = case.all(each, "outdoor", "capacity")
        sensible, wet = case.maybe(each, "sensible"), case.maybe(each, "entering_wet_bulb")
        points.append(CoolingPoint(float(outdoor), float(total), sensible, wet))
    found = cooling_at(points, summer_outdoor(case, capacity), entering_wet_bulb(case, capacity))
    return TableCooling(found.total, found.sensible)


def sensible_told(case: Case, capacity: Capacity) -> float | None:
    """Sensible cooling capacity in W as stated, else by the maker's table; None where neither tells."""
    stated = case.maybe(capacity, "sensible")
    if stated is None and has_cooling_table(case, capacity):
        return table_cooling(case, capacity).sensible
    return None if stated is None else float(stated)
