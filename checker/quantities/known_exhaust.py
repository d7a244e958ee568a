"""How low the house is drawn at least, where the airflow of a dryer is not stated: a dryer only draws it lower."""

from contextlib import suppress

from checker.case import Case, Missing
from checker.design.fans import Fan
from checker.design.fields import Node
from checker.quantities.combined_exhaust import (
    Moving,
    exhaust_of_rooms,
    extreme,
    follows,
    largest_alone,
    movings,
    stated_make_up,
    with_largest,
    worst_case,
)
from checker.quantities.house_pressure import HousePressure, pressure_under
from checker.quantities.make_up_air import is_for_cooling
from checker.quantities.movers import known_streams, streams_but_dryers


def without_dryers(case: Case, gap: Missing) -> list[Moving]:
    """Every device at every setting but the dryers of unstated airflow. Raises the gap where it is about more."""
    if set(gap.paths) - set(dryers_left_out(case)):
        raise gap
    moving = []
    for stream in streams_but_dryers(case):
        if not (isinstance(stream.device, Fan) and (is_for_cooling(case, stream.device) or follows(case, stream))):
            net = stream.exhaust - stream.supply - stated_make_up(case, stream)
            moving.append(
                Moving(stream.label, stream.device.path, net, stream.continuous, stream.supply > 0, stream)
            )
    return moving + exhaust_of_rooms(case)


def dryers_left_out(case: Case) -> list[str]:
    """The paths of the dryer airflows that are not stated."""
    absent = known_streams(case)[1]
    return [path for dryer in case.design.dryers.values() if (path := f"{dryer.path}.airflow") in absent]


def movings_but_dryers(case: Case) -> list[Moving]:
    """Every device at every setting, where need be without the dryers of unstated airflow. Raises Missing."""
    try:
        return movings(case, case.design)
    except Missing as gap:
        return without_dryers(case, gap)


def glance(case: Case, node: Node, *fields: str) -> None:
    """Note that these facts were looked for, and that an answer may stand without them."""
    for field in fields:
        with suppress(Missing):
            case.maybe(node, field)


def worst_pressure_at_least(case: Case, design: object, limit: float) -> HousePressure:
    """With all exhaust on; without the dryers of unknown airflow where the limit is passed even so. Raises Missing."""
    for dryer in case.design.dryers.values():
        glance(case, dryer, "airflow")
    try:
        return pressure_under(case, design, worst_case(case, design))
    except Missing as gap:
        return beyond(pressure_under(case, design, extreme(without_dryers(case, gap), 1.0, True)), limit, gap)


def largest_pressure_at_least(case: Case, design: object, limit: float) -> HousePressure:
    """With the largest exhaust on demand; of it the largest known one where the limit is passed even so. Raises Missing."""
    for dryer in case.design.dryers.values():
        glance(case, dryer, "airflow")
    try:
        return pressure_under(case, design, largest_alone(case, design))
    except Missing as gap:
        every = without_dryers(case, gap)
        known = with_largest(extreme(every, 1.0, False), 1, every)
        return beyond(pressure_under(case, design, known), limit, gap)


def beyond(found: HousePressure, limit: float, gap: Missing) -> HousePressure:
    """The pressure where it passes the limit; else what is missing has to be known first."""
    if found.within(limit):
        raise gap
    return found
