"""Airtightness limits, rated efficiencies, electric heat, and the seasonal energy of heat pumps."""

from functools import partial

from checker.case import CannotJudge, Case, Missing, NotApplicable, gather, path_of, quantity
from checker.codebook import converted
from checker.design.energy_paper import EnergyPaper
from checker.design.equipment import Equipment
from checker.design.fields import AirChangesAt50
from checker.design.performance import Ratings
from checker.each import blank
from checker.physics.heat_pump import SeasonalEnergy, seasonal_energy
from checker.physics.heating_season import nearest_region, season_bins
from checker.physics.ventilation_energy import SECONDS_OF_HOUR
from checker.quantities.climate import is_marine, zone_number
from checker.quantities.equipment import Group, all_heating, first_told, is_heat_pump, is_outdoors
from checker.quantities.heat_pump import (
    backup_capacity,
    compressors,
    group_line,
    heating_of,
    lowest_operating,
    table_of,
)
from checker.quantities.ventilating_handlers import winter_outdoor
from checker.quantities.ventilation_standard import site_of
from checker.record import Record
from checker.units import show

NEAR_REGION = 5.0
"""K; the bins of a climate region serve so near its design temperature."""


class LeakageLimit(Record):
    """Greatest leakage in 1/h at 50 Pa; `asked` would tell whether the laxer `otherwise` counts instead."""

    limit: AirChangesAt50
    otherwise: AirChangesAt50
    asked: tuple[str, ...] = ()


class OutdoorBin(Record):
    """An outdoor temperature in K with its time in s, or with its share of the heating season."""

    temperature: float
    time: float

    def worksheet_lines(self, system: str) -> list[str]:
        """The bin on one line."""
        length = f"{self.time:.1%} of the season" if self.time <= 1.0 else f"{self.time / SECONDS_OF_HOUR:.0f} h"
        return [f"{show(self.temperature, 'temperature', system)}: {length}"]


def energy_paper(case: Case) -> EnergyPaper:
    """What the energy papers claim; an empty record where the file holds none."""
    papers = case.design.papers
    paper = None if papers is None else papers.energy
    return paper or blank(EnergyPaper, "papers.energy")


def code_path(case: Case) -> str | None:
    """The path by which the energy code is met: of the energy papers, else the one that the certificate names."""
    papers = case.design.papers
    path: str | None = case.maybe(energy_paper(case), "code_path")
    if path is None and papers is not None and papers.certificate is not None:
        path = case.maybe(papers.certificate, "code_path")
    return path


@quantity()
def leakage_limit(case: Case, node: object) -> LeakageLimit:
    """The limit of the climate zone, and the one of other paths where the edition has one."""
    zone = zone_number(case, node)
    limit = next(float(most) for last, most in case.limit("air-leakage") if zone <= last)
    try:
        other = max(limit, float(case.limit("air-leakage-of-other-paths")))
    except NotApplicable:
        return LeakageLimit(limit, limit)
    path = code_path(case)
    if path is None:
        return LeakageLimit(limit, other, ("papers.energy.code_path",) if other > limit else ())
    return LeakageLimit(limit, limit) if path == "prescriptive" else LeakageLimit(other, other)


def ratings_of(unit: Equipment) -> Ratings:
    """The ratings of a unit; an empty record where the file holds none."""
    ratings: Ratings = unit.ratings or blank(Ratings, f"{unit.path}.ratings")
    return ratings


def rated_units(case: Case, *fields: str) -> list[Equipment]:
    """Equipment that speaks of one of these ratings."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.ratings is not None and any(case.speaks_of(unit.ratings, field) for field in fields)
    ]


def is_conditioner(case: Case, unit: Equipment) -> bool:
    """Whether a unit cools by a compressor and is no heat pump."""
    return unit.kind == "air conditioner" or (
        unit.kind == "packaged unit" and not is_heat_pump(case, unit) and not case.speaks_of(unit, "heating")
    )


def heat_pumps(case: Case) -> list[Equipment]:
    """Heat pumps, their outdoor units and heads, that speak of seasonal ratings."""
    return [
        unit
        for unit in rated_units(case, "seer2", "hspf2")
        if is_heat_pump(case, unit) or (is_outdoors(case, unit) and not is_conditioner(case, unit))
    ]


@quantity()
def fuel(case: Case, unit: Equipment) -> str:
    """Fuel of a furnace or boiler: as stated, else that of the burner of its name or the only one of its kind."""
    stated = case.maybe(unit, "fuel")
    if stated is not None:
        return str(stated)
    burners = case.design.combustion
    same = [burners[unit.name]] if unit.name in burners else [b for b in burners.values() if b.kind == unit.kind]
    if len(same) == 1:
        return str(case.get(same[0], "fuel"))
    return str(case.get(unit, "fuel"))


@quantity("share")
def afue(case: Case, unit: Equipment) -> float:
    """Annual fuel use efficiency."""
    return float(case.get(ratings_of(unit), "afue"))


def least_afue(case: Case, unit: Equipment, key: str) -> float:
    """Least AFUE of its fuel. NotApplicable for a fuel that is not in the table."""
    text = case.limit(key).get(fuel(case, unit))
    if text is None:
        raise NotApplicable("the table has no row for its fuel")
    return float(converted(text, "share"))


@quantity("heat_rate", "rated cooling capacity, else the nominal one")
def cooling_size(case: Case, unit: Equipment) -> float:
    """Size of an air conditioner by which its minimum efficiency is chosen."""
    from checker.quantities.sizing import cooling_of

    capacity = cooling_of(case, unit)
    return first_told(case, (capacity, "rated"), (unit, "nominal"), (capacity, "rated"))


def resistance_units(case: Case) -> list[Equipment]:
    """Electric heaters, and heat pumps and air handlers with electric backup."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.kind == "electric heat" or (unit.backup is not None and unit.backup.kind != "fuel")
    ]


@quantity("power", "sum of electric heaters and electric backup")
def resistance_power(case: Case, _design: object) -> float:
    """Electric resistance heat that is installed in all."""
    return sum(gather([partial(one_resistance, case, unit) for unit in resistance_units(case)]))


def one_resistance(case: Case, unit: Equipment) -> float:
    """Electric resistance heat of one unit."""
    if unit.kind == "electric heat":
        return first_told(case, (unit, "power"), (heating_of(unit), "rated"))
    return backup_capacity(case, unit)


def stated_bins(case: Case) -> tuple[OutdoorBin, ...]:
    """The bins as stated for the site; nothing where it states none. Raises Missing where `tbd`."""
    site = site_of(case)
    if path_of(site, "temperature_bins") in case.design.tbd:
        raise Missing(path_of(site, "temperature_bins"))
    rows = gather([partial(case.all, row, "temperature", "time") for row in site.temperature_bins])
    return tuple(OutdoorBin(float(temperature), float(time)) for temperature, time in rows)


@quantity("", "the one whose design temperature is nearest; VI in marine zones", "AHRI 210/240-2017, climate regions")
def climate_region(case: Case, node: object) -> str:
    """Climate region of the site, whose bins stand for its winter. NotApplicable where none is near."""
    name, apart = nearest_region(winter_outdoor(case, node), is_marine(case, node))
    if apart > NEAR_REGION:
        raise NotApplicable("the site states no temperature bins")
    return name


@quantity("", "as stated for the site; else the shares of its climate region", "AHRI 210/240-2017, fractional bin hours")
def bins(case: Case, node: object) -> tuple[OutdoorBin, ...]:
    """The bins of the heating season. NotApplicable where the site has none and no region is near."""
    return stated_bins(case) or tuple(OutdoorBin(*row) for row in season_bins(climate_region(case, node)))


@quantity("", "bin method, cycling by AHRI 210/240", "ASHRAE Handbook - Fundamentals, chapter Energy Estimating")
def season(case: Case, group: Group) -> SeasonalEnergy:
    """Heat and electricity of a winter for a group of one heat pump with electric backup."""
    pumps = compressors(case, group)
    if len(pumps) != 1 or len(group.units) > 1:
        raise CannotJudge(f"{group.name} is more than one heat source")
    points = table_of(case, pumps[0])
    without = [
        path_of(each, "power")
        for each in heating_of(pumps[0]).points
        if case.maybe(each, "power") is None
    ]
    if without:
        raise Missing(*without)
    return seasonal_energy(points, group_line(case, group), bins(case, group), lowest_operating(case, group.units[0]))


def with_tables(case: Case) -> list[Group]:
    """Heating groups whose heat pump has a performance table."""
    found = []
    for group in all_heating(case):
        try:
            tables = [pump for pump in compressors(case, group) if heating_of(pump).points]
        except CannotJudge:
            continue
        if tables and len(group.units) == 1:
            found.append(group)
    return found
