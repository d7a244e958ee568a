"""The solved duct network against independent solutions: scipy with its own friction formula, symmetry, mass balance."""

from collections.abc import Callable
from itertools import pairwise
from math import log10, pi
from typing import Any

import pytest
from scipy.optimize import brentq, fsolve

from checker.case import CannotJudge, Case, Missing
from checker.quantities.circuits import circuits
from checker.quantities.damper_balance import free_joint
from checker.quantities.duct_mesh import HELD
from checker.quantities.duct_solved import SolvedSystem, solved_system
from checker.quantities.static_budget import clean_budget
from tests.rules.case_files import case_of

CFM = 4.719474432e-4
INCH_OF_WATER = 249.08891
DENSITY, VISCOSITY = 1.2041, 1.8205e-5
START = {"design_format": 1, "project": {"title": "ducts", "code": "irc-2021"}}
ROOMS = {name: {"use": "bedroom"} for name in ("east", "west", "hall")}
METAL = {"material": "galvanized steel", "pieces": "none"}
CURVE = [(100, 0.40), (200, 0.30), (300, 0.10), (340, 0.0)]


def points(curve: list[tuple[float, float]]) -> list[dict[str, str]]:
    return [{"airflow": f"{flow} cfm", "pressure": f"{pressure} in w.c."} for flow, pressure in curve]


def solved(design: dict[str, Any], place: int = 0) -> SolvedSystem:
    case = made(design)
    return solved_system(case, circuits(case)[place])


def made(design: dict[str, Any]) -> Case:
    case, faults = case_of({**START, "rooms": ROOMS, **design})
    assert not faults, faults
    return case


def unit(runs: dict[str, Any], outlets: dict[str, Any], **more: Any) -> dict[str, Any]:
    equipment = {"unit": {"kind": "air handler", "airflow": "250 cfm", "curves": {"high": {"points": points(CURVE)}}}}
    return {"equipment": equipment, "ducts": {"unit": {"runs": runs, "outlets": outlets}}, **more}


def register(room: str, airflow: str, drop: str = "0.03 in w.c.") -> dict[str, str]:
    return {"room": room, "kind": "supply register", "airflow": airflow, "pressure_drop": drop}


def friction(flow: float, inches: float, feet: float, roughness: float = 0.09e-3, density: float = DENSITY) -> float:
    """Darcy-Weisbach with Colebrook's equation solved by scipy; ASHRAE Handbook - Fundamentals 2021, chapter 21."""
    diameter = inches * 0.0254
    velocity = abs(flow) / (pi * diameter**2 / 4)
    reynolds = density * velocity * diameter / VISCOSITY

    def colebrook(root: float) -> float:
        return root + 2 * log10(roughness / diameter / 3.7 + 2.51 * root / reynolds)

    factor = 1 / brentq(colebrook, 1.0, 20.0) ** 2
    return factor * feet * 0.3048 / diameter * density * velocity**2 / 2 * (1 if flow >= 0 else -1)


def curve_pressure(flow: float) -> float:
    """The fan curve, straight between its points."""
    for (low, high_pressure), (high, low_pressure) in pairwise(CURVE):
        if flow <= high * CFM:
            share = (flow / CFM - low) / (high - low)
            return (high_pressure + share * (low_pressure - high_pressure)) * INCH_OF_WATER
    raise ValueError(flow)


def root(function: Callable[[Any], Any], start: list[float]) -> list[float]:
    found, _, flag, message = fsolve(function, start, full_output=True, xtol=1e-12)
    assert flag == 1, message
    return [float(each) for each in found]


TREE = {
    "trunk": {"from": "unit", "size": "9 in", "length": "20 ft", **METAL},
    "a": {"from": "trunk", "to": "east-register", "size": "7 in", "length": "10 ft", **METAL},
    "b": {"from": "trunk", "to": "west-register", "size": "6 in", "length": "30 ft", **METAL},
    "back": {"from": "hall-grille", "to": "unit", "size": "9 in", "length": "15 ft", **METAL},
}
TREE_OUTLETS = {
    "east-register": register("east", "150 cfm"),
    "west-register": register("west", "100 cfm", "0.02 in w.c."),
    "hall-grille": {"room": "hall", "kind": "return grille", "airflow": "250 cfm", "pressure_drop": "0.05 in w.c."},
}


def test_a_tree_with_supply_and_return_agrees_with_scipy() -> None:
    found = solved(unit(TREE, TREE_OUTLETS))

    def unbalanced(flows: Any) -> list[float]:
        a, b = flows
        rise = curve_pressure(a + b)
        shared = friction(a + b, 9, 35) + 0.05 * INCH_OF_WATER * ((a + b) / (250 * CFM)) ** 2
        way_a = friction(a, 7, 10) + 0.03 * INCH_OF_WATER * (a / (150 * CFM)) ** 2
        way_b = friction(b, 6, 30) + 0.02 * INCH_OF_WATER * (b / (100 * CFM)) ** 2
        return [rise - shared - way_a, rise - shared - way_b]

    a, b = root(unbalanced, [0.07, 0.05])
    assert found.low.flows["ducts.unit.runs.a"] == pytest.approx(a, rel=1e-6)
    assert found.low.flows["ducts.unit.runs.b"] == pytest.approx(b, rel=1e-6)
    assert found.low.rises["equipment.unit"] == pytest.approx(curve_pressure(a + b), rel=1e-6)
    outlet = found.low.pressures[found.network.center.end]
    assert outlet == pytest.approx(curve_pressure(a + b) - friction(a + b, 9, 15) - 0.05 * INCH_OF_WATER
                                   * ((a + b) / (250 * CFM)) ** 2, rel=1e-6)  # fmt: skip


def test_rougher_steel_is_the_other_bound() -> None:
    """Galvanized steel lies between 0.09 and 0.15 mm (ASHRAE Handbook - Fundamentals 2021, chapter 21, table 1)."""
    runs = {"a": {**TREE["a"], "from": "unit"}}
    found = solved(unit(runs, {"east-register": register("east", "250 cfm")}))

    def spare(roughness: float) -> Callable[[float], float]:
        return lambda q: curve_pressure(q) - friction(q, 7, 10, roughness) - 0.03 * INCH_OF_WATER * (q / (250 * CFM)) ** 2

    for answer, roughness in ((found.low, 0.09e-3), (found.high, 0.15e-3)):
        assert answer is not None
        expected = brentq(spare(roughness), 150 * CFM, 339 * CFM)
        assert answer.flows["ducts.unit.runs.a"] == pytest.approx(expected, rel=1e-6)


def test_dampers_take_what_the_longest_way_needs_more() -> None:
    found = solved(unit(TREE, TREE_OUTLETS))
    balance = found.balances[0]
    assert balance is not None
    a, b = 150 * CFM * balance.share, 100 * CFM * balance.share

    way_a = friction(a, 7, 10) + 0.03 * INCH_OF_WATER * balance.share**2
    way_b = friction(b, 6, 30) + 0.02 * INCH_OF_WATER * balance.share**2
    assert balance.critical == "ducts.unit.outlets.west-register"
    assert balance.takes["ducts.unit.outlets.east-register"] == pytest.approx(way_b - way_a, rel=1e-3)
    shared = friction(a + b, 9, 35) + 0.05 * INCH_OF_WATER * balance.share**2
    assert way_b + shared == pytest.approx(curve_pressure(a + b), rel=1e-3)  # the share is found to 1e-4


RING = {
    "riser": {"from": "unit", "size": "9 in", "length": "5 ft", **METAL},
    "left": {"from": "riser", "to": "east-register", "size": "6 in", "length": "20 ft", **METAL},
    "right": {"from": "riser", "to": "west-register", "size": "6 in", "length": "20 ft", **METAL},
    "across": {"from": "east-register", "to": "west-register", "size": "6 in", "length": "12 ft", **METAL},
}


def test_a_ring_is_symmetrical_and_its_far_side_stands_still() -> None:
    outlets = {"east-register": register("east", "125 cfm"), "west-register": register("west", "125 cfm")}
    flows = solved(unit(RING, outlets)).low.flows

    assert flows["ducts.unit.runs.left"] == pytest.approx(flows["ducts.unit.runs.right"], rel=1e-9)
    assert flows["ducts.unit.runs.across"] == pytest.approx(0.0, abs=1e-8)


def test_a_ring_that_is_not_symmetrical_agrees_with_scipy() -> None:
    outlets = {"east-register": register("east", "80 cfm"), "west-register": register("west", "170 cfm")}
    flows = solved(unit(RING, outlets)).low.flows

    def unbalanced(guess: Any) -> list[float]:
        left, right, across = guess
        drop_east = 0.03 * INCH_OF_WATER * ((left - across) / (80 * CFM)) ** 2
        drop_west = 0.03 * INCH_OF_WATER * ((right + across) / (170 * CFM)) ** 2
        top = curve_pressure(left + right) - friction(left + right, 9, 5)
        return [
            top - friction(left, 6, 20) - drop_east,
            top - friction(right, 6, 20) - drop_west,
            drop_east - friction(across, 6, 12) - drop_west,
        ]

    left, right, across = root(unbalanced, [0.06, 0.06, 0.01])
    assert flows["ducts.unit.runs.left"] == pytest.approx(left, rel=1e-6)
    assert flows["ducts.unit.runs.right"] == pytest.approx(right, rel=1e-6)
    assert flows["ducts.unit.runs.across"] == pytest.approx(across, rel=1e-5)


TWO_FANS: dict[str, Any] = {
    "equipment": {"unit": {"kind": "air handler", "airflow": "250 cfm", "curves": {"high": {"points": points(CURVE)}}}},
    "fans": {"fresh-fan": {"role": "supply", "settings": {"high": "100 cfm at 1 in w.c."}}},
    "ducts": {"unit": {
        "mover": "unit",
        "runs": {
            "out": {"from": "unit", "to": "east-register", "size": "8 in", "length": "10 ft", **METAL},
            "back": {"from": "hall-grille", "to": "box", "size": "7 in", "length": "15 ft", **METAL},
            "box": {"to": "unit", "size": "9 in", "length": "2 ft", **METAL},
            "fresh": {"from": "outdoors", "to": "fresh-fan", "size": "6 in", "length": "5 ft", **METAL},
            "fresh-in": {"from": "fresh-fan", "to": "box", "size": "6 in", "length": "5 ft", **METAL},
        },
        "outlets": {
            "east-register": register("east", "250 cfm"),
            "hall-grille": {"room": "hall", "kind": "return grille", "airflow": "150 cfm", "pressure_drop": "0.05 in w.c."},
        },
    }},
}  # fmt: skip


def test_two_fans_on_one_return_agree_with_scipy() -> None:
    flows = solved(TWO_FANS).low.flows
    fresh = 100 * CFM

    def unbalanced(whole: float) -> float:
        back = whole - fresh
        suction = friction(back, 7, 15) + 0.05 * INCH_OF_WATER * (back / (150 * CFM)) ** 2
        given = friction(whole, 9, 2) + friction(whole, 8, 10) + 0.03 * INCH_OF_WATER * (whole / (250 * CFM)) ** 2
        return curve_pressure(whole) - suction - given

    whole = brentq(unbalanced, 150 * CFM, 339 * CFM)
    assert flows["equipment.unit"] == pytest.approx(whole, rel=1e-6)
    assert flows["fans.fresh-fan"] == pytest.approx(fresh, rel=1e-9)
    assert flows["ducts.unit.outlets.hall-grille"] == pytest.approx(whole - fresh, rel=1e-6)


RECOVERY: dict[str, Any] = {
    "fans": {"recovery": {"role": "recovery", "settings": {"all": "100 cfm"}, "curves": {"all": {"points": points(
        [(40, 0.5), (100, 0.3), (160, 0.0)])}}}},
    "ducts": {"recovery": {
        "runs": {
            "in": {"from": "outdoors", "to": "recovery", "size": "5 in", "length": "10 ft", **METAL},
            "fresh": {"from": "recovery", "to": "east-fresh", "size": "5 in", "length": "30 ft", **METAL},
            "stale": {"from": "west-stale", "to": "recovery", "size": "6 in", "length": "8 ft", **METAL},
            "off": {"from": "recovery", "to": "outdoors", "size": "6 in", "length": "6 ft", **METAL},
        },
        "outlets": {
            "east-fresh": {"room": "east", "kind": "fresh air outlet", "airflow": "100 cfm", "pressure_drop": "0.02 in w.c."},
            "west-stale": {"room": "west", "kind": "exhaust grille", "airflow": "100 cfm", "pressure_drop": "0.02 in w.c."},
        },
    }},
}  # fmt: skip


def test_the_two_sides_of_a_recovery_unit_are_solved_apart() -> None:
    incoming, outgoing = (solved(RECOVERY, place) for place in (0, 1))

    def curve(flow: float) -> float:
        rate = flow / CFM
        return (0.5 - (rate - 40) / 60 * 0.2 if rate < 100 else 0.3 - (rate - 100) / 60 * 0.3) * INCH_OF_WATER

    def spare(inches: float, feet: float) -> Callable[[float], float]:
        return lambda q: curve(q) - friction(q, inches, feet) - 0.02 * INCH_OF_WATER * (q / (100 * CFM)) ** 2

    assert incoming.flow(incoming.low) == pytest.approx(brentq(spare(5, 40), 41 * CFM, 159 * CFM), rel=1e-6)
    assert outgoing.flow(outgoing.low) == pytest.approx(brentq(spare(6, 14), 41 * CFM, 159 * CFM), rel=1e-6)
    assert set(incoming.low.flows) & set(outgoing.low.flows) == set()
    assert [each.name for each in outgoing.network.terminals] == ["west-stale"]
    assert outgoing.low.pressures[free_joint(outgoing.network.terminals[0])] < 0.0


def test_thin_air_keeps_turbulent_flows_and_lowers_all_pressures() -> None:
    """Fan laws: at constant speed the airflow stays and the pressure falls with the density."""
    runs = {"a": {"from": "unit", "to": "east-register", "size": "8 in", "length": "0 ft", "pieces": "none"}}
    design = unit(runs, {"east-register": register("east", "200 cfm", "0.3 in w.c.")})
    low, high = solved(design), solved({**design, "site": {"elevation": "6000 ft"}})
    ratio = (1 - 2.25577e-5 * 6000 * 0.3048) ** 5.2559  # ASHRAE Handbook - Fundamentals 2021, chapter 1, equation 3

    assert low.flow(low.low) == pytest.approx(200 * CFM, rel=1e-4)  # the curve has 0.3 in w.c. at 200 cfm
    assert high.flow(high.low) == pytest.approx(200 * CFM, rel=1e-4)
    assert high.low.rises["equipment.unit"] == pytest.approx(0.3 * INCH_OF_WATER * ratio, rel=1e-3)


def test_thin_air_in_a_duct_agrees_with_friction_at_that_density() -> None:
    runs = {"a": {**TREE["b"], "from": "unit"}}
    found = solved({**unit(runs, {"west-register": register("west", "200 cfm")}), "site": {"elevation": "1500 m"}})
    ratio = (1 - 2.25577e-5 * 1500) ** 5.2559

    def spare(q: float) -> float:
        grille = 0.03 * INCH_OF_WATER * ratio * (q / (200 * CFM)) ** 2
        return ratio * curve_pressure(q) - friction(q, 6, 30, density=ratio * DENSITY) - grille

    assert found.flow(found.low) == pytest.approx(brentq(spare, 101 * CFM, 339 * CFM), rel=1e-6)


def test_leakage_is_none_at_best_and_an_opening_at_the_mover_at_worst() -> None:
    design = unit(TREE, TREE_OUTLETS)
    design["ducts"]["unit"]["leakage"] = {"total": "40 cfm25"}
    found = solved(design)
    assert found.high is not None

    assert found.low.leaks == {}
    for joint, leak in found.high.leaks.items():
        pressure = found.high.pressures[joint]
        expected = 20 * CFM * (abs(pressure) / 25) ** 0.65  # power law through the test at 25 Pa, half on each side
        assert leak == pytest.approx(expected if pressure > 0 else -expected, rel=1e-6)
    assert len(found.high.leaks) == 2


def test_one_rated_point_is_held_up_to_its_pressure_and_no_further() -> None:
    design = unit(TREE, TREE_OUTLETS)
    enough = {"unit": {"kind": "air handler", "airflow": "250 cfm", "available_static": "0.5 in w.c."}}
    found = solved({**design, "equipment": enough})

    assert found.flow(found.low) == pytest.approx(250 * CFM)
    assert "one rated point" in found.network.model.words
    with pytest.raises(CannotJudge, match="one rated point"):
        solved({**design, "equipment": {"unit": {**enough["unit"], "available_static": "0.05 in w.c."}}})


def test_a_curve_of_total_pressure_gives_its_velocity_pressure_away() -> None:
    design = {
        "fans": {"fan": {"role": "supply", "settings": {"on": "200 cfm"}, "outlet_size": "6 in", "curves": {"on": {
            "basis": "total", "points": points(CURVE)}}}},
        "ducts": {"fan": {
            "runs": {"a": {**TREE["b"], "from": "fan"}}, "outlets": {"west-register": register("west", "200 cfm")},
        }},
    }  # fmt: skip
    found = solved(design)

    def spare(q: float) -> float:
        dynamic = DENSITY * (q / (pi * 0.1524**2 / 4)) ** 2 / 2
        return curve_pressure(q) - dynamic - friction(q, 6, 30) - 0.03 * INCH_OF_WATER * (q / (200 * CFM)) ** 2

    assert found.flow(found.low) == pytest.approx(brentq(spare, 101 * CFM, 339 * CFM), rel=1e-6)


def test_what_has_no_solution_says_why() -> None:
    runs = {"a": {**TREE["a"], "from": "unit", "size": "3 in", "length": "100 ft"}}
    with pytest.raises(CannotJudge, match="unit would run left of the stable, printed part of its curve"):
        solved(unit(runs, {"east-register": register("east", "250 cfm")}))
    with pytest.raises(Missing) as gap:
        solved(unit({**TREE, "lost": {"from": "trunk", **METAL}}, TREE_OUTLETS))
    assert "ducts.unit.runs.lost.to" in gap.value.paths


def many(count: int) -> dict[str, Any]:
    """A trunk of `count` pieces with a branch and a register at every one."""
    runs: dict[str, Any] = {}
    outlets: dict[str, Any] = {}
    for number in range(count):
        before = f"trunk-{number - 1}" if number else "unit"
        runs[f"trunk-{number}"] = {"from": before, "size": "20x16 in", "length": "6 ft", **METAL}
        runs[f"leg-{number}"] = {"from": f"trunk-{number}", "to": f"reg-{number}", "size": "5 in", "length": "12 ft", **METAL}
        outlets[f"reg-{number}"] = register("east", "45 cfm")
    curve = [(count * 20, 0.6), (count * 45, 0.4), (count * 70, 0.0)]
    equipment = {"unit": {"kind": "air handler", "airflow": f"{count * 45} cfm", "curves": {"high": {"points": points(curve)}}}}
    return {"equipment": equipment, "ducts": {"unit": {"runs": runs, "outlets": outlets}}}


def test_a_hundred_joints_end_to_end() -> None:
    found = solved(many(50))
    joints = {joint for each in found.network.passages for joint in (each.start, each.end)} - set(HELD)
    assert len(joints) >= 100
    for answer in (found.low, found.high):
        assert answer is not None
        for joint in joints:
            came = sum(answer.flows[each.key] for each in found.network.passages if each.end == joint)
            went = sum(answer.flows[each.key] for each in found.network.passages if each.start == joint)
            assert came == pytest.approx(went, abs=1e-8)
        near, far = (answer.flows[f"ducts.unit.runs.leg-{number}"] for number in (0, 49))
        assert near > far > 0.0

    lines = found.worksheet_lines("trade")
    assert max(map(len, lines)) <= 102
    assert sum(line.lstrip().startswith("leg-") for line in lines) == 100  # 50 at best, 50 at worst


def test_the_table_can_be_followed_by_hand() -> None:
    """Friction rate x length is the loss of a straight run, and the pressures at joints add up, in the printed digits."""
    lines = solved(unit(TREE, TREE_OUTLETS)).worksheet_lines("metric")
    rows = {line.split(":")[0].strip(): after.split() for line, after in pairwise(lines[: lines.index("losses at worst:")])}
    length, flow, speed, rate, _, _, loss, end = (float(rows["b"][place]) for place in (-9, -7, -6, -5, -4, -3, -2, -1))

    assert rate * length == pytest.approx(loss, rel=2e-3)
    assert flow / 1000 / (pi * 0.1524**2 / 4) == pytest.approx(speed, rel=2e-3)
    assert float(rows["trunk"][-1]) - loss == pytest.approx(end, rel=2e-3)
    assert max(map(len, lines)) <= 102


def test_the_static_pressure_that_a_ring_takes_agrees_with_scipy() -> None:
    """Every outlet at its design airflow: only the flow across the ring is unknown."""
    outlets = {"east-register": register("east", "80 cfm"), "west-register": register("west", "170 cfm")}
    case = made(unit(RING, outlets))
    found = clean_budget(case, circuits(case)[0])

    def around(across: float) -> float:
        left, right = 80 * CFM + across, 170 * CFM - across
        return friction(left, 6, 20) + friction(across, 6, 12) - friction(right, 6, 20)

    across = brentq(around, -0.02, 0.06)
    expected = friction(250 * CFM, 9, 5) + friction(170 * CFM - across, 6, 20) + 0.03 * INCH_OF_WATER
    assert across > 0.0
    assert found.low == pytest.approx(expected, rel=1e-6)
    assert [share.name for share in found.shares] == ["friction in right", "friction in riser", "outlet west-register"]


def test_a_ring_with_two_fans_has_no_budget() -> None:
    design = unit({**RING, "riser": {**RING["riser"], "to": "left"}, "fresh": {**METAL, "from": "fan", "to": "left",
                   "size": "6 in", "length": "4 ft"}},
                  {"east-register": register("east", "80 cfm"), "west-register": register("west", "170 cfm")},
                  fans={"fan": {"role": "supply", "settings": {"high": "100 cfm at 1 in w.c."}}})  # fmt: skip
    case = made(design)
    with pytest.raises(CannotJudge, match="several fans"):
        clean_budget(case, next(each for each in circuits(case) if each.name == "unit"))


def holder(**more: Any) -> dict[str, Any]:
    """The tree on a blower that is called one of constant airflow."""
    motor = {"kind": "air handler", "airflow": "250 cfm", "motor": "constant airflow", **more}
    return {**unit(TREE, TREE_OUTLETS), "equipment": {"unit": motor}}


def taken_by_tree(whole: float) -> float:
    """What the tree takes at this airflow, its branches at their solution."""

    def unequal(a: float) -> float:
        b = whole - a
        way_a = friction(a, 7, 10) + 0.03 * INCH_OF_WATER * (a / (150 * CFM)) ** 2
        return way_a - friction(b, 6, 30) - 0.02 * INCH_OF_WATER * (b / (100 * CFM)) ** 2

    a = brentq(unequal, 0.3 * whole, 0.9 * whole)
    shared = friction(whole, 9, 35) + 0.05 * INCH_OF_WATER * (whole / (250 * CFM)) ** 2
    return shared + friction(a, 7, 10) + 0.03 * INCH_OF_WATER * (a / (150 * CFM)) ** 2


def test_a_blower_that_holds_its_airflow_moves_less_beyond_its_limit() -> None:
    found = solved(holder(by_maker={"greatest_static": "0.05 in w.c."}))
    expected = brentq(lambda q: taken_by_tree(q) - 0.05 * INCH_OF_WATER, 50 * CFM, 250 * CFM)

    assert expected < 200 * CFM
    assert found.flow(found.low) == pytest.approx(expected, rel=1e-6)


def test_a_blower_that_holds_its_airflow_follows_its_curve_beyond() -> None:
    weak = [(60, 0.14), (150, 0.09), (260, 0.02), (300, 0.0)]
    found = solved(holder(curves={"high": {"points": points(weak)}}))
    expected = brentq(lambda q: taken_by_tree(q) - (0.09 - (q / CFM - 150) / 110 * 0.07) * INCH_OF_WATER, 151 * CFM, 259 * CFM)

    assert found.flow(found.low) == pytest.approx(expected, rel=1e-6)
    assert "follows that beyond" in found.network.model.words


@pytest.mark.parametrize("more", [{"by_maker": {"greatest_static": "0.3 in w.c."}}, {"curves": {"high": {"points": points(
    [(60, 0.6), (200, 0.5), (400, 0.0)])}}}], ids=["limit", "curve"])  # fmt: skip
def test_a_blower_that_holds_its_airflow_holds_it_within_its_limit(more: dict[str, Any]) -> None:
    found = solved(holder(**more))

    assert found.flow(found.low) == pytest.approx(250 * CFM, rel=1.01e-4)  # its upright piece leans by 1e-4
    assert found.low.rises["equipment.unit"] == pytest.approx(taken_by_tree(250 * CFM), rel=1e-3)


def test_a_blower_that_holds_its_airflow_without_curve_or_limit_is_not_known_beyond_its_rating() -> None:
    with pytest.raises(CannotJudge, match="a blower that holds its airflow; its ducts take more"):
        solved(holder(available_static="0.05 in w.c."))
