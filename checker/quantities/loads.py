"""Heating and cooling loads by room and of the house: worked out where an envelope allows it, else as stated."""

from checker.case import Case, either, quantity
from checker.design.rooms import Room
from checker.quantities.computed_loads import (
    computed_cooling,
    computed_heating,
    computed_latent,
    computed_room_cooling,
    computed_room_heating,
    computed_room_latent,
)
from checker.quantities.stated_loads import (
    stated_block_cooling,
    stated_block_heating,
    stated_block_latent,
    stated_room_cooling,
    stated_room_heating,
)


@quantity("heat_rate", "worked out from the envelope, else as stated")
def room_heating_load(case: Case, room: Room) -> float:
    """Heating load of a room at winter design. Raises Missing where neither way is open."""
    if case.design.envelope is None:
        return stated_room_heating(case, room)
    return either(lambda: max(0.0, computed_room_heating(case, room).watts), lambda: stated_room_heating(case, room))


@quantity("heat_rate", "worked out from the envelope, else as stated")
def room_cooling_sensible(case: Case, room: Room) -> float:
    """Sensible cooling load of a room at summer design. Raises Missing where neither way is open."""
    if case.design.envelope is None:
        return stated_room_cooling(case, room)
    return either(lambda: max(0.0, computed_room_cooling(case, room).watts), lambda: stated_room_cooling(case, room))


@quantity("heat_rate", "worked out from the envelope")
def room_cooling_latent(case: Case, room: Room) -> float:
    """Latent cooling load of a room at summer design. Raises Missing: no design states it by room."""
    return computed_room_latent(case, room).watts


@quantity("heat_rate", "worked out from the envelope, else as stated")
def block_heating_load(case: Case, design: object) -> float:
    """Heating load of the house at winter design. Raises Missing where neither way is open."""
    if case.design.envelope is None:
        return stated_block_heating(case, design)
    return either(lambda: computed_heating(case, design).house.watts, lambda: stated_block_heating(case, design))


@quantity("heat_rate", "worked out from the envelope, else as stated")
def block_cooling_sensible(case: Case, design: object) -> float:
    """Sensible cooling load of the house at summer design. Raises Missing where neither way is open."""
    if case.design.envelope is None:
        return stated_block_cooling(case, design)
    return either(lambda: max(0.0, computed_cooling(case, design).house.watts), lambda: stated_block_cooling(case, design))


@quantity("heat_rate", "worked out from the envelope, else as stated")
def block_cooling_latent(case: Case, design: object) -> float:
    """Latent cooling load of the house at summer design. Raises Missing where neither way is open."""
    if case.design.envelope is None:
        return stated_block_latent(case, design)
    return either(lambda: computed_latent(case, design).watts, lambda: stated_block_latent(case, design))
