"""The winter air of the house for a page that shows the house: humidity reached, air that leaks in."""

from checker.case import Case, Missing, quantity
from checker.physics.infiltration import combined_outdoor_air
from checker.quantities.moisture_balance import outdoor_air, returned, winter_humidity, winter_infiltration
from checker.quantities.ventilation import mean_flows


@quantity("relative_humidity", "outdoor humidity ratio + water given off / air exchanged, air leakage included")
def humidity_with_leakage(case: Case, node: object) -> float:
    """Winter humidity with fans and air leakage. Raises Missing for a moisture recovery that is not told."""
    outdoor_air(case, node)
    cores = returned(case, node)
    if cores.lacking:
        raise Missing(*cores.lacking)
    flows = mean_flows(case, node)
    leaking = combined_outdoor_air(winter_infiltration(case, node), flows.supply, flows.exhaust)
    return winter_humidity(case, node, leaking, cores.least)
