"""Heat pumps in the thin air of high places."""

from functools import partial

from checker.case import Case, Missing, NotApplicable, gather, quantity
from checker.design.equipment import Equipment
from checker.physics.air import pressure_ratio
from checker.quantities.equipment import Group, is_heat_pump, outdoor_of
from checker.quantities.heat_pump import backup_capacity, compressor_capacity, group_heat, heat_at_design
from checker.quantities.sizing import elevation
from checker.quantities.unit_loads import group_heating_load


def makers_share(case: Case, unit: Equipment) -> float | None:
    """Capacity at this elevation over that at sea level by the maker: of the unit, else of its outdoor unit."""
    for each in (unit, outdoor_of(case, unit)):
        stated = None if each is None or each.by_maker is None else case.maybe(each.by_maker, "altitude_factor")
        if stated is not None:
            return float(stated)
    return None


def heat_with(case: Case, unit: Equipment, least_share: float) -> float:
    """Heat of a unit on the design day, its compressor's by the maker's factor, else by the least share there is."""
    if not is_heat_pump(case, unit):
        return heat_at_design(case, unit)
    stated = makers_share(case, unit)
    compressor, backup = gather([partial(compressor_capacity, case, unit), partial(backup_capacity, case, unit)])
    return compressor * (least_share if stated is None else stated) + backup


@quantity("heat_rate", "capacity at design x the maker's altitude factor + backup")
def heat_in_thin_air(case: Case, group: Group) -> float:
    """Heat of a group at the elevation of the site.

    A coil moves less air by mass at altitude, and loses less than that share of its capacity: where that much less
    would still do, the maker's factor is not asked for. NotApplicable where the heat falls short even at the sea.
    """
    load = group_heating_load(case, group)
    if group_heat(case, group) < load * (1 - 1e-9):
        raise NotApplicable("it falls short already at sea level, which is judged by itself")
    heat = sum(heat_with(case, unit, pressure_ratio(elevation(case))) for unit in group.units)
    open_ended = [unit for unit in group.units if is_heat_pump(case, unit) and makers_share(case, unit) is None]
    if heat < load * (1 - 1e-9) and open_ended:
        raise Missing(*(f"{unit.path}.by_maker.altitude_factor" for unit in open_ended))
    return heat
