"""The loads of the rooms that equipment serves."""

from collections.abc import Callable
from functools import partial

from checker.case import CannotJudge, Case, Missing, either, gather, quantity
from checker.design.rooms import Room
from checker.quantities.declared_loads import (
    block_cooling_latent,
    block_cooling_sensible,
    block_heating_load,
    room_cooling_sensible,
    room_heating_load,
)
from checker.quantities.equipment import Group


def sum_of_rooms(case: Case, group: Group, load: Callable[[Case, Room], float]) -> float:
    """Sum of a load over the rooms of a group. Raises Missing."""
    if group.lacking:
        raise Missing(*group.lacking)
    rooms = [case.design.rooms[name] for name in group.rooms]
    if not rooms:
        raise Missing("rooms")
    return sum(gather([partial(load, case, room) for room in rooms]))


@quantity("heat_rate", "of the whole house, else the sum over the rooms that are served")
def group_heating_load(case: Case, group: Group) -> float:
    """Heating load of the rooms of a group at winter design."""
    if group.whole_house:
        return either(
            lambda: block_heating_load(case, case.design), lambda: sum_of_rooms(case, group, room_heating_load)
        )
    return sum_of_rooms(case, group, room_heating_load)


@quantity("heat_rate", "of the whole house, else the sum over the rooms that are served")
def group_cooling_sensible(case: Case, group: Group) -> float:
    """Sensible cooling load of the rooms of a group at summer design."""
    if group.whole_house:
        return either(
            lambda: block_cooling_sensible(case, case.design),
            lambda: sum_of_rooms(case, group, room_cooling_sensible),
        )
    return sum_of_rooms(case, group, room_cooling_sensible)


@quantity("heat_rate", "sensible and latent, of the whole house")
def group_cooling_total(case: Case, group: Group) -> float:
    """Total cooling load of a group that serves the whole house. CannotJudge for a part of it."""
    if group.lacking:
        raise Missing(*group.lacking)
    if not group.whole_house:
        raise CannotJudge(f"{group.name} cools a part of the house, whose share of the latent load is not known")
    return sum(
        gather([partial(block_cooling_sensible, case, case.design), partial(block_cooling_latent, case, case.design)])
    )
