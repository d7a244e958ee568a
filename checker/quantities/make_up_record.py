"""What the design says of an exhaust's make-up air: its record, and the outdoor opening by which it comes."""

from typing import Any

from checker.case import Case, Missing, path_of, quantity
from checker.design.fans import Fan
from checker.design.hoods import Dryer, Hood
from checker.design.make_up_air import MakeUpAir
from checker.design.openings import Opening

KIND = "make-up air intake"


def record_of(case: Case, device: Hood | Fan | Dryer) -> MakeUpAir | None:
    """What the design says of its make-up air; None where it says `none` or nothing."""
    record: MakeUpAir | None = case.maybe(device, "make_up_air")
    return record


def wanted(case: Case, device: Hood | Fan | Dryer, field: str) -> Any:
    """A fact of its make-up air, where it must be told. Raises Missing with the key to add."""
    record = record_of(case, device)
    if record is None:
        raise Missing(f"{path_of(device, 'make_up_air')}.{field}")
    return case.get(record, field)


@quantity()
def make_up_opening(case: Case, device: Hood | Fan | Dryer) -> Opening | None:
    """Its make-up opening: named by it, one of that kind that serves it, or the only one where nothing else could use it."""
    record = record_of(case, device)
    if record is not None and record.opening is not None:
        return case.design.openings.get(record.opening)
    for opening in case.design.openings.values():
        if opening.kind == KIND and device.name in opening.serves:
            return opening
    free = unclaimed(case)
    if not free or path_of(device, "make_up_air") in case.design.stated_none:
        return None
    takers = likely_takers(case)
    if device not in takers:
        return None
    if len(takers) > 1 or len(free) > 1:
        raise Missing(*(path_of(opening, "serves") for opening in free))
    return free[0]


def unclaimed(case: Case) -> list[Opening]:
    """Make-up intakes of which nothing says what they serve, and that no fan draws by."""
    design = case.design
    claimed: set[str | None] = {name for fan in design.fans.values() for name in fan.from_}
    claimed |= {run.from_ for system in design.ducts.values() for run in system.runs.values()}
    devices: list[Hood | Fan | Dryer] = [*design.hoods.values(), *design.fans.values(), *design.dryers.values()]
    for device in devices:
        if device.make_up_air is not None:
            claimed.add(device.make_up_air.opening)
    return [
        opening
        for opening in design.openings.values()
        if opening.kind == KIND and not opening.serves and opening.name not in claimed
    ]


def likely_takers(case: Case) -> list[Hood] | list[Fan]:
    """What a make-up intake without a name on it is for: the hoods that blow outdoors, else the exhaust fans."""
    hoods = [hood for hood in case.design.hoods.values() if not hood.recirculating]
    return hoods or [fan for fan in case.design.fans.values() if fan.role == "exhaust"]
