"""What a condensate drain drains, how its overflow is caught and how much water it carries."""

from typing import Any

import pytest

from checker.case import CannotJudge, Missing
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import condensate_flow, cooling_drained, methods, sources
from tests.rules.case_files import START, case_of, merged

UNITS = {
    "coil": {"kind": "air handler", "cooling": {"rated": "24000 Btu/h", "sensible": "18000 Btu/h"}},
    "head": {"kind": "wall unit", "cooling": "9000 Btu/h"},
}


def drain_in(condensate: dict[str, Any], **more: Any) -> tuple[Any, CondensateDrain]:
    """A case and its only drain."""
    case, faults = case_of(merged(START, {"equipment": UNITS, "condensate": condensate, **more}))
    assert not faults
    (drain,) = case.design.condensate.values()
    return case, drain


def test_named_after_its_unit() -> None:
    case, drain = drain_in({"head": {"size": "3/4 in"}})
    assert [source.name for source in sources(case, drain)] == ["head"]


def test_not_known_among_several() -> None:
    case, drain = drain_in({"line": {"size": "3/4 in"}})
    with pytest.raises(Missing, match=r"condensate\.line\.from"):
        sources(case, drain)


def test_capacities_add_up() -> None:
    case, drain = drain_in({"line": {"from": ["coil", "head"]}})
    assert cooling_drained(case, drain) == pytest.approx(33000 * 0.29307107)


def test_flow_from_latent_capacity() -> None:
    # 6,000 Btu/h latent at 1,050 Btu/lb and 8.33 lb/gal: 0.686 gal/h
    case, drain = drain_in({"coil": {"size": "3/4 in"}})
    assert condensate_flow(case, drain) * 3600 / 3.785412e-3 == pytest.approx(6000 / 1050 / 8.33, rel=0.005)


def test_flow_of_a_condensing_furnace_goes_by_its_input() -> None:
    # 1.1 lb per therm: 100,000 Btu/h makes 1.1 lb/h
    burner = {"furnace": {"kind": "furnace", "fuel": "gas", "draft": "sealed", "input": "100000 Btu/h"}}
    case, drain = drain_in({"furnace": {}}, combustion=burner)
    assert condensate_flow(case, drain) * 3600 * 1000 / 0.45359237 == pytest.approx(1.1, rel=0.001)


def test_flow_of_a_recovery_unit_is_open() -> None:
    case, drain = drain_in({"hrv": {}}, fans={"hrv": {"role": "recovery"}})
    with pytest.raises(CannotJudge):
        condensate_flow(case, drain)


@pytest.mark.parametrize(
    ("said", "read"),
    [
        ({"secondary": ["overflow drain", "switch"]}, {"overflow drain", "switch"}),
        ({"switch": "drain line"}, {"switch"}),
        ({"overflow_drain": {"size": "3/4 in"}}, {"overflow drain"}),
        ({"pan": {"depth": "2 in"}, "overflow_drain": {"size": "3/4 in"}}, {"pan with drain"}),
        ({"pan": {"depth": "2 in"}, "switch": "auxiliary pan"}, {"pan with switch"}),
        ({"pan": {"depth": "2 in"}, "switch": "none", "overflow_drain": "none"}, {"pan"}),
        ({"secondary": "none"}, set()),
        ({"pan": "none", "switch": "none", "overflow_drain": "none"}, set()),
    ],
)
def test_methods(said: dict[str, Any], read: set[str]) -> None:
    case, drain = drain_in({"coil": said})
    assert methods(case, drain) == read
