"""What a filter takes of the pressure along a duct, clean or loaded, between two bounds."""

from checker.case import CannotJudge, Case, path_of
from checker.design.filters import Filter
from checker.physics.devices import EXPONENTS, HIGHEST_EXPONENT, LOWEST_EXPONENT
from checker.physics.losses import Device, DeviceCurve
from checker.physics.validity import OutOfRange
from checker.quantities.duct_losses import Item
from checker.quantities.filter_drops import drop_points


def filter_item(case: Case, filter_: Filter, design_flow: float, loaded: bool) -> Item:
    """A filter, clean or loaded; without a stated final drop it ends between its clean drop and twice that."""
    label = f"filter {filter_.name}"
    clean = case.maybe(filter_, "drop_clean")
    final = case.maybe(filter_, "drop_final")
    if filter_.drops and not (loaded and final is not None):
        return filter_on_curve(case, filter_, Item(label, (), ()), design_flow, loaded)
    known = final if loaded and final is not None else clean
    if known is None:
        return Item(label, (), None, path_of(filter_, "drop_final" if loaded else "drop_clean"))
    times = 2.0 if loaded and final is None else 1.0
    ask = path_of(filter_, "drop_final") if times > 1.0 else ""
    if known == 0.0 or design_flow <= 0.0:
        return Item(label, (), ())
    at = case.maybe(filter_, "at")
    exponent = case.maybe(filter_, "exponent")
    if at is None:
        steepness = min(max(exponent or EXPONENTS["filter"], 1.0), 2.0)
        one = Device(known, design_flow, steepness)
        return Item(label, (one,), (one,) if times == 1.0 else (Device(known * times, design_flow, steepness),), ask)
    return filter_at(case, filter_, Item(label, (), (), ask), known, times, design_flow)


def filter_on_curve(case: Case, filter_: Filter, frame: Item, design_flow: float, loaded: bool) -> Item:
    """A filter by its stated points, carried over to the airflow of its duct; loaded it takes up to twice as much."""
    each = case.maybe(filter_, "airflow") or design_flow / (case.maybe(filter_, "count") or 1.0)
    if each <= 0.0:
        return frame
    points = [(flow * design_flow / each, drop) for flow, drop in drop_points(case, filter_)]
    clean = DeviceCurve(points)
    try:
        clean.check(design_flow)
    except OutOfRange:
        raise CannotJudge(f"the drops of filter {filter_.name} are stated too far from the airflow that it sees") from None
    if not loaded:
        return frame._replace(low=(clean,), high=(clean,))
    twice = DeviceCurve([(flow, 2.0 * drop) for flow, drop in points])
    return frame._replace(low=(clean,), high=(twice,), ask=path_of(filter_, "drop_final"))


def filter_at(case: Case, filter_: Filter, frame: Item, known: float, times: float, design_flow: float) -> Item:
    """A filter whose drop is stated at another airflow, carried over by its exponent or by its bounds."""
    at = float(case.get(filter_, "at"))
    if at <= 0.0:
        raise CannotJudge(f"filter {filter_.name} states its pressure drop at no airflow")
    exponent = case.maybe(filter_, "exponent")
    count = case.maybe(filter_, "count") or 1.0
    flow = case.maybe(filter_, "airflow") or design_flow
    exponents = [min(max(exponent, 1.0), 2.0)] if exponent else [LOWEST_EXPONENT, HIGHEST_EXPONENT]
    drops = [known * (flow / (at * side)) ** each for each in exponents for side in dict.fromkeys((1.0, count))]
    low, high = min(drops), max(drops) * times
    ask = frame.ask or (path_of(filter_, "exponent") if high > low else "")
    steep = EXPONENTS["filter"]
    return frame._replace(low=(Device(low, design_flow, steep),), high=(Device(high, design_flow, steep),), ask=ask)
