"""A lot of make-up air comes in cold in winter.

Several hundred cubic feet of freezing air a minute make the cook turn the hood down or tape the grille shut, and then
the house is drawn down after all. Pipes near the entry can freeze.

Warm the air by a duct heater that runs with the fan, or by mixing it into a return that bears the cold. The heater's
power is the flow times its temperature rise; an electrician sizes the circuit.
"""

from checker.case import Case, quantity
from checker.physics.makeup_opening import tempering_load
from checker.quantities.make_up_air import Exhauster, make_up_flow
from checker.quantities.make_up_entry import is_tempered, winter_design, with_flow
from checker.quantities.moist_air import air_density
from checker.rule import Finding, Meets, Rule


def is_much_and_cold(case: Case, device: Exhauster) -> bool:
    """The make-up air is little, or the winter is mild."""
    if make_up_flow(case, device) <= case.limit("untempered-flow") * (1 + 1e-9):
        return False
    return bool(winter_design(case, device) < case.limit("untempered-winter-design"))


@quantity("power", "airflow x density at the site x specific heat x (least temperature - outdoors)")
def warming(case: Case, device: Exhauster) -> float:
    """Heat that brings the make-up air to its least temperature on the winter design day."""
    least = float(case.limit("make-up-air-least-temperature"))
    outdoors, density = winter_design(case, device), air_density(case, case.design)
    return tempering_load(make_up_flow(case, device), outdoors, least, density)


def check(
    device: Exhauster, _flow: float, tempered: bool, _outdoors: float, _heat: float, _most: float, _cold: float, _least: float,
) -> Meets | Finding:
    """The air is warmed."""
    if tempered:
        return Meets()
    return Finding(
        f"{{make_up_flow}} of make-up air for {device.name} come in at {{winter_design}} on the winter design day, not warmed",
        at="make_up_air.tempered" if device.make_up_air is not None else "",
        help="show a heater of about {warming} that runs with the make-up air and brings it to "
        "{make_up_air_least_temperature}",
    )


RULE = Rule(
    code="PRES-10", name="make-up-air-untempered", severity="caution", since="0.1",
    over=with_flow, when=is_much_and_cold, needs=(make_up_flow, is_tempered, winter_design, warming),
    limits=("untempered-flow", "untempered-winter-design", "make-up-air-least-temperature"), check=check,
    nothing="no make-up air with a known flow is shown", answers=("C22",),
)  # fmt: skip
