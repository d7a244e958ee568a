"""How equipment compares with its load: ratios, least capacities, airflow for its capacity, temperature rise."""

from functools import partial

from checker.case import CannotJudge, Case, NotApplicable, gather, path_of, quantity
from checker.design.equipment import Capacity, Equipment
from checker.design.fields import HeatRate
from checker.each import blank
from checker.physics.sizing import airflow_per_capacity, altitude_factor, temperature_rise
from checker.quantities.cooling_capacity import has_cooling_table, sensible_told, table_cooling
from checker.quantities.equipment import (
    COMPRESSOR_KINDS,
    Group,
    first_told,
    indoor_units,
    is_heat_pump,
    outdoor_of,
)
from checker.quantities.heat_pump import heating_of, heating_told
from checker.quantities.movers import airflow
from checker.quantities.ventilation_standard import site_of
from checker.record import Record

SENSIBLE_AT_LEAST = 0.65
"""Share of the total cooling capacity that is surely sensible."""


class Extent(Record):
    """Full and least capacity in W; `asked` would tell the least one where it is None."""

    full: HeatRate
    least: HeatRate | None
    asked: tuple[str, ...] = ()


def is_named_size(case: Case, unit: Equipment, capacity: Capacity, value: float) -> bool:
    """Whether a capacity is, to half a percent, the rated one or the nominal size of the unit."""
    named = (case.maybe(capacity, "rated"), case.maybe(unit, "nominal"))
    return any(abs(value - float(each)) <= 0.005 * float(each) for each in named if each is not None)


def cooling_of(case: Case, unit: Equipment) -> Capacity:
    """The cooling capacity of a unit, or of its outdoor unit where it alone states one."""
    if unit.cooling is None:
        outdoor = outdoor_of(case, unit)
        if outdoor is not None and outdoor.cooling is not None and len(indoor_units(case, outdoor)) == 1:
            return outdoor.cooling
    cooling: Capacity = unit.cooling or blank(Capacity, f"{unit.path}.cooling")
    return cooling


def full_of(case: Case, capacity: Capacity) -> float:
    """Full capacity: at design, else of cooling by its maker's table, else as rated."""
    if capacity.name == "cooling" and has_cooling_table(case, capacity):
        return table_cooling(case, capacity).total
    return first_told(case, (capacity, "at_design"), (capacity, "rated"))


def least_of(case: Case, unit: Equipment, capacity: Capacity) -> float | None:
    """Least capacity: as stated, the smallest of its points; the full one of a single stage; None if unknown."""
    stated = case.maybe(capacity, "least")
    if stated is not None:
        return float(stated)
    of_points = [each.least for each in capacity.points if each.least is not None]
    if of_points:
        return float(min(of_points))
    return full_of(case, capacity) if case.maybe(unit, "stages") == "single stage" else None


def extent(case: Case, pairs: list[tuple[Equipment, Capacity]]) -> Extent:
    """Full capacity of units together, and the least at which one of them can run alone."""
    full = sum(gather([partial(full_of, case, capacity) for _, capacity in pairs]))
    leasts = [(least_of(case, unit, capacity), capacity) for unit, capacity in pairs]
    known = [least for least, _ in leasts if least is not None]
    asked = tuple(path_of(capacity, "least") for least, capacity in leasts if least is None)
    return Extent(full, min(known) if known and not asked else None, asked)


@quantity()
def heating_extent(case: Case, group: Group) -> Extent:
    """Full and least heating capacity of the heat pumps of a group."""
    return extent(case, [(unit, heating_told(case, unit)) for unit in group.units if is_heat_pump(case, unit)])


@quantity()
def cooling_extent(case: Case, group: Group) -> Extent:
    """Full and least total cooling capacity of a group."""
    return extent(case, [(unit, cooling_of(case, unit)) for unit in group.units])


@quantity("heat_rate", "total cooling capacity at design, else as rated")
def cooling_total(case: Case, group: Group) -> float:
    """Total cooling capacity of a group."""
    return cooling_extent(case, group).full


def sensible_of(case: Case, unit: Equipment) -> float | None:
    """Sensible cooling capacity as stated, else by the maker's table; None where neither tells."""
    return sensible_told(case, cooling_of(case, unit))


@quantity()
def sensible_extent(case: Case, group: Group) -> Extent:
    """Greatest and least that the sensible cooling capacity can be; `asked` would tell it."""
    greatest = least = 0.0
    asked = []
    for unit in group.units:
        stated = sensible_of(case, unit)
        total = full_of(case, cooling_of(case, unit)) if stated is None else stated
        greatest += total
        least += total if stated is not None else SENSIBLE_AT_LEAST * total
        if stated is None:
            asked.append(path_of(cooling_of(case, unit), "sensible"))
    return Extent(greatest, least, tuple(asked))


def elevation(case: Case) -> float:
    """Height above sea level, m; sea level where the file does not say."""
    stated = case.maybe(site_of(case), "elevation")
    return 0.0 if stated is None else float(stated)


@quantity("airflow", "rated airflow, else that of its fastest setting")
def unit_airflow(case: Case, unit: Equipment) -> float:
    """Airflow of a blower at full capacity."""
    stated = case.maybe(unit, "airflow")
    if stated is not None or not unit.settings:
        return float(case.get(unit, "airflow"))
    return max(gather([partial(airflow, case, setting) for setting in unit.settings.values()]))


@quantity("", "airflow x density ratio / total cooling capacity, as rated, else at design", "common practice")
def airflow_for_capacity(case: Case, unit: Equipment) -> float:
    """Airflow in standard air for the cooling capacity, m3/J."""
    capacity = cooling_of(case, unit)
    rated = case.maybe(capacity, "rated")
    total = full_of(case, capacity) if rated is None else float(rated)
    if total <= 0.0:
        raise NotApplicable("it has no cooling capacity")
    return airflow_per_capacity(unit_airflow(case, unit), total, elevation(case))


def altitude_share(case: Case, unit: Equipment) -> float:
    """Output of a gas burner at this elevation over that at sea level: the maker's, else by the rule of thumb."""
    stated = None if unit.by_maker is None else case.maybe(unit.by_maker, "altitude_factor")
    return altitude_factor(elevation(case)) if stated is None else float(stated)


@quantity("heat_rate", "as stated at design; else rated output x altitude factor")
def burner_output(case: Case, unit: Equipment) -> float:
    """Output of a furnace at the elevation of the site; electric ones and burners of wood are not corrected."""
    heating = heating_of(unit)
    output = full_of(case, heating)
    if case.maybe(heating, "at_design") is not None or unit.fuel in ("electric", "wood", "pellet"):
        return output
    return output * altitude_share(case, unit)


@quantity("temperature_difference", "output / (air density x specific heat x airflow)")
def furnace_rise(case: Case, unit: Equipment) -> float:
    """Temperature rise of the air through a furnace at full output, which thin air lowers."""
    output, flow = gather([lambda: burner_output(case, unit), lambda: unit_airflow(case, unit)])
    if flow <= 0.0:
        raise CannotJudge("an airflow of nothing has no temperature rise")
    return temperature_rise(output, flow, elevation(case))


@quantity("heat_rate", "sum of the rated capacities of the indoor units")
def connected_capacity(case: Case, outdoor: Equipment) -> float:
    """Sum of the indoor units' rated cooling capacities, or heating ones where no unit cools."""
    units = indoor_units(case, outdoor)
    heating_only = all(unit.cooling is None for unit in units) and any(unit.heating is not None for unit in units)
    return sum(gather([partial(rated, case, unit, "heating" if heating_only else "cooling") for unit in units]))


@quantity("heat_rate")
def outdoor_rated(case: Case, outdoor: Equipment) -> float:
    """Rated capacity of an outdoor unit, of the kind that its indoor units state."""
    units = indoor_units(case, outdoor)
    heating_only = all(unit.cooling is None for unit in units) and any(unit.heating is not None for unit in units)
    return rated(case, outdoor, "heating" if heating_only else "cooling")


def rated(case: Case, unit: Equipment, field: str) -> float:
    """Rated or nominal capacity of a unit."""
    capacity: Capacity = getattr(unit, field) or blank(Capacity, f"{unit.path}.{field}")
    return first_told(case, (capacity, "rated"), (unit, "nominal"), (capacity, "rated"))


def stages_of(case: Case, unit: Equipment) -> str:
    """How the capacity of a unit follows the load: as said, by its outdoor unit, or by its kind."""
    outdoor = outdoor_of(case, unit)
    for each in (unit, outdoor):
        stated = None if each is None else case.maybe(each, "stages")
        if stated is not None:
            return str(stated)
    if unit.kind in COMPRESSOR_KINDS - {"heat pump", "air conditioner", "packaged unit"}:
        return "variable speed"
    return str(case.get(outdoor or unit, "stages"))
