"""A fan moves the air of a bath or toilet room into other rooms.

Moisture and smells then turn up in the hall or the bedroom instead of leaving the house. Air from these rooms has
to go straight outdoors; only a recovery unit may take its heat first.

The usual cause is a transfer fan that is meant to share the warmth of a bath, or that is drawn the wrong way
round. Turn it, so that it blows toward the bath, or replace it by an exhaust fan.
"""

from checker.case import Case, quantity
from checker.design.fans import Fan
from checker.quantities.room_uses import BATH_USES, rooms_used_as
from checker.rule import Finding, Meets, Num, Rule


def movers_of_room_air(case: Case) -> list[Fan]:
    """Transfer and recirculating fans that have to do with a bath or toilet room, or may have."""
    baths = {room.name for room in rooms_used_as(case, *BATH_USES)}
    return [
        fan
        for fan in case.design.fans.values()
        if fan.role in ("transfer", "recirculating") and baths
        and (not fan.from_ or baths & {*fan.from_, *fan.to})
    ]


@quantity()
def bath_air_to(case: Case, fan: Fan) -> tuple[str, str]:
    """The bath it draws from and the other room it blows to; empty texts where it does not do that."""
    baths = {room.name for room in rooms_used_as(case, *BATH_USES)}
    drawn = sorted(baths & set(case.get(fan, "from_")))
    if not drawn:
        return "", ""
    onward = [name for name in case.get(fan, "to") if name not in drawn and name not in case.design.openings]
    onward = [name for name in onward if name != "outdoors"]
    return drawn[0], onward[0] if onward else ""


def check(fan: Fan, way: tuple[str, str]) -> Meets | Finding:
    """Whether bath air reaches another room."""
    bath, onward = way
    numbers = {"name": Num(fan.name), "bath": Num(bath), "onward": Num(onward)}
    if not onward:
        return Meets(numbers)
    return Finding(
        "{name} blows the air of {bath} into {onward}",
        at="to", help="turn it to blow toward {bath}, or exhaust {bath} to outdoors", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-10", name="bath-air-recirculated", severity="correction", since="0.1",
    over=movers_of_room_air, needs=(bath_air_to,), cites=("no-recirculation",), check=check,
    nothing="no fan moves room air from or to a bath", answers=("B06",),
)  # fmt: skip
