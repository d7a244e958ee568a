"""Figures beside the loads: for each floor area, the airflow of a room, sums against the block, and what all rests on."""

from collections.abc import Callable
from functools import partial

from checker.case import CannotJudge, Case, Missing, NotApplicable, gather, quantity
from checker.design.rooms import Room
from checker.quantities.airtightness import house_of
from checker.quantities.block_loads import block_gains, block_losses
from checker.quantities.computed_loads import computed_cooling, computed_heating, computed_latent
from checker.quantities.equipment import heated_rooms
from checker.quantities.load_parts import (
    gains_of_rooms,
    losses_of_rooms,
    room_gains_by_part,
    room_losses,
)
from checker.quantities.load_records import Term
from checker.quantities.stated_loads import (
    stated_block_cooling,
    stated_block_heating,
    stated_room_cooling,
    stated_room_heating,
)
from checker.quantities.transfer import supply_into
from checker.record import Record

USUAL = {
    "heating": (("winter_temperature", "indoor-winter-temperature"),),
    "cooling": (("summer_temperature", "indoor-summer-temperature"), ("summer_humidity", "indoor-summer-humidity")),
}
"""Indoor conditions by season: the field that states one, the requirement that stands for it else."""


def per_area(load: float, area: float) -> float:
    """Load of each floor area, W/m2. Raises CannotJudge for a floor of nothing."""
    if area <= 0.0:
        raise CannotJudge("a floor of no area has no load of each area")
    return load / area


def of_room(case: Case, room: Room, worked: Callable[[], float], stated: Callable[[], float]) -> float:
    """A load of a room for each of its floor area: as worked out where the file holds an envelope, else as stated."""
    load = stated if case.design.envelope is None else worked
    return per_area(*gather([load, lambda: float(case.get(room, "floor_area"))]))


@quantity("heat_flux", "heating load / floor area")
def room_heating_per_area(case: Case, room: Room) -> float:
    """Heating load of each floor area of a room."""
    return of_room(case, room, lambda: room_losses(case, room).total, lambda: stated_room_heating(case, room))


@quantity("heat_flux", "sensible cooling load / floor area")
def room_cooling_per_area(case: Case, room: Room) -> float:
    """Sensible cooling load of each floor area of a room."""
    return of_room(case, room, lambda: room_gains_by_part(case, room).total, lambda: stated_room_cooling(case, room))


def of_house(case: Case, load: Callable[[], float]) -> float:
    """A load of the house for each floor area of the house."""
    return per_area(*gather([load, lambda: float(case.get(house_of(case), "floor_area"))]))


@quantity("heat_flux", "heating load as one block / floor area of the house")
def house_heating_per_area(case: Case, design: object) -> float:
    """Heating load of each floor area of the house."""
    return of_house(case, lambda: block_losses(case, design).total)


@quantity("heat_flux", "sensible cooling load as one block / floor area of the house")
def house_cooling_per_area(case: Case, design: object) -> float:
    """Sensible cooling load of each floor area of the house."""
    return of_house(case, lambda: block_gains(case, design).total)


@quantity("heat_flux", "sum of the rooms' heating loads / their floor area")
def rooms_heating_per_area(case: Case, design: object) -> float:
    """Heating load of each floor area of all rooms together."""
    return per_area(losses_of_rooms(case, design).total, floor_of_rooms(case))


@quantity("heat_flux", "sum of the rooms' sensible cooling loads / their floor area")
def rooms_cooling_per_area(case: Case, design: object) -> float:
    """Sensible cooling load of each floor area of all rooms together."""
    return per_area(gains_of_rooms(case, design).total, floor_of_rooms(case))


def floor_of_rooms(case: Case) -> float:
    """Floor area of the heated rooms, m2. Raises Missing."""
    return float(sum(gather([partial(case.get, room, "floor_area") for room in heated_rooms(case)])))


@quantity("share", "(sum of the rooms - block) / block")
def heating_difference(case: Case, design: object) -> float:
    """By how much the rooms' heating loads together differ from that of the house as one block."""
    return apart(losses_of_rooms(case, design).total, block_losses(case, design).total)


@quantity("share", "(sum of the rooms - block) / block")
def cooling_difference(case: Case, design: object) -> float:
    """By how much the rooms' sensible cooling loads together differ from that of the house as one block."""
    return apart(gains_of_rooms(case, design).total, block_gains(case, design).total)


def apart(value: float, base: float) -> float:
    """How far a value is from another, as a share of that."""
    if base == 0.0:
        raise NotApplicable("the house has no such load")
    return (value - base) / base


def stated_sum(case: Case, field: str) -> float:
    """Sum of a load that the rooms state, W. Raises Missing for rooms that state none, NotApplicable where none does."""
    rooms = heated_rooms(case)
    if not any(case.speaks_of(room, field) for room in rooms):
        raise NotApplicable("no room states it")
    return float(sum(gather([partial(case.get, room, field) for room in rooms])))


def stated_paper(case: Case, load: Callable[[Case, object], float], field: str) -> float:
    """A load of the house as its papers state it, W. NotApplicable where they do not."""
    papers = case.design.papers
    if papers is None or papers.loads is None or not case.speaks_of(papers.loads, field):
        raise NotApplicable("the papers do not state it")
    return load(case, case.design)


@quantity("heat_rate", "of the load calculation")
def paper_heating(case: Case, _design: object) -> float:
    """Heating load of the house as the papers state it."""
    return stated_paper(case, stated_block_heating, "heating")


@quantity("heat_rate", "of the load calculation")
def paper_cooling(case: Case, _design: object) -> float:
    """Sensible cooling load of the house as the papers state it."""
    return stated_paper(case, stated_block_cooling, "cooling_sensible")


def told_load(case: Case, room: Room, field: str) -> float:
    """A load that a room states. NotApplicable where it does not."""
    if not case.speaks_of(room, field):
        raise NotApplicable("the room does not state it")
    return float(case.get(room, field))


@quantity("airflow", "stated for the room; else the sum of its registers")
def blown_in(case: Case, room: Room) -> float:
    """Air blown into a room. NotApplicable where none is."""
    flow = supply_into(case, room)
    if flow <= 0.0:
        raise NotApplicable("no air is blown into it")
    return flow


def usual_conditions(case: Case, season: str) -> tuple[str, ...]:
    """Indoor conditions of the loads of a season (heating, cooling) that the file does not state, with their basis."""
    indoor = None if case.design.house is None else case.design.house.indoor
    keys = [key for field, key in USUAL[season] if indoor is None or getattr(indoor, field) is None]
    return tuple(f"{key.replace('-', ' ')} ({case.codebook.entry(key).basis})" for key in keys)


class Basis(Record):
    """What a load rests on: published sources, what is from memory, and what was assumed, each once."""

    sources: tuple[str, ...]
    from_memory: tuple[str, ...]
    assumed: tuple[str, ...]


def basis_of(terms: tuple[Term, ...]) -> Basis:
    """The sources of terms; what was assumed with the count of terms that rest on it."""
    counts: dict[str, int] = {}
    for term in terms:
        for each in term.assumed:
            counts[each] = counts.get(each, 0) + 1
    assumed = tuple(f"{each} ({count} times)" if count > 1 else each for each, count in counts.items())
    sources = tuple(dict.fromkeys(term.source for term in terms if term.source))
    return Basis(sources, tuple(term.what for term in terms if term.from_memory), assumed)


@quantity()
def heating_basis(case: Case, design: object) -> Basis:
    """What the heating load of the house rests on."""
    return basis_of(computed_heating(case, design).house.terms)


@quantity()
def cooling_basis(case: Case, design: object) -> Basis:
    """What the cooling loads of the house rest on, the latent one included."""
    terms = computed_cooling(case, design).house.terms
    try:
        terms += computed_latent(case, design).terms
    except Missing:
        return basis_of(terms)
    return basis_of(terms)
