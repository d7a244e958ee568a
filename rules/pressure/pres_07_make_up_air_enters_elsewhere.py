"""Make-up air enters a room that is not joined to the exhaust's room by large enough openings.

Make-up air has to reach the hood. It may enter the hood's own room, or another room or duct system that permanent
openings join to it, with a net area not less than that of the make-up opening. A door does not count: it gets closed.

Bring the air into the room of the exhaust, or show permanent openings of that area along its way.
"""

from checker.quantities.make_up_air import SLACK, Exhauster, with_make_up_air
from checker.quantities.make_up_entry import entry_room, exhaust_room, way_area, way_to_exhaust
from checker.rule import Finding, Meets, Num, Rule


def check(device: Exhauster, entry: str, room: str, way: float | None, area: float) -> Meets | Finding:
    """The openings on the way are at least as large as the make-up opening."""
    if way is None or way >= area * (1 - SLACK):
        return Meets()
    numbers = {"way": Num(way, "small_area"), "more": Num(area - way, "small_area")}
    return Finding(
        f"make-up air of {device.name} enters {entry}, joined to {room} by {{way}} of permanent opening, less than the "
        "{way_area} of its own opening",
        at="make_up_air.transfer_area",
        help="bring the air into the room of the exhaust, or show {more} more of permanent openings between the rooms",
        numbers=numbers,
    )


RULE = Rule(
    code="PRES-07", name="make-up-air-enters-elsewhere", severity="correction", since="0.1",
    over=with_make_up_air, needs=(entry_room, exhaust_room, way_to_exhaust, way_area), cites=("make-up-air-place",),
    check=check, nothing="no exhaust with required make-up air is shown", answers=("C07",),
)  # fmt: skip
