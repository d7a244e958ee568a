"""Habitable rooms have no heat: no equipment serves them or a room that they are open to.

Bedrooms, living rooms, dining rooms, kitchens and studies must be kept warm on the winter design day. In a tight
house with one or two wall units the room at the end of the hall is easily left out.

The usual cause is a list of served rooms that was not brought up to date. Name the room under the equipment that
heats it, or give it a heater of its own.
"""

from checker import each
from checker.case import Case, Missing, quantity
from checker.design import Design
from checker.design.equipment import Equipment
from checker.quantities.distribution import spaces
from checker.quantities.equipment import HABITABLE, all_heating, heated_rooms
from checker.quantities.room_uses import room_use
from checker.quantities.ventilation_standard import site_of
from checker.rule import Finding, Meets, Num, Rule


def habitable(case: Case) -> list[str]:
    """Rooms to live, sleep, cook or eat in, by name."""
    found = []
    for room in heated_rooms(case):
        try:
            use = room_use(case, room)
        except Missing:
            continue
        if use in HABITABLE:
            found.append(str(room.name))
    return sorted(found)


def heated(case: Case) -> list[Design]:
    """The design, where any equipment heats the house and habitable rooms are shown."""
    return each.design(case) if all_heating(case) and habitable(case) else []


def reach_of(unit: Equipment) -> list[str]:
    """Rooms that a portable heater serves or stands in."""
    return [*unit.serves, str(unit.location)]


def has_winter(case: Case, _design: Design) -> bool:
    """Its winter design temperature is that of a place where no heating is required."""
    outdoor = case.maybe(site_of(case), "winter_design")
    return outdoor is None or bool(outdoor < case.limit("required-heating-below"))


@quantity()
def unheated(case: Case, design: Design) -> list[str]:
    """Habitable rooms that no equipment serves; those with a portable heater are judged by themselves.

    Raises Missing where some equipment does not say what it serves.
    """
    groups = all_heating(case)
    served = {name for group in groups for name in group.rooms}
    joined = spaces(case, design)
    portable = {name for unit in design.equipment.values() if unit.kind == "portable heater" for name in reach_of(unit)}
    cold = [name for name in habitable(case) if not joined[name] & served and name not in portable]
    open_ended = [path for group in groups for path in group.lacking]
    if cold and open_ended:
        raise Missing(*open_ended)
    return cold


def check(_design: Design, cold: list[str], _held: float) -> Meets | Finding:
    """Rooms without heat are the finding."""
    if not cold:
        return Meets()
    return Finding(
        "no equipment is said to heat {rooms}; habitable rooms must be held at {limit} on the winter design day",
        at=f"rooms.{cold[0]}",
        help="name {rooms} under `serves` of the equipment that heats them, or show heaters of their own",
        numbers={"rooms": Num(", ".join(cold[:5]))},
    )


RULE = Rule(
    code="EQUIP-02", name="habitable-room-without-heat", severity="caution", since="0.1",
    over=heated, when=has_winter, needs=(unheated,), limits=("required-heating",),
    cites=("required-heating-below",), check=check,
    nothing="no habitable room, or no heating equipment, is shown", answers=("H05",),
)  # fmt: skip
