"""Gas cooking has no exhaust to outdoors.

Gas burners give off water, nitrogen dioxide and, when they burn badly, carbon monoxide, straight into the room. A
filter in a recirculating hood takes out none of these.

The usual cause is a recirculating hood or microwave on an inner wall. Give the kitchen a ducted hood, show how its
make-up air comes in, and have the gas appliance set up by somebody who is licensed for it. Carbon monoxide alarms
are no substitute for exhaust.
"""

from checker.case import Case, Missing, quantity
from checker.design.rooms import Room
from checker.quantities.local_exhaust import local_exhaust, room_of_hood
from checker.quantities.room_uses import kitchens
from checker.rule import Finding, Meets, Num, Rule

GASES = ("gas", "propane")


def gas_kitchens(case: Case) -> list[Room]:
    """Kitchens with gas cooking, by the hood above it or by the list of what burns."""
    names = set()
    for hood in case.design.hoods.values():
        if hood.cooking is not None and hood.cooking.fuel in GASES:
            try:
                names.add(room_of_hood(case, hood).name)
            except Missing:
                continue
    ranges = [each for each in case.design.combustion.values() if each.kind == "range" and each.fuel in GASES]
    names |= {each.location for each in ranges if each.location is not None}
    found = kitchens(case)
    if ranges and len(found) == 1 and all(each.location in (None, "conditioned") for each in ranges):
        names.add(found[0].name)
    return [room for room in found if room.name in names]


@quantity()
def exhausted(case: Case, room: Room) -> bool:
    """Whether anything takes air from the kitchen to outdoors."""
    return local_exhaust(case, room).present


def check(room: Room, exhausted: bool) -> Meets | Finding:
    """Any exhaust to outdoors."""
    numbers = {"name": Num(room.name)}
    if exhausted:
        return Meets(numbers)
    return Finding(
        "{name} has gas cooking and nothing that takes its fumes to outdoors",
        help="provide a hood ducted to outdoors over the gas burners, with make-up air as the house needs it",
        numbers=numbers,
    )


RULE = Rule(
    code="EXH-38", name="gas-cooking-without-exhaust", severity="caution", since="0.1",
    over=gas_kitchens, needs=(exhausted,), cites=("gas-cooking-vented",), check=check,
    nothing="no kitchen with gas cooking is in the design",
)  # fmt: skip
