"""What must hold of the loads of any house: more insulation, other units, halves of a room, shade, turning the house."""

import copy
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from checker.case import CannotJudge
from checker.design.envelope import POINTS
from checker.quantities.computed_loads import (
    computed_cooling,
    computed_heating,
    computed_latent,
    computed_room_heating,
)
from checker.quantities.envelope_parts import winter_beyond
from checker.quantities.moist_air import indoor_winter, winter_design
from tests.quantities.handbook_loads import si
from tests.quantities.test_handbook_loads import HOUSES, sample
from tests.quantities.test_loads import BOX, SAMPLE, case

FEW = settings(max_examples=25, deadline=None)
METRIC = {
    "ft2": "m2", "ft3": "m3", "cfm": "L/s", "ft": "m", "in": "m", "degF": "degC", "delta_degF": "K",
}  # fmt: skip


def heating(change: dict[str, Any] | None = None, base: dict[str, Any] = BOX) -> float:
    made = case(change, base)
    return computed_heating(made, made.design).house.watts


def cooling(change: dict[str, Any] | None = None, base: dict[str, Any] = BOX) -> float:
    made = case(change, base)
    return computed_cooling(made, made.design).house.watts


def all_loads(data: dict[str, Any]) -> list[float]:
    """Heating and cooling of every room, in the order of names, and the latent load, W."""
    made = case(None, data)
    rooms = [
        load.watts for loads in (computed_heating, computed_cooling)
        for load in sorted(loads(made, made.design).rooms, key=lambda each: each.name)
    ]  # fmt: skip
    return [*rooms, computed_latent(made, made.design).watts]


def turned(data: dict[str, Any], eighths: int) -> dict[str, Any]:
    """The house turned by so many eighths of a circle."""
    made = copy.deepcopy(data)
    for section in ("surfaces", "windows", "doors"):
        for part in made["envelope"].get(section, {}).values():
            if part["faces"] in POINTS:
                part["faces"] = POINTS[(POINTS.index(part["faces"]) + eighths) % 8]
    return made


def metric(data: Any) -> Any:
    """The same file with lengths, areas, volumes, flows, temperatures, R- and U-values in metric units."""
    if isinstance(data, dict):
        # sizes of pieces and filters, and words such as `vertical 2 ft`, are no plain quantities
        return {key: value if key in ("size", "insulated") else metric(value) for key, value in data.items()}
    if isinstance(data, list):
        return [metric(each) for each in data]
    if not isinstance(data, str):
        return data
    for mark, unit in (("R-", "RSI"), ("U-", "W/m2K")):
        if data.startswith(mark):
            return f"{si(data):.12g} {unit}"
    words = data.split()
    unit = METRIC.get(words[-1])
    if unit is None or len(words) % 2 or not all(word.replace(".", "").lstrip("-").isdigit() for word in words[::2]):
        return data
    shift, scale = (-273.15, 1.0) if unit == "degC" else (0.0, 1e3 if unit == "L/s" else 1.0)
    return f"{(si(data) + shift) * scale:.12g} {unit}"


@FEW
@given(thin=st.floats(2, 40), more=st.floats(0.1, 30), where=st.sampled_from(["wall", "ceiling"]))
def test_more_insulation_never_raises_a_load(thin: float, more: float, where: str) -> None:
    made: dict[str, Any] = {"framing": "2x12", "layers": {"gypsum board": "R-0.45"}}

    def insulated(r: float) -> dict[str, Any]:
        return {"envelope": {"assemblies": {where: {**made, "cavity": f"R-{r:.4f}"}}}}

    assert heating(insulated(thin + more)) <= heating(insulated(thin))
    assert cooling(insulated(thin + more)) <= cooling(insulated(thin))


@FEW
@given(thin=st.floats(0.1, 12), more=st.floats(0.1, 12), place=st.sampled_from(["vertical 2 ft", "vertical 4 ft", "full"]))
def test_more_insulation_of_the_ground_never_raises_heating(thin: float, more: float, place: str) -> None:
    def change(r: float) -> dict[str, Any]:
        edge = {"day": {"insulation": f"R-{r:.4f}", "insulated": place}}
        wall = {"room": "night", "length": "8 m", "depth": "2 m", "insulation": f"R-{r:.4f}"}
        return {"envelope": {"slabs": edge, "below_grade_walls": {"wall": wall}}}

    assert heating(change(thin + more)) < heating(change(thin))


@pytest.mark.parametrize("name", HOUSES)
def test_turning_the_house(name: str) -> None:
    """A full turn changes nothing; a part of one no heating load, but the cooling load."""
    data = sample(name)
    straight = all_loads(data)
    rooms = len(data["rooms"])
    once_around = data
    for _ in range(8):
        once_around = turned(once_around, 1)

    assert all_loads(once_around) == straight
    assert all_loads(turned(data, 2))[:rooms] == pytest.approx(straight[:rooms], rel=1e-12)
    assert all_loads(turned(data, 2))[rooms:] != pytest.approx(straight[rooms:], rel=1e-3)


@FEW
@given(
    depth=st.floats(0, 3), more=st.floats(0, 2), drop=st.floats(0, 2), faces=st.sampled_from(POINTS), latitude=st.floats(20, 60),
)  # fmt: skip
def test_an_overhang_never_raises_cooling(depth: float, more: float, drop: float, faces: str, latitude: float) -> None:
    def change(depth: float, drop: float) -> dict[str, Any]:
        overhang = {"depth": f"{depth:.4f} m", "drop": f"{drop:.4f} m"}
        window = {"overhang": overhang, "height": "1.4 m", "faces": faces}
        return {"site": {"latitude": latitude}, "envelope": {"windows": {"day": window}}}

    bare = cooling({"site": {"latitude": latitude}, "envelope": {"windows": {"day": {"faces": faces}}}})
    over = cooling(change(depth, drop))

    assert over <= bare
    assert cooling(change(depth + more, drop)) <= over
    assert cooling(change(depth, drop + more)) >= over


@pytest.mark.parametrize("latitude", [-90, -41.5, 0, 19.9, 60.1, 71])
def test_latitudes_that_the_method_does_not_know(latitude: float) -> None:
    """Southern latitudes are refused too: the tables count the sun from the south."""
    with pytest.raises(CannotJudge, match="latitude"):
        cooling({"site": {"latitude": latitude}})
    assert heating({"site": {"latitude": latitude}}) == heating()


@FEW
@given(
    inward=st.floats(0.05, 3), outward=st.floats(0.05, 6), area=st.floats(1, 300), volume=st.floats(0, 400),
    changes=st.floats(0, 5),
)  # fmt: skip
def test_an_unheated_space_lies_between(inward: float, outward: float, area: float, volume: float, changes: float) -> None:
    shell = {"outside_area": f"{area:.3f} m2", "outside_u": f"{outward:.4f} W/m2K", "volume": f"{volume:.3f} m3"}
    change = {
        "envelope": {
            "assemblies": {"wall": f"{inward:.4f} W/m2K"}, "surfaces": {"night-north": {"faces": "garage"}},
            "buffers": {"garage": {**shell, "air_changes": round(changes, 3)}},
        }
    }  # fmt: skip
    made = case(change)
    beyond = winter_beyond(made, "garage").temperature

    assert winter_design(made, made.design) <= beyond <= indoor_winter(made, made.design).temperature


@pytest.mark.parametrize("name", HOUSES)
def test_metric_and_trade_units_give_the_same_loads(name: str) -> None:
    data = sample(name)
    written = metric(data)

    assert written["envelope"] != data["envelope"]
    assert written["house"]["floor_area"].endswith(" m2")
    assert all_loads(written) == pytest.approx(all_loads(data), rel=1e-9)


@pytest.mark.parametrize("name", ["primary-bedroom", "great-room", "bath-2"])
def test_two_half_rooms_are_one_room(name: str) -> None:
    data, halved = sample("hot-humid-house"), sample("hot-humid-house")
    room = halved["rooms"][name]
    room["floor_area"] = f"{si(room['floor_area']) / 2:.12g} m2"
    halved["rooms"]["other-half"] = copy.deepcopy(room)
    for part in halved["envelope"]["windows"].values():
        if "size" in part:  # 3 or 4 ft wide and 5 ft high
            part["area"], part["height"] = f"{int(part['size'][:2]) * 60 / 144} ft2", "60 in"
            del part["size"]
    for section in ("surfaces", "windows", "doors", "slabs"):
        for key, part in [*halved["envelope"][section].items()]:
            if part["room"] != name:
                continue
            for size in ("area", "perimeter"):
                if size in part:
                    part[size] = f"{si(part[size]) / 2:.12g} {'m2' if size == 'area' else 'm'}"
            halved["envelope"][section][f"{key}-too"] = copy.deepcopy({**part, "room": "other-half"})
    for unit in (*halved["equipment"].values(), *halved["fans"].values()):
        for field in ("serves", "to"):
            if isinstance(unit.get(field), list) and name in unit[field]:
                unit[field] = [*unit[field], "other-half"]
    whole, parted = case(None, data), case(None, halved)
    for loads in (computed_heating, computed_cooling):
        one = {each.name: each.watts for each in loads(whole, whole.design).rooms}
        two = {each.name: each.watts for each in loads(parted, parted.design).rooms}

        assert two[name] == pytest.approx(two["other-half"], rel=1e-9)
        assert two[name] + two.pop("other-half") == pytest.approx(one.pop(name), rel=1e-9)
        two.pop(name)
        assert two == pytest.approx(one, rel=1e-9)


@FEW
@given(cold=st.floats(-34, 10), colder=st.floats(0.1, 5))
def test_a_colder_day_never_loses_less(cold: float, colder: float) -> None:
    def at(celsius: float) -> dict[str, Any]:
        return {"site": {"winter_design": f"{celsius:.3f} degC", "annual_mean": "10 degC"}}

    assert heating(at(cold - colder), SAMPLE) > heating(at(cold), SAMPLE)


def test_thin_air_carries_less_heat() -> None:
    """At 1,600 m the standard atmosphere has 0.825 of the pressure at sea level; the walls do not care."""
    low, high = case(), case({"site": {"elevation": "1600 m"}})
    loads = [computed_room_heating(made, made.design.rooms["day"]) for made in (low, high)]
    terms = [{term.what: term.watts for term in load.terms} for load in loads]

    for what, watts in terms[0].items():
        share = 0.8245 if what.startswith("outdoor air") else 1.0
        assert terms[1][what] == pytest.approx(share * watts, rel=1e-3), what
    with pytest.raises(CannotJudge, match="2,000 m"):
        cooling({"site": {"elevation": "2000 m"}})
