"""Distances and heights between outdoor openings: what is known, what is at least and at most so."""

from math import hypot, inf
from typing import Any

import pytest

from checker.case import Case, Missing
from checker.quantities.clearances import Neighbor, settled
from checker.quantities.opening_kinds import is_mechanical, kind
from checker.quantities.places import Span, bearing, distance_between, height_above
from tests.rules.case_files import START, case_of, merged

FT = 0.3048


def case_with(openings: dict[str, Any], **sections: Any) -> Case:
    case, faults = case_of(merged(START, {"openings": openings, **sections}))
    assert not faults, faults
    return case


def apart(case: Case, one: str, other: str) -> Span:
    return distance_between(case, case.design.openings[one], case.design.openings[other])


@pytest.mark.parametrize(
    ("wall", "degrees"),
    [("south gable", 180.0), ("North-East", 45.0), ("west", 270.0), ("lake side", None), (None, None),
     ("south wall of the east wing", None)],
)  # fmt: skip
def test_the_bearing_of_a_wall_by_its_name(wall: str | None, degrees: float | None) -> None:
    assert bearing(wall) == degrees


def test_a_window_is_a_rectangle_in_its_wall() -> None:
    # by hand: window 4 ft wide and 3 ft high in an east wall, terminal on the south wall around the corner
    case = case_with({
        "cap": {"kind": "exhaust", "at": {"east": "6 ft", "north": "0 ft", "up": "8 ft"}},
        "window": {"kind": "window", "wall": "east", "width": "4 ft", "height": "3 ft",
                   "at": {"east": "10 ft", "north": "5 ft", "up": "5 ft"}},
    })  # fmt: skip
    assert apart(case, "cap", "window").low == pytest.approx(hypot(4, 3, 1.5) * FT, abs=1e-9)
    assert apart(case, "cap", "window").known


def test_an_unknown_size_leaves_a_span_that_holds_the_truth() -> None:
    place = {"kind": "window", "at": {"east": "20 ft", "north": "0 ft", "up": "5 ft"}}
    cap = {"kind": "exhaust", "at": {"east": "0 ft", "north": "0 ft", "up": "5 ft"}}
    span = apart(case_with({"cap": cap, "window": place}), "cap", "window")
    sized = {**place, "wall": "south", "width": "6 ft", "height": "4 ft"}
    true = apart(case_with({"cap": cap, "window": sized}), "cap", "window")
    assert span.low < true.low < span.high == pytest.approx(20 * FT)
    assert span.missing == ("openings.window.width", "openings.window.height", "openings.window.wall")


def test_unknown_coordinates_leave_what_is_known_on_the_plan() -> None:
    case = case_with({
        "intake": {"kind": "intake", "at": {"east": "0 ft", "north": "0 ft"}},
        "stack": {"kind": "plumbing vent", "at": {"east": "12 ft", "north": "0 ft", "up": "20 ft"}},
    })  # fmt: skip
    span = apart(case, "intake", "stack")
    assert (span.low, span.high) == (pytest.approx(12 * FT), inf)
    assert span.missing == ("openings.intake.at.up",)


def test_a_statement_by_kind_is_exact_only_for_the_only_one() -> None:
    intake = {"kind": "intake", "clear_of": {"plumbing vent": "8 ft"}}
    one = case_with({"intake": intake, "a": {"kind": "plumbing vent"}})
    two = case_with({"intake": intake, "a": {"kind": "plumbing vent"}, "b": {"kind": "plumbing vent"}})
    assert apart(one, "intake", "a") == Span(8 * FT, 8 * FT)
    assert (apart(two, "intake", "a").low, apart(two, "intake", "a").high) == (8 * FT, inf)


def test_positions_win_over_a_statement() -> None:
    case = case_with({
        "intake": {"kind": "intake", "at": {"east": "0 ft", "north": "0 ft", "up": "8 ft"}, "clear_of": {"cap": "11 ft"}},
        "cap": {"kind": "exhaust", "at": {"east": "6 ft", "north": "0 ft", "up": "8 ft"}},
    })  # fmt: skip
    assert apart(case, "intake", "cap").high == pytest.approx(6 * FT)


def test_heights_stated_from_either_side() -> None:
    case = case_with({
        "intake": {"kind": "intake"},
        "cap": {"kind": "exhaust", "above": {"intake": "3 ft"}},
        "low-cap": {"kind": "exhaust", "height_over_grade": "2 ft"},
    })  # fmt: skip
    intake, cap, low = (case.design.openings[name] for name in ("intake", "cap", "low-cap"))
    assert height_above(case, cap, intake).low == pytest.approx(3 * FT)
    assert height_above(case, intake, cap).low == pytest.approx(-3 * FT)
    assert height_above(case, low, intake).missing == ("openings.intake.at",)


def test_an_offender_counts_before_what_is_missing() -> None:
    known = Neighbor("near", None, Span(1.0, 1.0), Span(0.0, 0.0), Span(0.0, 0.0))
    open_one = Neighbor("open", None, Span(0.0, inf, ("a.b",)), Span(-inf, inf), Span(-inf, inf))
    assert settled([open_one, known], 2.0).offends
    with pytest.raises(Missing) as gap:
        settled([open_one], 2.0)
    assert gap.value.paths == ("a.b",)


@pytest.mark.parametrize(
    ("sections", "word"),
    [
        ({"fans": {"f": {"role": "supply", "from": "x"}}}, "outdoor air intake"),
        ({"fans": {"f": {"role": "exhaust", "to": "x"}}}, "exhaust"),
        ({"fans": {"f": {"role": "recovery", "from": "x", "to": "x"}}}, "combined intake and exhaust"),
        ({"hoods": {"h": {"to": "x"}}}, "kitchen exhaust"),
        ({"dryers": {"d": {"to": "x"}}}, "dryer exhaust"),
        ({"combustion": {"w": {"draft": "natural draft", "terminal": "x"}}}, "combustion vent"),
        ({"combustion": {"w": {"draft": "sealed", "terminal": "x"}}}, "direct vent"),
        ({"equipment": {"u": {"outdoor_air": {"opening": "x"}}}}, "outdoor air intake"),
        ({"hoods": {"h": {"make_up_air": {"opening": "x"}}}}, "make-up air intake"),
    ],
)
def test_what_an_opening_is_by_its_use(sections: dict[str, Any], word: str) -> None:
    case = case_with({"x": {"on": "wall"}}, **sections)
    assert kind(case, case.design.openings["x"]) == word


def test_an_opening_of_which_nothing_is_said() -> None:
    case = case_with({"x": {"on": "wall"}, "chimney": {"on": "roof"}})
    with pytest.raises(Missing) as gap:
        kind(case, case.design.openings["x"])
    assert gap.value.paths == ("openings.x.kind",)
    assert kind(case, case.design.openings["chimney"]) == "chimney"


def test_a_make_up_opening_without_a_fan_is_passive() -> None:
    case = case_with({"x": {"kind": "make-up air intake"}}, hoods={"h": {"make_up_air": {"opening": "x"}}})
    assert not is_mechanical(case, case.design.openings["x"])
    driven = case_with({"x": {"kind": "make-up air intake"}}, fans={"f": {"role": "supply", "from": "x"}})
    assert is_mechanical(driven, driven.design.openings["x"])
