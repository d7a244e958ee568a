"""Rooms are heated by electric resistance, at a cost that a heat pump would cut by half or more.

Resistance heat gives one unit of heat for each of electricity, a heat pump more than two over a winter: here one
that just meets the federal minimum, so that the saving is rather too low. With the load of the rooms, the degree days
and the price the difference of a year can be worked out; gains from sun and people are in the degree days.

For a bath the difference is small and a heater is right; for living rooms and bedrooms hold the saving against the
cost of a small heat pump.
"""

from checker.case import Case, gather, quantity
from checker.physics.ventilation_energy import yearly_cost
from checker.quantities.equipment import Group, all_heating
from checker.quantities.seasonal_efficiency import prices_of
from checker.quantities.unit_loads import group_heating_load
from checker.quantities.ventilating_handlers import winter_indoor, winter_outdoor
from checker.quantities.ventilation_standard import site_of
from checker.rule import Finding, Meets, Num, Rule


def by_resistance(case: Case) -> list[Group]:
    """Rooms that electric heaters heat alone, where the price of electricity is stated."""
    if not case.speaks_of(prices_of(case), "electricity"):
        return []
    return [group for group in all_heating(case) if all(unit.kind == "electric heat" for unit in group.units)]


def is_known(case: Case, group: Group) -> bool:
    """Its rooms state no load."""
    return not group.lacking and all(case.speaks_of(case.design.rooms[name], "heating_load") for name in group.rooms)


@quantity("energy", "load / (indoor - winter design temperature) x degree days")
def yearly_heat(case: Case, group: Group) -> float:
    """Heat of a year for the rooms of a group."""
    load, indoor, outdoor, days = gather(
        [
            lambda: group_heating_load(case, group),
            lambda: winter_indoor(case, group),
            lambda: winter_outdoor(case, group),
            lambda: float(case.get(site_of(case), "heating_degree_days")),
        ]
    )
    return load / max(indoor - outdoor, 1.0) * days


@quantity()
def price(case: Case, _group: Group) -> float:
    """Price of electricity, per J."""
    return float(case.get(prices_of(case), "electricity"))


def check(group: Group, heat: float, per_joule: float, table: dict[str, float], least: float) -> Meets | Finding:
    """Cost by resistance against that by a heat pump."""
    now = yearly_cost(heat, float(table["electric"]), per_joule, 0.0, 0.0)
    then = yearly_cost(heat, float(table["heat pump"]), per_joule, 0.0, 0.0)
    numbers = {"unit": Num(group.name), "now": Num(round(now)), "saving": Num(round(now - then))}
    if now - then < least:
        return Meets(numbers)
    return Finding(
        "{unit} heats by resistance with about {yearly_heat} a year for {now} USD; a heat pump would save {saving} USD of it",
        help="hold the cost of a small heat pump for these rooms against {saving} USD a year",
        numbers=numbers,
    )


RULE = Rule(
    code="ENER-14", name="resistance-heat-costs-more", severity="note", since="0.1",
    over=by_resistance, when=is_known, needs=(yearly_heat, price), limits=("heating-efficiency-least", "resistance-cost"),
    check=check, nothing="no room is heated by electric resistance alone, or no price is stated",
)  # fmt: skip
