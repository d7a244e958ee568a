"""A condensate pump in an attic or crawl space does not stop its unit when it fails.

Nobody sees a dead pump up there until the ceiling comes down. Most pumps carry a second float switch for this; it only has to
be wired.

Show the pump's safety switch in the unit's control circuit, as the code asks. Wiring is work for a licensed person.
"""

from checker.case import Case, Missing, given
from checker.design.condensate import CondensateDrain
from checker.quantities.condensate import UNINHABITABLE, drains, place_of, sources
from checker.rule import Finding, Meets, Rule


def pumps_out_of_sight(case: Case, drain: CondensateDrain) -> bool:
    """No pump of it stands in an attic or crawl space."""
    pump = case.maybe(drain, "pump")
    if pump is None:
        return False
    place = case.maybe(pump, "location")
    room = case.design.rooms.get(str(place))
    if room is not None:
        return room.use in UNINHABITABLE
    if place is not None:
        return place in UNINHABITABLE
    places = [place_of(case, source) for source in sources(case, drain)]
    if None in places:
        raise Missing(f"{pump.path}.location")
    return any(each in UNINHABITABLE for each in places)


def check(drain: CondensateDrain, stops: bool) -> Meets | Finding:
    """The pump must stop the unit."""
    if stops:
        return Meets()
    return Finding(
        f"the condensate pump of {drain.name} does not stop the unit when it fails",
        at="pump.stops_unit",
        help="show the pump's safety switch in the unit's control circuit",
    )


RULE = Rule(
    code="COND-14", name="pump-does-not-stop-unit", severity="correction", since="0.1",
    over=drains, when=pumps_out_of_sight, needs=(given("pump.stops_unit"),), cites=("condensate-pump-interlock",),
    check=check,
    nothing="no condensate drain is drawn", answers=("J14",),
)  # fmt: skip
