"""A bath fan that runs on demand moves less than 1 cfm for each square foot of its bath.

Trade guidance sizes the fan of a bath of up to 100 ft2 by its floor: 1 cfm for each square foot, never less than
the code's 50 cfm. It clears the mirror in a reasonable time.

The usual cause is the smallest fan in the catalog for a family bath. Choose the next size, or let it run a little
all day. A fan that runs all day is not held to this.
"""

from checker.case import Case, NotApplicable, quantity
from checker.design.rooms import Room
from checker.quantities.local_exhaust import RoomExhaust, local_exhaust
from checker.quantities.room_uses import rooms_used_as
from checker.rule import Finding, Meets, Num, Rule


def bathrooms(case: Case) -> list[Room]:
    """Bathrooms whose floor area is stated or left open."""
    return [
        room
        for room in rooms_used_as(case, "bathroom")
        if room.floor_area is not None or f"{room.path}.floor_area" in case.design.tbd
    ]


@quantity("airflow", "floor area x airflow per area")
def flow_for_floor(case: Case, room: Room) -> float:
    """What the guidance gives to a bath of this size. Raises NotApplicable above 100 ft2."""
    area = case.get(room, "floor_area")
    if area > case.limit("large-bath-floor") * (1 + 1e-9):
        raise NotApplicable("a bath of this size is judged by its fixtures")
    return float(area * case.limit("bath-fan-per-floor"))


@quantity("airflow", "by the code's table")
def asked_all_day(case: Case, _room: Room) -> float:
    """What the code asks of any bath all day."""
    return float(case.limit("bath-exhaust-continuous"))


@quantity("airflow", "by the code's table")
def asked_on_demand(case: Case, _room: Room) -> float:
    """What the code asks of any bath on demand."""
    return float(case.limit("bath-exhaust-on-demand"))


def check(room: Room, exhaust: RoomExhaust, advised: float, all_day: float, least: float) -> Meets | Finding:
    """Compare what runs on demand with the advice."""
    if not exhaust.present:
        raise NotApplicable("nothing is said to exhaust it; another rule asks for that")
    if exhaust.continuous >= all_day:
        raise NotApplicable("enough runs all day")
    if exhaust.on_demand < least:
        raise NotApplicable("it is below what the code asks, which another rule says")
    numbers = {"name": Num(room.name), "most": Num(exhaust.on_demand, "airflow")}
    if exhaust.reaches(all_day, advised):
        return Meets(numbers)
    return Finding(
        "{name} gets {most} of exhaust on demand, less than the {flow_for_floor} that trade guidance gives its floor",
        help="choose a fan of {flow_for_floor} or more, or one that also runs slowly all day", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-27", name="bath-fan-small-for-its-floor", severity="note", since="0.1",
    over=bathrooms, needs=(local_exhaust, flow_for_floor, asked_all_day, asked_on_demand),
    cites=("bath-fan-per-floor",), check=check, nothing="no bathroom states its floor area", answers=("B23",),
)  # fmt: skip
