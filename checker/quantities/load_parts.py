"""The loads by what causes them, for a page that shows the house: of each room, of the rooms together, of the house."""

from functools import partial

from checker.case import Case, Missing, gather, quantity
from checker.design.envelope import Fenestration, OutsideDoor, Surface
from checker.design.fields import HeatRate
from checker.design.rooms import Room
from checker.quantities.assembly_values import surface_kind
from checker.quantities.computed_loads import GAINS, of_room
from checker.quantities.computed_loads import computed_room_cooling as room_cooling
from checker.quantities.computed_loads import computed_room_heating as room_heating
from checker.quantities.envelope_parts import Part
from checker.quantities.equipment import heated_rooms
from checker.quantities.fresh_split import volume_shares
from checker.quantities.heating_terms import PLAIN_AIR, heating_term
from checker.quantities.load_records import Load, Term
from checker.quantities.loads import room_cooling_latent
from checker.quantities.outdoor_air import heating_air, room_airs
from checker.record import Record

OVERHEAD = ("ceiling", "roof")


class Losses(Record):
    """A heating load in W by what loses it; `leakage` is all air that comes in by cracks, drawn in by exhaust or not."""

    walls: HeatRate
    openings: HeatRate
    overhead: HeatRate
    below: HeatRate
    leakage: HeatRate
    fan_air: HeatRate
    ducts: HeatRate

    @property
    def total(self) -> float:
        """The load, W."""
        return sum(self)


class Gains(Record):
    """A sensible cooling load in W by what brings it in."""

    opaque: HeatRate
    windows: HeatRate
    outdoor_air: HeatRate
    internal: HeatRate
    ducts: HeatRate

    @property
    def total(self) -> float:
        """The load, W."""
        return sum(self)


def place_of(case: Case, part: Part) -> str:
    """Which column of the losses a part of the envelope counts in."""
    if isinstance(part, Fenestration | OutsideDoor):
        return "openings"
    if not isinstance(part, Surface):
        return "below"
    kind = surface_kind(case, part)
    return "overhead" if kind in OVERHEAD else {"wall": "walls", "door": "openings"}.get(kind, "below")


def by_place(case: Case, enclosing: list[tuple[Part, float]]) -> dict[str, float]:
    """What the parts of an envelope lose at winter design, W, by column."""
    found: dict[str, float] = {}
    for part, watts in enclosing:
        place = place_of(case, part)
        found[place] = found.get(place, 0.0) + watts
    return found


def of_group(terms: tuple[Term, ...], group: str) -> float:
    """Sum of the terms of one group, W."""
    return sum(term.watts for term in terms if term.group == group)


def losses(case: Case, load: Load, enclosing: list[tuple[Part, float]], leaking: float, air_flow: float) -> Losses:
    """A load by its causes; `leaking` of `air_flow` m3/s without recovery comes in by cracks."""
    found = by_place(case, enclosing)
    terms = [term for term in load.terms if term.group == "outdoor air"]
    plain = sum(term.watts for term in terms if term.what == PLAIN_AIR)
    leak = plain * leaking / air_flow if air_flow > 0.0 else 0.0
    air = sum(term.watts for term in terms)
    walls, openings, overhead, below = (found.get(place, 0.0) for place in ("walls", "openings", "overhead", "below"))
    return Losses(walls, openings, overhead, below, leak, air - leak, of_group(load.terms, "ducts"))


@quantity("", "the terms of the load, summed by what loses them")
def room_losses(case: Case, room: Room) -> Losses:
    """Heating load of a room by what loses it. Raises Missing, CannotJudge."""
    load, air = room_heating(case, room), heating_air(case, case.design)
    plain, _ = room_airs(case, air, room)
    enclosing = [(part, heating_term(case, part).watts) for part in of_room(case, room)]
    return losses(case, load, enclosing, air.leaking * volume_shares(case, case.design)[room.name], plain)


@quantity("", "sum over the heated rooms")
def losses_of_rooms(case: Case, _design: object) -> Losses:
    """Heating loads of all rooms together by what loses them."""
    every = gather([partial(room_losses, case, room) for room in some_rooms(case)])
    return Losses(*(sum(column) for column in zip(*every, strict=True)))


def some_rooms(case: Case) -> list[Room]:
    """The heated rooms. Raises Missing where there is none."""
    rooms = heated_rooms(case)
    if not rooms:
        raise Missing("rooms")
    return rooms


def gains(load: Load) -> Gains:
    """A sensible load by its causes."""
    windows, air = of_group(load.terms, "windows"), of_group(load.terms, "outdoor air")
    inside, ducts = of_group(load.terms, GAINS), of_group(load.terms, "ducts")
    return Gains(load.watts - windows - air - inside - ducts, windows, air, inside, ducts)


@quantity("", "the terms of the load, summed by what brings them in")
def room_gains_by_part(case: Case, room: Room) -> Gains:
    """Sensible cooling load of a room by what brings it in. Raises Missing, CannotJudge."""
    return gains(room_cooling(case, room))


@quantity("heat_rate", "sum over the heated rooms")
def latent_of_rooms(case: Case, _design: object) -> float:
    """Latent cooling loads of all rooms together."""
    return sum(gather([partial(room_cooling_latent, case, room) for room in some_rooms(case)]))


@quantity("", "sum over the heated rooms")
def gains_of_rooms(case: Case, _design: object) -> Gains:
    """Sensible cooling loads of all rooms together by what brings them in."""
    every = gather([partial(room_gains_by_part, case, room) for room in some_rooms(case)])
    return Gains(*(sum(column) for column in zip(*every, strict=True)))
