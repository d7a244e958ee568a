"""The exhaust of a kitchen without a ducted hood moves too little air.

Where a fan, a ceiling grille or a recovery unit serves the kitchen in place of a hood, it still has to carry off
what cooking gives off: a little all day, or a good deal more while somebody cooks.

The usual cause is a recovery unit whose kitchen grille was sized like that of a bath. Raise the flow of that
grille or fan, or add a hood over the cooktop, which catches more with less air.
"""

from checker.case import NotApplicable
from checker.design.hoods import Hood
from checker.design.rooms import Room
from checker.quantities.local_exhaust import RoomExhaust, local_exhaust
from checker.quantities.room_uses import kitchens
from checker.rule import Finding, Meets, Num, Rule


def check(room: Room, exhaust: RoomExhaust, all_day: float, on_demand: float) -> Meets | Finding:
    """Compare with the two rows of the table; a hood is held against the same rows by its own rule."""
    if not exhaust.present:
        raise NotApplicable("nothing is said to exhaust it; another rule speaks of that")
    if any(isinstance(draw.device, Hood) for draw in exhaust.draws):
        raise NotApplicable("it has a ducted hood, whose airflow has a rule of its own")
    numbers = {
        "name": Num(room.name), "steady": Num(exhaust.continuous, "airflow"),
        "most": Num(exhaust.on_demand, "airflow"),
    }  # fmt: skip
    if exhaust.reaches(all_day, on_demand):
        return Meets(numbers)
    share = "" if exhaust.split_known else ", even if all of the shared fan went there"
    message = f"{{name}} gets {{most}} of exhaust on demand, below {{kitchen_exhaust_on_demand}}{share}"
    if exhaust.continuous > 0:
        message = (
            "{name} gets {steady} of exhaust all day and {most} at most, below {kitchen_exhaust_continuous} all day "
            f"and {{kitchen_exhaust_on_demand}} on demand{share}"
        )
    return Finding(
        message,
        help="raise it to {kitchen_exhaust_continuous} all day or {kitchen_exhaust_on_demand} on demand, or add a hood",
        numbers=numbers,
    )


RULE = Rule(
    code="EXH-04", name="kitchen-exhaust-too-low", severity="correction", since="0.1",
    over=kitchens, needs=(local_exhaust,),
    limits=("kitchen-exhaust-continuous", "kitchen-exhaust-on-demand"), check=check,
    nothing="the design names no kitchen", answers=("B01",),
)  # fmt: skip
