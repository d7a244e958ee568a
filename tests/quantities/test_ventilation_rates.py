"""Whole-house rates: every cell of the code's table, its equation, run-time factors, and the forms of ASHRAE 62.2."""

import pytest

from checker.case import CannotJudge
from checker.quantities.ventilation import code_rate, equation_rate, provided_rate, table_rate
from checker.quantities.ventilation_standard import standard_rate
from checker.units import parse
from tests.rules.case_files import case_of

# IRC 2015 Table M1507.3.3(1), 2018 to 2024 Table M1505.4.3(1): cfm by floor area (a figure in the middle of each band,
# ft2) and bedrooms (0-1, 2-3, 4-5, 6-7, more than 7).
BANDS = {
    900: (30, 45, 60, 75, 90),
    2200: (45, 60, 75, 90, 105),
    3700: (60, 75, 90, 105, 120),
    5200: (75, 90, 105, 120, 135),
    6800: (90, 105, 120, 135, 150),
    9000: (105, 120, 135, 150, 165),
}
COLUMNS = ((0, 1), (2, 3), (4, 5), (6, 7), (8, 11))
CELLS = [
    (area, bedrooms, rate)
    for area, rates in BANDS.items()
    for column, rate in zip(COLUMNS, rates, strict=True)
    for bedrooms in column
]
# IRC 2015 Table M1507.3.3(2), 2018 to 2024 Table M1505.4.3(2)
FACTORS = {"25 %": 4.0, "33 %": 3.0, "50 %": 2.0, "66 %": 1.5, "75 %": 1.3, "100 %": 1.0}


def design(area: float, bedrooms: int, **project: str) -> dict[str, object]:
    return {
        "design_format": 1,
        "project": {"title": "rates", "code": "irc-2015", **project},
        "house": {"floor_area": f"{area} ft2", "bedrooms": bedrooms},
        "fans": {"fan": {"role": "supply", "settings": {"continuous": "100 cfm"}}},
    }


@pytest.mark.parametrize(("area", "bedrooms", "rate"), CELLS)
def test_every_cell_of_the_table(area: int, bedrooms: int, rate: int) -> None:
    case, _ = case_of(design(area, bedrooms))
    assert table_rate(case, case.design) == parse(f"{rate} cfm", "airflow")
    assert code_rate(case, case.design) == table_rate(case, case.design)


@pytest.mark.parametrize(("edge", "rate"), [(1500, 45), (1501, 60), (3000, 60), (3001, 75), (7500, 105), (7501, 120)])
def test_edges_of_the_bands(edge: int, rate: int) -> None:
    case, _ = case_of(design(edge, 2))
    assert table_rate(case, case.design) == parse(f"{rate} cfm", "airflow")


def test_equation_beside_the_table() -> None:
    # IRC 2018 equation 15-1: 0.01 x 2400 + 7.5 x 4 = 54 cfm; the table says 60 cfm
    case, _ = case_of(design(2400, 3, code="irc-2018"))
    assert equation_rate(case, case.design) == pytest.approx(parse("54 cfm", "airflow"), rel=1e-9)
    assert code_rate(case, case.design) == equation_rate(case, case.design)


@pytest.mark.parametrize(("edition", "rate"), [("2010", 54), ("2013", 102), ("2016", 102), ("2019", 102), ("2022", 102)])
def test_the_standard_by_edition(edition: str, rate: int) -> None:
    # ASHRAE 62.2: 0.01 (from 2013 on 0.03) x 2400 + 7.5 x 4
    case, _ = case_of(design(2400, 3, ventilation_standard=f"62.2-{edition}"))
    assert standard_rate(case, case.design) == pytest.approx(parse(f"{rate} cfm", "airflow"), rel=1e-9)


@pytest.mark.parametrize(("share", "factor"), FACTORS.items())
def test_run_time_factors(share: str, factor: float) -> None:
    data = design(1000, 2)
    data["fans"] = {"fan": {"role": "supply", "settings": {"cycle": {"airflow": "100 cfm", "on_time": share}}}}
    case, _ = case_of(data)
    assert provided_rate(case, case.design) == pytest.approx(parse("100 cfm", "airflow") / factor, rel=1e-9)


def test_no_factor_below_a_quarter() -> None:
    data = design(1000, 2)
    data["fans"] = {"fan": {"role": "supply", "settings": {"cycle": {"airflow": "100 cfm", "on_time": "24 %"}}}}
    case, _ = case_of(data)
    with pytest.raises(CannotJudge, match="begins at 25%"):
        provided_rate(case, case.design)
