"""What a year of ventilation takes without recovery and with it, in energy and in money, and whether that pays."""

from collections.abc import Callable
from functools import partial

from checker.case import Case, Missing, gather, quantity
from checker.design.fans import Fan, Recovery
from checker.design.fields import Airflow, Power, Share
from checker.each import blank
from checker.physics.recovery import air_cost, air_energy
from checker.physics.ventilation_energy import MEAN_HOURS_OF_YEAR, fan_energy, recovery_with_imbalance
from checker.quantities.air_year import air_year, air_year_of_moisture_core
from checker.quantities.moist_air import air_density
from checker.quantities.recovery_options import Comparison, Option, Sensitivity
from checker.quantities.seasonal_efficiency import (
    Bought,
    best_cooling,
    best_heating,
    coolers,
    least_cooling,
    least_heating,
    prices_of,
)
from checker.quantities.ventilation import mean_flows
from checker.quantities.whole_house import Running, exhaust_of, needed, run_share, supply_of
from checker.record import Record

YEAR = 8760.0 * 3600.0


class Core(Record):
    """What a recovery core gives back, and the mean power of its fans in W."""

    name: str
    sensible: Share
    moisture: Share
    power: Power


@quantity("airflow", "the larger of supply and exhaust, averaged over time")
def ventilation_flow(case: Case, design: object) -> float:
    """Outdoor air that the fans cause, averaged over time."""
    needed(case, design)
    return max(mean_flows(case, design))


def known_all(case: Case, design: object, *routes: Callable[[], object]) -> None:
    """Missing with all that the comparison lacks at once: these, the year and the price of the fans' electricity."""
    everything: list[Callable[[], object]] = [
        *routes, partial(air_year, case, design), partial(case.get, prices_of(case), "electricity"),
    ]  # fmt: skip
    gather(everything)


def upkeep(case: Case) -> float:
    """Extra upkeep of a recovery unit in a year, as stated, else none."""
    stated = case.maybe(prices_of(case), "recovery_upkeep")
    return 0.0 if stated is None else float(stated) * YEAR


def option(case: Case, flow: float, core: Core, heat: Bought, cool: Bought | None, kept_up: float) -> Option:
    """A way of ventilating with its energy and cost of a year."""
    year = (air_year_of_moisture_core if core.moisture > 0.0 else air_year)(case, case.design)
    energy = air_energy(flow, year, core.sensible, core.moisture, density=air_density(case, case.design))
    electricity = float(case.get(prices_of(case), "electricity"))
    fans = fan_energy(core.power, MEAN_HOURS_OF_YEAR)
    cooling, price = (1.0, 0.0) if cool is None else (cool.efficiency, cool.price)
    return Option(
        core.name, core.sensible, core.moisture, energy.heating, energy.cooling, energy.moisture, fans,
        air_cost(energy, heat.efficiency, heat.price, cooling, price), fans * electricity, kept_up,
    )  # fmt: skip


def compared(case: Case, flow: float, cores: list[Core], heat: Bought, cool: Bought | None) -> Comparison:
    """The first core, which recovers nothing, against the others."""
    kept_up = upkeep(case)
    bare, *others = [
        option(case, flow, core, heat, cool, kept_up if core.sensible > 0.0 else 0.0) for core in cores
    ]
    year = air_year(case, case.design)
    known = year.cooling is not None and year.moisture is not None
    return Comparison(flow, heat, cool, bare, tuple(others), known)


def stated_power(case: Case, parts: list[Running]) -> float:
    """Mean power of what ventilates today, as far as it is stated."""
    return sum(
        run_share(case, part) * float(case.maybe(part.setting, "power") or 0.0)
        for part in parts
        if part.setting is not None
    )


@quantity(
    "",
    "flow x density x (specific heat x degree days, heat of vaporization x excess moisture) x (1 - recovery) "
    "/ efficiency x price",
    "ASHRAE Handbook - Fundamentals, chapter Energy Estimating",
)  # fmt: skip
def offers(case: Case, design: object) -> Comparison:
    """Today's ventilation against the usual recovery unit, of the cautious end: efficient heating, thirsty fans."""
    known_all(case, design, partial(ventilation_flow, case, design), partial(best_heating, case, design))
    flow, heat = ventilation_flow(case, design), best_heating(case, design)
    today = stated_power(case, needed(case, design))
    then = max(today, flow / float(case.limit("recovery-fan-efficacy")))
    sensible, moisture = float(case.limit("recovery-assumed")), float(case.limit("moisture-recovery-assumed"))
    cores = [
        Core("without recovery", 0.0, 0.0, today),
        Core("recovery of heat", sensible, 0.0, then),
        Core("recovery of heat and moisture", sensible, moisture, then),
    ]
    return compared(case, flow, cores, heat, best_cooling(case, design) if coolers(case) else None)


def recovery_parts(case: Case, design: object) -> list[Running]:
    """What ventilates the house by recovery units."""
    return [part for part in needed(case, design) if isinstance(part.device, Fan) and part.device.role == "recovery"]


class UnitShare(Record):
    """One recovery unit's recovery with its two flows out of balance, its larger flow and power averaged over time."""

    sensible: Share
    moisture: Share
    flow: Airflow
    power: Power


def share_of(case: Case, part: Running) -> UnitShare:
    """What one recovery unit recovers. Raises Missing."""
    assert isinstance(part.device, Fan) and part.setting is not None
    fan, setting = part.device, part.setting
    record: Recovery = fan.recovery or blank(Recovery, f"{fan.path}.recovery")
    sensible, power, supply, exhaust, run = gather(
        [
            lambda: float(case.get(record, "sensible")),
            lambda: float(case.get(setting, "power")),
            lambda: supply_of(case, part),
            lambda: exhaust_of(case, part),
            lambda: run_share(case, part),
        ]
    )
    moisture = float(case.maybe(record, "moisture") or 0.0)
    if min(supply, exhaust) <= 0.0:
        return UnitShare(0.0, 0.0, max(supply, exhaust) * run, power * run)
    kept = recovery_with_imbalance(1.0, supply, exhaust)
    return UnitShare(sensible * kept, moisture * kept, max(supply, exhaust) * run, power * run)


@quantity(
    "", "as for an offer; recovery x smaller / larger of the unit's two flows, a plain fan of 2.8 cfm/W without it",
    "ASHRAE Handbook - Fundamentals, chapter Energy Estimating",
)  # fmt: skip
def as_designed(case: Case, design: object) -> Comparison:
    """Ventilation with the recovery units of the design against plain supply fans, of the end that favours recovery."""
    parts = recovery_parts(case, design)
    units = [partial(share_of, case, part) for part in parts]
    known_all(case, design, *units, partial(least_heating, case, design))
    shares, heat = [unit() for unit in units], least_heating(case, design)
    flow = sum(each.flow for each in shares)
    if flow <= 0.0:
        raise Missing(f"{parts[0].path}.airflow")
    sensible = sum(each.sensible * each.flow for each in shares) / flow
    moisture = sum(each.moisture * each.flow for each in shares) / flow
    power = sum(each.power for each in shares)
    cores = [
        Core("without recovery", 0.0, 0.0, flow / float(case.limit("plain-fan-efficacy"))),
        Core("the recovery of the design", sensible, moisture, power),
    ]
    return compared(case, flow, cores, heat, least_cooling(case, design) if coolers(case) else None)


def sensitivity(case: Case, comparison: Comparison) -> Sensitivity:
    """How far the answer moves with prices and weather."""
    cost = case.maybe(prices_of(case), "recovery_cost")
    return Sensitivity(comparison.worth, None if cost is None else float(cost), float(case.limit("payback-time")))


@quantity("", "saving = prices x (weather x air - fans) - upkeep")
def offer_range(case: Case, design: object) -> Sensitivity:
    """An offer at other prices and in other weather."""
    return sensitivity(case, offers(case, design))


@quantity("", "saving = prices x (weather x air - fans) - upkeep")
def design_range(case: Case, design: object) -> Sensitivity:
    """The recovery of the design at other prices and in other weather."""
    return sensitivity(case, as_designed(case, design))
