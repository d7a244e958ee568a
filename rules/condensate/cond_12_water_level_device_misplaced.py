"""The water-level device does not stop the unit, or sits where it cannot see the water.

A device that only rings, or sits in a drain line which a down-flow coil can bypass, lets the pan run over. In units without
a place for a second drain or pan, such as down-flow coils and most wall units, the code wants it in the unit's own pan.

Show it wired to stop the unit, listed to UL 508, in the primary pan. Wiring is work for a licensed person.
"""

from checker.case import Case, Missing, given, path_of, quantity
from checker.design.condensate import CondensateDrain
from checker.design.equipment import Equipment
from checker.quantities.condensate import POINT_UNITS, catches_by, drains, methods, sources
from checker.rule import Finding, Meets, Rule


@quantity()
def out_of_place(case: Case, drain: CondensateDrain) -> bool:
    """Whether the device sits outside the primary pan of a unit that has no place for a second drain or pan."""
    if "switch" not in methods(case, drain):
        return False
    if drain.switch is None:
        raise Missing(f"{drain.path}.switch.place")
    if case.get(drain.switch, "place") == "primary pan":
        return False
    stated = case.maybe(drain, "down_flow")
    if stated is not None:
        return bool(stated)
    if any(isinstance(source, Equipment) and source.kind in POINT_UNITS for source in sources(case, drain)):
        return True
    raise Missing(path_of(drain, "down_flow"))


@quantity()
def listing(case: Case, drain: CondensateDrain) -> str | None:
    """Listing of the device, None where none is stated."""
    stated = None if drain.switch is None else case.maybe(drain.switch, "listing")
    return None if stated is None else str(stated)


def check(drain: CondensateDrain, stops: bool, misplaced: bool, listed: str | None) -> Meets | Finding:
    """It stops the unit, sits in the pan where that is the only place, and is listed to UL 508."""
    if not stops:
        what, field, change = "does not stop the unit", "stops_unit", "wire it to stop the unit"
    elif misplaced:
        what, field = "sits outside the unit's own pan, and the unit has no place for a second drain or pan", "place"
        change = "place it inside the primary pan, not in the drain line"
    elif listed is not None and "508" not in listed:
        what, field, change = "is listed to {listing}, not to UL 508", "listing", "choose one listed to UL 508"
    else:
        return Meets()
    return Finding(f"the water-level device of {drain.name} {what}", at=f"switch.{field}", help=change)


RULE = Rule(
    code="COND-12", name="water-level-device-misplaced", severity="correction", since="0.1",
    over=drains, when=catches_by("switch", "pan with switch"),
    needs=(given("switch.stops_unit"), out_of_place, listing), cites=("water-level-device",), check=check,
    nothing="no condensate drain is drawn", answers=("J07", "J08", "J09"),
)  # fmt: skip
