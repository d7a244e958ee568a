"""A turn directly at an exhaust fan's outlet takes much of the fan's static pressure.

Air leaves a fan fast and uneven, so a bend right there costs more than elsewhere; what is reckoned here is the least
it can cost. In a duct with room to spare it hardly matters: 80 cfm in a 6 in duct turns right round for a few
hundredths of the fan's pressure.

The usual cause is a small duct bent back on itself because the joists run the wrong way. Use the next larger duct
through the turn, turn with smooth elbows in place of flexible duct, or hang the fan the other way round.
"""


from checker.case import Case, Missing, path_of, quantity
from checker.design.fans import Fan
from checker.design.fields import Diameter, Pressure
from checker.physics.turn_at_fan import diameter_for_share, share_of_static, turn_loss
from checker.quantities.exhaust_duct import highest_flow
from checker.quantities.fan_ratings import offered_static
from checker.quantities.turns import turn_coefficient
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule
from checker.sizes import equivalent_diameter

INCH = 0.0254
OTHERS = ("supply", "recovery", "recirculating", "transfer", "booster")  # these are judged with their ducts


class Turn(Record):
    """What the turn takes in Pa, the diameter in m, and the diameter at which it would take the allowed share."""

    loss: Pressure
    diameter: Diameter
    wanted: Diameter


def fans_with_turns(case: Case) -> list[Fan]:
    """Exhaust fans with a turn at the outlet, or where nobody has decided."""
    return [
        fan
        for fan in case.design.fans.values()
        if fan.role not in OTHERS
        and (fan.turn_at_outlet in ("90", "180") or path_of(fan, "turn_at_outlet") in case.design.tbd)
    ]


def turned(case: Case, fan: Fan) -> bool:
    """The air leaves it straight."""
    return bool(case.get(fan, "turn_at_outlet") != "none")


@quantity()
def turn(case: Case, fan: Fan) -> Turn:
    """The loss of the turn at the highest airflow; half a turn of 180 degrees is one of 90."""
    size = case.maybe(fan.duct, "size") if fan.duct is not None else None
    diameter = equivalent_diameter(size) if size is not None else case.maybe(fan, "outlet_size")
    if diameter is None:
        raise Missing(path_of(fan, "outlet_size"))
    flow, static = highest_flow(case, fan), offered_static(case, fan)
    coefficient = turn_coefficient(fan)
    loss = turn_loss(flow, float(diameter), coefficient)
    return Turn(loss, float(diameter), diameter_for_share(flow, coefficient, static, case.limit("turn-share")))


def check(fan: Fan, turn: Turn, flow: float, static: float, most: float) -> Meets | Finding:
    """Compare the turn's share of the static pressure with what practice allows."""
    share = share_of_static(turn.loss, static)
    numbers = {
        "name": Num(fan.name), "angle": Num(fan.turn_at_outlet or ""), "loss": Num(turn.loss, "pressure"),
        "size": Num(turn.diameter, "diameter"), "share": Num(min(share, 1.0), "share"),
    }  # fmt: skip
    if share <= most:
        return Meets(numbers)
    larger = next((float(inches) for inches in (4, 5, 6, 7, 8, 9, 10, 12) if inches * INCH >= turn.wanted), 14.0)
    numbers["larger"] = Num(larger * INCH, "diameter")
    return Finding(
        "the {angle} degree turn at the outlet of {name} takes {loss} or more at {highest_flow} in {size} duct, "
        "{share} of the {offered_static} it offers",
        at="turn_at_outlet", help="use {larger} duct through the turn, or let the air leave straight", numbers=numbers,
    )  # fmt: skip


RULE = Rule(
    code="EXH-36", name="turn-at-outlet-costs-much", severity="caution", since="0.1",
    over=fans_with_turns, when=turned, needs=(turn, highest_flow, offered_static), limits=("turn-share",),
    check=check, nothing="no exhaust fan turns its air directly at the outlet",
)  # fmt: skip
