"""Where the air of an exhaust fan, recovery unit or hood ends: outdoors, or a place where it may not."""


from checker.case import Case, Missing, path_of, quantity
from checker.design.fans import Fan
from checker.design.hoods import Hood
from checker.design.openings import Opening
from checker.quantities.local_exhaust import Exhauster, devices, points_of, systems_of
from checker.quantities.room_uses import BATH_USES, room_use, rooms_used_as
from checker.record import Record

THROUGH_THE_SHELL = ("outdoors", "roof", "exterior wall")
EXHAUST_KINDS = ("exhaust", "kitchen exhaust", "combined intake and exhaust", "other", None)
NOT_OUTDOORS = {
    "soffit vent": "soffit", "ridge vent": "ridge vent", "attic vent": "attic", "gable vent": "attic",
    "foundation vent": "crawl space",
}  # fmt: skip
OWN_PLACES = ("attic", "crawl space", "garage")


class End(Record):
    """One end of an exhaust: the field that says so, its name, the place, and the opening if it is one."""

    path: str
    name: str
    into: str
    opening: Opening | None = None

    @property
    def outdoors(self) -> bool:
        """Whether the air leaves the building there."""
        return self.into == "outdoors"


def is_exhaust(device: Exhauster) -> bool:
    """Whether a device takes air out of the house: an exhaust fan, a recovery unit, a hood with a duct."""
    if isinstance(device, Hood):
        return not device.recirculating
    return device.role in ("exhaust", "recovery")


def exhausts(case: Case) -> list[Exhauster]:
    """Every exhaust fan, recovery unit and ducted hood."""
    return [device for device in devices(case) if is_exhaust(device)]


def ducted_hoods(case: Case) -> list[Hood]:
    """Every hood that does not blow back into the room."""
    return [hood for hood in case.design.hoods.values() if not hood.recirculating]


def bath_fans(case: Case) -> list[Fan]:
    """Exhaust fans that draw from a bath or toilet room; one whose role is not said is among them."""
    baths = {room.name for room in rooms_used_as(case, *BATH_USES)}
    found = []
    for fan in case.design.fans.values():
        drawn = {*fan.room, *fan.from_, *(name for name, _, _ in points_of(case, fan))}
        if fan.role in ("exhaust", None) and baths & drawn:
            found.append(fan)
    return found


def takes_out(case: Case, fan: Fan) -> bool:
    """It is no exhaust fan."""
    return bool(case.get(fan, "role") == "exhaust")


@quantity()
def ends(case: Case, device: Exhauster) -> tuple[End, ...]:
    """Where a device's exhaust ends, by its own `to`, by its ducts, or by what openings serve. Raises Missing."""
    recovery = isinstance(device, Fan) and device.role == "recovery"
    found = []
    for path, name in named_ends(case, device):
        end = end_of(case, path, name)
        if end is None or (recovery and not leaves_a_recovery_unit(case, end)):
            continue
        found.append(end)
    serving = [each for each in case.design.openings.values() if device.name in each.serves]
    found += [
        End(opening.path, opening.name, into(case, opening), opening)
        for opening in serving
        if opening.kind in EXHAUST_KINDS
    ]
    if not found:
        raise Missing(path_of(device, "to"))
    return tuple({end.name: end for end in found}.values())


def named_ends(case: Case, device: Exhauster) -> list[tuple[str, str]]:
    """(path, name) of every end that the device or its duct runs name."""
    path = path_of(device, "to")
    if isinstance(device, Hood):
        named = [(path, device.to)] if device.to is not None else []
    else:
        named = [(f"{path}[{place}]" if len(device.to) > 1 else path, name) for place, name in enumerate(device.to)]
    for system in systems_of(case, device):
        inner = {*system.runs, *system.outlets, device.name}
        named += [
            (path_of(run, "to"), run.to)
            for run in system.runs.values()
            if run.to is not None and run.to not in inner
        ]
    return named


def end_of(case: Case, path: str, name: str) -> End | None:
    """The end of this name; None for a duct system or filter, which lead on."""
    design = case.design
    if name in design.openings:
        return End(path, name, into(case, design.openings[name]), design.openings[name])
    if name in design.rooms:
        use = room_use(case, design.rooms[name])
        return End(path, name, use if use in OWN_PLACES else "indoors")
    if name in design.ducts or name in design.filters or name in design.fans:
        return None
    if name in design.equipment:
        return End(path, name, "equipment")
    return End(path, name, "outdoors" if name in THROUGH_THE_SHELL else name)


def into(case: Case, opening: Opening) -> str:
    """Where an opening leads: as stated, else by what it is; an exhaust terminal leads outdoors."""
    stated = case.maybe(opening, "into")
    if stated is not None:
        return str(stated)
    return NOT_OUTDOORS.get(opening.kind or "", "outdoors")


def leaves_a_recovery_unit(case: Case, end: End) -> bool:
    """Whether an end of a recovery unit is that of its outgoing air, not of the fresh air to rooms."""
    if end.opening is not None:
        return end.opening.kind in EXHAUST_KINDS
    return end.into not in ("indoors", "equipment", "conditioned")


def sharers(case: Case, device: Exhauster) -> tuple[str, ...]:
    """Other fans, hoods and dryers that end in the same terminal."""
    try:
        own = {end.opening.path for end in ends(case, device) if end.opening is not None}
    except Missing:
        return ()
    found = []
    for other in exhausts(case):
        if other.path == device.path:
            continue
        try:
            theirs = {end.opening.path for end in ends(case, other) if end.opening is not None}
        except Missing:
            continue
        if own & theirs:
            found.append(other.name)
    dryers = [each.name for each in case.design.dryers.values() if f"openings.{each.to}" in own]
    return (*found, *dryers)
