"""A kitchen's exhaust is less than ASHRAE 62.2 asks for.

A hood over the cooktop catches the plume and may be small. Any other exhaust, a downdraft too, catches air that
has already mixed into the room and has to move much more; in an enclosed kitchen five changes of its air in an
hour will do, all day or on demand.

The usual cause is a recovery unit or ceiling fan in place of a hood. Add a ducted hood, or raise the flow.
"""


from checker.case import Case, Missing, NotApplicable, quantity
from checker.design.fields import AirChanges, Airflow
from checker.design.hoods import Hood
from checker.design.rooms import Room
from checker.quantities.local_exhaust import local_exhaust
from checker.quantities.room_uses import kitchens, room_volume
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule

NOT_OVERHEAD = ("downdraft", "ceiling")


class Means(Record):
    """Highest hood flow and all exhaust together, m3/s; air changes in 1/s where they are asked for."""

    hood: Airflow
    total: Airflow
    changes: AirChanges | None
    enough: bool


@quantity()
def means(case: Case, room: Room) -> Means:
    """What exhausts the kitchen, and whether any of the three ways is enough."""
    exhaust = local_exhaust(case, room)
    hoods = [(draw.device, draw.airflow) for draw in exhaust.draws if isinstance(draw.device, Hood)]
    overhead = max((flow for hood, flow in hoods if hood.mount not in NOT_OVERHEAD), default=0.0)
    least = case.limit("kitchen-hood-on-demand-standard")
    unknown = [hood.path for hood, flow in hoods if case.maybe(hood, "mount") is None and flow >= least]
    try:
        other = case.limit("kitchen-other-on-demand-standard")
    except NotApplicable:
        other = None
    total = exhaust.on_demand
    if other is not None and total >= other:
        return Means(overhead, total, None, True)
    if unknown:
        raise Missing(f"{unknown[0]}.mount")
    if overhead >= least:
        return Means(overhead, total, None, True)
    if not exhaust.present:
        return Means(0.0, 0.0, None, False)
    changes = total / room_volume(case, room)
    plenty = changes >= case.limit("kitchen-changes-standard")
    return Means(overhead, total, changes, plenty and (other is None or enclosed(case, room)))


def enclosed(case: Case, room: Room) -> bool:
    """Whether the kitchen's permanent openings to other rooms stay small."""
    area = case.maybe(room, "opening_area")
    if area is not None:
        return bool(area <= case.limit("enclosed-kitchen-opening"))
    if case.get(room, "open_to"):
        raise Missing(f"{room.path}.opening_area")
    return True


def check(room: Room, means: Means, hood: float, _changes: float) -> Meets | Finding:
    """Any of the ways is enough."""
    numbers = {
        "name": Num(room.name), "hood": Num(means.hood, "airflow"), "total": Num(means.total, "airflow"),
        "changes": Num(means.changes or 0.0, "air_changes"),
    }  # fmt: skip
    if means.enough:
        return Meets(numbers)
    if means.total == 0.0:
        message = "nothing exhausts {name}; the standard asks every kitchen for it"
    elif means.hood > 0.0:
        message = "the hood of {name} moves {hood}, below {kitchen_hood_on_demand_standard}"
    else:
        message = (
            "{name} gets {total} of exhaust without a hood over the cooktop, {changes}; "
            "an enclosed kitchen needs {kitchen_changes_standard}"
        )
    return Finding(
        message, help="provide a ducted hood of {kitchen_hood_on_demand_standard} or more", numbers=numbers
    )


RULE = Rule(
    code="EXH-07", name="kitchen-exhaust-below-the-standard", severity="correction", since="0.1",
    over=kitchens, needs=(means,), limits=("kitchen-hood-on-demand-standard", "kitchen-changes-standard"),
    check=check, nothing="the design names no kitchen", answers=("B18", "B19"),
)  # fmt: skip
