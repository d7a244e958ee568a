"""What was measured on heating and cooling systems that were set to work, beside what they were to do."""

from functools import partial

from checker.case import CannotJudge, Case, either, path_of, quantity
from checker.codebook import converted
from checker.design.commissioning import Commissioning
from checker.design.equipment import Equipment
from checker.design.fields import Airflow, TemperatureDifference
from checker.quantities.sizing import unit_airflow
from checker.record import Record


class Measured(Record):
    """A unit, and what was measured on it."""

    path: str
    name: str
    unit: Equipment
    values: Commissioning


def speaking(case: Case, *fields: str) -> list[Measured]:
    """Units whose measured values speak of these fields."""
    return [
        Measured(unit.commissioning.path, str(unit.name), unit, unit.commissioning)
        for unit in case.design.equipment.values()
        if unit.commissioning is not None and any(case.speaks_of(unit.commissioning, field) for field in fields)
    ]


class Grade(Record):
    """The grade that a value is held against, its limit, and whether the papers claim it."""

    word: str
    limit: float
    is_claimed: bool
    dimension: str


def grade_limit(case: Case, measured: Measured, key: str, dimension: str) -> Grade:
    """The limit of the grade that the papers claim, else of grade II, the widest: grade III has none of its own."""
    claimed, limits = case.maybe(measured.values, "grade"), case.limit(key)
    word = str(claimed) if claimed in limits else "II"
    return Grade(word, float(converted(limits[word], dimension)), claimed == word, dimension)


@quantity("airflow")
def measured_airflow(case: Case, measured: Measured) -> Airflow:
    """Airflow of the system as measured."""
    return float(case.get(measured.values, "airflow"))


@quantity("airflow", "as the measuring sheet states it, else the rated airflow of the unit")
def wanted_airflow(case: Case, measured: Measured) -> Airflow:
    """Airflow that the design wanted of the system."""
    stated = case.maybe(measured.values, "design_airflow")
    if stated is None:
        stated = either(
            partial(unit_airflow, case, measured.unit), lambda: float(case.get(measured.values, "design_airflow"))
        )
    if stated <= 0.0:
        raise CannotJudge("a design airflow of nothing is a misprint")
    return float(stated)


@quantity()
def airflow_grade(case: Case, measured: Measured) -> Grade:
    """How far the measured airflow may be from the design."""
    return grade_limit(case, measured, "commissioned-airflow", "share")


@quantity("specific_fan_power", "blower power / airflow, both as measured")
def measured_power_per_flow(case: Case, measured: Measured) -> float:
    """Blower power for each flow, as measured."""
    power, flow = case.all(measured.values, "power", "airflow")
    if flow <= 0.0:
        raise CannotJudge("a measured airflow of nothing tells nothing of the power")
    return float(power) / float(flow)


@quantity()
def power_grade(case: Case, measured: Measured) -> Grade:
    """How much blower power each flow may take."""
    return grade_limit(case, measured, "commissioned-power", "specific_fan_power")


class Charge(Record):
    """One reading of the refrigerant's state beside its target."""

    path: str
    name: str
    what: str
    values: Commissioning


def charges(case: Case) -> list[Charge]:
    """Subcooling and superheat, where measured or to be; a target alone asks for the reading."""
    return [
        Charge(path_of(measured.values, what), measured.name, what, measured.values)
        for what in ("subcooling", "superheat")
        for measured in speaking(case, what, f"target_{what}")
    ]


class Reading(Record):
    """A temperature difference as measured and as the maker asks for it."""

    measured: TemperatureDifference
    target: TemperatureDifference


@quantity()
def reading(case: Case, charge: Charge) -> Reading:
    """The reading and its target. Raises Missing for either."""
    found, target = case.all(charge.values, charge.what, f"target_{charge.what}")
    return Reading(float(found), float(target))
