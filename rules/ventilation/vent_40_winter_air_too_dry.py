"""The ventilation leaves very dry air in the house on the winter design day.

Cold outdoor air holds almost no water. The more of it a fan brings in for each person, the drier the rooms:
below about a fifth of saturation people complain of eyes and throat, wood shrinks and shocks fly.

The steady humidity is worked out from the water that people give off with washing and cooking, about 3 kg a day
each, and the outdoor air of the fans that run all day; air leakage would dry it further. A recovery core that
returns moisture helps most. Do not cut the ventilation below the rate that the code asks for.
"""

from checker import each
from checker.case import CannotJudge, Case, quantity
from checker.design.house import House
from checker.physics import moisture
from checker.quantities.moist_air import (
    air_density,
    indoor_winter,
    moisture_generation,
    outdoor_winter,
    people,
    state,
    worked_out,
)
from checker.quantities.moisture_balance import humidity_left_by_fans, outdoor_air, returned
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def recovery_that_helps(case: Case, house: House) -> float | None:
    """Moisture recovery that keeps the air at the limit, for the air that passes a core; None where none can."""
    flow = outdoor_air(case, house)
    through = returned(case, house).through or flow
    density = air_density(case, house)
    wanted = state(case, indoor_winter(case, house).temperature, float(case.limit("winter-humidity-least")))
    outdoor, given_off = outdoor_winter(case, house).humidity_ratio, moisture_generation(case, house)
    try:
        return worked_out(
            lambda: moisture.recovery_for(wanted.humidity_ratio, outdoor, given_off, flow * density, through * density)
        )
    except CannotJudge:
        return None


def check(
    _house: House, humidity: float, _flow: float, _people: int, recovery: float | None, limit: float
) -> Meets | Finding:
    """Compare the humidity with the least."""
    if humidity >= limit * (1 - 1e-9):
        return Meets()
    help_ = "take a recovery unit whose core returns moisture"
    numbers = {}
    if recovery is not None:
        numbers["recovery"] = Num(recovery, "share")
        help_ += "; {recovery} of it keep the air at {limit}"
    return Finding(
        "{outdoor_air} of outdoor air for {people} people leaves {humidity_left_by_fans} relative humidity on the "
        "winter design day, below {limit}",
        help=help_,
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-40", name="winter-air-too-dry", severity="note", since="0.1",
    over=each.house, needs=(humidity_left_by_fans, outdoor_air, people, recovery_that_helps),
    limits=("winter-humidity-least",), check=check,
)  # fmt: skip
