"""What rooms are for, how big they are, and whether their windows could air them."""

from checker.case import Case, Missing, path_of, quantity
from checker.design.fields import Choice, fold
from checker.design.rooms import Room
from checker.design.shape import fields_of

WET_USES = ("bathroom", "toilet", "kitchen", "laundry")
BATH_USES = ("bathroom", "toilet")


@quantity()
def room_use(case: Case, room: Room) -> str:
    """What a room is for: its `use`, or its name where that is or ends in a use (`bath-2`, `hall bath`)."""
    use = case.maybe(room, "use")
    if use is not None:
        return str(use)
    kind = fields_of(Room)["use"].shape.kind
    assert isinstance(kind, Choice)
    words = fold(room.name).rstrip("0123456789 ").split()
    while len(words) > 1 and (len(words[-1]) == 1 or words[-1].isdigit()):
        words.pop()
    for first in range(len(words)):
        named = kind.spellings.get(" ".join(words[first:]))
        if named is not None:
            return named
    raise Missing(path_of(room, "use"))


def rooms_used_as(case: Case, *uses: str, doubtful: bool = False) -> list[Room]:
    """Rooms of these uses; `doubtful` adds those whose use nobody can tell, to be asked for."""
    found = []
    for room in case.design.rooms.values():
        try:
            if room_use(case, room) in uses:
                found.append(room)
        except Missing:
            if doubtful:
                found.append(room)
    return found


def baths(case: Case) -> list[Room]:
    """Bathrooms and toilet rooms."""
    return rooms_used_as(case, *BATH_USES)


def kitchens(case: Case) -> list[Room]:
    """Kitchens."""
    return rooms_used_as(case, "kitchen")


def asked_for(case: Case, *uses: str) -> list[Room]:
    """Rooms of these uses, and doubtful ones to be asked for theirs. Raises Missing where no room is given."""
    if not case.stated("rooms"):
        raise Missing("rooms")
    return rooms_used_as(case, *uses, doubtful=True)


@quantity("volume", "stated; else floor area x ceiling height of the room or the house")
def room_volume(case: Case, room: Room) -> float:
    """Volume of a room."""
    stated = case.maybe(room, "volume")
    if stated is not None:
        return float(stated)
    house = case.design.house
    height = case.maybe(room, "ceiling_height")
    if height is None and house is not None:
        height = case.maybe(house, "ceiling_height")
    absent = [path_of(room, "floor_area")] if room.floor_area is None else []
    if height is None:
        absent.append(path_of(room, "ceiling_height"))
    if absent:
        raise Missing(*absent)
    return float(case.get(room, "floor_area") * height)


def openable_area(case: Case, room: Room) -> float:
    """Area of a room's windows that opens to outdoors, m2; none where the file says it has no window."""
    if path_of(room, "window") in case.design.stated_none:
        return 0.0
    if room.window is None:
        raise Missing(path_of(room, "window"))
    return float(case.get(room.window, "openable_area"))


def glazed_area(case: Case, room: Room) -> float | None:
    """Glazed area of a room's windows, m2, as stated; None where only what opens is stated."""
    if path_of(room, "window") in case.design.stated_none:
        return 0.0
    if room.window is None:
        raise Missing(path_of(room, "window"))
    glazed = case.maybe(room.window, "glazed_area")
    return None if glazed is None else float(glazed)
