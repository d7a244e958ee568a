"""Duct leakage by class, where no total is stated."""

import pytest
from ruamel.yaml import YAML

from checker.case import Missing
from checker.quantities.leakage_class import known_leakage, leakage_by_class
from tests.rules.case_files import START, case_of, merged

CFM = 0.3048**3 / 60.0
AT_TEST = (25.0 / 249.089) ** 0.65


def read(text: str):  # type: ignore[no-untyped-def]
    """The case of a design given as text."""
    return case_of(merged(START, YAML(typ="safe", pure=True).load(text)))[0]


def system(leakage: str, run: str = "size: 10x8 in, length: 10 ft, material: galvanized steel"):  # type: ignore[no-untyped-def]
    case = read(f"ducts: {{trunk: {{leakage: {leakage}, runs: {{main: {{{run}}}}}}}}}")
    return case, case.design.ducts["trunk"]


@pytest.mark.parametrize(
    ("leakage", "run", "leakage_class", "square_feet"),
    [
        ("{leakage_class: 12}", "size: 10x8 in, length: 10 ft, material: galvanized steel", 12, 30.0),
        ("{seal_class: A}", "size: 10x8 in, length: 10 ft, material: galvanized steel", 6, 30.0),
        ("{seal_class: C}", "size: 6 in, length: 10 ft, material: galvanized steel", 12, 15.708),
        ("{seal_class: unsealed}", "size: 6 in, length: 10 ft, material: flexible", 30, 15.708),
        ("{seal_class: B}", "size: 6 in, length: 10 ft, material: flexible", 12, 15.708),
    ],
)
def test_class_times_surface(leakage: str, run: str, leakage_class: float, square_feet: float) -> None:
    # F = C p^0.65, cfm for each 100 ft2, in w.c. (SMACNA HVAC Air Duct Leakage Test Manual).
    case, node = system(leakage, run)
    assert leakage_by_class(case, node) / CFM == pytest.approx(leakage_class * square_feet / 100 * AT_TEST, rel=1e-4)


def test_a_stated_total_goes_before_the_class() -> None:
    case, node = system("{total: 40 cfm25, leakage_class: 12}")
    assert known_leakage(case, node) == pytest.approx(40 * CFM)


def test_what_no_class_is_published_for_is_not_known() -> None:
    case, node = system("{seal_class: A}", "size: 10x8 in, length: 10 ft, material: duct board")
    assert known_leakage(case, node) is None
    case, node = system("{stage: complete}")
    assert known_leakage(case, node) is None


def test_the_surface_is_asked_for() -> None:
    case, node = system("{leakage_class: 12}", "size: 10x8 in")
    with pytest.raises(Missing, match=r"runs\.main\.length"):
        leakage_by_class(case, node)
