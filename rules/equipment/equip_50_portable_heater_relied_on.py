"""A room to live or sleep in has no heat but a portable heater.

Portable heaters do not count as the heating that the code asks for: they are unplugged, tip over, overload cords and
start fires. Every habitable room needs heat that stays.

Show a fixed heater, a head, a duct, or an opening to a heated room for it.
"""

from checker.case import Case, Missing, quantity
from checker.design.rooms import Room
from checker.quantities.distribution import spaces
from checker.quantities.equipment import HABITABLE, all_heating, heated_rooms
from checker.quantities.room_uses import room_use
from checker.quantities.ventilation_standard import site_of
from checker.rule import Finding, Meets, Num, Rule


def portables_of(case: Case, room: Room) -> list[str]:
    """Names of the portable heaters that serve a room or stand in it."""
    return sorted(
        str(unit.name)
        for unit in case.design.equipment.values()
        if unit.kind == "portable heater" and (room.name in unit.serves or unit.location == room.name)
    )


def is_habitable(case: Case, room: Room) -> bool:
    """Whether a room is known to be one to live, sleep, cook or eat in."""
    try:
        return room_use(case, room) in HABITABLE
    except Missing:
        return False


def with_portables(case: Case) -> list[Room]:
    """Habitable rooms with a portable heater."""
    return [room for room in heated_rooms(case) if portables_of(case, room) and is_habitable(case, room)]


def has_winter(case: Case, _room: Room) -> bool:
    """Its winter design temperature is that of a place where no heating is required."""
    outdoor = case.maybe(site_of(case), "winter_design")
    return outdoor is None or bool(outdoor < case.limit("required-heating-below"))


@quantity()
def has_fixed_heat(case: Case, room: Room) -> bool:
    """Whether other equipment serves the room or one that it is open to. Raises Missing where one may."""
    groups = all_heating(case)
    served = {name for group in groups for name in group.rooms}
    if spaces(case, case.design)[room.name] & served:
        return True
    open_ended = [path for group in groups for path in group.lacking]
    if open_ended:
        raise Missing(*open_ended)
    return False


def check(room: Room, fixed: bool) -> Meets | Finding:
    """A room that only a portable heater heats is the finding."""
    numbers = {"room": Num(room.name)}
    if fixed:
        return Meets(numbers)
    return Finding(
        "{room} has no heat but a portable heater, which does not count as the required heating",
        help="show a fixed heater, a head or a duct for {room}",
        numbers=numbers,
    )


RULE = Rule(
    code="EQUIP-50", name="portable-heater-relied-on", severity="correction", since="0.1",
    over=with_portables, when=has_winter, needs=(has_fixed_heat,),
    cites=("portable-heaters", "required-heating-below"), check=check,
    nothing="no habitable room has a portable heater", answers=("H05",),
)  # fmt: skip
