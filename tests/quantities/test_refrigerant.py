"""Which refrigerant lines make one system, and how designations are read."""

import pytest

from checker.case import Missing
from checker.quantities.refrigerant import charge, designation, leak_area, normal, systems
from tests.rules.case_files import START, case_of, merged

TWO_LINES = {
    "equipment": {
        "heat-pump": {"kind": "heat pump", "location": "outdoors", "refrigerant": "R-454B"},
        "north": {"kind": "wall unit", "outdoor_unit": "heat-pump", "location": "bedroom"},
        "south": {"kind": "floor unit", "serves": "den"},
    },
    "rooms": {"bedroom": {"floor_area": "100 ft2"}, "den": {"use": "living", "floor_area": "200 ft2"}},
    "refrigerant": {"south": {"from": "heat-pump", "charge": "4 lb"}, "north": {"length": "20 ft"}},
}


@pytest.mark.parametrize(
    ("written", "read"),
    [
        ("R-32", "R32"), ("r32", "R32"), ("HFC-32", "R32"), ("410A", "R410A"), ("R 410a", "R410A"), ("R-454B", "R454B"),
        ("HFO-1234yf", "R1234YF"), ("eco gas", "ECOGAS"),
    ],
)  # fmt: skip
def test_designations(written: str, read: str) -> None:
    assert normal(written) == read


def test_lines_of_one_outdoor_unit_are_one_system() -> None:
    case, faults = case_of(merged(START, TWO_LINES))
    assert not faults
    (system,) = systems(case)
    assert system.name == "heat-pump"
    assert system.path == "refrigerant.south"  # it tells the charge of the whole
    assert [line.name for line in system.lines] == ["south", "north"]
    assert designation(case, system) == "R454B"
    assert charge(case, system) == pytest.approx(4 * 0.45359237)


def test_a_leak_runs_where_the_indoor_unit_stands_or_the_only_room_it_serves() -> None:
    case, _ = case_of(merged(START, TWO_LINES))
    areas = {line.name: leak_area(case, line) for line in systems(case)[0].lines}
    assert areas == pytest.approx({"north": 100 * 0.09290304, "south": 200 * 0.09290304})


def test_lines_without_known_units_stay_apart() -> None:
    case, _ = case_of(merged(START, {"refrigerant": {"a": {"charge": "2 lb"}, "b": {"length": "9 ft"}}}))
    first, second = systems(case)
    assert charge(case, first) == pytest.approx(2 * 0.45359237)
    with pytest.raises(Missing, match=r"refrigerant\.b\.charge"):
        charge(case, second)


def test_existing_systems_are_left_out() -> None:
    case, _ = case_of(merged(START, {"refrigerant": {"a": {"existing": True}, "b": {"length": "9 ft"}}}))
    assert [system.name for system in systems(case)] == ["b"]
