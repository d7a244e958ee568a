"""Clean pressure drop of filters, at the airflow of the rating and at the airflow that they see."""

from functools import partial
from math import log

from checker.case import CannotJudge, Case, gather, quantity
from checker.design.filters import Filter
from checker.physics.devices import (
    EXPONENTS,
    HIGHEST_EXPONENT,
    HIGHEST_FLOW_RATIO,
    LOWEST_EXPONENT,
    LOWEST_FLOW_RATIO,
    check_points,
    drop_from_points,
    drop_from_rating,
    power_law_at,
)
from checker.physics.validity import OutOfRange
from checker.quantities.filters import count, filter_flow
from checker.record import Record
from checker.units import show

SAME_FLOW = 0.02


class Drop(Record):
    """Clean pressure drop of a filter in Pa: as stated at an airflow, and at the airflow that it sees.

    `low` and `high` bound what the exponent leaves open; `nominal` takes the usual one.
    """

    stated: float
    at: float
    flow: float
    exponent: float
    low: float
    nominal: float
    high: float

    @property
    def is_scaled(self) -> bool:
        """Whether the stated drop is one at another airflow."""
        return abs(self.at - self.flow) > SAME_FLOW * self.flow

    def worksheet_lines(self, system: str) -> list[str]:
        """How the stated drop becomes the one at the airflow that it sees, in trade or metric units."""
        stated, low, nominal, high = (
            show(each, "pressure", system) for each in (self.stated, self.low, self.nominal, self.high)
        )
        at, flow = show(self.at, "airflow", system), show(self.flow, "airflow", system)
        if not self.is_scaled:
            return [f"{stated} as stated at {at}, which is the airflow that it sees"]
        return [
            f"{stated} at {at}, carried to {flow}: {stated} x ({flow} / {at})^{self.exponent:.3g} = {nominal}",
            f"the exponent leaves it between {low} and {high}" if self.low < self.high else "by the points that enclose it",
        ]


def stated_flow(case: Case, filter_: Filter, flow: float) -> float:
    """Airflow of the stated drops through each filter; of a bank it may be stated as a whole."""
    at = case.maybe(filter_, "at")
    if at is None:
        return flow
    each = count(case, filter_)
    readings = (float(at), float(at) / each)
    return min(readings, key=lambda reading: abs(log(reading / flow))) if at > 0.0 and flow > 0.0 else float(at)


def usual_exponent(case: Case, filter_: Filter) -> float:
    """Exponent of the drop over the airflow: as stated, else the usual one of filters."""
    stated = case.maybe(filter_, "exponent")
    if stated is None:
        return EXPONENTS["filter"]
    if not 1.0 <= stated <= 2.0:
        raise CannotJudge(f"an exponent of {stated:g} is outside the 1 to 2 of pressure drops")
    return float(stated)


def drop_points(case: Case, filter_: Filter) -> list[tuple[float, float]]:
    """(airflow m3/s, Pa) of a filter's clean drop, where several are stated. CannotJudge where they are no curve."""
    points = [tuple(case.all(point, "airflow", "drop")) for point in filter_.drops]
    try:
        check_points(points)
    except ValueError as problem:
        raise CannotJudge(f"the drops of {filter_.name} cannot be used: {problem}") from None
    return points


def drop_on_curve(case: Case, filter_: Filter) -> Drop:
    """The clean drop by the points that the file states. CannotJudge far outside of them."""
    flow, points = filter_flow(case, filter_), drop_points(case, filter_)
    if flow <= 0.0:
        raise CannotJudge(f"{filter_.name} has no airflow")
    try:
        found = drop_from_points(flow, points)
    except OutOfRange:
        first, last = show(points[0][0], "airflow"), show(points[-1][0], "airflow")
        raise CannotJudge(
            f"the drops of {filter_.name} are stated from {first} to {last}, too far from the {show(flow, 'airflow')} that it sees"
        ) from None
    at, stated = min(points, key=lambda point: abs(log(point[0] / flow)))
    return Drop(stated, at, flow, power_law_at(flow, points)[1], found, found, found)


@quantity()
def clean_drop(case: Case, filter_: Filter) -> Drop:
    """The clean drop at the airflow that each filter sees. CannotJudge where it is stated too far from that."""
    if filter_.drops:
        return drop_on_curve(case, filter_)
    flow, stated = gather([partial(filter_flow, case, filter_), partial(case.get, filter_, "drop_clean")])
    at = stated_flow(case, filter_, flow)
    exponent = usual_exponent(case, filter_)
    if min(at, flow, stated) <= 0.0:
        raise CannotJudge(f"{filter_.name} has no airflow or no pressure drop")
    plain = Drop(stated, at, flow, exponent, stated, stated, stated)
    if not plain.is_scaled:
        return plain
    if not LOWEST_FLOW_RATIO <= flow / at <= HIGHEST_FLOW_RATIO:
        there, here = show(at, "airflow"), show(flow, "airflow")
        raise CannotJudge(f"the drop of {filter_.name} is stated at {there}, too far from the {here} that it sees")
    exponents = (exponent,) if filter_.exponent is not None else (LOWEST_EXPONENT, HIGHEST_EXPONENT)
    bounds = [drop_from_rating(flow, stated, at, each) for each in exponents]
    nominal = drop_from_rating(flow, stated, at, exponent)
    return plain._replace(low=min(bounds), nominal=nominal, high=max(bounds))
