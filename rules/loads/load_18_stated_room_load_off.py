"""The stated load of a room is far from what its walls and windows work out to.

Airflow, duct and unit of a room follow from its load. When a window moves from one room to the next, or a room ends
up on the corner, the load moves with it. Some coefficients here are from memory, so look before you change anything.

Follow the room term by term in the worksheet, and correct the room's load or its walls and windows.
"""


from checker.case import Case, quantity
from checker.design.fields import HeatRate
from checker.design.rooms import Room
from checker.quantities.computed_loads import computed_room_cooling, computed_room_heating
from checker.quantities.equipment import heated_rooms
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule

WORDS = {"heating_load": "heating load", "cooling_load": "cooling load"}


class Stated(Record):
    """A load of a room as the design states it, in W."""

    path: str
    field: str
    room: Room
    watts: HeatRate


def stated(case: Case) -> list[Stated]:
    """The loads that are stated of rooms in a house whose envelope the file holds."""
    if case.design.envelope is None:
        return []
    pairs = [(room, field, getattr(room, field)) for room in heated_rooms(case) for field in WORDS]
    return [Stated(f"{room.path}.{field}", field, room, float(watts)) for room, field, watts in pairs if watts is not None]


@quantity("heat_rate")
def worked_out(case: Case, figure: Stated) -> float:
    """The same load by the envelope. Raises Missing, CannotJudge."""
    load = computed_room_heating if figure.field == "heating_load" else computed_room_cooling
    return load(case, figure.room).watts


def check(figure: Stated, own: float, tolerance: float, trifle: float) -> Meets | Finding:
    """Apart by more than the tolerance of the larger, and by more than a trifle."""
    numbers = {"stated": Num(figure.watts, "heat_rate"), "room": Num(figure.room.name)}
    apart = abs(figure.watts - own)
    if apart <= max(trifle, tolerance * max(own, figure.watts) * (1 + 1e-9)):
        return Meets(numbers)
    return Finding(
        f"{{room}} is stated with a {WORDS[figure.field]} of {{stated}}; its envelope works out to {{worked_out}}",
        help="follow the room in the worksheet, and correct its load or its walls and windows", numbers=numbers,
    )


RULE = Rule(
    code="LOAD-18", name="stated-room-load-off", severity="caution", since="0.1",
    over=stated, needs=(worked_out,), limits=("stated-room-load-tolerance", "load-difference-of-note"), check=check,
    nothing="no load of a room is stated beside an envelope",
)  # fmt: skip
