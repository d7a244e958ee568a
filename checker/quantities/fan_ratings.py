"""At what static pressure the airflow of an exhaust fan or hood is stated: rating, settings, curves."""


from checker.case import CannotJudge, Case, Missing, path_of, quantity
from checker.design.fans import Curve, Fan, Rating
from checker.design.fields import Airflow, Pressure
from checker.physics.fan import FanCurve
from checker.physics.validity import NoSolution, OutOfRange
from checker.quantities.exhaust_duct import highest_flow, highest_setting
from checker.quantities.local_exhaust import Exhauster
from checker.quantities.movers import exhaust_flow, supply_flow
from checker.record import Record

SLACK = 1e-9


class Rated(Record):
    """An airflow in m3/s and the static pressure in Pa at which it is stated."""

    airflow: Airflow
    static: Pressure


@quantity()
def rated_points(case: Case, device: Exhauster) -> tuple[Rated, ...]:
    """Every stated pair of airflow and static pressure. Raises Missing where there is none."""
    found = []
    supplies = isinstance(device, Fan) and device.role == "supply"
    rating = device.rating if isinstance(device, Fan) else None
    if rating is not None and (speaks_of_a_point(case, rating) or not says_static(case, device)):
        found.append(Rated(*case.all(rating, "airflow", "static")))
    for setting in device.settings.values():
        static = case.maybe(setting, "static")
        if static is not None:
            found.append(Rated(supply_flow(case, setting) if supplies else exhaust_flow(case, setting), static))
    for curve in device.curves.values():
        found += [Rated(*case.all(point, "airflow", "pressure")) for point in curve.points]
    if not found:
        if isinstance(device, Fan):
            raise Missing(path_of(device, "rating"))
        raise Missing(path_of(highest_setting(case, device), "static"))
    return tuple(found)


def speaks_of_a_point(case: Case, rating: Rating) -> bool:
    """Whether a rating states an airflow or a pressure, or leaves one to be decided; one of them asks for the other."""
    return case.speaks_of(rating, "airflow") or case.speaks_of(rating, "static")


def says_static(case: Case, device: Exhauster) -> bool:
    """Whether a setting states its airflow at a static pressure."""
    return any(case.maybe(setting, "static") is not None for setting in device.settings.values())


def flow_rated_at(points: tuple[Rated, ...], static: float) -> Rated:
    """The greatest airflow stated at this static pressure or more; else the point of the highest pressure."""
    enough = [point for point in points if point.static >= static * (1 - SLACK)]
    if enough:
        return max(enough, key=lambda point: point.airflow)
    return max(points, key=lambda point: point.static)


def fan_curve(case: Case, curve: Curve) -> FanCurve:
    """A curve of the file as the physics takes it. Raises CannotJudge for one that no fan has."""
    points = [case.all(point, "airflow", "pressure") for point in curve.points]
    try:
        return FanCurve([(flow, pressure) for flow, pressure in points], curve.basis or "static")
    except ValueError as problem:
        raise CannotJudge(f"the curve {curve.name}: {problem}") from None


@quantity("pressure", "as stated at the highest setting, by its curve, or as certified at that airflow or more")
def offered_static(case: Case, device: Exhauster) -> float:
    """Static pressure that a fan or hood offers at the airflow of its highest setting."""
    setting = highest_setting(case, device)
    flow = highest_flow(case, device)
    static = case.maybe(setting, "static")
    if static is not None:
        return float(static)
    curve = device.curves.get(setting.name)
    if curve is not None and curve.basis != "total":
        try:
            return fan_curve(case, curve).pressure(flow)
        except (OutOfRange, NoSolution) as problem:
            raise CannotJudge(str(problem)) from None
    rating = device.rating if isinstance(device, Fan) else None
    if rating is not None and case.get(rating, "airflow") >= flow * (1 - SLACK):
        return float(case.get(rating, "static"))
    raise Missing(path_of(setting, "static"))
