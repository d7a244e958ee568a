"""Heating and cooling loads by room and of the whole house: worked out from the envelope, else as declared."""

from collections.abc import Callable
from functools import partial

from checker.case import Case, Missing, either, gather, quantity
from checker.design.controls import LoadsPaper
from checker.design.rooms import Room
from checker.each import blank
from checker.quantities.equipment import heated_rooms


def loads_paper(case: Case) -> LoadsPaper:
    """What the load calculation states; an empty record where the file holds none."""
    papers = case.design.papers
    paper = None if papers is None else papers.loads
    return paper or blank(LoadsPaper, "papers.loads")


@quantity("heat_rate", "as declared for the room")
def declared_room_heating(case: Case, room: Room) -> float:
    """Heating load that the design declares for a room. Raises Missing."""
    return float(case.get(room, "heating_load"))


@quantity("heat_rate", "as declared for the room")
def declared_room_cooling(case: Case, room: Room) -> float:
    """Sensible cooling load that the design declares for a room. Raises Missing."""
    return float(case.get(room, "cooling_load"))


@quantity("heat_rate", "of the load calculation, else the sum over the rooms")
def declared_block_heating(case: Case, _design: object) -> float:
    """Heating load that the papers or the rooms declare. Raises Missing."""
    return either(
        lambda: float(case.get(loads_paper(case), "heating")),
        lambda: sum_over_rooms(case, declared_room_heating),
    )


@quantity("heat_rate", "of the load calculation, else the sum over the rooms")
def declared_block_cooling(case: Case, _design: object) -> float:
    """Sensible cooling load that the papers or the rooms declare. Raises Missing."""
    return either(
        lambda: float(case.get(loads_paper(case), "cooling_sensible")),
        lambda: sum_over_rooms(case, declared_room_cooling),
    )


@quantity("heat_rate", "of the load calculation")
def declared_block_latent(case: Case, _design: object) -> float:
    """Latent cooling load that the papers declare. Raises Missing."""
    return float(case.get(loads_paper(case), "cooling_latent"))


def sum_over_rooms(case: Case, load: Callable[[Case, Room], float]) -> float:
    """Sum of a load over the heated rooms. Raises Missing."""
    rooms = heated_rooms(case)
    if not rooms:
        raise Missing("rooms")
    return sum(gather([partial(load, case, room) for room in rooms]))


@quantity("heat_rate", "as declared")
def room_heating_load(case: Case, room: Room) -> float:
    """Heating load of a room at winter design."""
    return declared_room_heating(case, room)


@quantity("heat_rate", "as declared")
def room_cooling_sensible(case: Case, room: Room) -> float:
    """Sensible cooling load of a room at summer design."""
    return declared_room_cooling(case, room)


@quantity("heat_rate", "as declared")
def block_heating_load(case: Case, design: object) -> float:
    """Heating load of the house at winter design."""
    return declared_block_heating(case, design)


@quantity("heat_rate", "as declared")
def block_cooling_sensible(case: Case, design: object) -> float:
    """Sensible cooling load of the house at summer design."""
    return declared_block_cooling(case, design)


@quantity("heat_rate", "as declared")
def block_cooling_latent(case: Case, design: object) -> float:
    """Latent cooling load of the house at summer design."""
    return declared_block_latent(case, design)
