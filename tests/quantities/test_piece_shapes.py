"""Loss coefficients of pieces by their stated shape, on the velocity of their own duct."""

from copy import deepcopy
from typing import Any

import pytest

from checker.case import Case, Missing
from checker.quantities.dryer_duct import length_with_fittings
from checker.quantities.duct_losses import Item, duct_items
from checker.quantities.exhaust_duct import elbow_count
from tests.rules.case_files import case_of

FLOW = 0.05
DENSITY = 1.2041


def made(pieces: Any, size: str = "6 in", **more: Any) -> Case:
    duct = {"size": size, "length": "10 ft", "material": "galvanized steel", "pieces": pieces, **more}
    fans = {"fan": {"role": "supply", "settings": {"continuous": "100 cfm at 0.3 in w.c."}, "duct": duct}}
    case, faults = case_of({"design_format": 1, "project": {"title": "pieces", "code": "irc-2021"}, "fans": fans})
    assert not faults, faults
    return case


def fittings(case: Case) -> Item:
    return duct_items(case, case.design.fans["fan"].duct)[-1]


def coefficients(pieces: Any, size: str = "6 in", **more: Any) -> tuple[float, float]:
    """Both bounds, worked back from the loss."""
    case = made(pieces, size, **more)
    area = case.design.fans["fan"].duct.size.area
    low, high = fittings(case).bounds(FLOW)
    pressure = DENSITY * (FLOW / area) ** 2 / 2
    return low / pressure, high / pressure


# HVAC Systems - Duct Design (SMACNA), Table 14-10, with a fifth either way; Principles of HVAC for the entries.
@pytest.mark.parametrize(
    ("pieces", "low", "high"),
    [
        ({"elbow-90": {"count": 2, "radius_ratio": 1.5, "made": "smooth"}}, 2 * 0.15 * 0.8, 2 * 0.15 * 1.2),
        ({"elbow-90": {"count": 1, "radius_ratio": 1.5, "gores": 5}}, 0.24 * 0.8, 0.24 * 1.2),
        ({"elbow-90": {"count": 1, "radius_ratio": 1.0, "made": "segmented"}}, 0.33 * 0.8, 0.42 * 1.2),
        ({"elbow-90": {"count": 1, "radius_ratio": 1.5}}, 0.15 * 0.8, 0.34 * 1.2),
        ({"elbow-90": {"count": 1, "radius_ratio": 1.0, "made": "smooth", "angle": "60 deg"}}, 0.1716 * 0.8, 0.1716 * 1.2),
        ({"elbow-45": {"count": 1, "radius_ratio": 1.0, "made": "smooth"}}, 0.22 * 0.8 * 0.5, 0.22 * 1.2 * 0.6),
        ({"elbow-90": {"count": 1, "made": "mitered"}}, 1.1, 1.3),
        ({"elbow-90": {"count": 1, "made": "mitered", "vanes": "yes"}}, 0.2, 0.53),
        ({"entry": {"count": 1, "made": "bellmouth"}}, 0.03 * 0.8, 0.03 * 1.2),
        ({"entry": {"count": 1, "made": "flush"}}, 0.4, 0.6),
        ({"elbow-90": {"count": 1, "radius_ratio": 4, "made": "smooth"}}, 0.12 * 0.8, 0.12 * 1.2),
    ],
)  # fmt: skip
def test_round_pieces(pieces: dict[str, Any], low: float, high: float) -> None:
    assert coefficients(pieces) == pytest.approx((low, high), rel=1e-9)


def test_a_bend_tighter_than_any_table_may_be_as_bad_as_a_mitered_one() -> None:
    low, high = coefficients({"elbow-90": {"count": 1, "radius_ratio": 0.4, "made": "smooth"}})

    assert low == pytest.approx(0.71 * 0.8)
    assert high == pytest.approx(1.2 * 1.2)


def test_a_rectangular_elbow_may_bend_either_way_and_be_slow() -> None:
    low, high = coefficients({"elbow-90": {"count": 1, "radius_ratio": 1.0}}, "16x8 in")

    assert (low, high) == pytest.approx((0.18 * 0.8, 0.25 * 1.8))  # aspects 2 and 0.5


def test_transitions_between_gradual_and_abrupt_on_the_duct_s_own_velocity() -> None:
    # Borda-Carnot on the narrow end: from 6 in to 8 in (1 - 36/64)^2; carried over to 8 in by the square of the areas.
    abrupt = (1 - 36 / 64) ** 2
    assert coefficients({"expansion": {"count": 1, "size": "8 in"}}) == pytest.approx((0.1 * abrupt, 1.2 * abrupt))
    wide = abrupt * (64 / 36) ** 2
    assert coefficients({"expansion": {"count": 1, "size": "6 in"}}, "8 in") == pytest.approx((0.1 * wide, 1.2 * wide))
    narrowing = 0.5 * (1 - 36 / 64)
    assert coefficients({"reducer": {"count": 1, "size": "8 in"}}) == pytest.approx((0.1 * narrowing, 1.2 * narrowing))


def test_a_shape_ends_the_question_how_elbows_are_made() -> None:
    assert fittings(made({"elbow-90": 2})).ask == "fans.fan.duct.elbow_radius"
    assert fittings(made({"elbow-90": {"count": 2, "radius_ratio": 1.5}})).ask == ""
    assert fittings(made({"elbow-90": {"count": 2, "radius_ratio": 1.5}, "elbow-45": 1})).ask == "fans.fan.duct.elbow_radius"


def test_a_count_alone_is_as_before_and_flexible_bends_have_their_own_row() -> None:
    assert coefficients({"elbow-90": 2}) == pytest.approx((0.3, 1.4))
    assert coefficients({"elbow-90": 1}, material="flex") == pytest.approx((0.3, 1.0))
    assert coefficients({"elbow-90": {"count": 1, "radius_ratio": 1.5}}, material="flex") == pytest.approx((0.3, 1.0))


@pytest.mark.parametrize(("told", "path"), [({"radius_ratio": 1.5}, "elbow-90.count"), ("tbd", "elbow-90")])
def test_how_many_is_asked_for(told: Any, path: str) -> None:
    case = made({"elbow-90": told})
    assert fittings(case) == Item("fittings of the duct of fan", (), None, f"fans.fan.duct.pieces.{path}")

    duct = {"size": "4 in", "length": "10 ft", "material": "galvanized steel", "pieces": {"elbow-90": told}}
    sections = {"dryers": {"dryer": {"duct": duct}}, "fans": {"bath": {"role": "exhaust", "duct": deepcopy(duct)}}}
    case, faults = case_of({"design_format": 1, "project": {"title": "pieces", "code": "irc-2021"}, **sections})
    assert not faults
    assert length_with_fittings(case, case.design.dryers["dryer"])[2] == (f"dryers.dryer.duct.pieces.{path}",)
    with pytest.raises(Missing) as gap:
        elbow_count(case, case.design.fans["bath"])
    assert gap.value.paths == (f"fans.bath.duct.pieces.{path}",)
