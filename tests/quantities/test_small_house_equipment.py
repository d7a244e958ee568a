"""One wall unit for the main body, one for a bedroom, one slim-duct unit for the small rooms: when does that fit.

The house: 604 ft2 of main body, a bedroom of 160 ft2, bath and laundry of 98 ft2, a second bedroom of 120 ft2. The
units give 10,400, 6,100 and 6,100 Btu/h at -4 degF and turn down to 3,000, 2,000 and 2,000, as small ones do.
"""

from typing import Any

import pytest

from checker.judge import judge_rule
from tests.rules.case_files import case_of, rule_of

AREAS = {"main-room": 604, "bedroom": 160, "bath-and-laundry": 98, "small-bedroom": 120}


def house(intensity: float, of_the_ducts: list[str]) -> dict[str, Any]:
    """A design whose rooms lose `intensity` Btu/h for each ft2 on the design day."""
    uses = {"main-room": "living", "bedroom": "bedroom", "bath-and-laundry": "bathroom", "small-bedroom": "bedroom"}
    return {
        "design_format": 1,
        "project": {"title": "a small house", "code": "irc-2021"},
        "site": {"winter_design": "-4 degF"},
        "rooms": {
            name: {"use": uses[name], "floor_area": f"{area} ft2", "heating_load": f"{area * intensity} Btu/h"}
            for name, area in AREAS.items()
        },
        "equipment": {
            "main-head": head("wall unit", "main-room", ["main-room"], 10_400, 3_000),
            "bed-head": head("wall unit", "bedroom", ["bedroom"], 6_100, 2_000),
            "slim-duct": head("slim duct unit", "attic", of_the_ducts, 6_100, 2_000),
        },
    }


def head(kind: str, location: str, serves: list[str], cold: int, least: int) -> dict[str, Any]:
    heating = {"rated": f"{cold + 1000} Btu/h", "at_design": f"{cold} Btu/h", "least": f"{least} Btu/h"}
    return {"kind": kind, "location": location, "serves": serves, "heating": heating}


def faulted(intensity: float, of_the_ducts: list[str]) -> set[tuple[str, str]]:
    """(rule, unit) of every finding on too little or far too much heating."""
    found = set()
    for code in ("EQUIP-01", "EQUIP-04"):
        case, faults = case_of(house(intensity, of_the_ducts))
        assert not faults
        for outcome in judge_rule(case, rule_of(code)):
            no_habitable = code == "EQUIP-01" and outcome.path.endswith("slim-duct") and of_the_ducts == SMALL_ROOMS
            wanted = ("not-applicable",) if no_habitable else ("meets", "finding")
            assert outcome.outcome in wanted, outcome
            if outcome.outcome == "finding":
                found.add((code, outcome.path.split(".")[1]))
    return found


SMALL_ROOMS = ["bath-and-laundry"]
WITH_A_BEDROOM = ["bath-and-laundry", "small-bedroom"]


def test_the_slim_duct_unit_for_bath_and_laundry_alone_never_turns_down() -> None:
    # It would take 2,000 / 98 = 20.4 Btu/h ft2, where the main body asks for more than 10,400 / 604 = 17.2.
    for intensity in (10.0, 14.0, 17.0, 20.0):
        assert ("EQUIP-04", "slim-duct") in faulted(intensity, SMALL_ROOMS)
    assert ("EQUIP-01", "main-head") in faulted(20.5, SMALL_ROOMS)


@pytest.mark.parametrize("intensity", [12.6, 15.0, 17.2])
def test_with_the_second_bedroom_on_the_ducts_all_three_fit(intensity: float) -> None:
    # From 2,000 / 160 = 12.5, where the bedroom's head still turns down, to 10,400 / 604 = 17.2 Btu/h ft2.
    assert faulted(intensity, WITH_A_BEDROOM) == set()


def test_a_tighter_house_leaves_the_bedroom_head_too_large() -> None:
    assert faulted(12.4, WITH_A_BEDROOM) == {("EQUIP-04", "bed-head")}


def test_a_leakier_house_outgrows_the_main_head() -> None:
    # The code's 68 degF lets 72/74 of the load at 70 degF go: 17.2 x 74/72 = 17.7.
    assert faulted(17.6, WITH_A_BEDROOM) == set()
    assert faulted(17.8, WITH_A_BEDROOM) == {("EQUIP-01", "main-head")}
