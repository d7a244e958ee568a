"""A room has a window on the drawings and none in the envelope, or less of it.

The window is there for light and air, but its heat loss and its sun are not counted: the load of the room comes out
too small. Glazed area is less than the area of the window with its frame, so the envelope's figure is the larger one.

Add the window under `envelope.windows`, with the way it faces.
"""

from checker.case import Case, Missing, gather, path_of, quantity
from checker.design.rooms import Room
from checker.quantities.envelope_parts import window_area
from checker.quantities.equipment import heated_rooms
from checker.rule import Finding, Meets, Num, Rule


def glazed(case: Case) -> list[Room]:
    """Rooms whose glazed area the drawings give, in a house with an envelope."""
    if case.design.envelope is None:
        return []
    return [room for room in heated_rooms(case) if room.window is not None and room.window.glazed_area is not None]


@quantity("area")
def in_the_envelope(case: Case, room: Room) -> float:
    """Area of the room's windows in the envelope. Raises Missing for one without an area."""
    assert case.design.envelope is not None
    windows = case.design.envelope.windows
    own = [each for each in windows.values() if each.room == room.name]
    total = sum(gather([lambda each=each: window_area(case, each) for each in own]))  # type: ignore[misc]
    homeless = [path_of(each, "room") for each in windows.values() if each.room is None]
    if "envelope.windows" in case.design.tbd:
        homeless.append("envelope.windows")
    if homeless and total < glass(room):  # one of these may be its window
        raise Missing(*homeless)
    return float(total)


def glass(room: Room) -> float:
    """Glazed area that the drawings give, m2."""
    return float(room.window.glazed_area or 0.0) if room.window is not None else 0.0


def check(room: Room, counted: float) -> Meets | Finding:
    """The window with its frame is no smaller than its glass."""
    shown = glass(room)
    numbers = {"glass": Num(shown, "area"), "room": Num(room.name)}
    if shown <= counted * (1 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{room} has {glass} of glass, and its windows in the envelope are {in_the_envelope}",
        help="add the window of {room} to the envelope, or correct its area", numbers=numbers,
    )


RULE = Rule(
    code="LOAD-26", name="window-missing-from-envelope", severity="caution", since="0.1",
    over=glazed, needs=(in_the_envelope,), cites=("envelope-adds-up",), check=check,
    nothing="no room gives the area of its glass beside an envelope",
)  # fmt: skip
