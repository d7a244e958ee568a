"""Air handlers that bring outdoor air in by a duct on their return side: their flows and mixed air."""

from checker.case import CannotJudge, Case, Missing, either, path_of, quantity
from checker.design.equipment import Equipment
from checker.design.fans import Setting
from checker.physics.air import sensible_heat_factor
from checker.physics.mixing import mixed_temperature
from checker.quantities.airtightness import house_of
from checker.quantities.moist_air import pressure
from checker.quantities.movers import airflow, is_continuous
from checker.quantities.ventilation_standard import site_of


def with_outdoor_air(case: Case) -> list[Equipment]:
    """Air handlers with an outdoor-air duct."""
    return [unit for unit in case.design.equipment.values() if unit.outdoor_air is not None]


@quantity()
def motor(case: Case, unit: Equipment) -> str:
    """What motor the blower has."""
    return str(case.get(unit, "motor"))


@quantity("temperature", source="as stated for the house; else what heating designs usually take")
def winter_indoor(case: Case, _node: object) -> float:
    """Indoor temperature in winter."""
    indoor = house_of(case).indoor
    stated = case.maybe(indoor, "winter_temperature") if indoor is not None else None
    return float(case.limit("indoor-winter-temperature")) if stated is None else float(stated)


@quantity("temperature")
def winter_outdoor(case: Case, _node: object) -> float:
    """Outdoor temperature on the winter design day."""
    return float(case.get(site_of(case), "winter_design"))


@quantity("airflow", "the speed that runs all day, else the rated airflow, else the highest speed")
def blower_flow(case: Case, unit: Equipment) -> float:
    """Airflow of the blower while it ventilates, outdoor air included."""
    steady = [setting for setting in unit.settings.values() if is_continuous(case, setting)]
    if len(steady) == 1:
        return airflow(case, steady[0])

    def of_settings() -> float:
        settings: dict[str, Setting] = unit.settings
        if not settings:
            raise Missing(path_of(unit, "airflow"))
        return max(airflow(case, setting) for setting in settings.values())

    return either(lambda: float(case.get(unit, "airflow")), of_settings)


@quantity("airflow")
def outdoor_flow(case: Case, unit: Equipment) -> float:
    """Outdoor air by the duct on the return side."""
    return float(case.get(unit.outdoor_air, "airflow"))


@quantity("temperature", "outdoor and return air mixed by their flows, after any heater in the outdoor-air duct")
def mixed_air(case: Case, unit: Equipment) -> float:
    """Air temperature at the blower on the winter design day. CannotJudge for flows that cannot be."""
    outdoor, total = outdoor_flow(case, unit), blower_flow(case, unit)
    cold, room = winter_outdoor(case, unit), winter_indoor(case, unit)
    tempering = unit.tempering
    way = case.maybe(tempering, "by") if tempering is not None else None
    if way == "recovery":
        raise CannotJudge("outdoor air that a recovery core warms first is not worked out here")
    if outdoor <= 0 or total < outdoor:
        raise CannotJudge("the outdoor air is more than the blower moves")
    if way == "heater":
        heat = sensible_heat_factor(pressure(case, case.design)) * outdoor
        cold = min(room, cold + float(case.get(tempering, "power")) / heat)
    back = total - outdoor
    if way == "mixing" and tempering is not None and case.maybe(tempering, "mixed_with") is not None:
        back = float(case.get(tempering, "mixed_with"))
    return mixed_temperature([(outdoor, cold), (back, room)])


@quantity("temperature")
def least_entering(case: Case, unit: Equipment) -> float:
    """Least air temperature that the equipment's instructions allow."""
    stated = case.maybe(unit.tempering, "least_entering") if unit.tempering is not None else None
    if stated is not None:
        return float(stated)
    if unit.by_maker is None:
        raise Missing(f"{path_of(unit, 'by_maker')}.least_entering")
    return float(case.get(unit.by_maker, "least_entering"))
