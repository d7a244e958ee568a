"""Ducts that are colder than the air around them, in winter and summer, and what lies around them."""

from collections.abc import Iterator

from checker.case import Case, Missing, path_of, quantity
from checker.design.airway import Airway, Run
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.design.hoods import Dryer, Hood
from checker.design.make_up_air import MakeUpAir
from checker.quantities.duct_flow import duct_label
from checker.quantities.duct_graph import Branch, sketch
from checker.quantities.duct_scope import mover_or_none, one_line_ducts
from checker.quantities.latent_balance import COOLING_KINDS
from checker.quantities.room_uses import room_use
from checker.record import Record

HEATED, OUTSIDE, BASEMENT, UNKNOWN = "heated rooms", "outdoor air", "a basement", ""
INDOORS = frozenset({"conditioned", "chase", "soffit"})

class ColdDuct(Record):
    """A duct that may be cold, with what it carries: outdoor air, or the outgoing air of a recovery unit."""

    path: str
    label: str
    duct: Airway
    unit: Fan | None

    @property
    def name(self) -> str:
        """Its name in messages."""
        return self.label


def around(case: Case, place: str) -> str:
    """What air surrounds a duct in a place or room of the design."""
    room = case.design.rooms.get(place)
    if room is not None:
        try:
            place = room_use(case, room)
        except Missing:
            place = "other"
        if place not in ("attic", "crawl space", "garage", "basement"):
            return UNKNOWN if room.conditioned is False else HEATED
        if room.conditioned and place != "garage":
            return HEATED
    house = case.design.house
    if place in INDOORS or (house is not None and place == "attic" and house.attic in ("conditioned", "unvented")):
        return HEATED
    if house is not None and place == "crawl space" and house.crawl_space == "conditioned":
        return HEATED
    if place in ("attic", "crawl space", "garage", "outdoors"):
        return OUTSIDE
    return BASEMENT if place == "basement" else UNKNOWN


@quantity()
def surroundings(case: Case, duct: Airway) -> frozenset[str]:
    """All that surrounds a duct on its way. Raises Missing where its location is not stated."""
    return frozenset(around(case, place) for place in case.get(duct, "location"))


def supplied_cold(case: Case) -> list[Run]:
    """Supply runs of the duct systems whose equipment cools."""
    found = []
    for system in case.design.ducts.values():
        unit = mover_or_none(case, system)
        if isinstance(unit, Equipment) and cools(case, unit):
            found += [each.run for each in sketch(case, system).branches.values() if each.side == "supply"]
    return found


def cools(case: Case, unit: Equipment) -> bool:
    """Whether a unit cools air: with a cooling capacity, of a kind that has one, or on an outdoor unit."""
    if path_of(unit, "cooling") in case.design.stated_none:
        return False
    return unit.cooling is not None or unit.outdoor_unit is not None or unit.kind in COOLING_KINDS


def cold_in_winter(case: Case) -> list[ColdDuct]:
    """Ducts that carry outdoor air, or the outgoing air of a recovery unit, each once."""
    found = {each.path: each for each in (*in_one_line(case), *for_make_up_air(case), *among_runs(case))}
    return list(found.values())


def in_one_line(case: Case) -> Iterator[ColdDuct]:
    """Ducts given in one line under supply fans and recovery units."""
    for duct in one_line_ducts(case):
        fan: Fan = duct.up
        if fan.role in ("supply", "recovery"):
            outgoing = duct.name == "exhaust_duct" and fan.role == "recovery"
            yield ColdDuct(duct.path, duct_label(duct), duct, fan if outgoing else None)


def for_make_up_air(case: Case) -> Iterator[ColdDuct]:
    """Ducts of make-up air that nothing warms."""
    design = case.design
    devices: list[Hood | Dryer | Fan] = [*design.hoods.values(), *design.dryers.values(), *design.fans.values()]
    for device in devices:
        made_up: MakeUpAir | None = device.make_up_air
        if made_up is not None and made_up.duct is not None and not made_up.tempered and made_up.heater is None:
            yield ColdDuct(made_up.duct.path, f"the make-up air duct of {device.name}", made_up.duct, None)


def among_runs(case: Case) -> Iterator[ColdDuct]:
    """Runs between an outdoor opening and a fan or unit, and those of a supply fan that nothing warms."""
    for system in case.design.ducts.values():
        mover = mover_or_none(case, system)
        if isinstance(mover, Hood) or (isinstance(mover, Fan) and mover.role not in ("supply", "recovery")):
            continue
        if mover is None:
            yield from (cold(run, None) for run in system.runs.values() if comes_from_outdoors(case, run))
            continue
        found = sketch(case, system)
        for branch in found.branches.values():
            outdoors = found.is_outdoors(branch)
            if (outdoors and branch.side == "return") or is_cold_supply(mover, branch):
                yield cold(branch.run, None)
            elif outdoors and isinstance(mover, Fan) and mover.role == "recovery":
                yield cold(branch.run, mover)
        yield from (cold(run, None) for run in found.loose if comes_from_outdoors(case, run))


def cold(run: Run, unit: Fan | None) -> ColdDuct:
    """A run as a cold duct."""
    return ColdDuct(run.path, duct_label(run), run, unit)


def comes_from_outdoors(case: Case, run: Run) -> bool:
    """Whether a run begins at an outdoor opening."""
    return run.from_ == "outdoors" or run.from_ in case.design.openings


def is_cold_supply(mover: object, branch: Branch) -> bool:
    """Whether a branch leads the outdoor air of a supply fan on to the rooms as cold as it came."""
    if not isinstance(mover, Fan) or mover.role != "supply" or branch.side != "supply":
        return False
    return mover.tempering is None or mover.tempering.by in (None, "none")


def stale_air_runs(case: Case) -> list[Run]:
    """Runs that bring room air to recovery units."""
    found = []
    for system in case.design.ducts.values():
        mover = mover_or_none(case, system)
        if isinstance(mover, Fan) and mover.role == "recovery":
            tree = sketch(case, system)
            found += [
                each.run for each in tree.branches.values() if each.side == "return" and not tree.is_outdoors(each)
            ]
    return found
