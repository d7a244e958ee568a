"""The loads of the rooms that equipment serves."""

from collections.abc import Callable
from functools import partial

from checker.case import CannotJudge, Case, Missing, gather, quantity
from checker.design.fields import HeatRate
from checker.design.rooms import Room
from checker.quantities.equipment import Group
from checker.quantities.loads import (
    block_cooling_latent,
    block_cooling_sensible,
    block_heating_load,
    room_cooling_latent,
    room_cooling_sensible,
    room_heating_load,
)
from checker.record import Record

SENSIBLE_AT_LEAST = 0.6
"""Share of a house's total cooling load that is surely sensible."""


def sum_of_rooms(case: Case, group: Group, load: Callable[[Case, Room], float]) -> float:
    """Sum of a load over the rooms of a group. Raises Missing."""
    if group.lacking:
        raise Missing(*group.lacking)
    rooms = [case.design.rooms[name] for name in group.rooms]
    if not rooms:
        raise Missing("rooms")
    return sum(gather([partial(load, case, room) for room in rooms]))


def speaks_of_rooms(case: Case, group: Group, field: str) -> bool:
    """Whether any room of a group states a load, or that it is to be decided."""
    return any(case.speaks_of(case.design.rooms[name], field) for name in group.rooms)


def loads_spoken_of(case: Case, field: str) -> bool:
    """Whether the file holds any load of this kind, or an envelope from which loads are worked out."""
    papers = case.design.papers
    if case.design.envelope is not None or (papers is not None and papers.loads is not None):
        return True
    return any(case.speaks_of(room, field) for room in case.design.rooms.values())


def load_of_group(
    case: Case, group: Group, field: str, of_house: Callable[[Case, object], float], of_room: Callable[[Case, Room], float]
) -> float:
    """A load of what a group serves, W: that of the house where it serves all of it, else the sum over its rooms."""
    if group.whole_house and not group.lacking:
        try:
            return of_house(case, case.design)
        except Missing:
            if not speaks_of_rooms(case, group, field):
                raise
    return sum_of_rooms(case, group, of_room)


@quantity("heat_rate", "of the whole house, else the sum over the rooms that are served")
def group_heating_load(case: Case, group: Group) -> float:
    """Heating load of the rooms of a group at winter design."""
    return load_of_group(case, group, "heating_load", block_heating_load, room_heating_load)


@quantity("heat_rate", "of the whole house, else the sum over the rooms that are served")
def group_cooling_sensible(case: Case, group: Group) -> float:
    """Sensible cooling load of the rooms of a group at summer design."""
    return load_of_group(case, group, "cooling_load", block_cooling_sensible, room_cooling_sensible)


@quantity("heat_rate", "of the whole house, else the sum over the rooms that are served")
def group_cooling_latent(case: Case, group: Group) -> float:
    """Latent cooling load of the rooms of a group at summer design. CannotJudge for a part of a house without an envelope."""
    if group.whole_house:
        return block_cooling_latent(case, case.design)
    if case.design.envelope is None:
        raise CannotJudge(f"{group.name} cools a part of the house: without an envelope its share of the latent load is not known")
    return sum_of_rooms(case, group, room_cooling_latent)


class LoadSpan(Record):
    """What a load is at least and at most, W, and the paths that would settle it."""

    low: HeatRate
    high: HeatRate
    missing: tuple[str, ...] = ()


@quantity("", "sensible and latent; without the latent load between the sensible load and 1 / 0.6 of it")
def group_cooling_total(case: Case, group: Group) -> LoadSpan:
    """Total cooling load of a group. CannotJudge for a part of a house without an envelope."""
    sensible = group_cooling_sensible(case, group)
    try:
        total = sensible + group_cooling_latent(case, group)
    except Missing as gap:
        return LoadSpan(sensible, sensible / SENSIBLE_AT_LEAST, gap.paths)
    return LoadSpan(total, total)
