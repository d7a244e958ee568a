"""The records of a recovery comparison: each way of ventilating with its year, what recovery is worth, how far it may be off."""

from math import inf

from checker.design.fields import Airflow, Energy, Money, Share
from checker.physics.recovery import Worth
from checker.quantities.seasonal_efficiency import Bought
from checker.record import Record
from checker.rule import Num
from checker.units import show

PRICES = (0.5, 1.0, 2.0)
WEATHER = (0.8, 1.0, 1.2)
CHANGES = (("half_price", 0.5, 1.0), ("double_price", 2.0, 1.0), ("mild", 1.0, 0.8), ("cold", 1.0, 1.2))
LONGEST = 100.0
"""Years; what takes longer to come back is told as never."""


class Option(Record):
    """One way of ventilating: its recovery, the energy that its air and fans take in a year, and their cost."""

    name: str
    sensible: Share
    moisture: Share
    heating: Energy
    cooling: Energy
    dehumidifying: Energy
    fans: Energy
    air_cost: Money
    fan_cost: Money
    upkeep: Money

    @property
    def cost(self) -> float:
        """Cost of a year in all."""
        return self.air_cost + self.fan_cost + self.upkeep

    def line(self, system: str) -> str:
        """The option on one line."""
        told = ", ".join(
            f"{word} {show(joules, 'energy', system)}"
            for word, joules in (
                ("heating", self.heating), ("cooling", self.cooling), ("drying", self.dehumidifying), ("fans", self.fans),
            )
            if joules or word in ("heating", "fans")
        )  # fmt: skip
        costs = f"air {self.air_cost:.0f} + fans {self.fan_cost:.0f} + upkeep {self.upkeep:.0f} = {self.cost:.0f} USD"
        return f"{self.name}: {told}; {costs}"


class Comparison(Record):
    """Ventilation without recovery, with recovery of heat, and with recovery of heat and moisture where it may be had."""

    flow: Airflow
    heat: Bought
    cool: Bought | None
    without: Option
    options: tuple[Option, ...]
    warm_part: bool

    def worth_of(self, option: Option) -> Worth:
        """What an option saves against none."""
        bare = self.without
        return Worth(bare.air_cost - option.air_cost, option.fan_cost - bare.fan_cost, option.upkeep - bare.upkeep)

    @property
    def best(self) -> Option:
        """The option that saves the most; of several, the first where the year asks for no drying."""
        if not self.warm_part or self.without.dehumidifying <= 0.0:
            return self.options[0]
        return max(self.options, key=lambda option: round(self.worth_of(option).saving(), 6))

    @property
    def worth(self) -> Worth:
        """What the best option saves."""
        return self.worth_of(self.best)

    def worksheet_lines(self, system: str) -> list[str]:
        """The options side by side, and what they are reckoned with."""
        lines = [f"heat by {self.heat.source}: {self.heat.efficiency:.3g} for each unit of energy, {self.heat.basis}"]
        if self.cool is not None:
            lines.append(f"cooling: {self.cool.efficiency:.3g} for each unit of energy, {self.cool.basis}")
        if not self.warm_part:
            lines.append("cooling and drying are left out: the warm part of the year is not stated")
        return lines + [option.line(system) for option in (self.without, *self.options)]


class Sensitivity(Record):
    """What recovery is worth at other prices and in other weather; `cost` is its extra first cost where it is stated."""

    worth: Worth
    cost: float | None
    years: float

    def told(self, prices: float = 1.0, weather: float = 1.0) -> str:
        """Years to come back where the cost is stated, else the greatest cost that comes back in time."""
        if self.cost is None:
            return str(rounded(self.worth.first_cost(self.years, prices, weather)))
        return in_years(self.worth.payback(self.cost, prices, weather))

    def worksheet_lines(self, _system: str) -> list[str]:
        """Saving and result for each of three prices and three weathers."""
        return [self.line(prices, weather) for prices in PRICES for weather in WEATHER]

    def line(self, prices: float, weather: float) -> str:
        """One price and weather on one line."""
        told = self.told(prices, weather)
        if self.cost is None:
            outcome = f"up to {told} USD come back in time"
        else:
            outcome = "never comes back" if told == "never" else f"comes back in {told} years"
        saving = self.worth.saving(prices, weather)
        return f"prices x{prices:g}, degree days x{weather:g}: saves {saving:.0f} USD a year, {outcome}"


def rounded(money: float) -> int:
    """Money to the nearest ten."""
    return 10 * round(money / 10)


def in_years(years: float) -> str:
    """A time in whole years; `never` beyond a century."""
    return "never" if years == inf or years > LONGEST else f"{max(1, round(years))}"


def told(found: Comparison, reach: Sensitivity) -> dict[str, Num]:
    """What a comment says of a comparison, and how the answer moves."""
    best, worth, years = found.best, found.worth, reach.years
    cooled = found.warm_part and found.without.cooling + found.without.dehumidifying > 0.0
    numbers = {
        "air": Num("heating and cooling" if cooled else "heating"),
        "recovery": Num(best.name),
        "yearly_cost": Num(round(found.without.air_cost)),
        "saving": Num(round(worth.saving())),
        "first_cost": Num(rounded(worth.first_cost(years))),
        "years": Num(round(years)),
        "heating_efficiency": Num(round(found.heat.efficiency, 2)),
        "efficiency_from": Num(found.heat.basis),
    }
    if reach.cost is not None:
        numbers |= {"cost": Num(round(reach.cost)), "payback": Num(reach.told())}
    word = "first_cost" if reach.cost is None else "payback"
    for name, prices, weather in CHANGES:
        numbers[f"{word}_{name}"] = Num(reach.told(prices, weather))
    return numbers
