"""Whole-dwelling rates by ASHRAE 62.2: total, leakage credit, and what cycled fans are worth there."""

from checker.case import CannotJudge, Case, Missing, NotApplicable, gather, path_of, quantity
from checker.design.site import Site
from checker.each import blank
from checker.physics.ventilation_rate import (
    LONGEST_AVERAGED_CYCLE,
    OLDER_EDITIONS,
    annual_infiltration,
    counted_flow,
    cycle_turnover,
    infiltration_credit,
    occupancy_adder,
    rate_by_edition,
)
from checker.quantities.airtightness import house_of, leakage_flow, stack_height
from checker.quantities.ventilation import SLACK, dwelling, is_balanced
from checker.quantities.whole_house import Running, cycle_hours, exhaust_of, needed, run_share, supply_of

RECALLED_CREDIT = (2016, 2022)
"""Editions of whose leakage credit something is held from memory."""
UNCUT_CREDIT = (2016,)
"""Of these, editions of which only the greatest credit is."""


def edition(case: Case) -> int:
    """Year of the edition that the design is held against. NotApplicable where it is held against none."""
    case.codebook.require("standard-rate")
    return int(str(case.codebook.standard)[-4:])


@quantity("airflow", "0.03 cfm/ft2 (0.01 in 2010) x floor area + 7.5 cfm x (bedrooms + 1)", "ASHRAE 62.2, 4.1")
def standard_rate(case: Case, _node: object) -> float:
    """Total outdoor air rate by the standard."""
    area, bedrooms = dwelling(case)
    return rate_by_edition(edition(case), area, bedrooms)


@quantity("airflow", "larger of supply and exhaust, averaged over cycles of at most 3 h", "ASHRAE 62.2, 4.2 and 4.5")
def rate_by_standard(case: Case, node: object) -> float:
    """Rate that the whole-house fans are worth by the standard. CannotJudge for cycles that need its table."""
    parts = needed(case, node)
    year = edition(case)

    def worth(part: Running) -> tuple[float, float]:
        share = run_share(case, part)
        if share < 1.0:
            checked_cycle(case, part, year)
        return share * supply_of(case, part), share * exhaust_of(case, part)

    flows = gather([lambda part=part: worth(part) for part in parts])  # type: ignore[misc]
    return counted_flow(sum(supply for supply, _ in flows), sum(exhaust for _, exhaust in flows))


def checked_cycle(case: Case, part: Running, year: int) -> None:
    """CannotJudge where a cycled fan does not count by its average flow."""
    if year in OLDER_EDITIONS:
        raise CannotJudge(f"{part.name} cycles: the {year} edition takes that by its effectiveness table")
    if part.setting is None:
        return  # an air handler's timer works within the hour
    hours = cycle_hours(case, part.setting)
    if hours > LONGEST_AVERAGED_CYCLE * (1 + SLACK):
        turnover = cycle_turnover(standard_rate(case, case.design), hours, dwelling(case).floor_area)
        raise CannotJudge(
            f"{part.name} cycles in {hours:g} h: beyond {LONGEST_AVERAGED_CYCLE:g} h the standard wants its table of "
            f"effectiveness, here at a turnover of {turnover:.2g}"
        )


def height_above_grade(case: Case) -> float:
    """Height that the credit rests on, m: above grade alone. Raises Missing where a basement may be part of it."""
    house, envelope = house_of(case), case.design.envelope
    walls = envelope is not None and bool(envelope.below_grade_walls)
    if case.speaks_of(house, "height_above_grade") or not (walls or case.maybe(house, "foundation") == "basement"):
        return stack_height(case, case.design)
    if house.height is None and all(case.speaks_of(house, field) for field in ("stories", "ceiling_height")):
        stories, ceiling = case.all(house, "stories", "ceiling_height")  # stories count above grade alone
        return float(stories * ceiling)
    raise Missing(path_of(house, "height_above_grade"))


@quantity("airflow", "0.052 x Q50 x wsf x (height / 8.2 ft)^0.4", "ASHRAE 62.2, 4.1.2")
def mean_infiltration(case: Case, node: object) -> float:
    """Infiltration averaged over the year, by airtightness, weather and height."""
    site = site_of(case)
    leak, weather, height = gather(
        [
            lambda: leakage_flow(case, node),
            lambda: float(case.get(site, "weather_factor")),
            lambda: height_above_grade(case),
        ]
    )
    if weather <= 0 or height <= 0:
        raise CannotJudge("a weather factor or a height of nothing is outside the range of the equation")
    return annual_infiltration(leak, weather, height)


@quantity("airflow", "0.052 x Q50 x wsf x (height / 8.2 ft)^0.4, less by edition", "ASHRAE 62.2, 4.1.2")
def leakage_credit(case: Case, node: object) -> float:
    """What the edition takes off the total for air leakage; nothing in an edition without the credit."""
    try:
        case.codebook.require("standard-leakage-credit")
    except NotApplicable:
        return 0.0
    infiltration = mean_infiltration(case, node)
    share = case.maybe(house_of(case), "exterior_share")
    return infiltration_credit(
        edition(case), standard_rate(case, node), infiltration,
        balanced=is_balanced(case, node), exterior_share=1.0 if share is None else float(share), new_dwelling=True,
    )  # fmt: skip


def site_of(case: Case) -> Site:
    """The site; an empty one where the file says nothing about it."""
    site: Site = case.design.site or blank(Site, "site")
    return site


@quantity("airflow", "total, less the leakage credit where the fans do not reach the total without it")
def rate_wanted_by_standard(case: Case, node: object) -> float:
    """Rate that the fans must reach by the standard; the credit is asked for only where it is needed."""
    total, provided = standard_rate(case, node), rate_by_standard(case, node)
    if provided >= total * (1 - SLACK):
        return total
    wanted = total - leakage_credit(case, node)
    if edition(case) in RECALLED_CREDIT and total - greatest_credit(case, node) <= provided < wanted:
        raise CannotJudge("how much of the leakage counts in that edition is only recalled, and it decides: see its 4.1.2")
    return wanted


def greatest_credit(case: Case, node: object) -> float:
    """The most that the credit can take off: uncut, and where the form itself is recalled, all of the infiltration."""
    share = case.maybe(house_of(case), "exterior_share") if edition(case) in UNCUT_CREDIT else None
    return min(standard_rate(case, node), mean_infiltration(case, node) * (1.0 if share is None else float(share)))


@quantity("airflow", "7.5 cfm for each person above bedrooms and one", "ASHRAE 62.2, 4.1.1")
def rate_for_people(case: Case, _node: object) -> float:
    """What the people beyond bedrooms and one add to the rate."""
    bedrooms = dwelling(case).bedrooms
    return occupancy_adder(int(case.get(house_of(case), "occupants")), bedrooms)
