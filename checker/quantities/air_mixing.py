"""Where outdoor air meets room air, and whether the mixture stays clear; frost in recovery cores."""


from checker.case import CannotJudge, Case, Missing, path_of, quantity
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.design.fields import Airflow, HeatRate, Temperature, fold
from checker.physics.air import SPECIFIC_HEAT_DRY_AIR
from checker.physics.mixing import mix, stream_of_airflow
from checker.physics.moisture import clear_room_air, leaves_frost
from checker.physics.psychrometrics import FREEZING
from checker.physics.validity import NoSolution
from checker.quantities.duct_flow import fastest, mover_flow
from checker.quantities.duct_surface import outgoing_air, sensible_recovery
from checker.quantities.moist_air import air_density, indoor_winter, outdoor_winter, worked_out
from checker.quantities.moisture_balance import recovery_of
from checker.quantities.movers import supply_flow
from checker.record import Record

UNTREATED = frozenset({"", "none", "no", "without"})


class Mixed(Record):
    """Outdoor and room air in m3/s, the mixture in K, whether it is a fog, and the room air that clears it."""

    outdoor: Airflow
    room: Airflow
    temperature: Temperature
    is_fog: bool
    clear: Airflow | None


def mixing_points(case: Case) -> list[Fan | Equipment]:
    """Supply fans that temper by mixing, and air handlers with an outdoor-air duct that nothing else warms."""
    fans = [
        fan
        for fan in case.design.fans.values()
        if fan.tempering is not None and fan.tempering.by == "mixing" and case.maybe(fan, "role") == "supply"
    ]
    units = [
        unit
        for unit in case.design.equipment.values()
        if unit.outdoor_air is not None and (unit.tempering is None or unit.tempering.by in (None, "mixing", "none"))
    ]
    return [*fans, *units]


def flows_of(case: Case, node: Fan | Equipment) -> tuple[float, float]:
    """Outdoor air and the room air that it mixes with, m3/s. Raises Missing."""
    setting = fastest(case, node.settings)
    if isinstance(node, Fan):
        if setting is None:
            raise Missing(path_of(node, "settings"))
        return supply_flow(case, setting), float(case.get(node.tempering, "mixed_with"))
    outdoor = float(case.get(node.outdoor_air, "airflow"))
    stated = case.maybe(node, "airflow")
    return outdoor, (mover_flow(case, setting, node) if stated is None else float(stated)) - outdoor


@quantity("", "adiabatic mixing on the winter design day", "ASHRAE Handbook - Fundamentals 2021, chapter 1")
def mixed(case: Case, node: Fan | Equipment) -> Mixed:
    """The mixture of outdoor and room air."""
    outdoor, room = flows_of(case, node)
    if outdoor <= 0.0 or room <= 0.0:
        raise CannotJudge("no outdoor air or no room air is left to mix")
    cold, warm = outdoor_winter(case, node), indoor_winter(case, node)
    first = stream_of_airflow(outdoor, cold.temperature, cold.humidity_ratio, cold.pressure)
    second = stream_of_airflow(room, warm.temperature, warm.humidity_ratio, cold.pressure)
    mixture = worked_out(lambda: mix([first, second], cold.pressure))
    clear: float | None = None
    if mixture.condensate > 0.0:
        try:
            clear = room * clear_room_air(first, second, cold.pressure) / second.dry_air
        except NoSolution:
            clear = None
    return Mixed(outdoor, room, mixture.temperature, mixture.condensate > 0.0, clear)


def recovery_units(case: Case) -> list[Fan]:
    """Recovery units of the design."""
    return [fan for fan in case.design.fans.values() if case.maybe(fan, "role") == "recovery"]


class Frost(Record):
    """Outgoing air of a core in K (None where it has frost control), and the heat in W that would keep it thawed."""

    outgoing: Temperature | None
    heat: HeatRate | None


@quantity()
def frost(case: Case, fan: Fan) -> Frost:
    """Whether a recovery core freezes at the winter design temperature. Raises Missing where that is left open."""
    recovery = recovery_of(fan)
    control = case.maybe(recovery, "frost_control")
    warmed = fan.tempering is not None and fan.tempering.by == "heater"
    if warmed or (control is not None and fold(control) not in UNTREATED):
        return Frost(None, None)
    room, outdoor = indoor_winter(case, fan), outdoor_winter(case, fan)
    leaving = outgoing_air(case, fan)
    returned = float(case.maybe(recovery, "moisture") or 0.0)
    if not worked_out(
        lambda: leaves_frost(room.humidity_ratio, outdoor.humidity_ratio, leaving, returned, room.pressure)
    ):
        return Frost(None, None)
    path = path_of(recovery, "frost_control")
    if control is None and path not in case.design.stated_none:
        raise Missing(path)
    return Frost(leaving, preheat(case, fan))


def preheat(case: Case, fan: Fan) -> float | None:
    """Heat in W that warms the outdoor air until the outgoing air stays at freezing; None where no flow is known."""
    room, outdoor = indoor_winter(case, fan).temperature, outdoor_winter(case, fan).temperature
    least = room - (room - FREEZING) / sensible_recovery(case, fan)
    try:
        setting = fastest(case, fan.settings)
        if setting is None:
            return None
        return supply_flow(case, setting) * air_density(case, fan) * SPECIFIC_HEAT_DRY_AIR * max(0.0, least - outdoor)
    except Missing:
        return None
