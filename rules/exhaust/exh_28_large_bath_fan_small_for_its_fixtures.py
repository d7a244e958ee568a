"""The exhaust of a large bath is too small for the fixtures in it.

Above 100 ft2 the steam of a shower no longer finds its way to one small fan. Trade guidance then adds 50 cfm for
each toilet, shower and tub, and 100 cfm for a jetted tub.

The usual cause is one common bath fan in the middle of a large room. Put a fan near each wet corner, or one remote
fan with a grille at each.
"""

from checker.case import Case, NotApplicable, quantity
from checker.design.rooms import Room
from checker.quantities.local_exhaust import RoomExhaust, local_exhaust
from checker.quantities.room_uses import rooms_used_as
from checker.rule import Finding, Meets, Num, Rule


def large_baths(case: Case) -> list[Room]:
    """Bathrooms larger than 100 ft2, where the file says how large they are."""
    least = case.limit("large-bath-floor") * (1 + 1e-9)
    return [room for room in rooms_used_as(case, "bathroom") if room.floor_area is not None and room.floor_area > least]


@quantity("airflow", "sum over toilets, showers and tubs")
def flow_for_fixtures(case: Case, room: Room) -> float:
    """What the guidance gives to the fixtures."""
    each, jetted = case.limit("fixture-exhaust"), case.limit("jetted-tub-exhaust")
    airflows = {"toilet": each, "shower": each, "tub": each, "jetted tub": jetted}
    return float(sum(airflows.get(fixture, 0.0) for fixture in case.get(room, "fixtures")))


@quantity("airflow", "by the code's table")
def least_on_demand(case: Case, _room: Room) -> float:
    """What the code asks of any bath on demand."""
    return float(case.limit("bath-exhaust-on-demand"))


def check(room: Room, exhaust: RoomExhaust, advised: float, least: float) -> Meets | Finding:
    """Compare everything that exhausts the room with the sum."""
    if not exhaust.present:
        raise NotApplicable("nothing is said to exhaust it; another rule asks for that")
    if exhaust.on_demand < least and advised > least:
        raise NotApplicable("it is below what the code asks of any bath on demand")
    numbers = {"name": Num(room.name), "most": Num(exhaust.on_demand, "airflow")}
    if exhaust.reaches(float("inf"), advised):
        return Meets(numbers)
    return Finding(
        "{name} gets {most} of exhaust in all; trade guidance gives its fixtures {flow_for_fixtures}",
        help="add fans near the shower and the toilet until they move {flow_for_fixtures} together", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-28", name="large-bath-fan-small-for-its-fixtures", severity="note", since="0.1",
    over=large_baths, needs=(local_exhaust, flow_for_fixtures, least_on_demand),
    cites=("large-bath-floor", "fixture-exhaust", "jetted-tub-exhaust"), check=check,
    nothing="no bathroom is said to be larger than 100 ft2", answers=("B24",),
)  # fmt: skip
