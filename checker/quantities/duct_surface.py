"""How cold the air in a duct gets, what air is around it, and whether water condenses on it or in it."""


from checker.case import CannotJudge, Case, Missing, gather, path_of, quantity
from checker.design.airway import Airway, Run
from checker.design.ducts import DuctSystem
from checker.design.fans import Fan
from checker.design.fields import Resistance, Temperature
from checker.physics.air import SPECIFIC_HEAT_DRY_AIR
from checker.physics.condensation import SAFETY, SURFACE_RESISTANCE, least_insulation, surface_temperature
from checker.physics.duct_condensation import Course, air_at_end, least_insulation_inside, wall_at_end
from checker.quantities.cold_ducts import OUTSIDE, ColdDuct, surroundings
from checker.quantities.duct_flow import run_flow
from checker.quantities.moist_air import (
    air_density,
    indoor_winter,
    outdoor_summer,
    state,
    summer_daily_range,
    winter_design,
    worked_out,
)
from checker.quantities.moisture_balance import recovery_of
from checker.record import Record

FILM = SURFACE_RESISTANCE["still air, dull"]
WARMEST_COLD_AIR = 295.15
"""K; a stated duct air temperature above this is that of heating."""


class Ambient(Record):
    """Air around a duct: temperature and dew point, K."""

    temperature: Temperature
    dew_point: Temperature


class Surface(Record):
    """Outside of a duct in K, the dew point of the air around it, and the insulation in m2 K/W that keeps it dry."""

    temperature: Temperature
    dew_point: Temperature
    needed: Resistance

    @property
    def is_wet(self) -> bool:
        """Whether water condenses on it."""
        return self.temperature < self.dew_point


def surface(inside: float, ambient: Ambient, resistance: float) -> Surface:
    """The outside of a duct with air of a temperature in it. CannotJudge for air that no insulation can suit."""
    if ambient.dew_point + SAFETY >= ambient.temperature:
        raise CannotJudge("the air around the duct is all but saturated, so that no insulation keeps it dry")
    needed = worked_out(lambda: least_insulation(inside, ambient.temperature, ambient.dew_point, FILM))
    found = surface_temperature(inside, ambient.temperature, resistance, FILM)
    return Surface(found, ambient.dew_point, needed)


@quantity("resistance")
def insulation(case: Case, duct: Airway) -> float:
    """Insulation on a duct; none counts as zero."""
    return float(case.get(duct, "insulation"))


@quantity("", "attic, crawl space, garage: outdoor dew point, mean temperature of the day; basement: 75 F 60 %")
def summer_ambient(case: Case, run: Run) -> Ambient:
    """Air around a supply run on the summer design day."""
    if OUTSIDE in surroundings(case, run):
        outdoor = outdoor_summer(case, run)
        return Ambient(outdoor.temperature - summer_daily_range(case, run) / 2.0, outdoor.dew_point)
    usual = state(case, case.limit("basement-summer-temperature"), case.limit("basement-summer-humidity"))
    return Ambient(usual.temperature, usual.dew_point)


@quantity()
def supply_surface(case: Case, run: Run) -> Surface:
    """Outside of a supply run while the equipment cools."""
    return surface(coldest_supply_air(case, run), summer_ambient(case, run), insulation(case, run))


@quantity("temperature", "as stated; else room air less sensible cooling / air; else 55 F")
def coldest_supply_air(case: Case, run: Run) -> float:
    """Coldest air in a supply run when the equipment cools."""
    own = case.maybe(run, "air_temperature")
    if own is not None and own < WARMEST_COLD_AIR:
        return float(own)
    system: DuctSystem = run.up
    stated = case.maybe(system, "supply_temperature")
    return float(case.limit("cold-supply-air")) if stated is None else float(stated)


@quantity("temperature", "as stated; else winter design; behind a core room air - recovery x (room air - winter design)")
def coldest_air(case: Case, node: ColdDuct) -> float:
    """Air in a cold duct on the winter design day."""
    stated = case.maybe(node.duct, "air_temperature")
    if stated is not None and stated < WARMEST_COLD_AIR:
        return float(stated)
    return winter_design(case, node) if node.unit is None else outgoing_air(case, node.unit)


@quantity("share", "apparent effectiveness, else sensible recovery")
def sensible_recovery(case: Case, fan: Fan) -> float:
    """Share of the temperature difference that a core recovers."""
    recovery = recovery_of(fan)
    stated = case.maybe(recovery, "apparent")
    return float(case.get(recovery, "sensible") if stated is None else stated)


@quantity("temperature")
def outgoing_air(case: Case, fan: Fan) -> float:
    """Air that leaves a recovery core toward outdoors on the winter design day, no heat of condensation counted."""
    room, outdoor = indoor_winter(case, fan).temperature, winter_design(case, fan)
    return room - sensible_recovery(case, fan) * (room - outdoor)


@quantity()
def winter_surface(case: Case, node: ColdDuct) -> Surface:
    """Outside of a cold duct in heated rooms on the winter design day."""
    room = indoor_winter(case, node)
    return surface(coldest_air(case, node), Ambient(room.temperature, room.dew_point), insulation(case, node.duct))


@quantity()
def has_jacket(case: Case, node: ColdDuct) -> bool:
    """Whether a vapor retarder covers the insulation; insulated flexible duct and duct board come with one."""
    duct = node.duct
    permeance = case.maybe(duct, "jacket_permeance")
    if permeance is not None:
        return bool(permeance <= case.limit("cold-duct-jacket"))
    stated = case.maybe(duct, "vapor_jacket")
    if stated is None and duct.material not in ("flexible", "duct board"):
        raise Missing(path_of(duct, "vapor_jacket"))
    return stated is not False


@quantity("", "flow x density x specific heat")
def capacity_flow(case: Case, run: Run) -> float:
    """Heat that the air of a run carries for each kelvin, W/K."""
    return run_flow(case, run) * air_density(case, run) * SPECIFIC_HEAT_DRY_AIR


class InnerWall(Record):
    """Air and inner wall in K at the end of a run in the cold, the dew point of the air, and the insulation needed."""

    air: Temperature
    wall: Temperature
    dew_point: Temperature
    needed: Resistance


@quantity("", "exit temperature of the run, less the share of the inner film", "ASHRAE Handbook - Fundamentals, chapter 4")
def inner_wall(case: Case, run: Run) -> InnerWall:
    """Where the room air of a run meets its wall at the end of the cold stretch on the winter design day."""
    room, outdoor = indoor_winter(case, run), winter_design(case, run)
    size, length, resistance, flow = gather([
        lambda: case.get(run, "size"), lambda: case.get(run, "length"),
        lambda: insulation(case, run), lambda: capacity_flow(case, run),
    ])  # fmt: skip
    course = Course(room.temperature, outdoor, size.perimeter, length, flow)
    return worked_out(
        lambda: InnerWall(
            air_at_end(course, resistance),
            wall_at_end(course, resistance),
            room.dew_point,
            least_insulation_inside(course, room.dew_point),
        )
    )
