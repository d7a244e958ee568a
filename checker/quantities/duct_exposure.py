"""Where ducts run as the energy code sees it: inside the conditioned space, outside it, in its shell or the ground."""

from typing import Literal

from checker.case import CannotJudge, Case, Missing, path_of, quantity
from checker.design.airway import Airway, Run
from checker.design.ducts import DuctSystem
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.design.house import House
from checker.quantities.duct_graph import Side, sketch
from checker.quantities.duct_scope import mover_or_none, systems
from checker.quantities.room_uses import room_use
from checker.record import Record

Zone = Literal["inside", "attic", "outside", "shell", "ground"]
INSIDE = frozenset({"conditioned", "soffit", "chase"})
OUTSIDE = frozenset({"outdoors", "roof", "garage"})
SHELL = frozenset({"exterior wall", "floor over unconditioned"})
GROUND = frozenset({"underground", "slab"})


class Exposure(Record):
    """The zones that a duct passes, with the word of the file for each."""

    zones: tuple[tuple[Zone, str], ...]

    def at(self, *zones: Zone) -> tuple[str, ...]:
        """The places of a duct in these zones."""
        return tuple(place for zone, place in self.zones if zone in zones)


def zone_of(case: Case, place: str) -> Zone:
    """The zone of a place or room. Raises Missing, CannotJudge where the file leaves it open."""
    room = case.design.rooms.get(place)
    if room is not None:
        use = room_use(case, room)
        stated = case.maybe(room, "conditioned")
        if use == "garage":
            return "outside"
        if stated is not None:
            return "inside" if stated else "attic" if use == "attic" else "outside"
        if use not in ("attic", "crawl space", "basement"):
            return "inside"
        if use == "basement":
            raise Missing(path_of(room, "conditioned"))
        place = use
    if place in INSIDE:
        return "inside"
    if place in OUTSIDE:
        return "outside"
    if place in SHELL:
        return "shell"
    if place in GROUND:
        return "ground"
    return zone_by_house(case, place)


def zone_by_house(case: Case, place: str) -> Zone:
    """The zone of the attic, crawl space or basement, by what the house says of it."""
    if place == "basement":
        raise CannotJudge("a basement may lie inside or outside the insulation; write `conditioned` if it is heated")
    house: House | None = case.design.house
    field = "attic" if place == "attic" else "crawl_space"
    if house is None:
        raise Missing(f"house.{field}")
    kind = case.maybe(house, field)
    if kind is None:
        raise Missing(path_of(house, field))
    if kind == "conditioned":
        return "inside"
    if kind == "vented":
        return "attic" if place == "attic" else "outside"
    if kind == "unvented":
        if said_to_be_inside(case):
            return "inside"
        raise CannotJudge("an unvented attic may lie outside the insulation; write `conditioned` if the roof is insulated")
    raise CannotJudge(f"the duct runs in the {place}, and the house says that it has none")


def said_to_be_inside(case: Case) -> bool:
    """Whether a duct system says that all of it is inside; IRC R806.5 lets unvented attics be inside only."""
    return any(case.maybe(system, "all_inside") for system in case.design.ducts.values())


@quantity()
def exposure(case: Case, duct: Airway) -> Exposure:
    """The zones that a duct passes. Raises Missing for its location or what the attic or crawl space is."""
    return exposed(case, case.get(duct, "location"))


def exposed(case: Case, places: list[str]) -> Exposure:
    """The zones of these places."""
    return Exposure(tuple((zone_of(case, place), place) for place in dict.fromkeys(places)))


@quantity()
def side(case: Case, run: Run) -> Side:
    """Whether a run carries supply or return air. Raises Missing for ends that are not stated."""
    found = sketch(case, run.up).branches.get(run.name)
    if found is not None:
        return found.side
    absent = [path_of(run, field) for field in ("from_", "to") if getattr(run, field) is None]
    if absent:
        raise Missing(*absent)
    raise CannotJudge(f"{run.name} is not joined to what moves its air")


def leads_outdoors(case: Case, run: Run) -> bool:
    """Whether a run is known to be an intake or discharge of outdoor air."""
    try:
        tree = sketch(case, run.up)
    except Missing:
        return False
    branch = tree.branches.get(run.name)
    return branch is not None and tree.is_outdoors(branch)


def house_air_systems(case: Case) -> list[DuctSystem]:
    """Systems that heat, cool or circulate room air: of equipment, of recirculating fans, or of a mover unnamed."""
    found = []
    for system in systems(case):
        mover = mover_or_none(case, system)
        ventilates = bool(system.ventilation_only) or (isinstance(mover, Fan) and mover.role != "recirculating")
        if not ventilates and not (isinstance(mover, Equipment) and mover.kind == "dehumidifier"):
            found.append(system)
    return found


def supply_and_return_runs(case: Case) -> list[Run]:
    """Runs of supply and return air of heating, cooling and recovery systems."""
    found = house_air_systems(case)
    recovering = [each for each in systems(case) if is_recovery(mover_or_none(case, each))]
    return [run for system in (*found, *recovering) for run in system.runs.values()]


def is_recovery(mover: object) -> bool:
    """Whether the mover is a recovery unit."""
    return isinstance(mover, Fan) and mover.role == "recovery"
