"""What a unit of heat or of cooling is bought for: the rating where one is stated, else the cautious end of what is usual."""

from functools import partial
from typing import Literal

from checker.case import CannotJudge, Case, Missing, NotApplicable, gather, quantity
from checker.design.equipment import Equipment
from checker.design.fields import ElectricityPrice, Ratio
from checker.design.site import Prices
from checker.each import blank
from checker.physics.validity import OutOfRange
from checker.quantities.energy import heat_pumps, rated_units, ratings_of, season, with_tables
from checker.quantities.latent_balance import COOLING_KINDS
from checker.quantities.ventilation_standard import site_of
from checker.record import Record

BTU_PER_WH = 3.412141633
"""Seasonal ratings are in Btu for each Wh."""
SOURCES = {
    "fuel": ("furnace", "boiler", "stove", "fireplace"),
    "heat pump": ("heat pump", "wall unit", "floor unit", "ceiling unit", "slim duct unit"),
    "electric": ("electric heat",),
}
End = Literal["most", "least"]


class Bought(Record):
    """Heat or cooling from one source: units of it for each unit of energy, price of the energy, where the figure is from."""

    source: str
    efficiency: Ratio
    price: ElectricityPrice
    basis: str

    @property
    def cost(self) -> float:
        """Price of a J of heat."""
        return self.price / self.efficiency


def prices_of(case: Case) -> Prices:
    """Energy prices; an empty record where the file has none."""
    prices: Prices = site_of(case).prices or blank(Prices, "site.prices")
    return prices


def sources(case: Case) -> list[str]:
    """The kinds of heating that the design shows: fuel, heat pump, electric. Raises Missing("equipment")."""
    kinds = {unit.kind for unit in case.design.equipment.values()}
    found = [name for name, words in SOURCES.items() if kinds & set(words)]
    if not found and not case.design.equipment and prices_of(case).fuel is not None:
        return ["fuel"]
    if not found:
        raise Missing("equipment")
    return found


def rated(case: Case, units: list[Equipment], field: str, per: float, end: End) -> tuple[float, str] | None:
    """(efficiency, whose rating it is) of the best or least rated unit; None where none states the rating."""
    stated = [(float(value) / per, unit.name) for unit in units if (value := case.maybe(ratings_of(unit), field)) is not None]
    if not stated:
        return None
    value, name = max(stated) if end == "most" else min(stated)
    if value <= 0.0:
        raise CannotJudge(f"{name} is rated at nothing, which is a misprint")
    return value, f"{field.upper()} of {name}"


def by_table(case: Case, end: End) -> tuple[float, str] | None:
    """(mean performance of a winter, whose it is) by the performance tables of heat pumps; None where none can tell."""
    found = []
    for group in with_tables(case):
        try:
            found.append((season(case, group).performance, group.name))
        except (Missing, CannotJudge, NotApplicable, OutOfRange):
            continue
    if not found:
        return None
    value, name = max(found) if end == "most" else min(found)
    return value, f"table of {name} over the winter"


def efficiency_of(case: Case, source: str, end: End) -> tuple[float, str]:
    """(seasonal efficiency, where it is from) of a kind of heating."""
    found = None
    if source == "fuel":
        burners = [unit for unit in rated_units(case, "afue") if unit.kind in SOURCES["fuel"]]
        found = rated(case, burners, "afue", 1.0, end)
    elif source == "heat pump":
        found = rated(case, heat_pumps(case), "hspf2", BTU_PER_WH, end)
        found = found or by_table(case, end)
    if found is not None:
        return found
    table = case.limit("heating-efficiency" if end == "most" else "heating-efficiency-least")
    return float(table[source]), f"the {end} that is usual"


def bought(case: Case, end: End) -> Bought:
    """The heating that costs least, its efficiency unrated taken at this end of what is usual. Raises Missing."""
    prices, named = prices_of(case), sources(case)
    fields = ["fuel" if source == "fuel" else "electricity" for source in named]
    per_joule = gather([partial(case.get, prices, field) for field in fields])
    found = []
    for source, price in zip(named, per_joule, strict=True):
        efficiency, basis = efficiency_of(case, source, end)
        found.append(Bought(source, efficiency, float(price), basis))
    return min(found, key=lambda each: each.cost)


@quantity("", "rated AFUE, or HSPF2 / 3.412, else table over the winter, of the cheapest heating; else the most that is usual")
def best_heating(case: Case, _design: object) -> Bought:
    """The cheapest heat, on the side that makes recovery worth less."""
    return bought(case, "most")


@quantity("", "rated AFUE, or HSPF2 / 3.412, else table over the winter, of the cheapest heating; else the least that is usual")
def least_heating(case: Case, _design: object) -> Bought:
    """The cheapest heat, on the side that makes recovery worth more."""
    return bought(case, "least")


def coolers(case: Case) -> list[Equipment]:
    """Equipment that cools by a compressor."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.kind in COOLING_KINDS or case.speaks_of(unit, "cooling") or case.speaks_of(ratings_of(unit), "seer2")
    ]


def cooling_bought(case: Case, end: End) -> Bought:
    """Cooling by electricity, its efficiency unrated taken at this end of what is usual. Raises Missing."""
    price = float(case.get(prices_of(case), "electricity"))
    found = rated(case, coolers(case), "seer2", BTU_PER_WH, end)
    if found is None:
        found = float(case.limit("cooling-efficiency")[end]), f"the {end} that is usual"
    return Bought("cooling", *(found[0], price, found[1]))


@quantity("", "rated SEER2 / 3.412; unrated, the most that is usual")
def best_cooling(case: Case, _design: object) -> Bought:
    """Cooling, on the side that makes recovery worth less."""
    return cooling_bought(case, "most")


@quantity("", "rated SEER2 / 3.412; unrated, the least that is usual")
def least_cooling(case: Case, _design: object) -> Bought:
    """Cooling, on the side that makes recovery worth more."""
    return cooling_bought(case, "least")
