"""What a claimed energy measure asks for, and where the design falls short of it."""

from collections.abc import Mapping
from functools import partial
from typing import Any, NamedTuple

from checker.case import CannotJudge, Case, Missing, gather, path_of
from checker.codebook import converted
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.physics.heat_pump import capacity_at
from checker.quantities.airtightness import air_changes_at_50
from checker.quantities.climate import zone_number
from checker.quantities.duct_exposure import house_air_systems
from checker.quantities.duct_leakage import whereabouts
from checker.quantities.energy import heat_pumps, is_conditioner, ratings_of
from checker.quantities.equipment import is_heat_pump
from checker.quantities.heat_pump import RATING_TEMPERATURE, table_of
from checker.rule import Num
from checker.units import parse


class Short(NamedTuple):
    """One requirement that is not met: of what, which figure, what it is and what it must be."""

    thing: str
    figure: str
    is_: Num
    wanted: Num


def shortfalls(case: Case, measure: str, wanted: Mapping[str, Any]) -> list[Short]:
    """Where the design falls short of a measure. Raises Missing; CannotJudge for a measure of another section."""
    if measure == "ducts inside":
        return of_ducts(case)
    if measure in ("recovery", "tight with recovery"):
        found = of_recovery(case, wanted)
        return [*of_tightness(case, wanted), *found]
    if measure == "heat pump":
        return of_heat_pumps(case, wanted)
    return of_furnace_and_cooling(case, wanted)


def rating(case: Case, unit: Equipment, field: str) -> float:
    """A rating; where only that of the newer procedure is stated, it stands for the older, which is higher."""
    ratings = ratings_of(unit)
    newer = {"seer": "seer2", "hspf": "hspf2"}.get(field)
    stated = case.maybe(ratings, field)
    if stated is None and newer is not None and case.maybe(ratings, newer) is not None:
        return float(case.get(ratings, newer))
    return float(case.get(ratings, field))


def of_ratings(case: Case, unit: Equipment, wanted: Mapping[str, Any], fields: tuple[str, ...]) -> list[Short]:
    """Ratings of a unit that are below what is wanted."""
    asked = [field for field in fields if field in wanted]
    values = gather([partial(rating, case, unit, field) for field in asked])
    found = []
    for field, value in zip(asked, values, strict=True):
        dimension = "share" if field == "afue" else ""
        least = float(converted(wanted[field], "share")) if field == "afue" else float(wanted[field])
        if value < least * (1 - 1e-9):
            if field in ("seer", "hspf") and case.maybe(ratings_of(unit), field) is None:
                raise Missing(path_of(ratings_of(unit), field))
            found.append(Short(str(unit.name), field.upper(), Num(value, dimension), Num(least, dimension)))
    return found


def of_heat_pumps(case: Case, wanted: Mapping[str, Any]) -> list[Short]:
    """What the heat pumps lack."""
    pumps = heat_pumps(case) or [u for u in case.design.equipment.values() if u.ratings and is_heat_pump(case, u)]
    if not pumps:
        raise Missing("equipment")
    found = [
        short for unit in pumps for short in of_ratings(case, unit, wanted, ("hspf", "hspf2", "seer", "seer2"))
    ]
    if "cold_share" in wanted and zone_number(case, case.design) >= int(wanted["cold_from_zone"]):
        for unit in pumps:
            share = capacity_kept(case, unit)
            least = float(converted(wanted["cold_share"], "share"))
            if share < least * (1 - 1e-9):
                found.append(Short(str(unit.name), "its capacity kept at 5 degF", Num(share, "share"), Num(least, "share")))
    return found


def capacity_kept(case: Case, unit: Equipment) -> float:
    """Capacity at 5 F over that at 47 F."""
    points = table_of(case, unit)
    warm = capacity_at(points, RATING_TEMPERATURE)
    if warm <= 0.0:
        raise CannotJudge(f"{unit.name} is said to have no capacity at 47 degF")
    return capacity_at(points, float(case.limit("cold-rating-point"))) / warm


def of_furnace_and_cooling(case: Case, wanted: Mapping[str, Any]) -> list[Short]:
    """What furnaces and air conditioners lack."""
    units = case.design.equipment.values()
    furnaces = [unit for unit in units if unit.kind == "furnace"]
    coolers = [unit for unit in units if is_conditioner(case, unit)]
    if not furnaces or not coolers:
        raise Missing("equipment")
    found = [short for unit in furnaces for short in of_ratings(case, unit, wanted, ("afue",))]
    try:
        cooling = [s for unit in coolers for s in of_ratings(case, unit, wanted, ("seer", "seer2", "eer2"))]
    except Missing:
        if not found:
            raise
        cooling = []  # the furnace alone falls short already
    return found + cooling


def of_ducts(case: Case) -> list[Short]:
    """Ducts that are not inside."""
    systems = house_air_systems(case)
    if not systems:
        raise Missing("ducts")
    found = []
    for system in systems:
        where = whereabouts(case, system)
        if where.outside:
            found.append(Short(str(system.name), "its ducts", Num(", ".join(where.outside[:3])), Num("inside")))
        elif where.open:
            raise Missing(*where.open)
    return found


def of_tightness(case: Case, wanted: Mapping[str, Any]) -> list[Short]:
    """A house that is too leaky."""
    if "ach50" not in wanted:
        return []
    leak, most = air_changes_at_50(case, case.design), float(wanted["ach50"])
    return [Short("the house", "its leakage", Num(leak, "ach50"), Num(most, "ach50"))] if leak > most * (1 + 1e-9) else []


def of_recovery(case: Case, wanted: Mapping[str, Any]) -> list[Short]:
    """What the recovery units lack; moisture recovery counts only where a unit has it."""
    fans = [fan for fan in case.design.fans.values() if fan.role == "recovery"]
    if not fans:
        raise Missing("fans")
    return [short for fan in fans for short in of_one_recovery(case, fan, wanted)]


def of_one_recovery(case: Case, fan: Fan, wanted: Mapping[str, Any]) -> list[Short]:
    """What one recovery unit lacks."""
    if fan.recovery is None:
        raise Missing(f"{fan.path}.recovery.sensible")
    found = []
    sensible, moisture = float(case.get(fan.recovery, "sensible")), case.maybe(fan.recovery, "moisture")
    for figure, value, key in (("its sensible recovery", sensible, "sensible"), ("its moisture recovery", moisture, "moisture")):
        least = float(converted(wanted[key], "share"))
        if value is not None and value > 0.0 and value < least * (1 - 1e-9):
            found.append(Short(str(fan.name), figure, Num(float(value), "share"), Num(least, "share")))
    if "power" in wanted:
        most = parse(wanted["power"], "specific_fan_power")
        for setting in fan.settings.values():
            power, flow = case.maybe(setting, "power"), case.maybe(setting, "airflow")
            if power is not None and flow and power > most * flow * (1 + 1e-9):
                found.append(
                    Short(str(fan.name), "its power", Num(power / flow, "specific_fan_power"), Num(most, "specific_fan_power"))
                )
    return found
