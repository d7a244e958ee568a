"""The exhaust of a bath or toilet room moves too little air.

A bath needs either a little exhaust all day or more of it while it is in use. A fan that does half of both does
neither: it is judged by the better of the two.

The usual cause is a fan chosen by its free-air figure, or one fan or recovery unit that is shared by more baths
than it can serve. Raise the setting, choose a larger fan, or give the room a larger share.
"""

from checker.case import NotApplicable
from checker.design.rooms import Room
from checker.quantities.local_exhaust import RoomExhaust, local_exhaust
from checker.quantities.room_uses import baths
from checker.rule import Finding, Meets, Num, Rule


def check(room: Room, exhaust: RoomExhaust, all_day: float, on_demand: float) -> Meets | Finding:
    """Compare what runs all day and what runs on demand with the two rows of the table."""
    if not exhaust.present:
        raise NotApplicable("nothing is said to exhaust it; another rule asks for that")
    numbers = {
        "name": Num(room.name), "steady": Num(exhaust.continuous, "airflow"),
        "most": Num(exhaust.on_demand, "airflow"),
    }  # fmt: skip
    if exhaust.reaches(all_day, on_demand):
        return Meets(numbers)
    share = "" if exhaust.split_known else ", even if all of the shared fan went there"
    if exhaust.continuous == 0:
        message = f"{{name}} gets {{most}} of exhaust on demand, below {{bath_exhaust_on_demand}}{share}"
    elif exhaust.continuous == exhaust.on_demand:
        message = f"{{name}} gets {{steady}} of exhaust all day, below {{bath_exhaust_continuous}}{share}"
    else:
        message = (
            "{name} gets {steady} of exhaust all day, below {bath_exhaust_continuous}, and {most} on demand, "
            f"below {{bath_exhaust_on_demand}}{share}"
        )
    return Finding(
        message,
        help="raise its exhaust to {bath_exhaust_continuous} all day or {bath_exhaust_on_demand} on demand",
        numbers=numbers,
    )


RULE = Rule(
    code="EXH-02", name="bath-exhaust-too-low", severity="correction", since="0.1",
    over=baths, needs=(local_exhaust,), limits=("bath-exhaust-continuous", "bath-exhaust-on-demand"),
    check=check, nothing="the design names no bath or toilet room", answers=("B02",),
)  # fmt: skip
