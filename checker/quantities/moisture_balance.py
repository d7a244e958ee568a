"""What humidity the ventilation leaves in the house on the winter design day."""


from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.design.fans import Fan, Recovery
from checker.design.fields import Airflow
from checker.each import blank
from checker.physics import moisture
from checker.physics.infiltration import combined_outdoor_air, design_infiltration, effective_leakage_area
from checker.physics.ventilation_rate import counted_flow
from checker.quantities.airtightness import leakage_exponent, leakage_flow, stack_height
from checker.quantities.moist_air import (
    air_density,
    indoor_winter,
    moisture_generation,
    outdoor_winter,
    state,
    worked_out,
)
from checker.quantities.ventilation import mean_flows
from checker.quantities.whole_house import exhaust_of, is_ventilated, needed, run_share, running, supply_of
from checker.record import Record

MOST_RETURNED = 0.8
"""No core on the market returns a greater share of the moisture (common practice)."""


class Returned(Record):
    """Flow through recovery cores in m3/s, what of it comes back as moist as it was, and figures that lack."""

    through: Airflow
    least: Airflow
    most: Airflow
    lacking: tuple[str, ...]


def recovery_of(fan: Fan) -> Recovery:
    """The recovery figures of a unit; empty ones where it states none."""
    recovery: Recovery = fan.recovery or blank(Recovery, path_of(fan, "recovery"))
    return recovery


@quantity()
def returned(case: Case, node: object) -> Returned:
    """Moisture recovery of all recovery units; where one states none it may be anything up to the most."""
    through = least = most = 0.0
    lacking = []
    for part in running(case, node):
        if isinstance(part.device, Fan) and part.supplies and part.exhausts:
            flow = run_share(case, part) * min(supply_of(case, part), exhaust_of(case, part))
            recovery = recovery_of(part.device)
            stated = case.maybe(recovery, "moisture")
            through += flow
            least += flow * (stated or 0.0)
            most += flow * (MOST_RETURNED if stated is None else stated)
            if stated is None:
                lacking.append(path_of(recovery, "moisture"))
    return Returned(through, least, most, tuple(lacking))


@quantity("airflow", "the larger of supply and exhaust, averaged over time")
def outdoor_air(case: Case, node: object) -> float:
    """Outdoor air that fans bring about. Raises NotApplicable where no fan ventilates the house."""
    if not is_ventilated(case, node):
        raise NotApplicable("no fan is there to ventilate the whole house")
    needed(case, node)
    flows = mean_flows(case, node)
    flow = counted_flow(flows.supply, flows.exhaust)
    if flow <= 0.0:
        raise CannotJudge("the fans that ventilate the house move no air")
    return flow


@quantity("airflow", "leakage area x (51 + 0.35 H dT)", "ASHRAE Handbook - Fundamentals 2021, chapter 17, equations 8 to 10")
def winter_infiltration(case: Case, node: object) -> float:
    """Air that leaks in on the winter design day."""
    leakage, height = leakage_flow(case, node), stack_height(case, case.design)
    exponent = leakage_exponent(case, node)
    lift = indoor_winter(case, node).temperature - outdoor_winter(case, node).temperature
    return worked_out(
        lambda: design_infiltration(effective_leakage_area(leakage, exponent), height, lift, "heating")
    )


def winter_humidity(case: Case, node: object, flow: float, returned_flow: float) -> float:
    """Steady indoor relative humidity on the winter design day with an outdoor airflow in m3/s."""
    indoor, outdoor = indoor_winter(case, node), outdoor_winter(case, node)
    exchange = (flow - returned_flow) * air_density(case, node)
    return worked_out(
        lambda: moisture.steady_relative_humidity(
            indoor.temperature, outdoor.humidity_ratio, moisture_generation(case, node), exchange, indoor.pressure
        )
    )


@quantity("relative_humidity", "outdoor humidity ratio + water given off / air exchanged, without air leakage")
def humidity_left_by_fans(case: Case, node: object) -> float:
    """Winter humidity with the fans alone, thus the most there can be for a given moisture recovery.

    Raises Missing for an unstated moisture recovery on which it depends whether the air is too dry.
    """
    flow, cores = outdoor_air(case, node), returned(case, node)
    least = winter_humidity(case, node, flow, cores.least)
    if cores.lacking and least < case.limit("winter-humidity-least"):
        raise Missing(*cores.lacking)
    return least


def humidity_against(case: Case, node: object, ceiling: float) -> float:
    """Winter humidity for a comparison with a ceiling: with the fans alone where even that stays below it.

    Raises Missing for air leakage or a moisture recovery on which the comparison depends.
    """
    flow, cores = outdoor_air(case, node), returned(case, node)
    most = winter_humidity(case, node, flow, cores.most)
    if most <= ceiling:
        return most
    flows = mean_flows(case, node)
    leaking = combined_outdoor_air(winter_infiltration(case, node), flows.supply, flows.exhaust)
    least = winter_humidity(case, node, leaking, cores.least)
    if least <= ceiling and cores.lacking and winter_humidity(case, node, leaking, cores.most) > ceiling:
        raise Missing(*cores.lacking)
    return least


def flow_for(case: Case, node: object, humidity: float) -> float:
    """Outdoor airflow in m3/s, without recovery of moisture, that keeps the winter humidity at a value."""
    indoor, outdoor = indoor_winter(case, node), outdoor_winter(case, node)
    wanted = state(case, indoor.temperature, humidity)
    return worked_out(
        lambda: moisture.exchange_for(
            wanted.humidity_ratio, outdoor.humidity_ratio, moisture_generation(case, node)
        )
    ) / air_density(case, node)
