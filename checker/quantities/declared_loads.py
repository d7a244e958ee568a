"""Loads as the design declares them."""

from functools import partial

from checker.case import Case, Missing, gather, quantity
from checker.design.rooms import Room
from checker.quantities.equipment import heated_rooms


@quantity("heat_rate")
def room_heating_load(case: Case, room: Room) -> float:
    """Declared heating load."""
    return float(case.get(room, "heating_load"))


@quantity("heat_rate")
def room_cooling_sensible(case: Case, room: Room) -> float:
    """Declared cooling load."""
    return float(case.get(room, "cooling_load"))


@quantity("heat_rate")
def block_heating_load(case: Case, _design: object) -> float:
    """Sum of declared loads."""
    if not heated_rooms(case):
        raise Missing("rooms")
    return sum(gather([partial(room_heating_load, case, room) for room in heated_rooms(case)]))


@quantity("heat_rate")
def block_cooling_sensible(case: Case, _design: object) -> float:
    """Sum of declared loads."""
    if not heated_rooms(case):
        raise Missing("rooms")
    return sum(gather([partial(room_cooling_sensible, case, room) for room in heated_rooms(case)]))


@quantity("heat_rate")
def block_cooling_latent(case: Case, _design: object) -> float:
    """Not declared anywhere yet."""
    raise Missing("envelope")
