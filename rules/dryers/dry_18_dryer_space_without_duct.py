"""A space is planned for a dryer, but no exhaust duct leads from it.

Whoever moves in with a dryer then blows it into the room or the attic, or lets a long flexible duct hang out of
the window.

The usual cause is that the owner brings the dryer later. Build the duct now, cap it and mark it for future use. A
listed condensing dryer that is in place from the start needs none.
"""

from checker.case import Case, Missing, quantity
from checker.design.hoods import Dryer
from checker.design.rooms import Room
from checker.quantities.dryer_duct import duct, is_ductless
from checker.rule import Finding, Meets, Rule


def dryers_in(case: Case, room: Room) -> list[Dryer]:
    """The dryers that stand in a room."""
    return [dryer for dryer in case.design.dryers.values() if dryer.room == room.name]


@quantity()
def space_is_planned(case: Case, room: Room) -> bool:
    """Whether the room has space for a dryer: one stands there, or it is said."""
    return bool(dryers_in(case, room)) or bool(case.get(room, "dryer_space"))


@quantity()
def has_duct(case: Case, room: Room) -> bool:
    """Whether an exhaust duct, present or future, or a ductless dryer is there. Raises Missing where unknown."""
    if not space_is_planned(case, room):
        return True
    here = dryers_in(case, room)
    if any(is_ductless(each) or duct(case, each) is not None or each.to is not None or each.duct_for_future
           for each in here):  # fmt: skip
        return True
    if here:
        raise Missing(f"{here[0].path}.duct")
    unplaced = [f"{each.path}.room" for each in case.design.dryers.values() if each.room is None]
    if unplaced:
        raise Missing(*unplaced)
    if not case.stated("dryers"):
        raise Missing("dryers")
    return False


def laundries(case: Case) -> list[Room]:
    """Laundry rooms, and others about which a dryer's space is spoken of."""
    tbd = case.design.tbd
    return [
        room
        for room in case.design.rooms.values()
        if room.use == "laundry" or room.dryer_space is not None or f"{room.path}.dryer_space" in tbd
    ]


def has_space(case: Case, room: Room) -> bool:
    """No space for a dryer is planned in this room."""
    return space_is_planned(case, room)


def check(_room: Room, ducted: bool) -> Meets | Finding:
    """The space has its duct."""
    if ducted:
        return Meets()
    return Finding(
        "a space for a dryer is planned here, and no exhaust duct leads from it", at="dryer_space",
        help="show an exhaust duct, capped and marked for future use, as a dryer with `duct_for_future`",
    )  # fmt: skip


RULE = Rule(
    code="DRY-18", name="dryer-space-without-duct", severity="correction", since="0.1",
    over=laundries, when=has_space, needs=(has_duct,), cites=("dryer-duct-for-future",), check=check,
    nothing="no room is said to have space for a dryer", answers=("E16",),
)  # fmt: skip
