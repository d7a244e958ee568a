"""What a claimed energy measure asks for, and where the design falls short of it."""

from collections.abc import Mapping
from functools import partial
from typing import Any

from checker.case import CannotJudge, Case, Missing, gather, path_of
from checker.codebook import converted
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.quantities.airtightness import air_changes_at_50
from checker.quantities.climate import zone_number
from checker.quantities.cold_capacity import capacity_kept, most_kept
from checker.quantities.duct_exposure import house_air_systems
from checker.quantities.duct_leakage import BARE, served_area, stated_leakage, total_leakage, whereabouts
from checker.quantities.energy import heat_pumps, is_conditioner, ratings_of
from checker.quantities.equipment import is_heat_pump
from checker.record import Record
from checker.rule import Num
from checker.units import parse

WITHOUT_DUCTS = frozenset({"wall unit", "floor unit", "ceiling unit", "boiler", "electric heat", "stove", "fireplace"})
OUTDOORS = frozenset({"heat pump", "air conditioner", "dehumidifier", "water heater"})


class Short(Record):
    """One requirement that is not met: of what, which figure, what it is and what it must be."""

    thing: str
    figure: str
    is_: Num
    wanted: Num


def shortfalls(case: Case, measure: str, wanted: Any) -> list[Short]:
    """Where the design falls short of a measure, of the nearest of its rows for the zone. Raises Missing, CannotJudge."""
    if isinstance(wanted, Mapping):
        return of_row(case, measure, wanted)
    zone = zone_number(case, case.design)
    rows = [row for row in wanted if covers(row["zones"], zone)]
    found: list[list[Short]] = []
    gaps: list[Missing] = []
    for row in rows:
        try:
            found.append(of_row(case, measure, row))
        except Missing as gap:
            gaps.append(gap)
    if any(not short for short in found):
        return []
    if gaps:
        raise min(gaps, key=lambda gap: len(gap.paths))
    if not found:
        raise CannotJudge(f"the measure `{measure}` has no row for zone {zone}")
    return min(found, key=len)


def covers(zones: list[int], zone: int) -> bool:
    """Whether a span of climate zones holds this one."""
    return int(zones[0]) <= zone <= int(zones[1])


def of_row(case: Case, measure: str, wanted: Mapping[str, Any]) -> list[Short]:
    """Where the design falls short of one row of figures."""
    if measure == "ducts inside":
        return of_ducts(case)
    if measure == "tight ducts":
        return of_duct_leakage(case, wanted)
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
        short for unit in pumps for short in of_ratings(case, unit, wanted, ("hspf", "hspf2", "seer", "seer2", "eer2"))
    ]
    if "cold_share" in wanted and not found:
        for unit in pumps:
            share = capacity_kept(case, unit)
            least = float(converted(wanted["cold_share"], "share"))
            if share < least * (1 - 1e-9):
                if most_kept(case, unit) >= least * (1 - 1e-9):
                    raise CannotJudge(f"{unit.name}: between the points of its table its capacity at 5 degF is not told")
                found.append(Short(str(unit.name), "its capacity kept at 5 degF", Num(share, "share"), Num(least, "share")))
    return found


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
        if is_ductless(case):
            return []
        raise Missing("ducts")
    found = []
    for system in systems:
        where = whereabouts(case, system)
        if where.outside:
            found.append(Short(str(system.name), "its ducts", Num(", ".join(where.outside[:3])), Num("inside")))
        elif where.open:
            raise Missing(*where.open)
    return found


def is_ductless(case: Case) -> bool:
    """Whether heads, heaters or water alone heat and cool the house, so that no duct can be outside."""
    kinds = {unit.kind for unit in case.design.equipment.values()}
    return bool(kinds & WITHOUT_DUCTS) and kinds <= WITHOUT_DUCTS | OUTDOORS


def of_duct_leakage(case: Case, wanted: Mapping[str, Any]) -> list[Short]:
    """Duct systems that leak more than the measure lets them."""
    systems = house_air_systems(case)
    if not systems:
        raise Missing("ducts")
    found = []
    for system in systems:
        leak, area = gather([partial(total_leakage, case, system), partial(served_area, case, system)])
        rough = case.get(stated_leakage(case, system), "stage") == BARE
        most = parse(wanted["rough" if rough else "complete"], "leakage_per_area") * area
        if leak > most * (1 + 1e-9):
            found.append(Short(str(system.name), "its leakage", Num(leak, "leakage"), Num(most, "leakage")))
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
    return [*found, *of_thawing(case, fan, wanted), *of_power(case, fan, wanted)]


def of_thawing(case: Case, fan: Fan, wanted: Mapping[str, Any]) -> list[Short]:
    """Thawing by indoor air blown round, in zones in which the measure rules it out."""
    spans = wanted.get("no_recirculation")
    way = case.maybe(fan.recovery, "frost_control") if fan.recovery is not None else None
    if spans is None or way is None or "recirc" not in str(way).lower():
        return []
    everywhere = covers(spans, 0) and covers(spans, 8)
    if not everywhere and not covers(spans, zone_number(case, case.design)):
        return []
    return [Short(str(fan.name), "its frost control", Num(str(way)), Num("one without recirculation"))]


def of_power(case: Case, fan: Fan, wanted: Mapping[str, Any]) -> list[Short]:
    """Power at the setting of least airflow, at which the measure takes it."""
    stated = [
        (float(flow), float(power))
        for setting in fan.settings.values()
        if (flow := case.maybe(setting, "airflow")) and (power := case.maybe(setting, "power")) is not None
    ]
    if "power" not in wanted or not stated:
        return []
    most = parse(wanted["power"], "specific_fan_power")
    flow, power = min(stated)
    if power <= most * flow * (1 + 1e-9):
        return []
    return [Short(str(fan.name), "its power", Num(power / flow, "specific_fan_power"), Num(most, "specific_fan_power"))]
