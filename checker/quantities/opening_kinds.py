"""What each outdoor opening is: its stated kind, else what fans, hoods and appliances make of it."""

from collections.abc import Iterator

from checker.case import Case, Missing, quantity
from checker.design import Design
from checker.design.combustion import Burner
from checker.design.equipment import Equipment
from checker.design.fans import Fan
from checker.design.fields import fold
from checker.design.hoods import Dryer, Hood
from checker.design.openings import OPENING_KINDS, Opening
from checker.record import Record

COMBINED = "combined intake and exhaust"
OUTDOOR_INTAKES = frozenset({"outdoor air intake", "make-up air intake", COMBINED})
ROOM_EXHAUSTS = frozenset({"exhaust", "kitchen exhaust", COMBINED})
EXHAUSTS = ROOM_EXHAUSTS | {"dryer exhaust"}
SEALED_DRAFTS = frozenset({"direct vent", "sealed"})
THROUGH_THE_SHELL = ("outdoors", "roof", "exterior wall")

User = Fan | Hood | Dryer | Equipment | Burner


class Use(Record):
    """What an opening serves as, and for which device."""

    kind: str
    device: User


def stated(case: Case, node: object, field: str) -> object:
    """A field where absence and `tbd` alike leave other routes open: None for both."""
    try:
        value: object = case.maybe(node, field)
    except Missing:
        return None
    return value


def vent_kind(burner: Burner) -> str:
    """The kind of opening that an appliance's vent ends in."""
    return "direct vent" if burner.draft in SEALED_DRAFTS else "combustion vent"


def fan_kind(fan: Fan) -> str:
    """The kind of opening that an opening which only says it serves a fan must be, "" where both are possible."""
    return {"supply": "outdoor air intake", "exhaust": "exhaust"}.get(fan.role or "", "")


def named_by_devices(design: Design) -> Iterator[tuple[str, Use]]:
    """(name, use) for each opening that a device says it draws from or ends in."""
    for fan in design.fans.values():
        yield from ((name, Use("outdoor air intake", fan)) for name in fan.from_)
        yield from ((name, Use("exhaust", fan)) for name in fan.to)
    for hood in design.hoods.values():
        yield hood.to or "", Use("kitchen exhaust", hood)
    for dryer in design.dryers.values():
        yield dryer.to or "", Use("dryer exhaust", dryer)
    served: list[Hood | Dryer] = [*design.hoods.values(), *design.dryers.values()]
    for device in served:
        if device.make_up_air is not None:
            yield device.make_up_air.opening or "", Use("make-up air intake", device)
    for unit in design.equipment.values():
        if unit.outdoor_air is not None:
            yield unit.outdoor_air.opening or "", Use("outdoor air intake", unit)
    for burner in design.combustion.values():
        yield burner.terminal or "", Use(vent_kind(burner), burner)


def named_by_runs(design: Design) -> Iterator[tuple[str, Use]]:
    """(name, use) for each opening that a duct run begins or ends at; the mover of its system is the device."""
    movers: dict[str, User] = {**design.equipment, **design.fans, **design.hoods}
    for system in design.ducts.values():
        device = movers.get(system.mover or system.name)
        if device is None:
            continue
        out = "kitchen exhaust" if isinstance(device, Hood) else "exhaust"
        for run in system.runs.values():
            yield run.from_ or "", Use("outdoor air intake", device)
            yield run.to or "", Use(out, device)


def named_by_openings(design: Design) -> Iterator[tuple[str, Use]]:
    """(name, use) for each device that an opening says it serves."""
    for opening in design.openings.values():
        for name in opening.serves:
            if name in design.fans:
                yield opening.name, Use(fan_kind(design.fans[name]), design.fans[name])
            elif name in design.hoods:
                yield opening.name, Use("kitchen exhaust", design.hoods[name])
            elif name in design.dryers:
                yield opening.name, Use("dryer exhaust", design.dryers[name])
            elif name in design.equipment:
                yield opening.name, Use("outdoor air intake", design.equipment[name])
            elif name in design.combustion:
                yield opening.name, Use(vent_kind(design.combustion[name]), design.combustion[name])


@quantity()
def uses(case: Case, design: Design) -> dict[str, list[Use]]:
    """Every use of every opening, by its name."""
    found: dict[str, list[Use]] = {name: [] for name in design.openings}
    for source in (named_by_devices, named_by_runs, named_by_openings):
        for name, use in source(design):
            if name in found and use not in found[name]:
                found[name].append(use)
    return found


@quantity()
def kind(case: Case, opening: Opening) -> str:
    """What an opening is. Raises Missing where neither it nor any device nor its own name says so."""
    said = stated(case, opening, "kind")
    used = {use.kind for use in uses(case, case.design)[opening.name] if use.kind}
    if said is not None:
        narrower = used & {"kitchen exhaust", "dryer exhaust"}
        return narrower.pop() if said == "exhaust" and len(narrower) == 1 else str(said)
    if used & OUTDOOR_INTAKES and used & EXHAUSTS:
        return COMBINED
    if len(used) == 1:
        return used.pop()
    if used and used <= EXHAUSTS:
        return "exhaust"
    named = OPENING_KINDS.spellings.get(fold(opening.name))
    if named is not None:
        return named
    return str(case.get(opening, "kind"))


def of_kind(case: Case, kinds: frozenset[str]) -> list[Opening]:
    """The openings that are known to be of these kinds."""
    found = []
    for opening in case.design.openings.values():
        try:
            known = kind(case, opening)
        except Missing:
            continue
        if known in kinds:
            found.append(opening)
    return found


def devices_of(case: Case, opening: Opening) -> list[User]:
    """The devices that use an opening."""
    return [use.device for use in uses(case, case.design)[opening.name]]


def takes_in_outdoor_air(fan: Fan) -> bool:
    """Whether a fan brings in outdoor air."""
    return fan.role in ("supply", "recovery")


def drivers_of_intakes(case: Case) -> list[Fan | Equipment]:
    """Fans and equipment that draw in outdoor air."""
    fans = [fan for fan in case.design.fans.values() if takes_in_outdoor_air(fan)]
    return [*fans, *(unit for unit in case.design.equipment.values() if unit.outdoor_air is not None)]


def leads_nowhere_known(fan: Fan, ends: list[str]) -> bool:
    """Whether the ends of a fan name no place but the outdoors; a recovery unit also names rooms."""
    return fan.role == "recovery" or all(end in THROUGH_THE_SHELL for end in ends)


def unplaced_intakes(case: Case) -> list[str]:
    """Paths that would say where a fan or unit that takes in outdoor air draws it from."""
    used = uses(case, case.design).values()
    placed = [use.device for each in used for use in each if use.kind != "exhaust"]
    paths = []
    for device in drivers_of_intakes(case):
        if device in placed:
            continue
        if isinstance(device, Equipment):
            paths.append(f"{device.path}.outdoor_air.opening")
        elif leads_nowhere_known(device, device.from_):
            paths.append(f"{device.path}.from")
    return paths


def unplaced_exhausts(case: Case, dryers: bool = False) -> list[str]:
    """Paths that would say where an exhaust ends, for movers that no opening can stand for."""
    design = case.design
    used = uses(case, design)
    placed = [use.device for each in used.values() for use in each if use.kind in EXHAUSTS or not use.kind]
    movers: list[User] = [
        fan
        for fan in design.fans.values()
        if fan.role in ("exhaust", "recovery")
        and fan.kind not in ("attic", "whole-house cooling")
        and leads_nowhere_known(fan, fan.to)
    ]
    movers += [hood for hood in design.hoods.values() if not hood.recirculating and hood.to in (None, *THROUGH_THE_SHELL)]
    if dryers:
        movers += [dryer for dryer in design.dryers.values() if dryer.kind in (None, "vented")]
    kinds = EXHAUSTS if dryers else ROOM_EXHAUSTS
    free = [opening for opening in of_kind(case, kinds) if not used[opening.name]]
    homeless = [mover for mover in movers if mover not in placed]
    return [f"{mover.path}.to" for mover in homeless] if len(homeless) > len(free) else []


def known_intakes(case: Case, kinds: frozenset[str] = OUTDOOR_INTAKES) -> list[Opening]:
    """Intakes of outdoor air; none where the design has none. Raises Missing where it must have one unseen."""
    found = of_kind(case, kinds)
    if not found and (absent := unplaced_intakes(case)):
        raise Missing(*(absent if case.stated("openings") else ["openings"]))
    return found


def known_exhausts(case: Case, kinds: frozenset[str] = ROOM_EXHAUSTS) -> list[Opening]:
    """Exhaust terminals; none where the design has none. Raises Missing where it must have one unseen."""
    found = of_kind(case, kinds)
    if not found and (absent := unplaced_exhausts(case, dryers="dryer exhaust" in kinds)):
        raise Missing(*(absent if case.stated("openings") else ["openings"]))
    return found


def is_permit_intake(case: Case, opening: Opening) -> bool:
    """Whether an opening takes in outdoor air and the drawing is no mere sketch, so that its details are asked for."""
    project = case.design.project
    drawn = project is not None and project.stage in ("permit", "as-built")
    return drawn and kind(case, opening) in OUTDOOR_INTAKES


@quantity()
def is_mechanical(case: Case, opening: Opening) -> bool:
    """Whether a fan draws air in through an intake; one that no device names may be that of a fan yet unplaced."""
    if kind(case, opening) == COMBINED:
        return True
    devices = devices_of(case, opening)
    if devices:
        return any(isinstance(device, (Fan, Equipment)) for device in devices)
    if kind(case, opening) == "make-up air intake":
        return False
    if drivers_of_intakes(case):
        return bool(unplaced_intakes(case))
    house = case.design.house
    return house is None or house.strategy != "exhaust only"
