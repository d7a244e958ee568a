"""What ducts outside the insulated shell add to the load of the rooms that they serve."""


from checker.case import CannotJudge, Case, Missing, quantity
from checker.design.ducts import DuctSystem
from checker.design.equipment import Equipment
from checker.design.rooms import Room
from checker.physics.distribution_loss import USUAL_LEAKAGE, Use, distribution_loss_factor
from checker.quantities.airtightness import house_of
from checker.quantities.distribution import OUT_OF_ROOM, of_equipment
from checker.quantities.duct_exposure import exposed, house_air_systems
from checker.quantities.duct_scope import mover_or_none
from checker.quantities.duct_surface import insulation
from checker.quantities.equipment import BURNING_KINDS
from checker.quantities.leakage_class import known_leakage
from checker.record import Record
from checker.units import show

DUCTED = frozenset({"furnace", "air handler", "slim duct unit", "packaged unit"})
PLACES = ("attic", "crawl space", "basement")


class Burden(Record):
    """What the ducts of a system outside the shell add, as shares of the load, and what that rests on."""

    heating: float
    cooling: float
    way: str = ""

    def worksheet_lines(self, _system: str) -> list[str]:
        """Both shares and their way."""
        return [f"heating {self.heating:.1%}, cooling {self.cooling:.1%} of the load{f': {self.way}' if self.way else ''}"]


@quantity("", "loss factor x share of the duct length outside", "ASHRAE Handbook - Fundamentals 2021, chapter 17, Table 6")
def system_burden(case: Case, system: DuctSystem) -> Burden:
    """What the ducts of a system add. Raises Missing for runs whose place or insulation is not told."""
    if not system.runs:
        if not case.maybe(system, "all_inside") and stands_outside(case, mover_or_none(case, system)):
            raise Missing(f"{system.path}.runs")
        return Burden(0.0, 0.0, "no run is drawn")
    outside: list[tuple[float, str, float]] = []
    length = 0.0
    absent: list[str] = []
    for run in system.runs.values():
        try:
            span = float(case.get(run, "length"))
            places = exposed(case, case.get(run, "location")).at("attic", "outside")
            length += span
            if places:
                outside.append((span, worst(places), insulation(case, run)))
        except Missing as gap:
            absent.extend(gap.paths)
    if absent:
        raise Missing(*absent)
    if not outside or length <= 0:
        return Burden(0.0, 0.0, "all ducts are inside")
    mover = mover_or_none(case, system)
    use: Use = "furnace" if isinstance(mover, Equipment) and mover.kind in BURNING_KINDS else "heat pump"
    stories = case.maybe(house_of(case), "stories")
    place = min((where for _, where, _ in outside), key=PLACES.index)
    least = min(resistance for _, _, resistance in outside)
    share = sum(span for span, _, _ in outside) / length
    leakage = leaking_share(case, system, mover)
    height = 1.0 if stories is None else float(stories)
    heat = share * distribution_loss_factor(place, use, height, least, leakage)
    cool = share * distribution_loss_factor(place, "cooling", height, least, leakage)
    way = f"{share:.0%} of the length in the {place}, {show(least, 'resistance')}, {leakage:.0%} leakage of each side"
    return Burden(heat, cool, way)


def worst(places: tuple[str, ...]) -> str:
    """The row of the table for the places of a run: what is not listed counts as the attic."""
    known = [place if place in PLACES else "attic" for place in places]
    return min(known, key=PLACES.index)


def leaking_share(case: Case, system: DuctSystem, mover: object) -> float:
    """Share of the airflow that leaks on each side: half of the total at 25 Pa, stated or by class; the usual one where unknown."""
    try:
        total = known_leakage(case, system)
    except (Missing, CannotJudge):
        total = None
    flow = case.maybe(mover, "airflow") if isinstance(mover, Equipment) else None
    flow = flow or case.maybe(system, "airflow")
    if total is None or not flow:
        return USUAL_LEAKAGE
    return min(1.0, float(total) / 2.0 / float(flow))


@quantity()
def room_burden(case: Case, room: Room) -> Burden:
    """What ducts add to the load of a room: the most of the systems that serve it."""
    burdens = [system_burden(case, system) for system in house_air_systems(case) if serves(case, system, room)]
    if not burdens:
        undrawn = [unit for unit in case.design.equipment.values() if unit.kind in DUCTED and room.name in unit.serves]
        if any(stands_outside(case, unit) for unit in undrawn):
            raise Missing("ducts")
        way = f"ducts of {undrawn[0].name} are not drawn, and counted as inside" if undrawn else "no ducts serve it"
        return Burden(0.0, 0.0, way)
    return max(burdens, key=lambda each: each.heating + each.cooling)


def stands_outside(case: Case, mover: object) -> bool:
    """Whether an air handler stands outside the insulation, so that its ducts can't all be inside."""
    if not isinstance(mover, Equipment) or mover.kind == "packaged unit" or case.maybe(mover, "location") is None:
        return False
    try:
        return bool(exposed(case, [str(mover.location)]).at("attic", "outside"))
    except (Missing, CannotJudge):
        return False


def serves(case: Case, system: DuctSystem, room: Room) -> bool:
    """Whether a duct system leads its air to a room."""
    mover = mover_or_none(case, system)
    try:
        if isinstance(mover, Equipment) and any(each.room == room.name for each in of_equipment(case, mover, mover)):
            return True
    except (Missing, CannotJudge):
        return True
    outlets = any(each.room == room.name and each.kind not in OUT_OF_ROOM for each in system.outlets.values())
    return outlets or any(run.to == room.name or room.name in run.serves for run in system.runs.values())
