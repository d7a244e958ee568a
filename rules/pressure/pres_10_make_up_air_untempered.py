"""A lot of make-up air comes in cold in winter.

Several hundred cubic feet of freezing air a minute make the cook turn the hood down or tape the grille shut, and then
the house is drawn down after all. Pipes near the entry can freeze.

Warm the air by a duct heater that runs with the fan, or by mixing it into a return that bears the cold. The heater's
power is the flow times its temperature rise; an electrician sizes the circuit.
"""

from checker.case import Case
from checker.physics.makeup_opening import tempering_load
from checker.quantities.make_up_air import Exhauster, make_up_flow
from checker.quantities.make_up_entry import is_tempered, winter_design, with_flow
from checker.rule import Finding, Meets, Num, Rule


def is_much_and_cold(case: Case, device: Exhauster) -> bool:
    """The make-up air is little, or the winter is mild."""
    if make_up_flow(case, device) <= case.limit("untempered-flow") * (1 + 1e-9):
        return False
    return bool(winter_design(case, device) < case.limit("untempered-winter-design"))


def check(
    device: Exhauster, flow: float, tempered: bool, outdoors: float, _most: float, _cold: float, least: float
) -> Meets | Finding:
    """The air is warmed."""
    if tempered:
        return Meets()
    return Finding(
        f"{{make_up_flow}} of make-up air for {device.name} come in at {{winter_design}} on the winter design day, not warmed",
        at="make_up_air.tempered" if device.make_up_air is not None else "",
        help="show a heater of about {heater} that runs with the make-up air and brings it to "
        "{make_up_air_least_temperature}",
        numbers={"heater": Num(tempering_load(flow, outdoors, least), "power")},
    )


RULE = Rule(
    code="PRES-10", name="make-up-air-untempered", severity="caution", since="0.1",
    over=with_flow, when=is_much_and_cold, needs=(make_up_flow, is_tempered, winter_design),
    limits=("untempered-flow", "untempered-winter-design", "make-up-air-least-temperature"), check=check,
    nothing="no make-up air with a known flow is shown", answers=("C22",),
)  # fmt: skip
