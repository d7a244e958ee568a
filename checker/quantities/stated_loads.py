"""Loads as the design states them: for its rooms, or on its load calculation."""

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
    paper: LoadsPaper | None = None if papers is None else papers.loads
    return paper or blank(LoadsPaper, "papers.loads")


@quantity("heat_rate", "as stated for the room")
def stated_room_heating(case: Case, room: Room) -> float:
    """Heating load that the design states for a room. Raises Missing."""
    return float(case.get(room, "heating_load"))


@quantity("heat_rate", "as stated for the room")
def stated_room_cooling(case: Case, room: Room) -> float:
    """Sensible cooling load that the design states for a room. Raises Missing."""
    return float(case.get(room, "cooling_load"))


@quantity("heat_rate", "of the load calculation, else the sum over the rooms")
def stated_block_heating(case: Case, _design: object) -> float:
    """Heating load that the papers or the rooms state. Raises Missing."""
    return either(
        lambda: float(case.get(loads_paper(case), "heating")), lambda: sum_over_rooms(case, stated_room_heating)
    )


@quantity("heat_rate", "of the load calculation, else the sum over the rooms")
def stated_block_cooling(case: Case, _design: object) -> float:
    """Sensible cooling load that the papers or the rooms state. Raises Missing."""
    return either(
        lambda: float(case.get(loads_paper(case), "cooling_sensible")),
        lambda: sum_over_rooms(case, stated_room_cooling),
    )


@quantity("heat_rate", "of the load calculation; else its total less its sensible load")
def stated_block_latent(case: Case, _design: object) -> float:
    """Latent cooling load that the papers state. Raises Missing."""
    paper = loads_paper(case)

    def difference() -> float:
        total, sensible = case.all(paper, "cooling_total", "cooling_sensible")
        return max(0.0, float(total) - float(sensible))

    return either(lambda: float(case.get(paper, "cooling_latent")), difference)


def sum_over_rooms(case: Case, load: Callable[[Case, Room], float]) -> float:
    """Sum of a load over the heated rooms. Raises Missing."""
    rooms = heated_rooms(case)
    if not rooms:
        raise Missing("rooms")
    return sum(gather([partial(load, case, room) for room in rooms]))
