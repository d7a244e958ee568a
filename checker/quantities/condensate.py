"""Condensate drains: what they drain, where that stands, how running over is caught, how much water there is."""

from collections.abc import Callable

from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.design.combustion import Burner
from checker.design.condensate import CondensateDrain
from checker.design.equipment import Capacity, Equipment
from checker.design.fans import Fan
from checker.design.fields import Length
from checker.design.hoods import Dryer
from checker.physics.condensate import flow_of_coil, flow_of_condensing_appliance, trap_drop, trap_seal
from checker.quantities.condensing import Source, cooling_units, is_coil, is_condensing
from checker.quantities.cooling_capacity import sensible_told
from checker.quantities.latent_balance import total_of
from checker.quantities.room_uses import room_use
from checker.record import Record

POINT_UNITS = frozenset({"wall unit", "floor unit", "ceiling unit"})
SANITARY = frozenset({"floor drain", "standpipe", "sink", "laundry tub", "sewer", "plumbing vent", "sump"})
UNINHABITABLE = frozenset({"attic", "crawl space"})


class Trap(Record):
    """Water seal and height from pan to outlet of a trap, m: what is drawn and what the suction asks for."""

    depth: Length | None
    drop: Length | None
    least_depth: Length
    least_drop: Length


def recovery_units(case: Case) -> list[Fan]:
    """Heat recovery units."""
    return [fan for fan in case.design.fans.values() if fan.role == "recovery"]


def found(case: Case, name: str) -> Source | None:
    """A source of condensate by name: equipment first, then recovery units, burners, dryers."""
    design = case.design
    for section in (design.equipment, design.fans, design.combustion, design.dryers):
        if name in section:
            source: Source = section[name]
            return source
    return None


@quantity()
def sources(case: Case, drain: CondensateDrain) -> list[Source]:
    """What a drain drains: as stated, else the unit it is named after, else the only one that there is."""
    named = [source for source in (found(case, name) for name in drain.from_ or [drain.name]) if source is not None]
    if named:
        return named
    units: list[Source] = [*cooling_units(case), *recovery_units(case)]
    if path_of(drain, "from_") not in case.design.tbd and len(units) == 1 and len(case.design.condensate) == 1:
        return units
    raise Missing(path_of(drain, "from_"))


def drains(case: Case) -> list[CondensateDrain]:
    """Every condensate drain."""
    return list(case.design.condensate.values())


def drain_of(case: Case, source: Source) -> CondensateDrain | None:
    """The drain of a source, None where none is known to be its."""
    for drain in drains(case):
        try:
            if any(each is source for each in sources(case, drain)):
                return drain
        except Missing:
            continue
    return None


def must_be_drained(case: Case, source: Source) -> bool:
    """Whether a drain is drawn for a source: False where the file says that there is none. Raises Missing."""
    if drain_of(case, source) is not None:
        return True
    if "condensate" in case.design.stated_none:
        return False
    raise Missing(f"condensate.{source.name}")


def drains_a_coil(case: Case, drain: CondensateDrain) -> bool:
    """It drains no cooling coil."""
    return any(is_coil(case, source) for source in sources(case, drain))


def drains_an_appliance(case: Case, drain: CondensateDrain) -> bool:
    """It drains no condensing appliance that burns fuel."""
    return any(is_condensing(case, source) for source in sources(case, drain))


def place_of(case: Case, source: Source) -> str | None:
    """Where a source stands: a word for places, or the use of its room; None where that is not said."""
    name = source.room if isinstance(source, Dryer) else case.maybe(source, "location")
    room = case.design.rooms.get(str(name))
    if room is None:
        return None if name is None else str(name)
    try:
        return room_use(case, room)
    except Missing:
        return "other"


@quantity()
def would_do_damage(case: Case, drain: CondensateDrain) -> bool:
    """Whether water running over would harm the building: as stated, else for a unit in the attic."""
    stated = case.maybe(drain, "over_finished")
    if stated is not None:
        return bool(stated)
    if any(place_of(case, source) == "attic" for source in sources(case, drain)):
        return True
    raise Missing(path_of(drain, "over_finished"))


@quantity()
def methods(case: Case, drain: CondensateDrain) -> frozenset[str]:
    """How running over is caught. Raises Missing where nothing is said of it; empty where the file says none."""
    words = set(case.maybe(drain, "secondary") or [])
    switched = drain.switch is not None
    if drain.pan is not None:
        words.add("pan with switch" if switched and drain.switch and drain.switch.place == "auxiliary pan" else
                  "pan with drain" if drain.overflow_drain is not None else "pan")  # fmt: skip
    elif drain.overflow_drain is not None:
        words.add("overflow drain")
    if switched and "pan with switch" not in words:
        words.add("switch")
    none = case.design.stated_none
    if words == {"pan"}:
        open_ends = [path_of(drain, field) for field in ("overflow_drain", "switch")]
        if not all(path in none for path in open_ends):
            raise Missing(*(path for path in open_ends if path not in none))
    if not words:
        denied = [path_of(drain, field) for field in ("secondary", "pan", "overflow_drain", "switch")]
        if denied[0] not in none and not all(path in none for path in denied[1:]):
            raise Missing(denied[0])
    return frozenset(words)


def catches_by(*wanted: str) -> Callable[[Case, CondensateDrain], bool]:
    """Whether a coil's drain names one of these methods, for the `when` of a rule."""

    def caught(case: Case, drain: CondensateDrain) -> bool:
        """Running over is caught in another way, or not at all."""
        try:
            return drains_a_coil(case, drain) and bool(methods(case, drain) & set(wanted))
        except Missing as gap:
            raise NotApplicable("nothing is said of how running over is caught") from gap

    return caught


def nominal_of(case: Case, capacity: Capacity) -> float | None:
    """Cooling capacity by which drains are sized: as rated, which is more than on a hot day; else what is told of design."""
    rated = case.maybe(capacity, "rated")
    return total_of(case, capacity) if rated is None else float(rated)


@quantity("heat_rate", "rated or design cooling capacities, summed")
def cooling_drained(case: Case, drain: CondensateDrain) -> float:
    """Cooling capacity of all that a drain drains."""
    total = 0.0
    absent = []
    for source in sources(case, drain):
        if not isinstance(source, Equipment):
            continue
        capacity = None if source.cooling is None else nominal_of(case, source.cooling)
        if capacity is None:
            absent.append(path_of(source, "cooling"))
        total += capacity or 0.0
    if absent:
        raise Missing(*absent)
    return total


def flow_of(case: Case, source: Source) -> float:
    """Greatest condensate of one source, m3/s."""
    if isinstance(source, Burner):
        return flow_of_condensing_appliance(float(case.get(source, "input")))
    if not isinstance(source, Equipment):
        raise CannotJudge(f"the condensate of {source.name} depends on the weather and its core")
    if source.cooling is None:
        raise Missing(path_of(source, "cooling"))
    total, sensible = total_of(case, source.cooling), sensible_told(case, source.cooling)
    if total is None or sensible is None:
        raise Missing(path_of(source.cooling, "rated" if total is None else "sensible"))
    return flow_of_coil(total - sensible)


@quantity("water_flow", "latent capacity / heat of condensation")
def condensate_flow(case: Case, drain: CondensateDrain) -> float:
    """Greatest condensate: as stated, else of all sources together."""
    stated = case.maybe(drain, "flow")
    if stated is not None:
        return float(stated)
    return sum(flow_of(case, source) for source in sources(case, drain))


def suction_at_pan(case: Case, drain: CondensateDrain) -> tuple[float, bool]:
    """(suction at the pan in Pa, whether it is known rather than the most that the blower can make)."""
    stated = case.maybe(drain, "pan_pressure")
    if stated is not None:
        return float(stated), True
    for source in sources(case, drain):
        most = case.maybe(source, "available_static") if isinstance(source, Equipment) else None
        if most is not None:
            return float(most), False
    raise Missing(path_of(drain, "pan_pressure"))


@quantity()
def trap(case: Case, drain: CondensateDrain) -> Trap | None:
    """The trap against what the maker asks for, else what the suction does; None where no trap is drawn."""
    drawn = case.get(drain, "trap")
    if drawn is None:
        return None
    if case.maybe(drawn, "waterless"):
        raise NotApplicable("a trap without water goes by its listing")
    depth, drop = case.get(drawn, "depth"), case.maybe(drawn, "drop")
    maker = drain.by_maker
    by_maker = None if maker is None else case.maybe(maker, "trap_depth")
    if by_maker is not None:
        return Trap(depth, drop, float(by_maker), float(case.maybe(maker, "trap_drop") or 0.0))
    suction, known = suction_at_pan(case, drain)
    sized = Trap(depth, drop, trap_seal(suction), trap_drop(suction))
    if not known and (depth < sized.least_depth or (drop or sized.least_drop) < sized.least_drop):
        raise Missing(path_of(drain, "pan_pressure"))
    return sized
