"""Whether outdoor air reaches a room with its door shut, and whether it is drawn out again where it comes in."""


from checker.case import Case, Missing, path_of, quantity
from checker.design.fans import Fan
from checker.design.rooms import Room
from checker.quantities.airtightness import house_of
from checker.quantities.distribution import deliveries, drawn_all_day, of_equipment, spaces
from checker.quantities.duct_scope import mover_or_none
from checker.quantities.room_uses import room_use, rooms_used_as
from checker.quantities.whole_house import running
from checker.record import Record

DUCTED = ("air handler", "furnace", "slim duct unit", "packaged unit", "air conditioner")
SHARED_USES = ("living", "dining", "kitchen")
ROOMS_BEYOND = ("bathroom", "toilet", "closet", "laundry", "other")


class Reach(Record):
    """Whether fresh air reaches a room, and by what (or what is in the way)."""

    reached: bool
    way: str


def bedrooms(case: Case) -> list[Room]:
    """Rooms to sleep in. Raises Missing where the file holds no rooms."""
    if not case.stated("rooms"):
        raise Missing("rooms")
    return rooms_used_as(case, "bedroom")


@quantity()
def lacking_ducted_air(case: Case, design: object) -> list[str]:
    """Bedrooms, and the living spaces as a whole, that no duct leads outdoor air to.

    Raises Missing where the file holds fewer bedrooms than the house has.
    """
    sleeping = bedrooms(case)
    if len(sleeping) < int(case.get(house_of(case), "bedrooms")):
        raise Missing("rooms")
    served = {each.room for each in deliveries(case, design)}
    lacking = sorted(room.name for room in sleeping if room.name not in served)
    if not any(room.name in served for room in rooms_used_as(case, *SHARED_USES)):
        lacking.append("a living, dining or kitchen space")
    return lacking


@quantity()
def is_supplied(case: Case, design: object) -> bool:
    """Whether fans bring outdoor air into the house all day or by a timer."""
    return any(part.supplies for part in running(case, design))


@quantity()
def circulated(case: Case, _design: object) -> frozenset[str]:
    """Rooms whose air a ducted system, transfer fan or circulating fan mixes with that of other rooms."""
    found: set[str] = {room.name for room in case.design.rooms.values() if room.supply}
    for unit in case.design.equipment.values():
        ducted = any(mover_or_none(case, system) is unit for system in case.design.ducts.values())
        if ducted or unit.kind in DUCTED:
            found.update(each.room for each in of_equipment(case, unit, unit))
    for fan in case.design.fans.values():
        if fan.role in ("transfer", "recirculating"):
            found.update(name for name in (*fan.room, *fan.from_, *fan.to) if name in case.design.rooms)
    return frozenset(found)


@quantity()
def reach(case: Case, room: Room) -> Reach:
    """Whether outdoor air reaches a bedroom behind its shut door. Raises Missing where the file does not tell."""
    design = case.design
    space = spaces(case, design)[room.name]
    if is_supplied(case, design):
        led_to = {each.room for each in deliveries(case, design)}
        if space & led_to:
            return Reach(True, "outdoor air is led to it")
        beside = [design.rooms[name] for name in sorted(led_to) if room_use(case, design.rooms[name]) == "closet"]
        if any(leads_to(one, space) for one in beside):
            return Reach(True, "outdoor air comes from the closet beside it")
        unsaid = [path_of(one, "door.to") for one in beside if might_be_beyond(case, one)]
        if unsaid:
            raise Missing(*unsaid)
        if space & circulated(case, design):
            return Reach(True, "its air is mixed with that of other rooms")
    drawn = drawn_all_day(case, design)
    if space & drawn:
        return Reach(True, "air is drawn through it all day")
    beyond = [design.rooms[name] for name in sorted(drawn)]
    if any(leads_to(one, space) for one in beyond):
        return Reach(True, "air is drawn through it to the room beyond")
    supplied = is_supplied(case, design)
    if not supplied:
        way = behind_its_door(case, room)
        if way.reached:
            return way
    loose = [path_of(one, "door.to") for one in beyond if might_be_beyond(case, one)]
    if loose:
        raise Missing(*loose)
    return Reach(False, "no outdoor air is led to it") if supplied else way


def leads_to(room: Room, space: frozenset[str]) -> bool:
    """Whether the way out of a room goes into a space."""
    return (room.door is not None and room.door.to in space) or bool(space & set(room.open_to))


def might_be_beyond(case: Case, room: Room) -> bool:
    """Whether a room may have its door to a bedroom, since the file does not say where it leads."""
    told = bool(room.open_to) or (room.door is not None and room.door.to is not None)
    return not told and room_use(case, room) in ROOMS_BEYOND


def behind_its_door(case: Case, room: Room) -> Reach:
    """Whether fans elsewhere can draw air through a room's own cracks: a way must be left past its door."""
    own = [opening for opening in case.design.openings.values() if opening.room == room.name]
    inlet = any(opening.kind == "outdoor air intake" for opening in own)
    if inlet or room.open_to:
        return Reach(True, "it is open to the house or has its own inlet")
    if room.door is None:
        raise Missing(path_of(room, "door.undercut"))
    if case.maybe(room.door, "transfer_area") or case.maybe(room.door, "undercut"):
        return Reach(True, "air is drawn in past its door")
    if room.door.undercut is None and not room.door.weatherstripped:
        raise Missing(path_of(room.door, "undercut"))
    return Reach(False, "its door shuts tight, so that no fan can draw air through it")


@quantity()
def short_circuit(case: Case, fan: Fan) -> str:
    """Where the fresh air of a fan is drawn out again before it gets about; "" where it does get about."""
    both = sorted({*fan.to} & {*fan.from_} & ({*case.design.ducts} | {*case.design.equipment}))
    if both:
        return f"both sides of {fan.name} are joined to {both[0]}"
    design = case.design
    joined = spaces(case, design)
    fresh = {joined[each.room] for each in deliveries(case, design)}
    stale = {joined[name] for name in drawn_all_day(case, design)}
    elsewhere = [room.name for room in bedrooms(case) if room.name not in {name for space in fresh for name in space}]
    if len(fresh) != 1 or fresh != stale or not elsewhere or set(elsewhere) & circulated(case, design):
        return ""
    shown = " and ".join(sorted({each.room for each in deliveries(case, design)}))
    return f"outdoor air comes in at {shown}, and all that exhausts all day draws from the same space"
