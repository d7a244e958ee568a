"""The water-level device does not stop the unit, or sits where it cannot see the water.

A device that only rings, or sits in a drain line which a down-flow coil can bypass, lets the pan run over. In units without
a place for a second drain or pan, such as down-flow coils and most wall units, the code wants it in the unit's own pan.

Show it wired to stop the unit, listed to UL 508, in the primary pan. Wiring is work for a licensed person.
"""

from checker.case import Case, Missing, path_of, quantity
from checker.design.condensate import CondensateDrain
from checker.design.equipment import Equipment
from checker.quantities.condensate import POINT_UNITS, catches_by, drains, methods, sources
from checker.quantities.parts import first_wrong, known
from checker.rule import Finding, Meets, Num, Rule

SAYS = {
    "stops_unit": ("does not stop the unit", "wire it to stop the unit"),
    "place": (
        "sits outside the unit's own pan, and the unit has no place for a second drain or pan",
        "place it inside the primary pan, not in the drain line",
    ),
    "listing": ("is listed to {listing}, not to UL 508", "choose one listed to UL 508"),
}


def out_of_place(case: Case, drain: CondensateDrain) -> bool:
    """Whether the device sits outside the primary pan of a unit that has no place for a second drain or pan."""
    if "switch" not in methods(case, drain):
        return False
    place = None if drain.switch is None else case.maybe(drain.switch, "place")
    if place is None:
        raise Missing(f"{drain.path}.switch.place")
    if place == "primary pan":
        return False
    stated = case.maybe(drain, "down_flow")
    if stated is not None:
        return bool(stated)
    if any(isinstance(source, Equipment) and source.kind in POINT_UNITS for source in sources(case, drain)):
        return True
    raise Missing(path_of(drain, "down_flow"))


def listing(case: Case, drain: CondensateDrain) -> str | None:
    """Listing of the device, None where none is stated."""
    stated = None if drain.switch is None else case.maybe(drain.switch, "listing")
    return None if stated is None else str(stated)


@quantity()
def wrong_part(case: Case, drain: CondensateDrain) -> str:
    """What of the device is wrong, "" where nothing is; a wrong part does not wait for the others."""
    path = path_of(drain, "switch")
    return first_wrong([
        ("stops_unit", lambda: not known(case, drain.switch, path, "stops_unit")),
        ("place", lambda: out_of_place(case, drain)),
        ("listing", lambda: "508" not in (listing(case, drain) or "508")),
    ])  # fmt: skip


def check(drain: CondensateDrain, wrong: str) -> Meets | Finding:
    """It stops the unit, sits in the pan where that is the only place, and is listed to UL 508."""
    if not wrong:
        return Meets()
    what, change = SAYS[wrong]
    return Finding(
        f"the water-level device of {drain.name} {what}", at=f"switch.{wrong}", help=change,
        numbers={"listing": Num("" if drain.switch is None else drain.switch.listing or "")},
    )  # fmt: skip


RULE = Rule(
    code="COND-12", name="water-level-device-misplaced", severity="correction", since="0.1",
    over=drains, when=catches_by("switch", "pan with switch"),
    needs=(wrong_part,), cites=("water-level-device",), check=check,
    nothing="no condensate drain is drawn", answers=("J07", "J08", "J09"),
)  # fmt: skip
