"""The temperature bins of the site do not make a year: too many hours, one twice, or other degree days.

A year has 8,760 hours. Bins of the heating season alone hold fewer; bins that go on into warm weather are taken for
the whole year and must hold them all. Degree days that the file states must follow from the bins: half of a year's
bins, or bins of another town, shift every figure of seasonal energy.

Copy all bins of one weather record, each temperature once, and the degree days of the same record.
"""

from itertools import pairwise

from checker.case import Case, quantity
from checker.design.fields import DegreeDays, Ratio, Temperature
from checker.design.site import Site
from checker.physics.heating_season import BASE
from checker.physics.ventilation_energy import HOURS_OF_YEAR, SECONDS_OF_HOUR
from checker.quantities.energy import stated_bins
from checker.quantities.ventilation_standard import site_of
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule
from checker.units import parse

HALF_BIN = 2.5 / 1.8
"""K; a middle this far below 65 F still has its hours on both sides of it."""


class Bins(Record):
    """Hours in all, degree days to 65 F, whether bins reach into warm weather, and a temperature stated twice."""

    hours: Ratio
    degree_days: DegreeDays
    warm: bool
    twice: Temperature | None


def with_bins(case: Case) -> list[Site]:
    """The site, where it states bins."""
    site = case.design.site
    return [site] if site is not None and site.temperature_bins else []


@quantity("", "hours summed; (65 F - temperature) x time summed over the bins below 65 F")
def bins_of(case: Case, _site: Site) -> Bins:
    """What the bins add up to."""
    rows = stated_bins(case)
    temperatures = sorted(round(temperature, 6) for temperature, _ in rows)
    twice = next((one for one, other in pairwise(temperatures) if one == other), None)
    days = sum(max(0.0, BASE - temperature) * time for temperature, time in rows)
    hours = sum(time for _, time in rows) / SECONDS_OF_HOUR
    return Bins(hours, days, temperatures[-1] > BASE + HALF_BIN, twice)


@quantity("degree_days", "as stated")
def stated_degree_days(case: Case, _site: Site) -> float | None:
    """Heating degree days that the site states; None where it states none."""
    stated = case.maybe(site_of(case), "heating_degree_days")
    return None if stated is None else float(stated)


def check(site: Site, bins: Bins, stated: float | None, hour_slack: float, slack: dict[str, str]) -> Meets | Finding:
    """Hours, repetitions, and degree days, in this order."""
    numbers = {"hours": Num(f"{bins.hours:,.0f}"), "year": Num("8,760"), "days": Num(bins.degree_days, "degree_days")}
    over = bins.hours > HOURS_OF_YEAR * (1 + hour_slack) * (1 + 1e-9)
    under = bins.warm and bins.hours < HOURS_OF_YEAR * (1 - hour_slack) * (1 - 1e-9)
    if bins.twice is not None:
        numbers["temperature"] = Num(bins.twice, "temperature")
        return found("two temperature bins stand at {temperature}", "state each temperature once", numbers)
    if over or under:
        more = "" if over else " and reach into warm weather"
        return found(
            f"the temperature bins hold {{hours}} h{more}; a year has {{year}} h",
            "state bins of {year} h in all, or those of the heating season alone",
            numbers,
        )
    if stated is not None and is_off(bins.degree_days, stated, slack):
        numbers["stated"] = Num(stated, "degree_days")
        return found(
            "the temperature bins make {days} below 65 degF; the site states {stated}",
            "take bins and degree days from one weather record",
            numbers,
        )
    return Meets(numbers)


def is_off(days: float, stated: float, slack: dict[str, str]) -> bool:
    """Whether degree days by bins are too few, or more than cool nights explain."""
    share, more = parse(slack["share"], "share"), parse(slack["more"], "degree_days")
    return days < stated * (1 - share) * (1 - 1e-9) or days > (stated * (1 + share) + more) * (1 + 1e-9)


def found(message: str, help_: str, numbers: dict[str, Num]) -> Finding:
    """A finding at the bins."""
    return Finding(message, at="temperature_bins", help=help_, numbers=numbers)


RULE = Rule(
    code="ENER-16", name="temperature-bins-do-not-add-up", severity="caution", since="0.1",
    over=with_bins, needs=(bins_of, stated_degree_days), limits=("bin-hours-slack", "bin-degree-days-slack"), check=check,
    nothing="the site states no temperature bins",
)  # fmt: skip
