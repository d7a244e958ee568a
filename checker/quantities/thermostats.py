"""Thermostats: which of the controls are some, which one is that of the primary heating or cooling, what they hold."""


from checker.case import CannotJudge, Case, Missing, path_of, quantity
from checker.design.controls import ControlPoint
from checker.design.equipment import Equipment
from checker.design.fields import Temperature, TemperatureDifference, fold
from checker.quantities.equipment import gives, is_heat_pump, outdoor_of, rooms_served
from checker.quantities.stage import is_sketch
from checker.record import Record

CENTRAL = ("furnace", "boiler", "air handler", "packaged unit", "air conditioner", "heat pump", "slim duct unit")


def is_thermostat(point: ControlPoint) -> bool:
    """Whether a control is a thermostat by its kind or name."""
    return "thermostat" in fold(f"{point.kind or ''} {point.name}")


def thermostats_of(case: Case) -> list[ControlPoint]:
    """Every thermostat among the controls."""
    return [point for point in case.design.controls.values() if is_thermostat(point)]


def switched(case: Case, point: ControlPoint) -> list[Equipment]:
    """The equipment that a thermostat switches: named itself, or joined to the outdoor unit that is."""
    names = {each.partition(".")[0] for each in point.switches}
    found = []
    for unit in case.design.equipment.values():
        outdoor = outdoor_of(case, unit)
        if unit.name in names or (outdoor is not None and outdoor.name in names):
            found.append(unit)
    return found


def primary_units(case: Case) -> list[Equipment]:
    """What may be the primary heating or cooling: central equipment, else heads, else electric heaters."""
    able = [
        unit for unit in case.design.equipment.values() if gives(case, unit, "heating") or gives(case, unit, "cooling")
    ]
    central = [unit for unit in able if unit.kind in CENTRAL]
    return central or [unit for unit in able if is_heat_pump(case, unit)] or able


def primary_thermostats(case: Case) -> list[ControlPoint]:
    """Thermostats that may be the one of the primary heating or cooling; one that is said to be it stands alone."""
    every = thermostats_of(case)
    named = [point for point in every if case.maybe(point, "primary")]
    if named or len(every) == 1:
        return named or every
    units = {unit.path for unit in primary_units(case)}
    outdoors = {str(unit.outdoor_unit) for unit in primary_units(case)}
    return [
        point
        for point in every
        if point.primary is None
        and (
            any(unit.path in units for unit in switched(case, point))
            or outdoors & {each.partition(".")[0] for each in point.switches}
        )
    ]


def speaking(case: Case, *fields: str) -> list[ControlPoint]:
    """Thermostats of the primary heating or cooling that say something of these fields."""
    return [point for point in primary_thermostats(case) if any(case.speaks_of(point, field) for field in fields)]


def doubt_which(case: Case, point: ControlPoint) -> None:
    """Raise CannotJudge where another thermostat may be that of the primary system as well."""
    if len(primary_thermostats(case)) > 1 and not point.primary:
        raise CannotJudge("several thermostats may be that of the primary system; say which one is by `primary: yes`")


def is_due(case: Case, point: ControlPoint) -> bool:
    """A sketch need not say what its thermostat can do."""
    return not is_sketch(case) or case.speaks_of(point, "schedule")


class Schedule(Record):
    """The schedule that a thermostat can keep, and whether that is less than the edition asks for."""

    word: str
    falls_short: bool


RANK = {"none": 0, "daily": 1, "weekly": 2}


@quantity()
def schedule(case: Case, point: ControlPoint) -> Schedule:
    """What schedule a thermostat keeps. Raises CannotJudge for too little where another one may be meant."""
    word = str(case.get(point, "schedule"))
    short = RANK[word] < RANK[str(case.limit("thermostat-schedule"))]
    if short:
        doubt_which(case, point)
    return Schedule(word, short)


class Span(Record):
    """Lowest and highest, or heating and cooling, set points; None where not stated."""

    low: Temperature | None
    high: Temperature | None


@quantity()
def settable(case: Case, point: ControlPoint) -> Span:
    """The temperatures between which a thermostat can hold rooms."""
    return Span(case.maybe(point, "lowest_setting"), case.maybe(point, "highest_setting"))


@quantity()
def presets(case: Case, point: ControlPoint) -> Span:
    """Heating and cooling set points as the thermostat comes from its maker."""
    return Span(case.maybe(point, "heating_preset"), case.maybe(point, "cooling_preset"))


class Pair(Record):
    """A thermostat that heats and one that cools the same rooms; often one and the same."""

    path: str
    name: str
    heats: ControlPoint
    cools: ControlPoint


def rooms_of(case: Case, point: ControlPoint) -> set[str]:
    """Rooms that a thermostat's equipment serves; none where the file does not say."""
    found: set[str] = set()
    for unit in switched(case, point):
        try:
            found.update(rooms_served(case, unit))
        except Missing:
            continue
    return found


def pairs(case: Case) -> list[Pair]:
    """Heating and cooling thermostats of the same rooms, and each that keeps both set points by itself."""
    found = []
    for heats in thermostats_of(case):
        for cools in thermostats_of(case):
            both = case.speaks_of(heats, "heating_set") and case.speaks_of(cools, "cooling_set")
            if heats is cools and (both or case.speaks_of(heats, "deadband")):
                found.append(Pair(path_of(cools, "cooling_set" if both else "deadband"), str(heats.name), heats, cools))
            elif heats is not cools and both and rooms_of(case, heats) & rooms_of(case, cools):
                found.append(Pair(path_of(cools, "cooling_set"), f"{heats.name} and {cools.name}", heats, cools))
    return found


@quantity("temperature_difference", "cooling set point less heating set point; else the least that it keeps")
def set_points_apart(case: Case, pair: Pair) -> TemperatureDifference:
    """How far cooling starts above heating."""
    if pair.path.endswith("deadband"):
        return float(case.get(pair.heats, "deadband"))
    return float(case.get(pair.cools, "cooling_set")) - float(case.get(pair.heats, "heating_set"))


def with_electric_backup(case: Case, point: ControlPoint) -> list[Equipment]:
    """Heat pumps that a thermostat switches with electric backup, which stands at them or at their outdoor unit."""
    found = []
    for unit in switched(case, point):
        backups = [each.backup for each in (unit, outdoor_of(case, unit)) if each is not None]
        is_electric = any(backup is not None and backup.kind != "fuel" for backup in backups)
        if is_electric and (is_heat_pump(case, unit) or unit.kind == "air handler"):
            found.append(unit)
    return found
