"""An exhaust duct takes more pressure at the airflow than the fan offers.

Friction and fittings are reckoned at the airflow of the highest setting, between a lower and an upper bound for
what the sketch leaves open. Where even the lower bound is more than the static pressure at which that airflow is
stated, the fan will move less air than the drawing says.

The usual cause is an airflow stated at 0.1 in. of water beside a long flexible duct. Use a larger or smooth duct,
fewer elbows, or a fan whose airflow is stated at the pressure that this duct takes.
"""


from checker.case import CannotJudge, Case, Missing, path_of, quantity
from checker.design.fans import Fan
from checker.design.fields import Pressure
from checker.quantities.duct_losses import duct_items
from checker.quantities.exhaust_duct import exhaust_line, highest_flow, section_flow
from checker.quantities.exhaust_end import ducted_hoods
from checker.quantities.fan_ratings import offered_static
from checker.quantities.local_exhaust import Exhauster
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class Takes(Record):
    """Least and greatest pressure in Pa that a duct takes, and the keys that would narrow it."""

    least: Pressure
    most: Pressure
    ask: tuple[str, ...]


def with_pressure(case: Case) -> list[Exhauster]:
    """Exhaust fans and ducted hoods; a recovery unit balances two sides and is judged with its duct system."""
    fans = [
        fan for fan in case.design.fans.values() if fan.role == "exhaust" or path_of(fan, "role") in case.design.tbd
    ]
    return [*fans, *ducted_hoods(case)]


def has_duct_and_static(case: Case, device: Exhauster) -> bool:
    """No static pressure is stated for it."""
    rating = device.rating if isinstance(device, Fan) else None
    paths = [f"{each.path}.static" for each in device.settings.values()]
    asked = any(path in case.design.tbd for path in paths)
    stated = rating is not None or device.curves or any(each.static is not None for each in device.settings.values())
    return bool(stated or asked)


@quantity()
def duct_takes(case: Case, device: Exhauster) -> Takes:
    """Pressure drop of duct and fittings at the highest airflow; parts without a figure are not counted."""
    items, bounds = [], []
    for section in exhaust_line(case, device).sections:
        flow = section_flow(case, device, section)
        own = duct_items(case, section)
        items += own
        bounds += [item.bounds(flow) for item in own]
    ask = tuple(item.ask for item, (low, high) in zip(items, bounds, strict=True) if item.ask and high > low)
    return Takes(sum(low for low, _ in bounds), sum(high for _, high in bounds), ask)


def check(device: Exhauster, flow: float, takes: Takes, offered: float) -> Meets | Finding:
    """Only the lower bound makes a finding, only the upper one a pass."""
    numbers = {"name": Num(device.name), "least": Num(takes.least, "pressure")}
    if takes.least > offered * (1 + 1e-9):
        return Finding(
            "{name} is stated to offer {offered_static} at {highest_flow}, and its duct takes at least {least} there",
            help="use a larger or smooth duct, fewer elbows, or a fan rated for {highest_flow} at that pressure",
            numbers=numbers,
        )
    if takes.most <= offered * (1 + 1e-9):
        return Meets({**numbers, "most": Num(takes.most, "pressure")})
    if takes.ask:
        raise Missing(*takes.ask)
    raise CannotJudge(
        f"the duct takes {takes.least:.0f} to {takes.most:.0f} Pa and the fan offers {offered:.0f} Pa: too near to tell"
    )


RULE = Rule(
    code="EXH-14", name="exhaust-duct-takes-more-than-fan-offers", severity="caution", since="0.1",
    over=with_pressure, when=has_duct_and_static, needs=(highest_flow, duct_takes, offered_static),
    cites=("fan-offers-duct-takes",), check=check,
    nothing="the design has no exhaust fan or ducted hood",
)  # fmt: skip
