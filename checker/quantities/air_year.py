"""The year as ventilation air feels it: from temperature bins of the whole year, else from degree days."""

from typing import Any

from checker.case import Case, NotApplicable, path_of, quantity
from checker.design.site import CoolingSeason, Site
from checker.each import blank
from checker.physics.heating_season import BASE, season_bins
from checker.physics.psychrometrics import humidity_ratio_from_dew_point
from checker.physics.recovery import AirYear, warm_part_of_degree_days, year_of_bins
from checker.physics.ventilation_energy import (
    DEFROST_THRESHOLD_ERV,
    DEFROST_THRESHOLD_HRV,
    SECONDS_OF_HOUR,
    Bin,
    bins_of_whole_year,
)
from checker.quantities.climate import zone_number
from checker.quantities.energy import climate_region, stated_bins
from checker.quantities.moist_air import indoor_summer, pressure, worked_out
from checker.quantities.seasonal_efficiency import coolers
from checker.quantities.ventilating_handlers import winter_indoor
from checker.quantities.ventilation_standard import site_of


def ratio_at(case: Case, dew_point: float) -> float:
    """Humidity ratio of air of this dew point at the site's elevation."""
    return worked_out(lambda: humidity_ratio_from_dew_point(dew_point, pressure(case, case.design)))


def season_of(case: Case) -> CoolingSeason:
    """What the site says of its warm part; an empty record where it says nothing."""
    season: CoolingSeason = site_of(case).cooling_season or blank(CoolingSeason, "site.cooling_season")
    return season


def warm_degree_days(case: Case, missing: list[str]) -> tuple[float, float] | None:
    """(cooling, moisture) of the warm part by degree days; None, and what lacks, where not all is stated."""
    site, season = site_of(case), season_of(case)
    asked = ((site, "cooling_degree_days"), (season, "time"), (season, "dew_point"))
    values: list[Any] = [case.maybe(node, field) for node, field in asked]
    missing += [path_of(node, field) for (node, field), value in zip(asked, values, strict=True) if value is None]
    if missing:
        return None
    room = indoor_summer(case, case.design)
    excess = ratio_at(case, float(values[2])) - room.humidity_ratio
    return warm_part_of_degree_days(float(values[0]), BASE, float(values[1]), room.temperature, excess)


def rows_of(case: Case, site: Site, room: float, missing: list[str]) -> list[Bin]:
    """The bins of the site with their humidity; dew points that warm bins lack are named."""
    found = []
    for row, (temperature, time) in zip(site.temperature_bins, stated_bins(case), strict=True):
        dew = case.maybe(row, "dew_point")
        if dew is None and temperature > room:
            missing.append(path_of(row, "dew_point"))
        found.append(Bin(time / SECONDS_OF_HOUR, temperature, 0.0 if dew is None else ratio_at(case, float(dew))))
    return found


def by_bins(case: Case, thaws_below: float) -> AirYear:
    """The year by the bins of the site; its warm part only where they cover the whole year."""
    room = indoor_summer(case, case.design)
    missing: list[str] = []
    rows = rows_of(case, site_of(case), room.temperature, missing)
    scaled, changed = bins_of_whole_year(rows)
    summer = room.temperature if coolers(case) and not changed else None
    year = year_of_bins(
        rows if changed else scaled,
        winter_indoor(case, case.design),
        float(case.limit("ventilation-heated-below")),
        summer,
        None if missing else room.humidity_ratio,
        thaws_below,
    )
    return year if coolers(case) else year._replace(cooling=0.0, moisture=0.0)


def thawing_share(case: Case, thaws_below: float) -> float:
    """Share of the degree days below a temperature, by the bins of the climate region; 0 where none is known."""
    if case.maybe(site_of(case), "winter_design") is None:
        return 0.0
    try:
        bins = season_bins(climate_region(case, case.design))
    except NotApplicable:
        return 0.0
    cold = sum((BASE - temperature) * share for temperature, share in bins if temperature < thaws_below)
    return cold / sum((BASE - temperature) * share for temperature, share in bins)


def year(case: Case, thaws_below: float) -> AirYear:
    """The year, with the part in which a core below this temperature must thaw. Raises Missing."""
    site = site_of(case)
    if stated_bins(case):
        return by_bins(case, thaws_below)
    days = float(case.get(site, "heating_degree_days"))
    warm = warm_degree_days(case, []) if coolers(case) else (0.0, 0.0)
    cooling, moisture = warm if warm is not None else (None, None)
    return AirYear(days, days * thawing_share(case, thaws_below), cooling, moisture)


@quantity("", "bins where the site states them, else degree days to 65 F", "ASHRAE Handbook - Fundamentals, Energy Estimating")
def air_year(case: Case, _design: object) -> AirYear:
    """The year for a core that recovers heat."""
    return year(case, DEFROST_THRESHOLD_HRV)


@quantity("", "bins where the site states them, else degree days to 65 F", "ASHRAE Handbook - Fundamentals, Energy Estimating")
def air_year_of_moisture_core(case: Case, _design: object) -> AirYear:
    """The year for a core that recovers heat and moisture, which thaws later."""
    return year(case, DEFROST_THRESHOLD_ERV)


def lacking_warm_part(case: Case, design: object) -> tuple[str, ...]:
    """What would tell the warm part of the year; nothing where it is known."""
    known = air_year(case, design)
    if known.cooling is not None and known.moisture is not None:
        return ()
    missing: list[str] = []
    if stated_bins(case) and known.cooling is not None:
        rows_of(case, site_of(case), indoor_summer(case, design).temperature, missing)
    else:
        warm_degree_days(case, missing)
    return tuple(missing)


@quantity()
def is_hot(case: Case, design: object) -> bool:
    """Whether cooling weighs as much as heating: by the climate zone, else by degree days; unknown counts as not."""
    site = site_of(case)
    if case.maybe(site, "climate_zone") is not None:
        return zone_number(case, design) <= float(case.limit("cooling-zones"))
    warm, cold = case.maybe(site, "cooling_degree_days"), case.maybe(site, "heating_degree_days")
    return warm is not None and (cold is None or float(warm) > float(cold))
