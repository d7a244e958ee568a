"""In summer the ventilation brings in more moisture than the cooling equipment can take out.

Humid outdoor air carries a latent load that cooling must condense, beside the water that people give off. When
both together exceed the latent capacity of the equipment, the house stays cool and clammy however long it runs.

The latent capacity is the total less the sensible cooling capacity, and what dehumidifiers are rated to take out,
summed over the units; while they run part of the time they take out less. A core that returns moisture to the
outgoing air, a dehumidifier, or less air on humid days where the code allows it, closes the gap.
"""

from checker import each
from checker.case import Case
from checker.design import Design
from checker.physics.air import HEAT_OF_VAPORIZATION
from checker.quantities.latent_balance import (
    WATER_DENSITY,
    cooling_units,
    latent_capacity,
    latent_of_people,
    latent_of_ventilation,
)
from checker.quantities.moist_air import summer_dew_point
from checker.quantities.moisture_balance import outdoor_air
from checker.rule import Finding, Meets, Num, Rule


def is_humid_and_cooled(case: Case, design: Design) -> bool:
    """No cooling capacity is stated, or the outdoor air is no moister than the rooms."""
    if not any(unit.cooling is not None for unit in cooling_units(case)):
        return False
    return latent_of_ventilation(case, design) > 0.0


def check(
    _design: Design, brought: float, people: float, capacity: float, _flow: float, _dew_point: float
) -> Meets | Finding:
    """Compare both loads with the latent capacity."""
    load = brought + people
    numbers = {"load": Num(load, "heat_rate"), "short": Num(load - capacity, "heat_rate")}
    numbers["water"] = Num(max(0.0, load - capacity) / HEAT_OF_VAPORIZATION / WATER_DENSITY, "moisture_flow")
    if load <= capacity * (1 + 1e-9):
        return Meets({"load": numbers["load"]})
    return Finding(
        "{outdoor_air} of outdoor air with a dew point of {summer_dew_point} and the people bring {load} of latent "
        "heat; the equipment takes out {latent_capacity}",
        at="equipment",
        help="show a dehumidifier of {water} or more, or a core that returns moisture, for {short} of latent heat",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-44", name="cooling-cannot-dry-the-air", severity="caution", since="0.1",
    over=each.design, when=is_humid_and_cooled,
    needs=(latent_of_ventilation, latent_of_people, latent_capacity, outdoor_air, summer_dew_point),
    cites=("latent-capacity",), check=check,
)  # fmt: skip
