"""A room gets a share of the air that is far from its share of the load.

Within one system the air is shared out by load: a room with a third of the load needs about a third of the air.
A share that is more than a fifth below the room's share of both loads leaves it uncomfortable whenever the
others are satisfied, and one that is a fifth above both overheats or overcools it.

Shift airflow between the rooms until each share of the air lies near its shares of the heating and cooling load.
"""

from checker.case import Case
from checker.design.ducts import DuctSystem
from checker.quantities.duct_balance import RoomShare, room_shares
from checker.quantities.duct_flow import sum_of_outlets
from checker.quantities.duct_scope import comfort_systems
from checker.rule import Finding, Meets, Num, Rule


def with_rooms(case: Case) -> list[DuctSystem]:
    """Systems of equipment with outlets or runs, in a design whose rooms state loads."""
    loads = any(room.heating_load is not None or room.cooling_load is not None for room in case.design.rooms.values())
    return [each for each in comfort_systems(case) if loads and (each.outlets or each.runs)]


def off(share: RoomShare) -> float:
    """How far a share of the air lies outside the shares of the load, as a factor above one."""
    if share.airflow < share.least:
        return share.least / max(share.airflow, 1e-9)
    return share.airflow / share.most if share.airflow > share.most > 0.0 else 1.0


def check(system: DuctSystem, shares: list[RoomShare], airflow: float, tolerance: float) -> Meets | Finding:
    """Report the room that is furthest off, where it is beyond the tolerance."""
    low = [share for share in shares if share.airflow < share.least * (1.0 - tolerance) * (1.0 - 1e-9)]
    high = [share for share in shares if share.airflow > share.most * (1.0 + tolerance) * (1.0 + 1e-9)]
    worst = max([*low, *high] or shares, key=off)
    fit = worst.least if worst.airflow < worst.least else worst.most
    numbers = {
        "system": Num(system.name),
        "room": Num(worst.room),
        "share": Num(worst.airflow, "share"),
        "load_share": Num(fit, "share"),
        "wanted": Num(fit * airflow, "airflow"),
    }
    if not low and not high:
        return Meets(numbers)
    return Finding(
        "{room} gets {share} of the air of {system} and has {load_share} of the load that it serves",
        at="outlets" if system.outlets else "runs",
        help="give {room} about {wanted}, and share out the rest by load",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-25", name="room-share-off", severity="caution", since="0.1",
    over=with_rooms, needs=(room_shares, sum_of_outlets), limits=("room-airflow-tolerance",), check=check,
    answers=("F54",), nothing="no ducted equipment serves rooms with stated loads",
)  # fmt: skip
