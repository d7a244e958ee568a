"""A room without mechanical ventilation has too little window to open.

Where no fans ventilate the house, each habitable room must be aired by what opens to outdoors: windows, doors
or vents of at least 4 % of its floor area. Whole-house ventilation waives that. In a kitchen, since 2021, it is
the local exhaust that waives it.

Enlarge the openable part, or ventilate by fans. The opening for escape from a bedroom is another matter and
stays compulsory.
"""

from checker.case import Case, Missing, given
from checker.design.rooms import Room
from checker.quantities.natural_ventilation import airs_itself, openable_area, rooms_to_air
from checker.quantities.ventilation import SLACK
from checker.rule import Finding, Meets, Num, Rule


def has_no_neighbor_to_borrow_from(case: Case, room: Room) -> bool:
    """The room borrows its air from the room that it is open to."""
    try:
        return not room.open_to or airs_itself(case, room)
    except Missing:
        return True


def check(room: Room, openable: float, floor: float, limit: float) -> Meets | Finding:
    """Openable area against the share of the floor."""
    wanted = limit * floor
    numbers = {"wanted": Num(wanted, "area"), "missing_area": Num(wanted - openable, "area")}
    if openable >= wanted * (1 - SLACK):
        return Meets({"wanted": numbers["wanted"]})
    return Finding(
        f"{room.name} has {{openable_area}} that opens to outdoors, below {{wanted}}, {{limit}} of its floor",
        at="window.openable_area",
        help="provide {missing_area} more that opens, or ventilate by fans",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-27", name="openable-window-too-small", severity="correction", since="0.1",
    over=rooms_to_air, when=has_no_neighbor_to_borrow_from, needs=(openable_area, given("floor_area")),
    limits=("natural-ventilation-share",), check=check,
    nothing="mechanical ventilation waives openable windows", answers=("A31",),
)  # fmt: skip
