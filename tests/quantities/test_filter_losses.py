"""Filters by several points of their clean drop."""

import pytest
from ruamel.yaml import YAML

from checker.case import CannotJudge
from checker.quantities.filter_losses import filter_item
from tests.rules.case_files import START, case_of, merged

CFM = 0.3048**3 / 60.0
INCH_WATER = 249.08891
POINTS = "drops: [{airflow: 150 cfm, drop: 0.03 in w.c.}, {airflow: 250 cfm, drop: 0.07 in w.c.}]"


def read(text: str):  # type: ignore[no-untyped-def]
    """The case of a design given as text."""
    return case_of(merged(START, YAML(typ="safe", pure=True).load(text)))[0]


def bounds(more: str, flow: float, loaded: bool) -> tuple[float, float]:
    """Least and greatest drop, in w.c."""
    case = read(f"filters: {{media: {{{POINTS}{more}}}}}")
    low, high = filter_item(case, case.design.filters["media"], flow * CFM, loaded).bounds(flow * CFM)
    return low / INCH_WATER, high / INCH_WATER


def test_on_the_points_and_between_them() -> None:
    assert bounds("", 150, False) == pytest.approx((0.03, 0.03), rel=1e-6)
    assert bounds("", 250, False) == pytest.approx((0.07, 0.07), rel=1e-6)
    # log-log: 0.03 x (200 / 150)^(ln(7 / 3) / ln(5 / 3)) = 0.04835
    assert bounds("", 200, False) == pytest.approx((0.04835, 0.04835), rel=1e-3)


def test_two_side_by_side_see_half_each() -> None:
    assert bounds(", count: 2", 400, False) == pytest.approx(bounds("", 200, False), rel=1e-9)


def test_loaded_it_takes_up_to_twice_as_much() -> None:
    assert bounds("", 250, True) == pytest.approx((0.07, 0.14), rel=1e-6)
    assert bounds(", drop_final: 0.2 in w.c.", 250, True) == pytest.approx((0.2, 0.2), rel=1e-6)


def test_far_outside_of_the_points() -> None:
    with pytest.raises(CannotJudge, match="too far"):
        bounds("", 400, False)
