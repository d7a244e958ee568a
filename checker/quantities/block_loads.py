"""The house as one block, worked out beside the rooms: whole facades by assembly, all air and all gains once.

The windows and doors of a facade are taken off its walls together, whatever room they are in; so the sum of the rooms and
the block differ where a room lacks a wall, or a window stands where its room has none.
"""

from collections.abc import Callable
from functools import partial

from checker.case import Case, gather, quantity
from checker.design.envelope import POINTS, Fenestration, OutsideDoor, Surface
from checker.quantities import cooling_terms, heating_terms
from checker.quantities.assembly_values import surface_kind
from checker.quantities.computed_loads import CHAPTER, GAINS, computed_cooling, computed_heating, house_gain
from checker.quantities.duct_burden import Burden, room_burden
from checker.quantities.envelope_parts import Part, net_area, parts, window_area
from checker.quantities.equipment import heated_rooms
from checker.quantities.load_parts import Gains, Losses, gains, losses
from checker.quantities.load_records import DUCTS, Load, Loads, Term
from checker.quantities.outdoor_air import OutdoorAir, Recovered, cooling_air, heating_air
from checker.record import Record

SLOPED = ("roof", "ceiling")


class Face(Record):
    """Surfaces of one assembly that face one way, by one of them, and their net area together, m2."""

    like: Surface
    area: float
    names: tuple[str, ...]


def key_of(case: Case, part: Surface) -> tuple[object, ...]:
    """What surfaces must share to count as one."""
    return (part.assembly, part.faces, surface_kind(case, part), case.maybe(part, "shaded"), case.maybe(part, "roof"))


def openings_facing(case: Case, faces: object) -> float:
    """Area of all windows and doors that face one way, m2."""
    found = [part for part in parts(case, case.design) if part_faces(part) == faces]
    windows = [partial(window_area, case, part) for part in found if isinstance(part, Fenestration)]
    doors = [partial(case.get, part, "area") for part in found if isinstance(part, OutsideDoor)]
    return float(sum(gather([*windows, *doors])))


def part_faces(part: Part) -> object:
    """Where a part faces; None in the ground."""
    return part.faces if isinstance(part, Fenestration | OutsideDoor | Surface) else None


def areas_facing(case: Case, facade: list[Surface]) -> list[float]:
    """Net area of each surface that faces one way. Where assemblies mix, each keeps what its own room leaves of it."""
    holed = facade
    if facade[0].faces in POINTS:  # a roof that slopes that way keeps its area beside a wall
        holed = [part for part in facade if surface_kind(case, part) not in SLOPED] or facade
    mixed = len({key_of(case, part) for part in holed}) > 1 or any(part.net_area is not None for part in holed)
    if mixed:
        return gather([partial(net_area, case, part) for part in facade])
    gross = gather([partial(case.get, part, "area") for part in facade])
    total = sum(area for area, part in zip(gross, facade, strict=True) if part in holed)
    left = max(0.0, 1.0 - openings_facing(case, facade[0].faces) / total) if total > 0.0 else 1.0
    return [area * left if part in holed else area for area, part in zip(gross, facade, strict=True)]


def faces_of(case: Case) -> list[Face]:
    """The opaque surfaces of the house by assembly and facing."""
    by_facing: dict[object, list[Surface]] = {}
    for part in parts(case, case.design):
        if isinstance(part, Surface):
            by_facing.setdefault(part.faces, []).append(part)
    found: dict[tuple[object, ...], Face] = {}
    for facade in by_facing.values():
        for part, area in zip(facade, areas_facing(case, facade), strict=True):
            before = found.get(key_of(case, part), Face(part, 0.0, ()))
            found[key_of(case, part)] = Face(before.like, before.area + area, (*before.names, str(part.name)))
    return list(found.values())


def others(case: Case) -> list[Part]:
    """The parts of the envelope that are no opaque surface."""
    return [part for part in parts(case, case.design) if not isinstance(part, Surface)]


def one_burden(case: Case) -> Burden | None:
    """What ducts add, where they add the same to every room; None where they do not."""
    found = {(each.heating, each.cooling): each for each in (room_burden(case, room) for room in heated_rooms(case))}
    return next(iter(found.values())) if len(found) == 1 else None


def ducts(terms: list[Term], share: float | None, rooms: Callable[[], Loads]) -> list[Term]:
    """What ducts outside add: a share of the block, or what they add room by room."""
    watts = sum(term.watts for term in terms) * share if share is not None else sum(
        term.watts for room in rooms().rooms for term in room.terms if term.group == DUCTS
    )  # fmt: skip
    return [Term("ducts outside", watts, (), (), f"{CHAPTER}, Table 6", group=DUCTS)] if watts else []


def recovered(air: OutdoorAir) -> list[tuple[Recovered, float]]:
    """All air of the house that passes recovery units."""
    return [(each, each.flow) for each in air.recovered]


@quantity("", "facades by assembly, the outdoor air of the house, ducts", CHAPTER)
def block_heating(case: Case, design: object) -> Load:
    """Heating load of the house as one block. Raises Missing, CannotJudge."""
    computed_heating(case, design)
    terms = [heating_terms.surface_loss(case, face.like, partial(float, face.area)) for face in faces_of(case)]
    terms += [heating_terms.heating_term(case, part) for part in others(case)]
    air = heating_air(case, design)
    terms += heating_terms.air_terms(case, air, air.unrecovered, recovered(air))
    burden = one_burden(case)
    share = None if burden is None else burden.heating
    return Load("the house", (*terms, *ducts(terms, share, partial(computed_heating, case, design))))


@quantity("", "facades by assembly, the outdoor air of the house, people and appliances, ducts", CHAPTER)
def block_cooling(case: Case, design: object) -> Load:
    """Sensible cooling load of the house as one block. Raises Missing, CannotJudge."""
    computed_cooling(case, design)
    terms = [cooling_terms.surface_gain(case, face.like, partial(float, face.area)) for face in faces_of(case)]
    terms += [cooling_terms.cooling_term(case, part) for part in others(case)]
    air = cooling_air(case, design)
    terms += cooling_terms.air_terms(case, air, air.unrecovered, recovered(air))
    terms.append(Term(GAINS, house_gain(case), (), (), CHAPTER, group=GAINS))
    burden = one_burden(case)
    share = None if burden is None else burden.cooling
    return Load("the house", (*terms, *ducts(terms, share, partial(computed_cooling, case, design))))


@quantity("", "the terms of the block, summed by what loses them")
def block_losses(case: Case, design: object) -> Losses:
    """Heating load of the house as one block by what loses it. Raises Missing, CannotJudge."""
    load, air, faces = block_heating(case, design), heating_air(case, design), faces_of(case)
    enclosing = [*(face.like for face in faces), *others(case)]
    watts = [term.watts for term in load.terms[: len(enclosing)]]
    return losses(case, load, list(zip(enclosing, watts, strict=True)), air.leaking, air.unrecovered)


@quantity("", "the terms of the block, summed by what brings them in")
def block_gains(case: Case, design: object) -> Gains:
    """Sensible cooling load of the house as one block by what brings it in. Raises Missing, CannotJudge."""
    return gains(block_cooling(case, design))
