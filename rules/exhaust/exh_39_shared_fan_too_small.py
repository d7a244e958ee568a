"""One exhaust fan serves more baths than it can.

A remote fan with several grilles has to move as much as its rooms need together, unless dampers let only one draw
at a time. However it is split, one of the rooms falls short.

The usual cause is a fan chosen for one bath to which a second was added. Choose a fan for the sum, add a fan, or
state the airflow of each room where dampers open one at a time.
"""


from checker.case import Case, NotApplicable, quantity
from checker.design.fans import Fan
from checker.design.fields import Airflow
from checker.quantities.exhaust_end import takes_out
from checker.quantities.local_exhaust import local_exhaust, points_of, rooms_exhausted
from checker.quantities.movers import exhaust_flow, is_continuous
from checker.quantities.room_uses import BATH_USES, room_use
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class Shared(Record):
    """Baths that only this fan exhausts, and what it moves all day and at most, m3/s."""

    baths: tuple[str, ...]
    steady: Airflow
    most: Airflow


def shared_fans(case: Case) -> list[Fan]:
    """Exhaust fans that list more than one room."""
    return [fan for fan in case.design.fans.values() if fan.role in ("exhaust", None) and len(fan.room) > 1]


@quantity()
def shared(case: Case, fan: Fan) -> Shared:
    """The baths and the airflow. Raises NotApplicable where the split is stated."""
    rooms = [case.design.rooms[name] for name in rooms_exhausted(case, fan)]
    if points_of(case, fan) or any(case.maybe(room, "exhaust") is not None for room in rooms):
        raise NotApplicable("the airflow of its rooms is stated one by one")
    baths = [room for room in rooms if room_use(case, room) in BATH_USES]
    alone = [
        room.name for room in baths if all(draw.device is fan for draw in local_exhaust(case, room).draws)
    ]
    if len(alone) < 2:
        raise NotApplicable("it is the only exhaust of one bath at most")
    flows = [(exhaust_flow(case, each), is_continuous(case, each)) for each in case.get(fan, "settings").values()]
    steady = max((flow for flow, all_day in flows if all_day), default=0.0)
    return Shared(tuple(alone), steady, max(flow for flow, _ in flows))


def check(fan: Fan, shared: Shared, all_day: float, on_demand: float) -> Meets | Finding:
    """Compare what it moves with the sum of what its baths need."""
    count = len(shared.baths)
    numbers = {
        "name": Num(fan.name), "baths": Num(", ".join(shared.baths)), "steady": Num(shared.steady, "airflow"),
        "most": Num(shared.most, "airflow"), "sum_all_day": Num(count * all_day, "airflow"),
        "sum_on_demand": Num(count * on_demand, "airflow"),
    }  # fmt: skip
    if shared.steady < all_day and shared.most < on_demand:
        raise NotApplicable("it would not do for one bath, which another rule says")
    if shared.steady >= count * all_day * (1 - 1e-9) or shared.most >= count * on_demand * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "{name} moves {most} at most for {baths}, which need {sum_on_demand} together on demand or {sum_all_day} all day",
        at="settings", help="choose a fan of {sum_on_demand}, or state the airflow of each room by itself",
        numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-39", name="shared-fan-too-small", severity="caution", since="0.1",
    over=shared_fans, when=takes_out, needs=(shared,),
    limits=("bath-exhaust-continuous", "bath-exhaust-on-demand"), cites=("exhaust-shares",),
    check=check, nothing="no exhaust fan serves several rooms", answers=("B02",),
)  # fmt: skip
