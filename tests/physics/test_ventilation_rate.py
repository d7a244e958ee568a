"""Whole-house ventilation rates against the tables of ASHRAE 62.2 and the IRC."""

from math import inf

import pytest

from checker.physics.infiltration import effective_leakage_area
from checker.physics.validity import OutOfRange
from checker.physics.ventilation_rate import (
    RateRow,
    annual_infiltration,
    counted_flow,
    infiltration_credit,
    occupancy_adder,
    rate_by_edition,
    rate_from_table,
    rate_later_editions,
    rate_older_editions,
    run_time_factor,
)

CFM = 0.3048**3 / 60.0
FT = 0.3048
FT2 = 0.3048**2


# IRC 2018 to 2024 Table M1505.4.3(1), IRC 2015 Table M1507.3.3(1): cfm for 0-1, 2-3, 4-5, 6-7, >7 bedrooms.
IRC_TABLE = [
    (1500, (30, 45, 60, 75, 90)),
    (3000, (45, 60, 75, 90, 105)),
    (4500, (60, 75, 90, 105, 120)),
    (6000, (75, 90, 105, 120, 135)),
    (7500, (90, 105, 120, 135, 150)),
    (inf, (105, 120, 135, 150, 165)),
]
IRC_ROWS = [RateRow(area * FT2, [rate * CFM for rate in rates]) for area, rates in IRC_TABLE]
IRC_COLUMNS = (1, 3, 5, 7, inf)

# IRC 2018 to 2024 Table M1505.4.3(2), IRC 2015 Table M1507.3.3(2).
RUN_TIME_POINTS = [(0.25, 4.0), (0.33, 3.0), (0.50, 2.0), (0.66, 1.5), (0.75, 1.3), (1.0, 1.0)]


@pytest.mark.parametrize("edition", [2003, 2004, 2007, 2010])
def test_older_edition_year_picks_the_older_form(edition: int) -> None:
    assert rate_by_edition(edition, 2400 * FT2, 3) / CFM == pytest.approx(54.0)


@pytest.mark.parametrize("edition", [2013, 2016, 2019, 2022])
def test_later_edition_year_picks_the_later_form(edition: int) -> None:
    assert rate_by_edition(edition, 2400 * FT2, 3) / CFM == pytest.approx(102.0)


def test_unknown_edition_is_not_guessed() -> None:
    with pytest.raises(OutOfRange, match="2011"):
        rate_by_edition(2011, 200.0, 3)


def test_a_studio_counts_as_one_bedroom() -> None:
    assert rate_older_editions(80.0, 0) == rate_older_editions(80.0, 1)


@pytest.mark.parametrize("band", range(6))
def test_code_table_cells(band: int) -> None:
    area = (IRC_TABLE[band - 1][0] if band else 0) + 400
    for column, bedrooms in enumerate([(0, 1), (2, 3), (4, 5), (6, 7), (8, 12)]):
        for count in bedrooms:
            rate = rate_from_table(area * FT2, count, IRC_ROWS, IRC_COLUMNS)
            assert rate / CFM == pytest.approx(IRC_TABLE[band][1][column], rel=1e-12)


def test_an_area_on_the_edge_of_a_band_belongs_to_the_lower_band() -> None:
    assert rate_from_table(1500 * FT2, 3, IRC_ROWS, IRC_COLUMNS) / CFM == pytest.approx(45.0)
    assert rate_from_table(1500.01 * FT2, 3, IRC_ROWS, IRC_COLUMNS) / CFM == pytest.approx(60.0)


def test_beyond_a_table_is_out_of_range() -> None:
    with pytest.raises(OutOfRange, match="beyond the last band"):
        rate_from_table(800.0, 3, IRC_ROWS[:5], IRC_COLUMNS)
    with pytest.raises(OutOfRange, match="beyond the last column"):
        rate_from_table(100.0, 8, IRC_ROWS, (1, 3, 5, 7))


def test_an_unordered_table_is_refused() -> None:
    with pytest.raises(ValueError, match="must rise"):
        rate_from_table(100.0, 3, IRC_ROWS[::-1], IRC_COLUMNS)


def test_run_time_factor_between_points_is_linear() -> None:
    assert run_time_factor(0.415, RUN_TIME_POINTS) == pytest.approx(2.5)
    # The printed 1.3 at 75 % is a rounded 1/0.75: the table rules, not the quotient.
    assert run_time_factor(0.75, RUN_TIME_POINTS) != pytest.approx(1.0 / 0.75, abs=0.01)


@pytest.mark.parametrize("fraction", [0.0, 0.2499])
def test_run_time_factor_is_not_extrapolated(fraction: float) -> None:
    with pytest.raises(OutOfRange, match="outside the table"):
        run_time_factor(fraction, RUN_TIME_POINTS)


def test_occupants_above_bedrooms_plus_one() -> None:
    # ASHRAE 62.2, 4.1 (from memory): 7.5 cfm each.
    assert occupancy_adder(6, 3) / CFM == pytest.approx(15.0)
    assert occupancy_adder(4, 3) == 0.0
    assert occupancy_adder(0, 3) == 0.0


@pytest.mark.parametrize("stories", [1, 2, 3])
def test_both_forms_of_annual_infiltration_agree(stories: int) -> None:
    # ASHRAE 62.2 as adopted by the Uniform Mechanical Code, appendix E: NL wsf A / 7.3.
    q50, area, height = 1500 * CFM, 2000 * FT2, stories * 8.2 * FT
    leakage = 1000.0 * effective_leakage_area(q50) / area * (height / 2.5) ** 0.4
    by_leakage = leakage * 0.7 * (area / FT2) / 7.3 * CFM
    assert by_leakage == pytest.approx(annual_infiltration(q50, 0.7, height), rel=0.006)
    # The metric form: NL wsf A / 1.44, L/s and m2.
    assert by_leakage * 1000 == pytest.approx(leakage * 0.7 * area / 1.44, rel=0.003)


def _credit(edition: int, infiltration: float, **changes: object) -> float:
    arguments = {"balanced": False, "exterior_share": 1.0, "new_dwelling": True} | changes
    return infiltration_credit(edition, 90.0, infiltration, **arguments)  # type: ignore[arg-type]


def test_credit_2013_is_the_infiltration_up_to_two_thirds() -> None:
    assert _credit(2013, 30.0, exterior_share=0.5) == 30.0
    assert _credit(2013, 80.0) == pytest.approx(60.0)
    assert _credit(2013, 80.0, new_dwelling=False) == 80.0


def test_credit_2016_counts_the_exterior_share() -> None:
    assert _credit(2016, 30.0, exterior_share=0.5) == pytest.approx(15.0)
    assert _credit(2016, 80.0, exterior_share=0.5) == pytest.approx(30.0)


@pytest.mark.parametrize("edition", [2019, 2022])
def test_credit_2019_depends_on_balance(edition: int) -> None:
    assert _credit(edition, 30.0, balanced=True) == pytest.approx(30.0)
    assert _credit(edition, 30.0) == pytest.approx(10.0)
    assert _credit(edition, 30.0, exterior_share=0.5) == pytest.approx(5.0)


@pytest.mark.parametrize("edition", [2013, 2016, 2019, 2022])
def test_credit_never_exceeds_the_total(edition: int) -> None:
    assert _credit(edition, 500.0, balanced=True, new_dwelling=False) == 90.0
    assert _credit(edition, 0.0) == 0.0


def test_credit_of_an_edition_without_a_held_form() -> None:
    with pytest.raises(OutOfRange, match="2010"):
        _credit(2010, 30.0)


def test_balanced_flow_counts_once() -> None:
    assert counted_flow(0.030, 0.028) == 0.030


@pytest.mark.parametrize(("area", "bedrooms"), [(0.0, 3), (-5.0, 3), (float("nan"), 3), (100.0, -1)])
def test_impossible_dwellings_are_refused(area: float, bedrooms: int) -> None:
    for rate in (rate_older_editions, rate_later_editions):
        with pytest.raises(ValueError, match="must"):
            rate(area, bedrooms)
