"""A kitchen fan without a hood moves less than trade guidance gives to it.

A fan in the ceiling or wall only thins what has already spread through the kitchen. The guidance gives it about 15
air changes of the kitchen in an hour, which is far more than a hood over the cooktop needs.

The usual cause is a bath fan in a kitchen. Better than a larger fan is a ducted hood over the cooktop.
"""

from checker.case import Case, quantity
from checker.design.fans import Fan
from checker.quantities.exhaust_duct import highest_flow
from checker.quantities.exhaust_end import ducted_hoods, takes_out
from checker.quantities.local_exhaust import rooms_exhausted
from checker.quantities.room_uses import kitchens, room_volume
from checker.rule import Finding, Meets, Num, Rule


def kitchen_fans(case: Case) -> list[Fan]:
    """Exhaust fans for a kitchen alone, in a house without a ducted hood."""
    names = [[room.name] for room in kitchens(case)]
    if ducted_hoods(case):
        return []
    return [fan for fan in case.design.fans.values() if fan.role in ("exhaust", None) and fan.room in names]


@quantity("airflow", "volume of the kitchen x air changes")
def flow_for_kitchen(case: Case, fan: Fan) -> float:
    """What the guidance gives to a fan without a hood."""
    room = case.design.rooms[rooms_exhausted(case, fan)[0]]
    return float(case.limit("kitchen-fan-changes") * room_volume(case, room))


def check(fan: Fan, flow: float, advised: float) -> Meets | Finding:
    """Compare the highest setting with the advice."""
    numbers = {"name": Num(fan.name)}
    if flow >= advised * (1 - 1e-9):
        return Meets(numbers)
    return Finding(
        "{name} moves {highest_flow} from the kitchen without a hood; trade guidance gives it {flow_for_kitchen}",
        at="settings", help="show a ducted hood over the cooktop, or a fan of {flow_for_kitchen}", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-26", name="kitchen-fan-weak-without-hood", severity="note", since="0.1",
    over=kitchen_fans, when=takes_out, needs=(highest_flow, flow_for_kitchen), cites=("kitchen-fan-changes",),
    check=check, nothing="no kitchen is exhausted by a fan without a hood", answers=("B29",),
)  # fmt: skip
