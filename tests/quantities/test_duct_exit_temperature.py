"""What duct air loses on its way: run after run, and between bounds where a run passes warm and cold places."""

from math import exp
from typing import Any

import pytest

from checker.case import CannotJudge, Case, Missing
from checker.quantities.duct_exit_temperature import (
    cooled_air_at_outlet,
    heated_air_at_end,
    heated_air_at_outlet,
    heated_air_at_unit,
)
from tests.rules.case_files import case_of

FAHRENHEIT = 5.0 / 9.0


def kelvin(fahrenheit: float) -> float:
    return (fahrenheit + 459.67) * FAHRENHEIT


RUNS: dict[str, Any] = {
    "trunk": {"from": "unit", "size": "8 in", "length": "20 ft", "location": "attic", "insulation": "R-8"},
    "branch": {"from": "trunk", "to": "register", "size": "6 in", "length": "10 ft", "location": "attic",
               "insulation": "R-8"},
    "return": {"from": "hall", "to": "unit", "size": "10 in", "length": "6 ft", "location": "conditioned"},
}  # fmt: skip


def made(runs: dict[str, Any], **more: Any) -> Case:
    case, faults = case_of({
        "design_format": 1, "project": {"title": "ducts", "code": "irc-2021"},
        "site": {"winter_design": "0 degF", "elevation": "0 ft",
                 "summer_design": {"dry_bulb": "90 degF", "wet_bulb": "74 degF"}},
        "house": {"attic": "vented", "crawl_space": "vented", "indoor": {"winter_temperature": "70 degF"}},
        "rooms": {"bed": {"use": "bedroom"}, "hall": {"use": "hall"}},
        "equipment": {"unit": {"kind": "air handler", "airflow": "120 cfm"}},
        "ducts": {"unit": {"runs": runs,
                           "outlets": {"register": {"room": "bed", "kind": "supply register", "airflow": "120 cfm"}},
                           **(more or {"greatest_supply_temperature": "100 degF"})}},
    })  # fmt: skip
    assert not faults, faults
    return case


def register(case: Case) -> Any:
    return case.design.ducts["unit"].outlets["register"]


def test_two_runs_in_the_attic_follow_the_exponential() -> None:
    case = made(RUNS)
    carried = 120 * 4.719474432e-4 * 1.204 * 1006.0
    resistance = 8 * 0.1761 + 0.15
    lost = 3.14159265 * (8 * 0.0254 * 20 * 0.3048 + 6 * 0.0254 * 10 * 0.3048) / resistance
    expected = kelvin(0) + 100 * FAHRENHEIT * exp(-lost / carried)

    found = heated_air_at_outlet(case, register(case))

    assert found.coldest == pytest.approx(expected, abs=0.05)
    assert found.warmest == found.coldest
    assert heated_air_at_end(case, case.design.ducts["unit"].runs["trunk"]).coldest > found.coldest


def test_cooled_air_warms_on_its_way() -> None:
    case = made(RUNS)

    found = cooled_air_at_outlet(case, register(case))

    assert kelvin(55) < found.coldest == found.warmest < kelvin(60)


def test_a_run_that_passes_house_and_attic_gives_two_bounds() -> None:
    runs = {**RUNS, "branch": {**RUNS["branch"], "location": ["conditioned", "attic"]}}
    here, there = (made(each) for each in (runs, RUNS))

    found, cold = heated_air_at_outlet(here, register(here)), heated_air_at_outlet(there, register(there))

    assert found.coldest == pytest.approx(cold.coldest, abs=1e-9)
    assert found.warmest > found.coldest + 0.5


def test_a_bare_run_indoors_needs_no_word_of_its_insulation() -> None:
    case = made({**RUNS, "trunk": {"from": "unit", "size": "8 in", "length": "20 ft", "location": "conditioned"}})

    assert heated_air_at_end(case, case.design.ducts["unit"].runs["trunk"]).coldest < kelvin(100)


@pytest.mark.parametrize("field", ["size", "length", "insulation", "location"])
def test_what_is_missing_is_named(field: str) -> None:
    branch = {key: value for key, value in RUNS["branch"].items() if key != field}
    case = made({**RUNS, "branch": branch})

    with pytest.raises(Missing) as gap:
        heated_air_at_outlet(case, register(case))

    assert gap.value.paths == (f"ducts.unit.runs.branch.{field}",)


def test_supply_air_from_the_output_of_the_unit() -> None:
    case = made(RUNS, heat_output="3900 Btu/h")

    assert heated_air_at_unit(case, case.design.ducts["unit"]) == pytest.approx(kelvin(100), abs=0.3)


def test_without_a_temperature_it_is_asked_for() -> None:
    case = made(RUNS, sealant_listing="UL 181B-M")

    with pytest.raises(Missing, match="greatest_supply_temperature"):
        heated_air_at_outlet(case, register(case))


def test_a_return_has_no_supply_air() -> None:
    case = made(RUNS)

    with pytest.raises(CannotJudge, match="brings air back"):
        heated_air_at_end(case, case.design.ducts["unit"].runs["return"])
