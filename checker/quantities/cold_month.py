"""The coldest month: how cold it is outdoors on the mean, and how humid the rooms are then."""


from checker.case import CannotJudge, Case, Missing, NotApplicable, quantity
from checker.design.fields import Temperature
from checker.physics import moisture
from checker.physics.infiltration import combined_outdoor_air, design_infiltration
from checker.quantities.airtightness import stack_height
from checker.quantities.moist_air import (
    air_density,
    indoor_winter,
    moisture_generation,
    state,
    winter_design,
    worked_out,
)
from checker.quantities.moisture_balance import humidity_against, outdoor_air, returned
from checker.quantities.outdoor_air import leakage_area
from checker.quantities.ventilation import mean_flows
from checker.quantities.ventilation_standard import site_of
from checker.record import Record


class MonthSpan(Record):
    """The coldest and the mildest that the mean of the coldest month can be, K."""

    coldest: Temperature
    mildest: Temperature


@quantity("", "stated; else above the winter design temperature by what stations show", "station tables (from memory)")
def cold_month(case: Case, node: object) -> MonthSpan:
    """Mean outdoor temperature of the coldest month, between bounds where the site does not state it."""
    site = site_of(case)
    stated = case.maybe(site, "coldest_month")
    if stated is not None:
        return MonthSpan(float(stated), float(stated))
    design = winter_design(case, node)
    low, high = case.limit("coldest-month-above-design")
    return MonthSpan(design + float(low), design + float(high))


def month_humidity(case: Case, node: object, outdoor: float) -> float:
    """Relative humidity of the rooms in a month with a mean outdoor temperature in K.

    As stated for winter; else what the ventilation leaves, where the file tells enough, and at most what is too damp
    altogether; else the usual one. Raises Missing for what is still to be decided.
    """
    house = case.design.house
    indoor = None if house is None else house.indoor
    stated = None if indoor is None else case.maybe(indoor, "winter_humidity")
    if stated is not None:
        return float(stated)
    try:
        outdoor_air(case, node)
        return min(left_by_ventilation(case, node, outdoor), float(case.limit("winter-humidity-most")))
    except Missing as gap:
        if case.design.tbd & set(gap.paths):
            raise
    except (NotApplicable, CannotJudge):
        pass
    return usual_humidity(case, outdoor)


def usual_humidity(case: Case, outdoor: float) -> float:
    """Usual relative humidity of dwellings by the mean outdoor temperature in K: linear between two points."""
    (cold, warm), (low, high) = case.limit("usual-humidity-outdoors"), case.limit("usual-humidity-indoors")
    share = (outdoor - float(cold)) / (float(warm) - float(cold))
    return float(low) + min(max(share, 0.0), 1.0) * (float(high) - float(low))


def left_by_ventilation(case: Case, node: object, outdoor: float, recovered: float | None = None) -> float:
    """Steady relative humidity with fans and air leakage. Raises Missing.

    `outdoor` K; `recovered` m3/s of air that comes back as moist as it was, as stated where None.
    """
    flows, room = mean_flows(case, node), indoor_winter(case, node).temperature
    area, height = leakage_area(case, node), stack_height(case, node)
    leaking = worked_out(lambda: design_infiltration(area, height, max(0.0, room - outdoor), "heating"))
    back = returned(case, node).least if recovered is None else recovered
    return left_by(case, node, outdoor, combined_outdoor_air(leaking, flows.supply, flows.exhaust) - back)


def left_by(case: Case, node: object, outdoor: float, flow: float) -> float:
    """Steady relative humidity with an exchange of air in m3/s at a mean outdoor temperature in K. Raises Missing."""
    room = indoor_winter(case, node)
    cold = state(case, outdoor, float(case.limit("outdoor-winter-humidity")))
    exchange = flow * air_density(case, node)
    return worked_out(
        lambda: moisture.steady_relative_humidity(
            room.temperature, cold.humidity_ratio, moisture_generation(case, node), exchange, room.pressure
        )
    )


@quantity("relative_humidity", "outdoor humidity ratio + water given off / air exchanged, in the coldest month")
def humidity_of_winter(case: Case, node: object) -> float:
    """Humidity that the ventilation leaves in the coldest month at least; air leakage counts where it decides.

    Raises NotApplicable where that month is no closed winter, and where the design day is too damp already.
    """
    span, most = cold_month(case, node), float(case.limit("winter-humidity-most")) * (1 + 1e-9)
    mild = float(case.limit("closed-winter"))
    if span.coldest > mild:
        raise NotApplicable("the coldest month is so mild that windows stand open")
    span = MonthSpan(span.coldest, min(span.mildest, mild))
    cores = returned(case, node)
    by_fans = left_by(case, node, span.mildest, outdoor_air(case, node) - cores.most)
    if by_fans <= most:
        return by_fans
    if humidity_against(case, node, most) > most:
        raise NotApplicable("the design day is too damp already, of which another rule speaks")
    least = left_by_ventilation(case, node, span.coldest)
    if least <= most < left_by_ventilation(case, node, span.mildest, cores.most):
        raise Missing(*cores.lacking, *(("site.coldest_month",) if span.coldest < span.mildest else ()))
    return least
