"""Gas cooking has no exhaust to outdoors.

Gas burners give off water, nitrogen dioxide and, when they burn badly, carbon monoxide, straight into the room. A
filter in a recirculating hood takes out none of these.

The usual cause is a recirculating hood or microwave on an inner wall. Give the kitchen a ducted hood, show how its
make-up air comes in, and have the gas appliance set up by somebody who is licensed for it. Carbon monoxide alarms
are no substitute for exhaust.
"""

from checker.case import Case, quantity
from checker.design.rooms import Room
from checker.quantities.kitchen_air import gas_kitchens
from checker.quantities.local_exhaust import local_exhaust
from checker.rule import Finding, Meets, Num, Rule


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
