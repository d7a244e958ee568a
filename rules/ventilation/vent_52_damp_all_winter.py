"""The design day is dry, but the ventilation leaves damp air through the long mild weeks of winter.

Near a sea the winter is wet and seldom cold: outdoor air that carries twice the water of the design day takes half as
much out. With little air for many people the rooms then stay above 60 %, and what grows on window reveals and behind
wardrobes is blamed on the tenants.

The humidity is worked out for the mean of the coldest month, from about 3 kg of water a day for each person and the
outdoor air that fans bring about, with air leakage where it decides. Raise the airflow that runs all day, exhaust from
the bath while it dries, or take a core that returns less moisture.
"""

from checker import each
from checker.case import Case, quantity
from checker.design.house import House
from checker.physics import moisture
from checker.quantities.cold_month import cold_month, humidity_of_winter
from checker.quantities.moist_air import (
    air_density,
    indoor_winter,
    moisture_generation,
    people,
    state,
    worked_out,
)
from checker.quantities.moisture_balance import outdoor_air
from checker.rule import Finding, Meets, Num, Rule


@quantity("airflow", "water given off / (room humidity ratio at the most - outdoor humidity ratio)")
def flow_for_winter(case: Case, house: House) -> float:
    """Outdoor airflow, without recovery of moisture, that keeps the coldest month at the most that is good."""
    wanted = state(case, indoor_winter(case, house).temperature, float(case.limit("winter-humidity-most")))
    cold = state(case, cold_month(case, house).coldest, float(case.limit("outdoor-winter-humidity")))
    given_off = moisture_generation(case, house)
    needed = worked_out(lambda: moisture.exchange_for(wanted.humidity_ratio, cold.humidity_ratio, given_off))
    return needed / air_density(case, house)


def check(
    _house: House, found: float, _flow: float, _people: int, _needed: float, limit: float
) -> Meets | Finding:
    """Compare the humidity with the most."""
    if found <= limit * (1 + 1e-9):
        return Meets()
    return Finding(
        "{outdoor_air} of outdoor air all day for {people} people leaves {shown} relative humidity in the coldest month, "
        "above {limit}",
        help="raise the outdoor air that runs all day; {flow_for_winter} without moisture recovery keep it at {limit}",
        numbers={"shown": Num(min(found, 1.0), "relative_humidity")},
    )


RULE = Rule(
    code="VENT-52", name="damp-all-winter", severity="caution", since="0.1",
    over=each.house, needs=(humidity_of_winter, outdoor_air, people, flow_for_winter),
    limits=("winter-humidity-most",), cites=("closed-winter",), check=check,
)  # fmt: skip
