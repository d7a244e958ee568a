"""Duct systems as builders write them: what hangs where, what flows through it, what it takes."""

from typing import Any

import pytest

from checker.case import CannotJudge, Case, Missing
from checker.design.ducts import DuctSystem
from checker.physics.devices import drop_from_rating
from checker.quantities.circuits import circuits
from checker.quantities.duct_flow import run_flow, system_flow
from checker.quantities.duct_graph import sketch, tree
from checker.quantities.duct_joints import End
from checker.quantities.duct_losses import duct_items
from checker.quantities.duct_sheet import available_bounds, effective_length_bounds
from checker.quantities.duct_solution import division
from checker.quantities.filter_losses import filter_item
from checker.quantities.static_budget import clean_budget
from tests.rules.case_files import case_of

CFM = 4.719474432e-4
INCH_OF_WATER = 249.08891
START = {"design_format": 1, "project": {"title": "ducts", "code": "irc-2021"}}
ROOMS = {name: {"use": "bedroom"} for name in ("east", "west", "hall")}


def made(**sections: Any) -> Case:
    case, faults = case_of({**START, "rooms": ROOMS, **sections})
    assert not faults, faults
    return case


def system(case: Case) -> DuctSystem:
    return next(iter(case.design.ducts.values()))


def unit(runs: dict[str, Any], outlets: dict[str, Any] | None = None, **more: Any) -> Case:
    ducts = {"unit": {"runs": runs, "outlets": outlets or {}, **more}}
    return made(equipment={"unit": {"kind": "air handler", "airflow": "300 cfm", "available_static": "0.3 in w.c."}}, ducts=ducts)


REGISTERS = {
    "east-register": {"room": "east", "kind": "supply register", "airflow": "120 cfm"},
    "west-register": {"room": "west", "kind": "supply register", "airflow": "80 cfm"},
}
BY_FROM = {"trunk": {"from": "unit"}, "a": {"from": "trunk", "to": "east-register"}, "b": {"from": "trunk", "to": "west-register"}}
BY_TO = {"trunk": {"from": "unit", "to": "a"}, "a": {"to": "east-register"}, "b": {"from": "trunk", "to": "west-register"}}
BY_ROOM = {"trunk": {"from": "unit"}, "a": {"from": "trunk", "serves": "east"}, "b": {"from": "trunk", "to": "west"}}


@pytest.mark.parametrize("runs", [BY_FROM, BY_TO, BY_ROOM], ids=["by from", "by to", "by room"])
def test_the_same_tree_in_three_spellings(runs: dict[str, Any]) -> None:
    case = unit(runs, REGISTERS)
    found = tree(case, system(case))

    assert set(found.branches["trunk"].farther) == {"a", "b"}
    assert found.branches["a"].outlets == ("east-register",)
    assert found.branches["b"].outlets == ("west-register",)
    assert run_flow(case, system(case).runs["trunk"]) == pytest.approx(200 * CFM)


def test_outlets_that_no_run_names_hang_on_the_only_open_run() -> None:
    case = unit({"trunk": {"from": "unit"}}, REGISTERS)

    assert set(tree(case, system(case)).branches["trunk"].outlets) == {"east-register", "west-register"}


def test_a_return_side_is_walked_toward_the_mover() -> None:
    runs = {"main": {"to": "unit"}, "leg": {"from": "hall", "to": "main"}}
    case = unit(runs)
    found = tree(case, system(case))

    assert [found.branches[name].side for name in ("main", "leg")] == ["return", "return"]
    assert found.branches["leg"].end == End("room", "hall")
    assert [branch.run.name for branch in found.way(found.branches["leg"])] == ["main", "leg"]


def test_a_filter_between_two_runs_joins_them_and_one_before_the_mover_joins_that() -> None:
    case = made(
        equipment={"unit": {"kind": "air handler"}},
        filters={"pleat": {"merv": 8}},
        ducts={"unit": {"runs": {"leg": {"from": "hall", "to": "pleat"}, "box": {"from": "pleat", "to": "unit"}}}},
    )
    found = tree(case, system(case))
    assert found.branches["leg"].nearer == "box"

    case = made(
        equipment={"unit": {"kind": "air handler"}},
        filters={"pleat": {"merv": 8}},
        ducts={"unit": {"runs": {"leg": {"from": "hall", "to": "pleat"}}}},
    )
    assert tree(case, system(case)).branches["leg"].side == "return"


def test_an_end_that_is_not_stated_is_named_and_a_ring_is_refused() -> None:
    case = unit({"trunk": {"from": "unit", "to": "east"}, "lost": {"to": "west"}})
    with pytest.raises(Missing) as gap:
        tree(case, system(case))
    assert gap.value.paths == ("ducts.unit.runs.lost.from",)

    case = unit({"a": {"from": "unit", "to": "b"}, "b": {"from": "unit", "to": "east"}})
    with pytest.raises(CannotJudge, match="two ways"):
        tree(case, system(case))
    assert sketch(case, system(case)).rings == ("b",)


def test_the_airflow_of_a_system_is_stated_or_summed_or_that_of_its_mover() -> None:
    summed = unit(BY_FROM, REGISTERS)
    stated = unit(BY_FROM, REGISTERS, airflow="210 cfm")
    neither = unit({"trunk": {"from": "unit", "to": "east"}})

    assert system_flow(summed, system(summed)) == pytest.approx(200 * CFM)
    assert system_flow(stated, system(stated)) == pytest.approx(210 * CFM)
    assert system_flow(neither, system(neither)) == pytest.approx(300 * CFM)


def test_friction_of_a_metal_branch() -> None:
    """Textbook branch: 120 cfm in 6 in round, read off the friction chart as 0.12 in w.c./100 ft, within 5 %."""
    runs = {"a": {"from": "unit", "to": "east", "size": "6 in", "length": "100 ft", "airflow": "120 cfm", "pieces": "none",
                  "material": "galvanized steel"}}  # fmt: skip
    case = unit(runs)
    low, high = duct_items(case, system(case).runs["a"])[0].bounds(120 * CFM)

    assert low == pytest.approx(0.12 * INCH_OF_WATER, rel=0.05)
    assert high == pytest.approx(0.12 * INCH_OF_WATER, rel=0.05)


def test_friction_of_flexible_duct_by_its_compression() -> None:
    """ASHRAE Handbook - Fundamentals 2021, chapter 21, Example 6: 250 mm, 1.8 m, 470 L/s, 15 %: 40.0 Pa, within 5 %."""
    flexible = {"from": "unit", "to": "east", "size": "254 mm", "length": "1.8 m", "airflow": "470 L/s", "pieces": "none",
                "material": "flex"}  # fmt: skip
    case = unit({"a": {**flexible, "compression": "15 %"}})
    low, high = duct_items(case, system(case).runs["a"])[0].bounds(0.470)
    assert low == high == pytest.approx(40.0 * (0.25 / 0.254) ** 5, rel=0.05)

    case = unit({"a": flexible})
    item = duct_items(case, system(case).runs["a"])[0]
    least, most = item.bounds(0.470)
    assert least < low
    assert most == pytest.approx(high)
    assert item.ask == "ducts.unit.runs.a.compression"


def test_a_filter_at_another_airflow_lies_between_the_laws_of_its_kind() -> None:
    case = made(filters={"pleat": {"drop_clean": "0.1 in w.c.", "at": "200 cfm"}})
    pleat = case.design.filters["pleat"]
    low, high = filter_item(case, pleat, 300 * CFM, loaded=False).bounds(300 * CFM)

    assert low == pytest.approx(drop_from_rating(300, 0.1 * INCH_OF_WATER, 200, 1.0))
    assert high == pytest.approx(drop_from_rating(300, 0.1 * INCH_OF_WATER, 200, 1.9))


def test_the_budget_is_the_worst_supply_run_and_the_worst_return_run_and_what_all_air_passes() -> None:
    def run(start: str, end: str, meters: int) -> dict[str, Any]:
        return {"from": start, "to": end, "size": "8 in", "length": f"{meters} m", "pieces": "none", "airflow": "150 cfm",
                "material": "duct board"}  # fmt: skip

    runs = {"short": run("unit", "east", 5), "long": run("unit", "west", 20), "back": run("hall", "unit", 10)}
    case = unit(runs, losses={"coil": "0.1 in w.c.", "grilles": "0.05 in w.c.", "heater": {"drop": "9 Pa", "inside": True}})
    found = clean_budget(case, circuits(case)[0])
    per_metre = duct_items(case, system(case).runs["short"])[0].bounds(150 * CFM)[0] / 5

    assert found.low == pytest.approx(found.high)
    assert found.low == pytest.approx(30 * per_metre + 0.15 * INCH_OF_WATER)
    assert {share.name for share in found.shares} == {"coil", "grilles", "friction in long", "friction in back"}


def test_the_sheet_of_a_system() -> None:
    """ACCA Manual D worksheet arithmetic: 0.3 less 0.1 coil less 0.03 register and 0.03 grille leaves 0.14 in w.c."""
    outlets = {**REGISTERS, "grille": {"room": "hall", "kind": "return grille", "airflow": "200 cfm"}}
    outlets = {name: {**outlet, "pressure_drop": "0.03 in w.c."} for name, outlet in outlets.items()}
    part = {"length": "20 ft", "declared_equivalent_length": "30 ft"}
    runs = {name: {**ends, **part} for name, ends in BY_FROM.items()} | {"back": {"from": "grille", "to": "unit", **part}}
    case = unit(runs, outlets, losses={"coil": "0.1 in w.c."}, airflow="300 cfm")

    low, high = available_bounds(case, system(case))
    assert low == pytest.approx(0.14 * INCH_OF_WATER)
    assert high == pytest.approx(0.14 * INCH_OF_WATER)
    assert effective_length_bounds(case, system(case)) == pytest.approx((150 * 0.3048, 150 * 0.3048))


def test_two_equal_branches_share_the_air() -> None:
    """By symmetry."""
    runs = {
        name: {"from": "unit", "to": room, "size": "6 in", "length": "30 ft", "pieces": {"elbow-90": 1}, "airflow": flow,
               "material": "galvanized steel"}
        for name, room, flow in (("a", "east", "100 cfm"), ("b", "west", "60 cfm"))
    }  # fmt: skip
    case = unit(runs)
    solved = division(case, system(case))

    for flows in solved:
        assert flows["a"] == pytest.approx(80 * CFM)
        assert flows["b"] == pytest.approx(80 * CFM)


def test_a_return_that_stands_apart_counts_with_the_supplies_of_the_same_mover() -> None:
    piece = {"size": "8 in", "length": "10 m", "pieces": "none", "airflow": "150 cfm", "material": "duct board"}
    supply, back = {"a": {"from": "unit", "to": "east", **piece}}, {"b": {"from": "hall", "to": "unit", **piece}}
    mover = {"unit": {"kind": "air handler", "airflow": "150 cfm", "available_static": "0.3 in w.c."}}
    grilles = {"grilles": "0 in w.c."}
    apart = made(
        equipment=mover,
        ducts={
            "supplies": {"mover": "unit", "runs": supply, "losses": grilles},
            "returns": {"mover": "unit", "runs": back, "losses": grilles},
        },
    )
    together = made(equipment=mover, ducts={"unit": {"runs": {**supply, **back}, "losses": grilles}})

    assert len(circuits(apart)) == 1
    assert clean_budget(apart, circuits(apart)[0]).low == pytest.approx(
        clean_budget(together, circuits(together)[0]).low
    )
