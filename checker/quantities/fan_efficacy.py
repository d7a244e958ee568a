"""Airflow per watt of ventilation fans: the points a design states, and the row of the code's table."""


from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.codebook import converted
from checker.design.equipment import Equipment
from checker.design.fans import Fan, Setting
from checker.design.fields import Airflow, Efficacy, Pressure
from checker.design.hoods import Hood
from checker.physics.ventilation_energy import fan_efficacy
from checker.quantities.movers import exhaust_flow, is_continuous, supply_flow
from checker.quantities.ventilating_handlers import outdoor_flow
from checker.quantities.ventilation import SLACK, edge
from checker.record import Record

Ventilator = Fan | Hood | Equipment
HANDLER = "air handler"
IN_LINE = ("in-line", "remote")
EXHAUST_FANS = ("ceiling", "wall", "through-the-wall")


class Point(Record):
    """A point at which airflow m3/s and power W are stated, with the static pressure Pa if that is too."""

    path: str
    airflow: Airflow
    efficacy: Efficacy
    static: Pressure | None
    least: Efficacy

    @property
    def reaches(self) -> bool:
        """Whether the efficacy reaches what the table asks for at this airflow."""
        return self.efficacy >= self.least * (1 - SLACK)


@quantity()
def efficacy_kind(case: Case, device: Ventilator) -> str:
    """Row of the table that a device belongs to. NotApplicable where the table has no such row."""
    if isinstance(device, Hood):
        return "range hood"
    if isinstance(device, Equipment):
        return HANDLER
    role = case.get(device, "role")
    if role == "recovery" or device.kind == "recovery unit":
        return "recovery"
    kind = case.get(device, "kind")
    if kind in IN_LINE:
        return "in-line"
    if kind in EXHAUST_FANS and role == "exhaust":
        return "other"
    raise NotApplicable("the table of fan efficacies has no row for such a fan")


def least_efficacy(case: Case, kind: str, airflow: float) -> float:
    """The table's least efficacy for a kind of fan and its airflow, m3/s per W."""
    row = case.limit("fan-efficacy").get(kind)
    if row is None:
        raise NotApplicable("the table of fan efficacies has no row for such a fan in this edition")
    if isinstance(row, list):
        below = [value for bound, value in row if airflow < edge(bound, "airflow") * (1 - SLACK)]
        row = below[0] if below else row[-1][1]
    return float(converted(row, "efficacy"))


@quantity()
def points(case: Case, device: Ventilator) -> list[Point]:
    """The points of a device at which both airflow and power are stated. Raises Missing where there is none."""
    kind = efficacy_kind(case, device)
    if isinstance(device, Equipment):
        return [handler_point(case, device)]
    found = []
    for setting in device.settings.values():
        power = case.maybe(setting, "power")
        if power:
            flow = greatest_flow(case, setting)
            static = case.maybe(setting, "static")
            found.append(Point(setting.path, flow, fan_efficacy(flow, power), static, least_efficacy(case, kind, flow)))
    rating = device.rating if isinstance(device, Fan) else None
    if rating is not None and case.maybe(rating, "power"):
        flow = float(case.get(rating, "airflow"))
        least = least_efficacy(case, kind, flow)
        static = case.maybe(rating, "static")
        found.append(Point(rating.path, flow, fan_efficacy(flow, float(rating.power or 0)), static, least))
    if not found:
        raise Missing(*[path_of(setting, "power") for setting in lowest(device)] or [path_of(device, "settings")])
    return sorted(found, key=lambda point: (-point.efficacy / point.least, point.path))


def handler_point(case: Case, unit: Equipment) -> Point:
    """The outdoor air of an air handler for the power of its blower: while it ventilates, else as rated."""
    least, flow = least_efficacy(case, HANDLER, 0.0), outdoor_flow(case, unit)
    steady = [each for each in unit.settings.values() if is_continuous(case, each)]
    power = case.maybe(steady[0], "power") if len(steady) == 1 else None
    where: Setting | Equipment = unit if power is None else steady[0]
    if power is None:
        power = case.get(unit, "power")
    if not power:
        raise CannotJudge("a blower without any power is a misprint")
    return Point(path_of(where, "power"), flow, fan_efficacy(flow, float(power)), None, least)


def lowest(device: Fan | Hood) -> list[Setting]:
    """The setting to ask about: the one that runs all day by its name, else the first by name."""
    named = sorted(device.settings.values(), key=lambda setting: (setting.run != "continuous", setting.name))
    return named[:1]


def greatest_flow(case: Case, setting: Setting) -> float:
    """Supply or exhaust at a setting, the larger, m3/s."""
    return max(supply_flow(case, setting), exhaust_flow(case, setting))


@quantity()
def best_point(case: Case, device: Ventilator) -> Point:
    """The point that does best against the table: one is enough."""
    return points(case, device)[0]


@quantity("efficacy", "airflow / power at the best stated point")
def efficacy(case: Case, device: Ventilator) -> float:
    """Airflow per watt at the point that does best against the table."""
    return best_point(case, device).efficacy


@quantity("efficacy")
def wanted_efficacy(case: Case, device: Ventilator) -> float:
    """What the table asks for at that point."""
    return best_point(case, device).least


@quantity("pressure")
def least_static(case: Case, device: Fan | Hood) -> float:
    """Static pressure at which an efficacy counts. NotApplicable for a unit without ducts."""
    if device_is_ductless(device):
        raise NotApplicable("a unit in the wall has no duct to push through")
    kind = efficacy_kind(case, device)
    return float(case.limit("efficacy-static-ducted" if kind in ("in-line", "recovery") else "efficacy-static-other"))


def device_is_ductless(device: Fan | Hood | Equipment) -> bool:
    """Whether a fan blows straight through the wall."""
    return isinstance(device, Fan) and device.kind == "through-the-wall"
