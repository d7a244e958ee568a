"""Whole-house ventilation rates: by equation, by code table, run in cycles, and less the infiltration credit.

Units: m2, m3/s, m, h; fractions between 0 and 1.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from itertools import pairwise

from checker.physics.arguments import require_fraction, require_not_negative, require_positive
from checker.physics.validity import OutOfRange
from checker.record import Record

SQUARE_FOOT = 0.3048**2
CUBIC_FOOT_PER_MINUTE = 0.3048**3 / 60.0
_CFM_PER_SQUARE_FOOT = CUBIC_FOOT_PER_MINUTE / SQUARE_FOOT

OLDER_EDITIONS = (2003, 2004, 2007, 2010)
"""Editions of ASHRAE 62.2 with 0.01 cfm per square foot."""

LATER_EDITIONS = (2013, 2016, 2019, 2022)
"""Editions of ASHRAE 62.2 with 0.03 cfm per square foot."""

REFERENCE_HEIGHT = 8.2 * 0.3048
"""Height in m at which the height factor of the annual infiltration is 1 (ASHRAE 62.2, 8.2 ft)."""

LONGEST_AVERAGED_CYCLE = 3.0
"""Cycle in h up to which a cycled fan counts by its average flow, ASHRAE 62.2 from 2013 (from memory)."""


class RateRow(Record):
    """One floor-area band of a rate table: the area in m2 it ends with (included), rates m3/s by column."""

    largest_area: float
    rates: Sequence[float]


def rate_older_editions(floor_area: float, bedrooms: int) -> float:
    """Continuous rate in m3/s by 0.01 cfm/ft2 and 7.5 cfm for each bedroom and one more.

    `floor_area` conditioned, m2; a dwelling without a bedroom counts as one. ValueError for impossible input.
    Source: ASHRAE 62.2 2003 to 2010, 4.1; the same form is IRC 2018 to 2024 M1505.4.3, equation 15-1, and
    IMC 403.3.2.1. Do not mix with the form of the later editions, which gives about twice as much.
    """
    return _rate(0.01 * _CFM_PER_SQUARE_FOOT, 7.5 * CUBIC_FOOT_PER_MINUTE, floor_area, bedrooms)


def rate_later_editions(floor_area: float, bedrooms: int) -> float:
    """Total rate in m3/s by 0.03 cfm/ft2 and 7.5 cfm for each bedroom and one more.

    `floor_area` m2. ValueError for impossible input. Source: ASHRAE 62.2 2013 to 2022, 4.1.1.
    """
    return _rate(0.03 * _CFM_PER_SQUARE_FOOT, 7.5 * CUBIC_FOOT_PER_MINUTE, floor_area, bedrooms)


def rate_by_edition(edition: int, floor_area: float, bedrooms: int) -> float:
    """Rate in m3/s by the form of the named ASHRAE 62.2 edition; OutOfRange for an edition not listed."""
    if edition in OLDER_EDITIONS:
        return rate_older_editions(floor_area, bedrooms)
    if edition in LATER_EDITIONS:
        return rate_later_editions(floor_area, bedrooms)
    raise OutOfRange("ventilation rate", f"no ASHRAE 62.2 edition {edition} is known here")


def occupancy_adder(occupants: int, bedrooms: int) -> float:
    """Extra rate in m3/s, 7.5 cfm for each occupant above bedrooms plus one; never negative.

    ValueError for negative counts. Source: ASHRAE 62.2, 4.1 (from memory).
    """
    require_not_negative(occupants=occupants, bedrooms=bedrooms)
    return 7.5 * CUBIC_FOOT_PER_MINUTE * max(0, occupants - max(bedrooms, 1) - 1)


def rate_from_table(
    floor_area: float, bedrooms: int, rows: Sequence[RateRow], most_bedrooms: Sequence[float]
) -> float:
    """Rate in m3/s from a code's table of floor-area bands against bedroom columns, without interpolation.

    `rows` by rising `largest_area`; `most_bedrooms` the largest bedroom count of each column (inf for the
    last). An area or a count on an edge belongs to the lower band. ValueError for impossible input or an
    unordered table; OutOfRange beyond the table.
    Source of the form: IRC Table M1507.3.3(1) (2015), Table M1505.4.3(1) (2018 to 2024).
    """
    require_positive(floor_area=floor_area)
    require_not_negative(bedrooms=bedrooms)
    areas = [row.largest_area for row in rows]
    _require_rising("floor-area bands", areas)
    _require_rising("bedroom columns", most_bedrooms)
    band = bisect_left(areas, floor_area)
    column = bisect_left(most_bedrooms, bedrooms)
    if band == len(areas):
        raise OutOfRange("ventilation table", f"floor area {floor_area:g} m2 is beyond the last band")
    if column == len(most_bedrooms):
        raise OutOfRange("ventilation table", f"{bedrooms} bedrooms are beyond the last column")
    return rows[band].rates[column]


def run_time_factor(run_fraction: float, points: Sequence[tuple[float, float]]) -> float:
    """Multiplier of the continuous rate for a fan that runs part of each segment, interpolated linearly.

    `points` are (run fraction, factor) by rising fraction. ValueError for a fraction outside 0 to 1 or an
    unordered table; OutOfRange outside the table, since the code forbids extrapolation.
    Source of the form: IRC Table M1507.3.3(2) (2015), Table M1505.4.3(2) (2018 to 2024), note on
    interpolation.
    """
    require_fraction(run_fraction=run_fraction)
    fractions = [fraction for fraction, _ in points]
    _require_rising("run fractions", fractions)
    if not fractions[0] <= run_fraction <= fractions[-1]:
        raise OutOfRange(
            "run-time factor",
            f"run fraction {run_fraction:g} is outside the table ({fractions[0]:g} to {fractions[-1]:g})",
        )
    above = bisect_left(fractions, run_fraction)
    if fractions[above] == run_fraction:
        return points[above][1]
    (left, left_factor), (right, right_factor) = points[above - 1], points[above]
    return left_factor + (right_factor - left_factor) * (run_fraction - left) / (right - left)


def cycle_turnover(continuous_rate: float, cycle_hours: float, floor_area: float) -> float:
    """Turnover, -, with which the effectiveness table for long cycles is entered: 12.8 x cfm x h / ft2.

    `continuous_rate` m3/s, `floor_area` m2. ValueError for impossible input.
    Source: ASHRAE 62.2 2013 and later, 4.5, as adopted in a mechanical code.
    """
    require_positive(continuous_rate=continuous_rate, cycle_hours=cycle_hours, floor_area=floor_area)
    return 12.8 * (continuous_rate / CUBIC_FOOT_PER_MINUTE) * cycle_hours / (floor_area / SQUARE_FOOT)


def annual_infiltration(leakage_flow: float, weather_factor: float, height: float) -> float:
    """Effective annual infiltration in m3/s from the leakage at 50 Pa: 0.052 x flow x wsf x (H / 8.2 ft)^0.4.

    `leakage_flow` m3/s at 50 Pa, `weather_factor` the site's weather and shielding factor, `height` m of the
    pressure boundary. ValueError for impossible input. Source: ASHRAE 62.2-2019, 4.1.2, equation 4-3.
    """
    require_positive(leakage_flow=leakage_flow, weather_factor=weather_factor, height=height)
    return 0.052 * leakage_flow * weather_factor * float((height / REFERENCE_HEIGHT) ** 0.4)


def infiltration_credit(
    edition: int,
    total_rate: float,
    infiltration: float,
    *,
    balanced: bool,
    exterior_share: float,
    new_dwelling: bool,
) -> float:
    """What may be taken off the total rate in m3/s for tested air leakage, by ASHRAE 62.2 edition.

    2013: the infiltration; 2016: times the exterior share of the envelope (1 for a detached dwelling);
    2019 and 2022: also times 1 if balanced, else infiltration / total rate. In 2013 and 2016 the
    infiltration counts up to two thirds of the total rate in a new dwelling. Never above the total rate.
    ValueError for impossible input; OutOfRange before 2013 or for an unknown edition.
    Source: ASHRAE 62.2-2013, -2016 and -2019, 4.1.2 (second-hand quotations; 2016 cap and 2022 from memory).
    """
    require_positive(total_rate=total_rate)
    require_not_negative(infiltration=infiltration)
    require_fraction(exterior_share=exterior_share)
    if edition not in LATER_EDITIONS:
        raise OutOfRange("infiltration credit", f"no form is held for ASHRAE 62.2 edition {edition}")
    if edition >= 2019:
        unbalanced_factor = 1.0 if balanced else min(1.0, infiltration / total_rate)
        return min(total_rate, unbalanced_factor * infiltration * exterior_share)
    counted = min(infiltration, 2.0 / 3.0 * total_rate) if new_dwelling else infiltration
    return min(total_rate, counted if edition == 2013 else counted * exterior_share)


def counted_flow(supply: float, exhaust: float) -> float:
    """Flow in m3/s that counts against the rate: the larger of outdoor supply and exhaust, never their sum.

    ValueError for negative flows. Source: ASHRAE 62.2, 4.2 (common practice).
    """
    require_not_negative(supply=supply, exhaust=exhaust)
    return max(supply, exhaust)


def _rate(per_area: float, per_person: float, floor_area: float, bedrooms: int) -> float:
    require_positive(floor_area=floor_area)
    require_not_negative(bedrooms=bedrooms)
    return per_area * floor_area + per_person * (max(bedrooms, 1) + 1)


def _require_rising(what: str, values: Sequence[float]) -> None:
    if not values or any(not right > left for left, right in pairwise(values)):
        raise ValueError(f"{what} must rise from one to the next")
