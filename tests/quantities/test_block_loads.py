"""The house as one block beside the sum of its rooms, and the latent load room by room."""

import copy
from pathlib import Path
from typing import Any

import pytest
from ruamel.yaml import YAML

from checker.case import CannotJudge, Case
from checker.physics.cooling_load import internal_latent
from checker.physics.infiltration import design_infiltration, effective_leakage_area
from checker.quantities.block_loads import block_cooling, block_gains, block_heating, block_losses
from checker.quantities.computed_loads import (
    computed_cooling,
    computed_heating,
    computed_latent,
    computed_room_latent,
)
from checker.quantities.equipment import all_cooling, heated_rooms
from checker.quantities.load_figures import cooling_difference, heating_difference
from checker.quantities.load_parts import latent_of_rooms
from checker.quantities.unit_loads import group_cooling_latent, group_cooling_sensible, group_cooling_total
from tests.quantities.test_loads import BOX, case, room, term
from tests.rules.case_files import case_of, merged

ROOT = Path(__file__).parents[2]
SAMPLES = ("envelope-house", "cold-basement-house", "hot-humid-house")


def sample(name: str, change: dict[str, Any] | None = None) -> Case:
    """A sample house with a change."""
    data = YAML(typ="safe", pure=True).load((ROOT / "samples" / f"{name}.yaml").read_text(encoding="utf-8"))
    made, faults = case_of(merged(copy.deepcopy(data), change or {}))
    assert not faults, [fault.message for fault in faults]
    return made


@pytest.mark.parametrize("name", SAMPLES)
def test_the_block_of_a_whole_house_is_the_sum_of_its_rooms(name: str) -> None:
    made = sample(name)
    assert heating_difference(made, made.design) == pytest.approx(0.0, abs=1e-9)
    assert cooling_difference(made, made.design) == pytest.approx(0.0, abs=1e-9)
    assert block_losses(made, made.design).total == pytest.approx(block_heating(made, made.design).watts)
    assert block_gains(made, made.design).total == pytest.approx(block_cooling(made, made.design).watts)


def test_the_block_has_one_term_for_each_facade() -> None:
    made = sample("envelope-house")
    whats = [each.what for each in block_heating(made, made.design).terms if each.group == "walls, ceilings and floors"]
    assert len(whats) == 5  # four facades, one ceiling
    rooms = [each for each in computed_heating(made, made.design).house.terms if each.group == "walls, ceilings and floors"]
    assert len(rooms) > 15


def test_a_wall_that_a_room_lacks_shows_up_by_its_windows() -> None:
    """The window of the kitchen comes off the facade in the block, and off nothing in the kitchen."""
    made = sample("envelope-house", {"envelope": {"surfaces": {"kitchen-south": "(gone)"}}})
    apart = computed_heating(made, made.design).sum_of_rooms - block_heating(made, made.design).watts
    walls = [each for each in block_heating(made, made.design).terms if each.what.startswith("living-south")]
    u = next(factor.value for factor in walls[0].factors if factor.dimension == "u_value")
    assert apart == pytest.approx(u * 18 * 0.09290304 * 65 / 1.8, rel=1e-6)
    assert heating_difference(made, made.design) > 1e-3
    assert cooling_difference(made, made.design) > 1e-4


@pytest.mark.parametrize("part", ["day-south", "night-ceiling", "day-window", "night-slab"])
def test_a_part_that_falls_out_of_its_room_shows_up(part: str, monkeypatch: pytest.MonkeyPatch) -> None:
    from checker.quantities import computed_loads, load_parts

    whole = case()
    assert heating_difference(whole, whole.design) == pytest.approx(0.0, abs=1e-12)
    names = {"day-window": "windows.day", "night-slab": "slabs.night"}
    path = f"envelope.{names.get(part, f'surfaces.{part}')}"
    found = computed_loads.of_room

    def left_out(made: Case, node: Any) -> list[Any]:
        return [each for each in found(made, node) if each.path != path]

    monkeypatch.setattr(computed_loads, "of_room", left_out)
    monkeypatch.setattr(load_parts, "of_room", left_out)
    made = case()
    assert heating_difference(made, made.design) < -0.01


def test_ducts_that_burden_every_room_alike_burden_the_block() -> None:
    made = sample("cold-basement-house")
    for loads, block in ((computed_heating, block_heating), (computed_cooling, block_cooling)):
        by_room = sum(each.watts for room in loads(made, made.design).rooms for each in room.terms if each.group == "ducts")
        own = sum(each.watts for each in block(made, made.design).terms if each.group == "ducts")
        assert own == pytest.approx(by_room)
        assert own > 0.0


# latent loads


@pytest.mark.parametrize("name", SAMPLES)
def test_the_latent_loads_of_the_rooms_make_that_of_the_house(name: str) -> None:
    made = sample(name)
    rooms = [computed_room_latent(made, each).watts for each in heated_rooms(made)]
    assert all(watts >= 0.0 for watts in rooms)
    assert sum(rooms) == pytest.approx(computed_latent(made, made.design).watts, rel=1e-12)
    assert latent_of_rooms(made, made.design) == pytest.approx(sum(rooms))
    assert sum(rooms) > 100.0


def test_the_latent_load_of_a_room_by_hand() -> None:
    """3,010 W for each m3/s and g/kg; 20 + 0.22 A + 12 N in the living room, as the sensible gain."""
    fans = {"fresh": {"role": "supply", "to": ["night"], "settings": {"continuous": "50 L/s"}}}
    made = case({"fans": fans})
    leak = design_infiltration(effective_leakage_area(2 * 250 / 3600), 2.5, 10.0, "cooling")
    leaking = max(0.05, leak + 0.025) - 0.05
    day, night = (computed_room_latent(made, room(made, name)) for name in ("day", "night"))
    whole = term(computed_latent(made, made.design), "moisture of the outdoor air")
    each = whole / (leaking + 0.05)
    assert term(day, "moisture of the outdoor air") == pytest.approx(each * leaking * 0.6)
    assert term(night, "moisture of the outdoor air") == pytest.approx(each * (leaking * 0.4 + 0.05))
    assert term(day, "people and appliances") == pytest.approx(internal_latent(100.0, 2))
    assert not any(one.what.startswith("people") for one in night.terms)


def test_moisture_recovery_keeps_its_share_out_of_the_rooms_it_supplies() -> None:
    def latent(moisture: str) -> dict[str, float]:
        fan = {"role": "recovery", "from": ["day"], "to": ["night"], "settings": {"continuous": "50 L/s"},
               "recovery": {"sensible": "70 %", "moisture": moisture}}  # fmt: skip
        made = case({"fans": {"unit": fan}})
        return {name: computed_room_latent(made, room(made, name)).watts for name in ("day", "night")}

    none, half = latent("0 %"), latent("50 %")
    assert half["day"] == pytest.approx(none["day"])
    heat = 3010e3 * 0.05 * 0.5
    made = case()
    from checker.quantities.moist_air import indoor_summer, outdoor_summer

    moisture = outdoor_summer(made, made.design).humidity_ratio - indoor_summer(made, made.design).humidity_ratio
    assert none["night"] - half["night"] == pytest.approx(heat * moisture, rel=2e-3)


def test_units_that_share_a_house_share_its_total_load() -> None:
    made = sample("envelope-house")
    groups = all_cooling(made)
    assert len(groups) == 2
    assert not any(group.whole_house for group in groups)
    latent = [group_cooling_latent(made, group) for group in groups]
    assert sum(latent) == pytest.approx(computed_latent(made, made.design).watts)
    for group, own in zip(groups, latent, strict=True):
        span = group_cooling_total(made, group)
        assert span.low == span.high == pytest.approx(group_cooling_sensible(made, group) + own)


def test_without_an_envelope_the_share_of_a_unit_is_not_known() -> None:
    rooms = {"day": {"use": "living", "cooling_load": "2 kW"}, "night": {"use": "bedroom", "cooling_load": "1 kW"}}
    head = {"kind": "wall unit", "location": "day", "cooling": {"rated": "3 kW"}}
    house = {"design_format": 1, "project": BOX["project"], "rooms": rooms, "equipment": {"head": head}}
    made, faults = case_of({**house, "papers": {"loads": {"cooling_latent": "1 kW"}}})
    assert not faults
    with pytest.raises(CannotJudge, match="without an envelope"):
        group_cooling_total(made, all_cooling(made)[0])
