"""A heat pump against its load: capacity by outdoor temperature, balance points, backup, seasonal energy.

Units: K, W, J. "Load" is the heat that the house or room loses.
"""

from collections.abc import Sequence
from itertools import pairwise
from typing import Annotated

from checker.physics.arguments import require_fraction, require_not_negative, require_positive
from checker.physics.validity import OutOfRange
from checker.record import Record

HIGHEST_FOLLOWED = 291.4833333333333
"""65 F: above it the capacity is held."""
FURTHEST_BELOW = 5.0 / 1.8
"""K; how far below its coldest point a table is carried on."""
DEGRADATION = 0.25
"""Loss by cycling at a part-load ratio near zero, AHRI 210/240 default."""
_METHOD = "heat-pump capacity"


class PerformancePoint(Record):
    """Greatest capacity in W at an outdoor temperature in K, with its electric power and least capacity in W."""

    temperature: Annotated[float, "temperature"]
    capacity: Annotated[float, "heat_rate"]
    power: Annotated[float, "power"] = 0.0
    least: float | None = None


class LoadLine(Record):
    """A load that falls in a straight line from `load` W at `design` K to nothing at `zero` K."""

    load: Annotated[float, "heat_rate"]
    design: Annotated[float, "temperature"]
    zero: Annotated[float, "temperature"]

    @property
    def conductance(self) -> float:
        """Slope in W/K."""
        return self.load / (self.zero - self.design)

    def at(self, temperature: float) -> float:
        """Load in W at an outdoor temperature in K; never below zero."""
        return max(0.0, self.conductance * (self.zero - temperature))


class SeasonalEnergy(Record):
    """Heat wanted, electricity of the compressor, and heat of the backup, all in J (or per hour of the bins)."""

    heat: float
    compressor: float
    backup: float

    @property
    def performance(self) -> float:
        """Heat per electricity where the backup is electric resistance."""
        return self.heat / (self.compressor + self.backup)

    def worksheet_lines(self, _system: str) -> list[str]:
        """Both as parts of the heat, whatever the time of the bins counts."""
        if self.heat <= 0.0:
            return ["no heat is wanted"]
        compressor, backup = self.compressor / self.heat, self.backup / self.heat
        return [f"electricity of the compressor {compressor:.1%} of the heat, heat of the backup {backup:.1%} of it"]


def value_at(points: Sequence[tuple[float, float]], temperature: float) -> float:
    """A table of (K, value) read at a temperature in K: straight lines between the points.

    Carried on at most 5 F (2.8 K) below the coldest point and up to 65 F, held above that; one point answers only
    within 1 K of itself. OutOfRange beyond; ValueError without points or with two at one temperature.
    Source: common practice (linear interpolation of makers' tables).
    """
    table = sorted(points)
    if not table:
        raise ValueError("no performance point given")
    if any(one[0] == other[0] for one, other in pairwise(table)):
        raise ValueError("two performance points at one outdoor temperature")
    coldest, warmest = table[0][0], table[-1][0]
    at = min(temperature, max(HIGHEST_FOLLOWED, warmest))
    if len(table) == 1:
        if abs(at - coldest) > 1.0:
            raise OutOfRange(_METHOD, "one performance point says nothing about other temperatures")
        return table[0][1]
    if at < coldest - FURTHEST_BELOW - 1e-9:
        raise OutOfRange(_METHOD, "the outdoor temperature is more than 5 F below the coldest performance point")
    place = next((each for each in range(1, len(table)) if at <= table[each][0]), len(table) - 1)
    (low, first), (high, second) = table[place - 1], table[place]
    return first + (second - first) * (at - low) / (high - low)


def values_beside(points: Sequence[tuple[float, float]], temperature: float) -> list[float]:
    """The values of a table of (K, value) at a temperature in K or, between its points, at the two beside it.

    Several values may stand at one temperature. ValueError without points. Source: the table itself.
    """
    if not points:
        raise ValueError("no performance point given")
    places = sorted({each for each, _ in points})
    here = [each for each in places if abs(each - temperature) < 1e-6]
    below, above = [each for each in places if each < temperature], [each for each in places if each > temperature]
    beside = here or below[-1:] + above[:1]
    return [value for place, value in points if place in beside]


def capacity_at(
    points: Sequence[PerformancePoint], temperature: float, lowest_operating: float | None = None
) -> float:
    """Greatest capacity in W at an outdoor temperature in K; nothing below the lowest operating temperature.

    Errors and source as `value_at`.
    """
    require_positive(temperature=temperature)
    if lowest_operating is not None and temperature < lowest_operating:
        return 0.0
    return max(0.0, value_at([(each.temperature, each.capacity) for each in points], temperature))


def load_line(load: float, design: float, zero: float) -> LoadLine:
    """The load line through the design load in W at `design` K to nothing at `zero` K.

    `zero` is the indoor temperature where gains are left out (pessimistic), else 65 F or as worked out.
    ValueError for a load below zero or a design temperature that is not below `zero`.
    Source: ASHRAE Handbook - Fundamentals, chapter "Energy Estimating" (steady conductance).
    """
    require_not_negative(load=load)
    require_positive(design=design, rise=zero - design)
    return LoadLine(load, design, zero)


def balance_points(points: Sequence[PerformancePoint], line: LoadLine) -> tuple[float, ...]:
    """Outdoor temperatures in K at which capacity and load are equal, coldest first; empty where they never are.

    In a segment of slope s through (t_k, c_k): t = (UA t_0 - c_k + s t_k) / (s + UA), kept if it lies in it.
    The table is carried on 5 F below its coldest point and up to the temperature of no load (at most 65 F).
    ValueError with fewer than two points, or two at one temperature. Source: arithmetic on the load line.
    """
    table = sorted(points)
    if len(table) < 2:
        raise ValueError("a balance point needs two performance points")
    if any(one.temperature == other.temperature for one, other in pairwise(table)):
        raise ValueError("two performance points at one outdoor temperature")
    ends = [each.temperature for each in table]
    ends[0] -= FURTHEST_BELOW
    ends[-1] = max(ends[-1], min(line.zero, HIGHEST_FOLLOWED))
    found: list[float] = []
    for place, (one, other) in enumerate(pairwise(table)):
        slope = (other.capacity - one.capacity) / (other.temperature - one.temperature)
        steepness = slope + line.conductance
        if steepness == 0.0:
            continue
        meeting = (line.conductance * line.zero - one.capacity + slope * one.temperature) / steepness
        inside = ends[place] <= meeting <= ends[place + 1]
        if inside and meeting < line.zero and all(abs(meeting - each) > 1e-6 for each in found):
            found.append(meeting)
    return tuple(found)


def backup_at(load: float, capacity: float) -> float:
    """Heat in W that backup must add where the capacity in W is below the load in W. ValueError for negatives."""
    require_not_negative(load=load, capacity=capacity)
    return max(0.0, load - capacity)


def part_load_factor(ratio: float, degradation: float = DEGRADATION) -> float:
    """Efficiency at a run share of 0 to 1 over that of steady running: 1 - degradation (1 - ratio).

    ValueError outside 0 to 1. Source: AHRI 210/240.
    """
    require_fraction(ratio=ratio, degradation=degradation)
    return 1.0 - degradation * (1.0 - ratio)


def seasonal_energy(
    points: Sequence[PerformancePoint],
    line: LoadLine,
    bins: Sequence[tuple[float, float]],
    lowest_operating: float | None = None,
) -> SeasonalEnergy:
    """Heat and electricity over bins of (outdoor K, time in s), backup being electric resistance.

    At part load a unit that turns down takes power in proportion to its capacity, down to its least capacity; below
    that it cycles. Every point needs its power. ValueError for impossible input, errors of `value_at`.
    Source: bin method, ASHRAE Handbook - Fundamentals, chapter "Energy Estimating"; cycling by AHRI 210/240.
    """
    require_positive(**{f"power_at_{each.temperature:g}_K": each.power for each in points})
    powers = [(each.temperature, each.power) for each in points]
    leasts = [(each.temperature, each.capacity if each.least is None else each.least) for each in points]
    heat = compressor = backup = 0.0
    for temperature, time in bins:
        require_not_negative(time=time)
        load = line.at(temperature)
        if load <= 0.0:
            continue
        capacity = capacity_at(points, temperature, lowest_operating)
        heat += load * time
        backup += backup_at(load, capacity) * time
        if capacity > 0.0:
            given = min(load, capacity)
            least = min(capacity, max(value_at(leasts, temperature), 1e-9))
            factor = part_load_factor(min(1.0, given / least))
            compressor += value_at(powers, temperature) * given / capacity / factor * time
    if heat == 0.0:
        raise ValueError("no bin is cold enough for a heating load")
    return SeasonalEnergy(heat, compressor, backup)
