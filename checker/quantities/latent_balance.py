"""Moisture that ventilation and people bring in on the summer design day, against what cooling takes out."""


from checker.case import Case, Missing, path_of, quantity
from checker.design import Design
from checker.design.equipment import Capacity, Equipment
from checker.design.fields import HeatRate
from checker.physics import moisture
from checker.physics.air import HEAT_OF_VAPORIZATION
from checker.quantities.cooling_capacity import has_cooling_table, sensible_told, table_cooling
from checker.quantities.moist_air import (
    air_density,
    indoor_summer,
    moisture_generation,
    outdoor_summer,
    worked_out,
)
from checker.quantities.moisture_balance import outdoor_air, returned
from checker.record import Record

COOLING_KINDS = frozenset(
    {"wall unit", "floor unit", "ceiling unit", "slim duct unit", "heat pump", "air conditioner", "packaged unit"}
)

WATER_DENSITY = 1000.0
"""kg/m3."""


class Cooling(Record):
    """Latent capacity in W that is sure, and the figures that would tell more."""

    sure: HeatRate
    lacking: tuple[str, ...]


def is_outdoor_unit(case: Case, unit: Equipment) -> bool:
    """Whether a unit is the outdoor part of others, whose own figures count."""
    return any(other.outdoor_unit == unit.name for other in case.design.equipment.values())


def cooling_units(case: Case) -> list[Equipment]:
    """Units that cool rooms: with a cooling capacity, or of a kind that has one."""
    return [
        unit
        for unit in case.design.equipment.values()
        if not is_outdoor_unit(case, unit)
        and path_of(unit, "cooling") not in case.design.stated_none
        and (unit.cooling is not None or unit.kind in COOLING_KINDS)
    ]


def total_of(case: Case, capacity: Capacity) -> float | None:
    """Total cooling capacity, W: at design as stated, else by the maker's table, else as rated; None where nobody tells."""
    if has_cooling_table(case, capacity):
        return table_cooling(case, capacity).total
    stated = case.maybe(capacity, "at_design")
    if stated is None:
        stated = case.maybe(capacity, "rated")
    return None if stated is None else float(stated)


def cooling_of(case: Case, unit: Equipment) -> Cooling:
    """Latent capacity of one unit: total less sensible; a sure share of the total where that is not told."""
    capacity = unit.cooling
    total = None if capacity is None else total_of(case, capacity)
    if capacity is None or total is None:
        return Cooling(0.0, (f"{unit.path}.cooling",))
    sensible = sensible_told(case, capacity)
    if sensible is None:
        return Cooling(total * float(case.limit("least-latent-share")), (path_of(capacity, "sensible"),))
    return Cooling(max(0.0, total - sensible), ())


def dehumidifiers(case: Case) -> list[Equipment]:
    """Units that are there to dry the air of the rooms."""
    return [unit for unit in case.design.equipment.values() if unit.kind == "dehumidifier" and dries_rooms(case, unit)]


def dries_rooms(case: Case, unit: Equipment) -> bool:
    """Whether a dehumidifier does not merely stand in a crawl space or garage: by what it serves, or by its ducts."""
    if unit.location not in ("crawl space", "garage") or unit.serves:
        return True
    return any(unit.name in (system.mover, system.name) for system in case.design.ducts.values())


def drying_of(case: Case, unit: Equipment) -> Cooling:
    """Latent capacity of a dehumidifier by its rated water removal; it takes out less of drier or cooler air."""
    water = case.maybe(unit, "moisture_removal")
    if water is None:
        return Cooling(0.0, (path_of(unit, "moisture_removal"),))
    return Cooling(float(water) * WATER_DENSITY * HEAT_OF_VAPORIZATION, ())


@quantity("heat_rate", "dry air x heat of vaporization x (outdoor - indoor humidity ratio)")
def latent_of_ventilation(case: Case, node: object) -> float:
    """Latent load that fans bring in; what the moisture recovery keeps outside is taken off."""
    exchange = (outdoor_air(case, node) - returned(case, node).least) * air_density(case, node)
    indoor, outdoor = indoor_summer(case, node), outdoor_summer(case, node)
    return worked_out(lambda: moisture.latent_load(exchange, outdoor.humidity_ratio, indoor.humidity_ratio))


@quantity("heat_rate", "water that people give off x heat of vaporization")
def latent_of_people(case: Case, node: object) -> float:
    """Latent load of the people of the house, their washing and cooking."""
    return moisture_generation(case, node) * HEAT_OF_VAPORIZATION


@quantity("heat_rate", "total less sensible capacity, and what dehumidifiers take out, summed over the units")
def latent_capacity(case: Case, design: Design) -> float:
    """Latent capacity of cooling and dehumidifiers. Raises Missing for figures on which it depends whether it is enough."""
    found = [cooling_of(case, unit) for unit in cooling_units(case)]
    found += [drying_of(case, unit) for unit in dehumidifiers(case)]
    sure = sum(each.sure for each in found)
    lacking = [path for each in found for path in each.lacking] + list(returned(case, design).lacking)
    if lacking and sure < latent_of_ventilation(case, design) + latent_of_people(case, design):
        raise Missing(*lacking)
    return sure
