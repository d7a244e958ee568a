"""What a year of ventilation without recovery costs, and the fan power that recovery would add."""

from functools import partial

from checker.case import Case, Missing, gather, quantity
from checker.design.site import Prices
from checker.each import blank
from checker.physics.ventilation_energy import (
    MEAN_HOURS_OF_YEAR,
    degree_day_heating,
    fan_energy,
    yearly_cost,
)
from checker.quantities.ventilation import mean_flows
from checker.quantities.ventilation_standard import site_of
from checker.quantities.whole_house import needed, run_share

DAY = 86400.0
SOURCES = {
    "fuel": ("furnace", "boiler", "stove", "fireplace"),
    "heat pump": ("heat pump", "wall unit", "floor unit", "ceiling unit", "slim duct unit"),
    "electric": ("electric heat",),
}


def prices_of(case: Case) -> Prices:
    """Energy prices; an empty record where the file has none."""
    prices: Prices = site_of(case).prices or blank(Prices, "site.prices")
    return prices


@quantity("airflow", "the larger of supply and exhaust, averaged over time")
def ventilation_flow(case: Case, design: object) -> float:
    """Outdoor air that the fans cause, averaged over time."""
    needed(case, design)
    return max(mean_flows(case, design))


def sources(case: Case) -> list[str]:
    """The kinds of heating that the design shows: fuel, heat pump, electric. Raises Missing("equipment")."""
    kinds = {unit.kind for unit in case.design.equipment.values()}
    found = [name for name, words in SOURCES.items() if kinds & set(words)]
    if not found and not case.design.equipment and prices_of(case).fuel is not None:
        return ["fuel"]
    if not found:
        raise Missing("equipment")
    return found


def price_of(case: Case, source: str) -> float:
    """Price of the energy that a kind of heating buys, per J."""
    return float(case.get(prices_of(case), "fuel" if source == "fuel" else "electricity"))


@quantity("", "flow x density x specific heat x degree days / efficiency x price", "ASHRAE Handbook - Fundamentals")
def heat_cost(case: Case, design: object) -> float:
    """Yearly cost of heating the ventilation air by the cheapest heating, in the money of the prices."""
    flow, degree_days = gather(
        [lambda: ventilation_flow(case, design), lambda: float(case.get(site_of(case), "heating_degree_days"))]
    )
    heat = degree_day_heating(flow, degree_days / DAY)
    performance = case.limit("heating-efficiency")
    prices = gather([partial(price_of, case, source) for source in sources(case)])
    return min(
        yearly_cost(heat, float(performance[source]), price, 0.0, 0.0)
        for source, price in zip(sources(case), prices, strict=True)
    )


@quantity("", "flow / 1.2 cfm/W, less the power of today's fans where it is stated, x hours x price")
def extra_fan_cost(case: Case, design: object) -> float:
    """Yearly cost of the fan power that a recovery unit adds, in the money of the prices."""
    power = ventilation_flow(case, design) / float(case.limit("recovery-fan-efficacy"))
    for part in needed(case, design):
        if part.setting is not None:
            power -= run_share(case, part) * float(case.maybe(part.setting, "power") or 0.0)
    price = float(case.get(prices_of(case), "electricity"))
    return fan_energy(max(0.0, power), MEAN_HOURS_OF_YEAR) * price
