"""A toilet compartment with its own door has no exhaust of its own.

Behind a closed door the fan in the rest of the bath does little. The code asks each water closet compartment for
a window or an exhaust, as it asks the bath.

The usual cause is one fan over the shower for a bath that was divided later. Add a small fan or a grille in the
compartment, or make it a room of its own in the file with what exhausts it.
"""

from checker.case import Case, quantity
from checker.design.rooms import Room
from checker.quantities.local_exhaust import devices, local_exhaust, points_of
from checker.quantities.room_uses import BATH_USES, openable_area, rooms_used_as
from checker.rule import Finding, Meets, Num, Rule


def divided(case: Case) -> list[Room]:
    """Baths with a toilet compartment, or where nobody has decided."""
    return [
        room
        for room in rooms_used_as(case, *BATH_USES)
        if room.compartments or f"{room.path}.compartments" in case.design.tbd
    ]


@quantity()
def places_exhausted(case: Case, room: Room) -> int:
    """How many fans and grilles take air from the bath and its compartments."""
    exhaust = local_exhaust(case, room)
    grilles = [point for device in devices(case) for name, point, _ in points_of(case, device) if name == room.name]
    by_device = {draw.device.path for draw in exhaust.draws if draw.device is not None and draw.airflow > 0}
    own = {device.path for device in devices(case) if any(name == room.name for name, _, _ in points_of(case, device))}
    return len(grilles) + len(by_device - own)


@quantity()
def places_needed(case: Case, room: Room) -> int:
    """The compartments, and the bath itself unless its window opens."""
    compartments = int(case.get(room, "compartments"))
    if places_exhausted(case, room) > compartments:
        return compartments + 1
    window = openable_area(case, room)
    return compartments + (0 if window >= case.limit("bath-window-openable") else 1)


def check(room: Room, exhausted: int, needed: int) -> Meets | Finding:
    """One fan or grille for each."""
    numbers = {"name": Num(room.name)}
    if exhausted >= needed:
        return Meets(numbers)
    return Finding(
        "{name} and its compartments are {places_needed} spaces to exhaust, and {places_exhausted} fan or grille is shown",
        at="compartments", help="show a fan or exhaust grille in each compartment", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-29", name="toilet-compartment-without-exhaust", severity="caution", since="0.1",
    over=divided, needs=(places_exhausted, places_needed), cites=("compartment-exhaust",), check=check,
    nothing="no bath has a toilet compartment", answers=("B25",),
)  # fmt: skip
