"""Three invented houses in three climates, their loads by the program and by a second reckoning beside it."""

from functools import cache
from pathlib import Path
from typing import Any

import pytest
from ruamel.yaml import YAML

from checker.case import Case
from checker.quantities.computed_loads import (
    computed_cooling,
    computed_heating,
    computed_latent,
    computed_room_cooling,
    computed_room_heating,
)
from checker.quantities.cooling_terms import cooling_term
from checker.quantities.envelope_parts import parts
from checker.quantities.heating_terms import heating_term
from tests.quantities.handbook_loads import Reckoning
from tests.rules.case_files import case_of

SAMPLES = Path(__file__).parents[2] / "samples"
HOUSES = ("envelope-house", "hot-humid-house", "cold-basement-house")
CLOSE = 2e-3  # apart by standard air and the weighting of strips of soil: 0.04 % at most, measured
GROUPS = {"outdoor air": "air", "people and appliances": "gains", "ducts": "ducts"}


def sample(name: str) -> dict[str, Any]:
    """A sample as plain data."""
    data: dict[str, Any] = YAML(typ="safe", pure=True).load((SAMPLES / f"{name}.yaml").read_text(encoding="utf-8"))
    return data


@cache
def house(name: str) -> tuple[Case, Reckoning]:
    """A sample as the program reads it and as the second reckoning does."""
    data = sample(name)
    case, faults = case_of(data)
    assert not faults, [fault.message for fault in faults]
    return case, Reckoning(data)


def by_group(load: Any) -> dict[str, float]:
    """Watts of a room's load by what they come from."""
    found: dict[str, float] = {}
    for term in load.terms:
        group = GROUPS.get(term.group, "envelope")
        found[group] = found.get(group, 0.0) + term.watts
    return found


@pytest.mark.parametrize("name", HOUSES)
def test_every_part_of_the_envelope(name: str) -> None:
    case, own = house(name)
    found = parts(case, case.design)
    paths = [str(part.path).removeprefix("envelope.") for part in found]

    assert sorted(paths) == sorted(own.heating)
    for path, part in zip(paths, found, strict=True):
        assert heating_term(case, part).watts == pytest.approx(own.heating[path], rel=CLOSE), path
        assert cooling_term(case, part).watts == pytest.approx(own.cooling[path], rel=CLOSE, abs=0.01), path


@pytest.mark.parametrize("name", HOUSES)
def test_every_room_by_envelope_air_gains_and_ducts(name: str) -> None:
    case, own = house(name)
    heating, cooling = own.room_loads()
    for room in case.design.rooms.values():
        for load, expected in (
            (computed_room_heating(case, room), heating[room.name]), (computed_room_cooling(case, room), cooling[room.name]),
        ):  # fmt: skip
            got = by_group(load)
            for group, watts in expected.items():
                assert got.get(group, 0.0) == pytest.approx(watts, rel=CLOSE, abs=0.05), (room.name, group)
            assert load.watts == pytest.approx(sum(expected.values()), rel=CLOSE, abs=0.05), room.name


@pytest.mark.parametrize("name", HOUSES)
def test_rooms_and_house(name: str) -> None:
    case, own = house(name)
    for loads, expected in zip((computed_heating, computed_cooling), own.room_loads(), strict=True):
        got = loads(case, case.design)
        block = sum(watts for room in expected.values() for watts in room.values())

        assert got.house.watts == pytest.approx(block, rel=CLOSE)
        assert got.sum_of_rooms == pytest.approx(got.house.watts, rel=CLOSE)
        assert len(got.rooms) == len(expected) >= 8
    assert computed_latent(case, case.design).watts == pytest.approx(own.moisture(), rel=CLOSE)


@pytest.mark.parametrize("climate", HOUSES)
@pytest.mark.parametrize("name", HOUSES)
def test_each_house_in_each_climate(name: str, climate: str) -> None:
    data = {**sample(name), "site": sample(climate)["site"]}
    case, faults = case_of(data)
    own = Reckoning(data)
    assert not faults
    for loads, expected in zip((computed_heating, computed_cooling), own.room_loads(), strict=True):
        for room in loads(case, case.design).rooms:
            assert room.watts == pytest.approx(sum(expected[room.name].values()), rel=CLOSE, abs=0.05), room.name
    assert computed_latent(case, case.design).watts == pytest.approx(own.moisture(), rel=CLOSE)
