"""On a winter design day the mixed air is colder than the equipment allows.

Outdoor air and return air mix before the heat exchanger. Where the outdoor share is large and the day cold,
the mixture falls below what the instructions of a furnace or air handler allow: a gas heat exchanger then
rusts from its own condensate, a coil may ice up. A cracked heat exchanger can bring flue gas into the house.

Less outdoor air, more return air, or a heater in the outdoor-air duct keeps the mixture warm enough. The limit
is the one of the instructions, `by_maker.least_entering`.
"""

from checker.case import NotApplicable
from checker.design.equipment import Equipment
from checker.physics.mixing import outdoor_share_for_temperature
from checker.quantities.ventilating_handlers import (
    blower_flow,
    least_entering,
    mixed_air,
    outdoor_flow,
    winter_indoor,
    winter_outdoor,
    with_outdoor_air,
)
from checker.quantities.ventilation import SLACK
from checker.rule import Finding, Meets, Num, Rule


def check(
    unit: Equipment, mixed: float, least: float, outdoor: float, total: float, cold: float, room: float
) -> Meets | Finding:
    """The mixture against the least temperature."""
    if mixed >= least - SLACK * least:
        return Meets()
    if room < least:
        raise NotApplicable("the room itself is colder than the equipment allows")
    most = total * outdoor_share_for_temperature(cold, room, least)
    return Finding(
        f"at {{winter_outdoor}} outdoors {{outdoor_flow}} in {{blower_flow}} mix to {{mixed_air}}: "
        f"{unit.name} allows no less than {{least_entering}}",
        at="outdoor_air.airflow",
        help="bring in no more than {most} by this blower, raise its airflow, or warm the outdoor air by a heater",
        numbers={"most": Num(most, "airflow")},
    )


RULE = Rule(
    code="VENT-26", name="mixed-air-too-cold-for-the-equipment", severity="caution", since="0.1",
    over=with_outdoor_air,
    needs=(mixed_air, least_entering, outdoor_flow, blower_flow, winter_outdoor, winter_indoor),
    cites=("mixed-air",), check=check, nothing="no air handler has an outdoor-air duct", answers=("A33",),
)  # fmt: skip
