"""The papers state no electricity for a heat pump's winter, or another figure than its own table gives.

What a heat pump buys in a winter follows from its performance table, the load of the rooms and the hours at each
outdoor temperature: capacity and power fall with the cold, below the balance point resistance heat makes up the rest,
in mild weather the unit cycles. A single rating says little about this house.

The figure here is reckoned with the bins of the site, else with those of its climate region of the rating standard,
as many hours as make up the degree days. The load falls in a straight line to nothing at 65 degF: a house with much
sun and little loss needs less, so that the figure is rather high. It appears where `site.prices` states a price of
electricity; write the figure of the papers as `heating.winter_electricity` of the unit.
"""

from checker.case import Case
from checker.quantities.energy import with_tables
from checker.quantities.equipment import Group
from checker.quantities.seasonal_efficiency import prices_of
from checker.quantities.winter_energy import WinterEnergy, electricity_on_paper, winter_cost, winter_energy
from checker.rule import Finding, Meets, Num, Rule

LEAST_TOLD = 0.005
TEN_KWH = 3.6e7


def priced(case: Case) -> list[Group]:
    """Heating groups of a heat pump with its table, where the price of electricity is stated."""
    return with_tables(case) if case.speaks_of(prices_of(case), "electricity") else []


def rounded(energy: float) -> float:
    """Energy to ten kWh: the method knows no better."""
    return TEN_KWH * round(energy / TEN_KWH)


def check(group: Group, found: WinterEnergy, paper: float | None, cost: float, most: float) -> Meets | Finding:
    """Hold the papers against the table."""
    numbers = {
        "unit": Num(group.name),
        "heat": Num(rounded(found.heat), "energy"),
        "electricity": Num(rounded(found.electricity), "energy"),
        "performance": Num(f"{found.performance:.2f}"),
        "backup": Num(found.backup_share, "share"),
        "cost": Num(round(cost)),
    }
    told = "{unit} takes about {electricity} for a winter's {heat} of heat, {performance} for each"
    if found.backup_share >= LEAST_TOLD:
        told += ", {backup} of it by backup"
    if paper is None:
        return Finding(
            told + ": {cost} USD",
            at="heating",
            help="state {electricity} on the energy papers, or the figure of a fuller calculation",
            numbers=numbers,
        )
    numbers["paper"] = Num(paper, "energy")
    if abs(paper - found.electricity) <= most * found.electricity * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "the papers state {paper} for the winter of {unit}; its table gives {electricity} for {heat} of heat, {cost} USD",
        at="heating.winter_electricity",
        help="show how the {paper} were reckoned, or state {electricity}",
        numbers=numbers,
    )


RULE = Rule(
    code="ENER-15", name="winter-electricity-not-on-the-papers", severity="note", since="0.1",
    over=priced, needs=(winter_energy, electricity_on_paper, winter_cost), limits=("winter-electricity-slack",),
    cites=("no-load-temperature",), check=check,
    nothing="no single heat pump has a performance table, or no price of electricity is stated",
)  # fmt: skip
