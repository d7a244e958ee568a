"""The unit table: every accepted spelling against pint, the factors against NIST, drift against the list."""

from typing import Any

import pint
import pytest

from checker.spelling import unit_key
from checker.unit_table import TABLE
from checker.units import DIMENSIONS, parse, parse_airtightness
from tests.make_unit_table import REVIEWED, SAME, TARGET, rendered, spellings

KINDS = {"ach50": 3600.0, "leakage_50": 1.0, "flow50_per_floor": 1.0, "flow50_per_envelope": 1.0}
UNITS: Any = pint.UnitRegistry()
UNITS.define("USD = [currency]")
SPELLED = [
    (dimension, expression, si, spelling)
    for dimension, (si, lines) in REVIEWED.items()
    for expression, listed in lines.items()
    for spelling, _ in spellings(listed)
]


def number_for(dimension: str) -> float:
    """A number within the bounds of the dimension in each of its units."""
    return {"temperature": 300.0, "share": 0.5}.get(dimension, 7.25)


def by_pint(number: float, expression: str, si: str) -> float:
    if expression == "1":
        return number
    unit = UNITS.parse_expression(expression) if expression not in ("degF", "degC") else None
    quantity = UNITS.Quantity(number, expression) if unit is None else number * unit
    return float(quantity.to(si).magnitude)


@pytest.mark.parametrize(("dimension", "expression", "si", "spelling"), SPELLED)
def test_each_spelling_is_what_pint_makes_of_its_expression(
    dimension: str, expression: str, si: str, spelling: str
) -> None:
    number = number_for(dimension)
    expected = pytest.approx(by_pint(number, expression, si), rel=1e-9)
    assert parse(f"{number} {spelling}", dimension) == expected
    if not spelling[0].isdigit():
        assert parse(f"{number}{spelling}", dimension) == expected


@pytest.mark.parametrize(("dimension", "expression", "si", "spelling"), SPELLED)
def test_case_does_not_matter_unless_the_list_says_so(
    dimension: str, expression: str, si: str, spelling: str
) -> None:
    lines = REVIEWED[dimension][1]
    if (spelling, True) in spellings(lines[expression]):
        assert unit_key(spelling) not in TABLE[dimension]
    elif spelling != "m":  # `M` may be a thousand
        number = number_for(dimension)
        upper, lower = (parse(f"{number} {each}", dimension) for each in (spelling.upper(), spelling.lower()))
        assert upper == lower == parse(f"{number} {spelling}", dimension)


@pytest.mark.parametrize(
    ("dimension", "unit", "factor"),
    [
        # NIST Special Publication 811 (2008), appendix B.8, seven digits: half a unit in the last is 5e-7 at most
        ("airflow", "cfm", 4.719474e-4),
        ("length", "in", 2.54e-2),
        ("area", "ft2", 9.290304e-2),
        ("volume", "ft3", 2.831685e-2),
        ("volume", "gal", 3.785412e-3),
        ("volume", "imp gal", 4.54609e-3),
        ("pressure", "in w.c.", 2.490889e2),  # inch of water, conventional
        ("pressure", "in Hg", 3.386389e3),  # conventional
        ("pressure", "psi", 6.894757e3),
        ("heat_rate", "Btu/h", 2.930711e-1),  # International Table Btu
        ("heat_rate", "ton", 3.516853e3),  # ton of refrigeration, 12,000 Btu/h
        ("resistance", "h*ft2*degF/Btu", 1.761102e-1),
        ("u_value", "Btu/h*ft2*degF", 5.678263),
        ("velocity", "fpm", 5.08e-3),
        ("energy", "therm", 1.055056e8),  # therm (EC)
        ("mass", "oz", 2.834952e-2),
        ("density", "lb/ft3", 1.601846e1),
        ("water_flow", "gpm", 6.309020e-5),
        ("permeance", "perm", 5.72135e-11),  # perm (0 degC)
    ],
)
def test_factors_are_those_of_nist(dimension: str, unit: str, factor: float) -> None:
    assert TABLE[dimension][unit] == pytest.approx((factor, 0.0), rel=5e-7)


@pytest.mark.parametrize("temperature", ["inch_H2O_60F", "2.54 * centimeter_H2O"])
def test_the_inch_of_water_is_within_0_2_percent_of_pints(temperature: str) -> None:
    pint_pascal = UNITS.parse_expression(temperature).to("pascal").magnitude
    assert parse("1 in w.c.", "pressure") == pytest.approx(pint_pascal, rel=2e-3)
    assert parse("1 in w.c.", "pressure") == 249.08891


def test_there_are_many_spellings_and_no_two_alike() -> None:
    assert len(SPELLED) >= 150
    assert len(SPELLED) == len({(dimension, spelling) for dimension, _, _, spelling in SPELLED})


def test_the_table_is_what_the_list_makes() -> None:
    assert TARGET.read_text(encoding="utf-8") == rendered()


def test_a_spelling_with_two_meanings_stops_the_generator(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(REVIEWED, "angle", ("radian", {"degree": "deg", "radian": "rad | DEG"}))
    with pytest.raises(ValueError, match="angle: deg has two meanings"):
        rendered()


def test_every_dimension_has_spellings_and_can_show_its_units() -> None:
    assert set(TABLE) == set(DIMENSIONS) - {"airtightness"} == set(REVIEWED) | set(SAME)
    for name, spelled in TABLE.items():
        assert {DIMENSIONS[name].trade, DIMENSIONS[name].metric} <= set(spelled), name


@pytest.mark.parametrize("kind", KINDS)
def test_each_airtightness_spelling_is_read_as_its_kind(kind: str) -> None:
    for spelling in TABLE[kind]:
        assert parse_airtightness(f"2 {spelling}").value == parse(f"2 {spelling}", kind)
