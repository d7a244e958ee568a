"""One exhaust fan serves more baths than it can.

A remote fan with several grilles has to move as much as its rooms need together, unless dampers let only one draw
at a time. However it is split, one of the rooms falls short.

The usual cause is a fan chosen for one bath to which a second was added. Choose a fan for the sum, add a fan, or
state the airflow of each room where dampers open one at a time.
"""

from checker.case import Case, NotApplicable, quantity
from checker.design.fans import Fan
from checker.quantities.exhaust_duct import highest_flow
from checker.quantities.local_exhaust import local_exhaust, points_of, rooms_exhausted, takes_out
from checker.quantities.movers import is_continuous
from checker.quantities.room_uses import BATH_USES, room_use
from checker.rule import Finding, Meets, Num, Rule


def shared_fans(case: Case) -> list[Fan]:
    """Exhaust fans that list more than one room."""
    return [fan for fan in case.design.fans.values() if fan.role in ("exhaust", None) and len(fan.room) > 1]


@quantity("airflow", "number of baths x what each needs, less what other fans give them")
def needed_together(case: Case, fan: Fan) -> float:
    """What the baths of a fan need at the same time."""
    rooms = [case.design.rooms[name] for name in rooms_exhausted(case, fan)]
    if points_of(case, fan) or any(case.maybe(room, "exhaust") is not None for room in rooms):
        raise NotApplicable("the airflow of its rooms is stated one by one")
    if any(is_continuous(case, setting) for setting in case.get(fan, "settings").values()):
        least = case.limit("bath-exhaust-continuous")
    else:
        least = case.limit("bath-exhaust-on-demand")
    needed = 0.0
    for room in rooms:
        if room_use(case, room) in BATH_USES:
            draws = local_exhaust(case, room).draws
            needed += 0.0 if any(draw.device is not fan for draw in draws) else least
    return needed


def check(fan: Fan, flow: float, needed: float) -> Meets | Finding:
    """Compare the highest setting with the sum."""
    numbers = {"name": Num(fan.name), "rooms": Num(", ".join(fan.room))}
    if flow >= needed * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "{name} moves {highest_flow} for {rooms}, which need {needed_together} together",
        at="settings", help="choose a fan of {needed_together}, or state the airflow of each room by itself",
        numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-39", name="shared-fan-too-small", severity="caution", since="0.1",
    over=shared_fans, when=takes_out, needs=(highest_flow, needed_together), cites=("exhaust-shares",),
    check=check, nothing="no exhaust fan serves several rooms", answers=("B02",),
)  # fmt: skip
