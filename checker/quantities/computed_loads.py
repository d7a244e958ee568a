"""Heating and cooling loads worked out from the envelope: by room, of the house, every term."""

from collections.abc import Callable
from functools import partial

from checker.case import Case, gather, quantity
from checker.design.rooms import Room
from checker.physics.cooling_load import internal_latent, internal_sensible
from checker.quantities import cooling_terms, heating_terms
from checker.quantities.airtightness import house_of
from checker.quantities.cooling_terms import cooling_term, latent_term, method_applies
from checker.quantities.duct_burden import room_burden
from checker.quantities.envelope_parts import Part, is_enclosed, parts
from checker.quantities.equipment import heated_rooms
from checker.quantities.fresh_split import volume_shares
from checker.quantities.heating_terms import heating_term
from checker.quantities.load_records import DUCTS, Factor, Load, Loads, Term
from checker.quantities.moist_air import people
from checker.quantities.outdoor_air import cooling_air, heating_air, room_airs
from checker.quantities.room_uses import room_use, rooms_used_as

CHAPTER = "ASHRAE Handbook - Fundamentals 2021, chapter 17"
GAINS = "people and appliances"
LIVED_IN = ("kitchen", "living", "dining")


def all_terms(case: Case, chosen: list[Part], term: Callable[[Case, Part], Term]) -> list[Term]:
    """The terms of parts of the envelope, or Missing with all that any lacks."""
    return gather([partial(term, case, part) for part in chosen])


def of_room(case: Case, room: Room) -> list[Part]:
    """The parts of the envelope that enclose a room."""
    return [part for part in parts(case, case.design) if part.room == room.name]


def with_ducts(name: str, terms: list[Term], share: float, way: str) -> Load:
    """The load with what the ducts add."""
    watts = sum(term.watts for term in terms)
    if share > 0:
        factors = (Factor(share, "", "loss factor"), Factor(watts, "heat_rate"))
        terms = [*terms, Term(f"ducts outside ({way})", share * watts, factors, (), f"{CHAPTER}, Table 6", group=DUCTS)]
    return Load(name, tuple(terms))


@quantity("", "envelope + outdoor air + ducts; no sun, no people", CHAPTER)
def computed_room_heating(case: Case, room: Room) -> Load:
    """Heating load of a room, worked out from the envelope. Raises Missing, CannotJudge."""
    is_enclosed(case, case.design)
    routes: list[Callable[[], list[Term]]] = [
        partial(all_terms, case, of_room(case, room), heating_term), partial(room_heating_air, case, room),
    ]  # fmt: skip
    terms = [term for found in gather(routes) for term in found]
    burden = room_burden(case, room)
    return with_ducts(room.name, terms, burden.heating, burden.way)


def room_heating_air(case: Case, room: Room) -> list[Term]:
    """What the outdoor air of a room takes at winter design."""
    air = heating_air(case, case.design)
    return heating_terms.air_terms(case, air, *room_airs(case, air, room))


@quantity("", "envelope + outdoor air + people and appliances + ducts", CHAPTER)
def computed_room_cooling(case: Case, room: Room) -> Load:
    """Sensible cooling load of a room, worked out from the envelope. Raises Missing, CannotJudge."""
    is_enclosed(case, case.design)
    method_applies(case, case.design)
    routes: list[Callable[[], list[Term]]] = [
        partial(all_terms, case, of_room(case, room), cooling_term), partial(room_cooling_air, case, room),
        partial(room_gains, case, room),
    ]  # fmt: skip
    terms = [term for found in gather(routes) for term in found]
    burden = room_burden(case, room)
    return with_ducts(room.name, terms, burden.cooling, burden.way)


def room_cooling_air(case: Case, room: Room) -> list[Term]:
    """What the outdoor air of a room brings in at summer design."""
    air = cooling_air(case, case.design)
    return cooling_terms.air_terms(case, air, *room_airs(case, air, room))


def house_gain(case: Case) -> float:
    """Sensible heat of people and appliances, W."""
    return internal_sensible(float(case.get(house_of(case), "floor_area")), people(case, case.design))


def room_gains(case: Case, room: Room) -> list[Term]:
    """A room's share of the heat of people and appliances: in kitchen and living rooms by their volume."""
    share = gain_shares(case, case.design).get(room.name, 0.0)
    if share <= 0:
        return []
    gain = house_gain(case)
    factors = (Factor(share, "", "share"), Factor(gain, "heat_rate"))
    return [Term(GAINS, share * gain, factors, (), CHAPTER, group=GAINS)]


@quantity()
def gain_shares(case: Case, design: object) -> dict[str, float]:
    """Share of each room in the heat of people and appliances; of all rooms where none is a kitchen or living room."""
    volumes = volume_shares(case, design)
    for room in heated_rooms(case):
        room_use(case, room)
    names = [room.name for room in rooms_used_as(case, *LIVED_IN) if volumes.get(room.name)] or list(volumes)
    total = sum(volumes[name] for name in names)
    return {name: volumes[name] / total for name in names}


@quantity("", "sum over the envelope, the outdoor air of the house and the ducts", CHAPTER)
def computed_heating(case: Case, design: object) -> Loads:
    """Heating loads of house and rooms, worked out from the envelope. Raises Missing, CannotJudge."""
    is_enclosed(case, design)
    rooms = tuple(gather([partial(computed_room_heating, case, room) for room in heated_rooms(case)]))
    air = heating_air(case, design)
    terms = all_terms(case, parts(case, design), heating_term)
    terms += heating_terms.air_terms(case, air, air.unrecovered, [(each, each.flow) for each in air.recovered])
    return Loads(house_load(terms, rooms), rooms)


@quantity("", "sum over the envelope, the outdoor air of the house, people and appliances, and the ducts", CHAPTER)
def computed_cooling(case: Case, design: object) -> Loads:
    """Sensible cooling loads of house and rooms, worked out from the envelope. Raises Missing, CannotJudge."""
    is_enclosed(case, design)
    rooms = tuple(gather([partial(computed_room_cooling, case, room) for room in heated_rooms(case)]))
    air = cooling_air(case, design)
    terms = all_terms(case, parts(case, design), cooling_term)
    terms += cooling_terms.air_terms(case, air, air.unrecovered, [(each, each.flow) for each in air.recovered])
    area, heads = float(case.get(house_of(case), "floor_area")), people(case, design)
    what = f"{GAINS} (136 W + 2.2 W/m2 x {area:.1f} m2 + 22 W x {heads})"
    terms.append(Term(what, house_gain(case), (), (), CHAPTER, group=GAINS))
    return Loads(house_load(terms, rooms), rooms)


def house_load(terms: list[Term], rooms: tuple[Load, ...]) -> Load:
    """The load of the house, with what ducts add in its rooms."""
    ducts = sum(term.watts for room in rooms for term in room.terms if term.group == DUCTS)
    more = [Term("ducts outside", ducts, (), (), f"{CHAPTER}, Table 6", group=DUCTS)] if ducts else []
    return Load("the house", (*terms, *more))


@quantity("", "outdoor air x moisture + people and appliances", CHAPTER)
def computed_room_latent(case: Case, room: Room) -> Load:
    """Latent cooling load of a room: its outdoor air, and its share of what people give off. Raises Missing, CannotJudge."""
    is_enclosed(case, case.design)
    method_applies(case, case.design)
    air = cooling_air(case, case.design)
    terms = [latent_term(case, *room_airs(case, air, room))]
    share = gain_shares(case, case.design).get(room.name, 0.0)
    if share > 0:
        moisture = house_moisture(case)
        factors = (Factor(share, "", "share"), Factor(moisture, "heat_rate"))
        terms.append(Term(GAINS, share * moisture, factors, (), CHAPTER, group=GAINS))
    return Load(room.name, tuple(terms))


@quantity("", "outdoor air x moisture + people and appliances", CHAPTER)
def computed_latent(case: Case, design: object) -> Load:
    """Latent cooling load of the house, worked out from the envelope. Raises Missing, CannotJudge."""
    is_enclosed(case, design)
    method_applies(case, design)
    air = cooling_air(case, design)
    term = latent_term(case, air.unrecovered, [(each, each.flow) for each in air.recovered])
    area, heads = float(case.get(house_of(case), "floor_area")), people(case, design)
    what = f"{GAINS} (20 W + 0.22 W/m2 x {area:.1f} m2 + 12 W x {heads})"
    return Load("the house", (term, Term(what, house_moisture(case), (), (), CHAPTER, group=GAINS)))


def house_moisture(case: Case) -> float:
    """Latent heat of people and appliances, W."""
    return internal_latent(float(case.get(house_of(case), "floor_area")), people(case, case.design))
