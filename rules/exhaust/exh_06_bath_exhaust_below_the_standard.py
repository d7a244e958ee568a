"""A bathroom has no exhaust, or less than ASHRAE 62.2 asks for.

The standard wants a fan in every room with a tub or a shower, whether it has a window or not: a little all day or
more on demand. It only counts where the project is held against that standard.

The usual cause is a bath with a window that the code lets go without a fan. Add a fan, or raise its setting.
"""

from checker.case import Case
from checker.design.rooms import Room
from checker.quantities.local_exhaust import RoomExhaust, local_exhaust
from checker.quantities.room_uses import rooms_used_as
from checker.rule import Finding, Meets, Num, Rule


def bathrooms(case: Case) -> list[Room]:
    """Rooms with a tub or shower; a toilet room has neither, nor has a bathroom whose fixtures say so."""
    wet = {"shower", "tub", "jetted tub", "sauna"}
    return [room for room in rooms_used_as(case, "bathroom") if not room.fixtures or wet & set(room.fixtures)]


def check(room: Room, exhaust: RoomExhaust, all_day: float, on_demand: float) -> Meets | Finding:
    """One of the two rates is enough."""
    numbers = {
        "name": Num(room.name), "steady": Num(exhaust.continuous, "airflow"),
        "most": Num(exhaust.on_demand, "airflow"),
    }  # fmt: skip
    if exhaust.reaches(all_day, on_demand):
        return Meets(numbers)
    if not exhaust.present:
        message = "nothing exhausts {name}; the standard asks every bathroom for it, window or not"
    elif exhaust.continuous == 0:
        message = "{name} gets {most} of exhaust on demand, below the standard's {bath_exhaust_on_demand_standard}"
    else:
        message = (
            "{name} gets {steady} of exhaust all day and {most} at most, below "
            "{bath_exhaust_continuous_standard} all day and {bath_exhaust_on_demand_standard} on demand"
        )
    return Finding(
        message,
        help="provide {bath_exhaust_continuous_standard} all day or {bath_exhaust_on_demand_standard} on demand",
        numbers=numbers,
    )


RULE = Rule(
    code="EXH-06", name="bath-exhaust-below-the-standard", severity="correction", since="0.1",
    over=bathrooms, needs=(local_exhaust,),
    limits=("bath-exhaust-continuous-standard", "bath-exhaust-on-demand-standard"), check=check,
    nothing="the design names no bathroom", answers=("B20",),
)  # fmt: skip
