"""The external static pressure that a fan or unit offers at an airflow: by its curve, or by a rated point."""

from collections.abc import Callable
from math import inf
from typing import Any

from checker.case import CannotJudge, Case, Missing, path_of
from checker.design.equipment import Equipment
from checker.design.fans import Curve, Fan, Setting
from checker.design.fields import fold
from checker.physics.fan import FanCurve
from checker.physics.friction import velocity, velocity_pressure
from checker.physics.validity import OutOfRange
from checker.quantities.duct_flow import fastest, greatest_flow
from checker.quantities.duct_graph import Mover
from checker.record import Record

SAME_FLOW = 0.05
CONSTANT_WORDS = ("constant airflow", "constant air flow", "constant flow", "constant volume", "constant cfm")


class Offer(Record):
    """Static pressure in Pa: at least `low`, at most `high`; `words` says on what it rests, `ask` what would tell."""

    low: float
    high: float
    words: str
    ask: str

    def worksheet_lines(self, system: str) -> list[str]:
        """What is offered, on one line."""
        from checker.quantities.budget_sheet import offer_text

        return [offer_text(self, system)]


def curve_of(mover: Fan | Equipment, setting: Setting | None) -> Curve | None:
    """The curve of a setting: by its key or its `setting`; the only curve serves the fastest setting."""
    if setting is None:
        return next(iter(mover.curves.values())) if len(mover.curves) == 1 else None
    for key, curve in mover.curves.items():
        if fold(setting.name) in (fold(key), fold(curve.setting or "")):
            return curve
    only = next(iter(mover.curves.values())) if len(mover.curves) == 1 else None
    others = [each for each in mover.settings.values() if greatest_flow(each) > greatest_flow(setting)]
    return only if only is not None and only.setting is None and not others else None


def fan_curve(case: Case, curve: Curve) -> FanCurve:
    """The curve for reckoning. Raises Missing, CannotJudge where its points are no curve."""
    points = [tuple(case.all(point, "airflow", "pressure")) for point in case.get(curve, "points")]
    try:
        return FanCurve(points, case.maybe(curve, "basis") or "static")
    except ValueError as problem:
        raise CannotJudge(f"the curve at {curve.path} cannot be used: {problem}") from None


def holds_airflow(mover: Mover) -> bool:
    """Whether the file calls the motor one that holds its airflow."""
    motor = getattr(mover, "motor", None)
    return motor is not None and any(word in fold(motor).replace("-", " ") for word in CONSTANT_WORDS)


def greatest_of(mover: Fan | Equipment) -> float | None:
    """The greatest static pressure that the maker states, Pa."""
    limit = mover.by_maker.greatest_static if mover.by_maker is not None else None
    return None if limit is None else float(limit)


def offer(case: Case, mover: Mover, setting: Setting | None, flow: float) -> Offer:
    """What a mover offers at an airflow in m3/s. Raises Missing where neither curve nor rating is stated."""
    assert isinstance(mover, Fan | Equipment)
    curve = curve_of(mover, setting)
    if curve is not None:
        return curve_offer(case, mover, curve, flow)
    greatest = greatest_of(mover)
    if greatest is not None and holds_airflow(mover):
        return Offer(greatest, greatest, "up to which it holds its airflow", "")
    routes: list[Callable[[], Offer | None]] = [lambda: setting_offer(case, mover, setting, flow)]
    if isinstance(mover, Equipment):
        routes.append(lambda: unit_offer(case, mover, flow))
    elif setting is fastest(case, mover.settings):
        routes.append(lambda: rated_offer(case, mover, flow))
    for route in routes:
        found = route()
        if found is not None:
            return capped(mover, found)
    if isinstance(mover, Equipment):
        raise Missing(path_of(mover, "available_static"))
    raise Missing(path_of(setting, "static") if setting is not None else path_of(mover, "settings"))


def curve_offer(case: Case, mover: Fan | Equipment, curve: Curve, flow: float) -> Offer:
    """The pressure on a curve, less the velocity pressure of the outlet where the curve is one of total pressure."""
    drawn = fan_curve(case, curve)
    if flow > drawn.free_flow:
        return Offer(0.0, 0.0, "by its curve, which ends before that airflow", "")
    try:
        pressure = drawn.pressure(flow)
    except OutOfRange as problem:
        raise CannotJudge(f"curve of {mover.name}: {problem.reason}") from None
    if drawn.basis == "total":
        if isinstance(mover, Equipment):
            raise CannotJudge(f"the curve of {mover.name} is one of total pressure, its outlet is not known")
        diameter = float(case.get(mover, "outlet_size"))
        pressure -= velocity_pressure(velocity(flow, 0.7853981633974483 * diameter**2))
    return Offer(max(pressure, 0.0), max(pressure, 0.0), "by its curve", "")


def around(rated: float, rated_flow: float, flow: float, words: str, ask: str) -> Offer:
    """What one rated point vouches for: more than its pressure at less air, less than it at more air."""
    if abs(flow - rated_flow) <= SAME_FLOW * rated_flow:
        return Offer(rated, rated, words, ask)
    return Offer(rated, inf, words, ask) if flow < rated_flow else Offer(0.0, rated, words, ask)


def setting_offer(case: Case, mover: Any, setting: Setting | None, flow: float) -> Offer | None:
    """By the static pressure that a setting states."""
    if setting is None:
        return None
    static = case.maybe(setting, "static")
    if static is None:
        return None
    rated = greatest_flow(setting) or flow
    stated = [one for one in (setting.supply_airflow, setting.exhaust_airflow) if one is not None]
    if any(abs(flow - one) <= SAME_FLOW * one for one in stated):
        rated = flow  # a recovery unit's sides move different flows, each against what the setting states
    return around(static, rated, flow, f"at {setting.name}", path_of(mover, "curves"))


def unit_offer(case: Case, unit: Equipment, flow: float) -> Offer | None:
    """By the static pressure that equipment states at its rated airflow, else by its maker's greatest."""
    static = case.maybe(unit, "available_static")
    if static is None:
        limit = case.maybe(unit.by_maker, "greatest_static") if unit.by_maker is not None else None
        return None if limit is None else Offer(limit, limit, "at most", "")
    rated = case.maybe(unit, "airflow")
    if rated is None:
        setting = fastest(case, unit.settings)
        rated = greatest_flow(setting) if setting is not None else 0.0
    return around(static, rated or flow, flow, "at its rated airflow", path_of(unit, "curves"))


def rated_offer(case: Case, fan: Fan, flow: float) -> Offer | None:
    """By the certified point of a fan."""
    if fan.rating is None:
        return None
    static = case.maybe(fan.rating, "static")
    if static is None:
        return None
    return around(static, fan.rating.airflow or flow, flow, "by its rating", path_of(fan, "curves"))


def capped(mover: Fan | Equipment, found: Offer) -> Offer:
    """No more than the greatest static pressure that the maker allows."""
    limit = greatest_of(mover)
    if limit is None or limit >= found.high:
        return found
    return found._replace(low=min(found.low, limit), high=limit)
