"""What ventilation costs in a year: heating and cooling of the air, recovery, fan power, payback.

Units: m3/s, K, K d (degree days), h, W, J; prices in any currency per J.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import inf

from checker.physics.arguments import (
    require_finite,
    require_fraction,
    require_not_negative,
    require_positive,
)
from checker.record import Record

HOURS_OF_YEAR = 8760.0
MEAN_HOURS_OF_YEAR = 8766.0
HIGHEST_UNSCALED_GAP = 0.01
SECONDS_OF_HOUR = 3600.0

DEFROST_THRESHOLD_HRV = 268.15
DEFROST_THRESHOLD_ERV = 263.15
"""K, outdoor temperature below which a recovery core spends part of its time thawing (common practice)."""

DEFROST_AVAILABILITY = 0.9
"""Share of its recovery that a core keeps while it must thaw (common practice)."""


class Bin(Record):
    """`hours` of the year at an outdoor `temperature` in K and `humidity_ratio` in kg/kg."""

    hours: float
    temperature: float
    humidity_ratio: float = 0.0


def bins_of_whole_year(bins: Sequence[Bin]) -> tuple[tuple[Bin, ...], bool]:
    """The bins scaled to 8,760 h, and whether that was needed (their sum was off by more than 1 %).

    ValueError for no hours or negative ones. Source: common practice.
    """
    total = sum(hours for hours, _, _ in _checked(bins))
    require_positive(hours_of_all_bins=total)
    if abs(total / HOURS_OF_YEAR - 1.0) <= HIGHEST_UNSCALED_GAP:
        return tuple(bins), False
    return tuple(row._replace(hours=row.hours * HOURS_OF_YEAR / total) for row in bins), True


def recovery_with_imbalance(recovery: float, supply: float, exhaust: float) -> float:
    """Recovery of a unit whose two flows in m3/s differ: its recovery times the smaller over the larger.

    The difference enters as infiltration and is charged there. ValueError for impossible input.
    Source: common practice.
    """
    require_fraction(recovery=recovery)
    require_positive(supply=supply, exhaust=exhaust)
    return recovery * min(supply, exhaust) / max(supply, exhaust)


def fan_energy(power: float, hours: float = MEAN_HOURS_OF_YEAR) -> float:
    """Electricity in J of a fan of `power` W over `hours`, a year unless given. ValueError for negatives."""
    require_not_negative(power=power, hours=hours)
    return power * hours * SECONDS_OF_HOUR


def fan_efficacy(airflow: float, power: float) -> float:
    """Airflow for each watt, m3/s per W (the trade's cfm/W). ValueError for impossible input."""
    require_not_negative(airflow=airflow)
    require_positive(power=power)
    return airflow / power


def yearly_cost(
    heat: float, heat_efficiency: float, heat_price: float, electricity: float, electricity_price: float
) -> float:
    """Cost of a year's heat in J by an appliance of this efficiency, and of its electricity in J.

    Prices per J. ValueError for impossible input. Source: arithmetic.
    """
    require_not_negative(
        heat=heat, heat_price=heat_price, electricity=electricity, electricity_price=electricity_price
    )
    require_positive(heat_efficiency=heat_efficiency)
    return heat / heat_efficiency * heat_price + electricity * electricity_price


def simple_payback(extra_cost: float, yearly_saving: float) -> float:
    """Years until the saving has paid the extra cost; inf when there is no saving. ValueError for a bad cost.

    Source: common practice.
    """
    require_not_negative(extra_cost=extra_cost)
    require_finite(yearly_saving=yearly_saving)
    return extra_cost / yearly_saving if yearly_saving > 0.0 else inf


def _checked(bins: Sequence[Bin]) -> Sequence[Bin]:
    for row in bins:
        require_not_negative(hours=row.hours, humidity_ratio=row.humidity_ratio)
        require_positive(bin_temperature=row.temperature)
    return bins
