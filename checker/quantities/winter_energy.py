"""What a winter's heat takes of a heat pump with its backup: electricity, mean performance, share of the backup, cost."""

from collections.abc import Callable
from functools import partial

from checker.case import CannotJudge, Case, NotApplicable, gather, quantity
from checker.design.fields import Energy, Ratio, Share
from checker.physics.heating_season import season_bins
from checker.quantities.energy import climate_region, season, stated_bins
from checker.quantities.equipment import Group
from checker.quantities.heat_pump import heating_told, helped_by_fuel
from checker.quantities.seasonal_efficiency import prices_of
from checker.quantities.ventilation_standard import site_of
from checker.record import Record


class WinterEnergy(Record):
    """Heat of a winter and the electricity for it, of which the backup takes a part; heat for each unit of electricity."""

    heat: Energy
    electricity: Energy
    backup: Energy
    performance: Ratio
    backup_share: Share


def season_length(case: Case, group: Group) -> float:
    """Seconds that a share of the season stands for: 1 where bins are stated, else by the site's degree days."""
    if stated_bins(case):
        return 1.0
    region, days = climate_region(case, group), float(case.get(site_of(case), "heating_degree_days"))
    if days <= 0.0:
        raise NotApplicable("the site has no heating degree days")
    return season_bins(region, days)[0][1] / season_bins(region)[0][1]


@quantity("", "bins of the season, as long as stated or as make up the degree days", "bin method; AHRI 210/240-2017")
def winter_energy(case: Case, group: Group) -> WinterEnergy:
    """A winter of a group of one heat pump with its table. CannotJudge where fuel helps it."""
    if helped_by_fuel(case, group.units[0]):
        raise CannotJudge(f"fuel helps {group.name}: how the heat is shared between them is not worked out here")
    both: list[Callable[[], object]] = [partial(season, case, group), partial(season_length, case, group)]
    gather(both)
    energy, length = season(case, group), season_length(case, group)
    heat, backup = energy.heat * length, energy.backup * length
    electricity = energy.compressor * length + backup
    return WinterEnergy(heat, electricity, backup, energy.performance, backup / heat)


@quantity("energy", "as the energy papers state it")
def electricity_on_paper(case: Case, group: Group) -> float | None:
    """Electricity of a winter by the papers; None where they state none."""
    stated = case.maybe(heating_told(case, group.units[0]), "winter_electricity")
    return None if stated is None else float(stated)


@quantity("", "electricity x price")
def winter_cost(case: Case, group: Group) -> float:
    """Cost of a winter's heat in the money of the prices."""
    return winter_energy(case, group).electricity * float(case.get(prices_of(case), "electricity"))
