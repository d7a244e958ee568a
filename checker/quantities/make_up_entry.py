"""Where make-up air enters, how its damper can be reached, how it is warmed, and whether the drawing says so."""

from checker.case import Case, Missing, path_of, quantity
from checker.design.fans import Fan
from checker.design.fields import fold
from checker.quantities.local_exhaust import rooms_exhausted
from checker.quantities.make_up_air import (
    Exhauster,
    exhausters,
    make_up_area,
    make_up_fans,
    make_up_flow,
    way_if_known,
)
from checker.quantities.make_up_record import record_of, wanted

NOTE_TOPICS = ("make up air", "makeup air", "mua", "make up", "makeup")


def with_some(case: Case) -> list[Exhauster]:
    """The exhausts for which make-up air is shown, required or not."""
    return [device for device in exhausters(case) if way_if_known(case, device) not in (None, "none")]


def with_flow(case: Case) -> list[Exhauster]:
    """Those of them whose make-up airflow is known."""
    found = []
    for device in with_some(case):
        record = record_of(case, device)
        undecided = record is not None and path_of(record, "airflow") in case.design.tbd
        try:
            make_up_flow(case, device)
        except Missing:
            if not undecided:
                continue
        found.append(device)
    return found


def fan_of(case: Case, device: Exhauster) -> Fan | None:
    """The fan that brings the make-up air."""
    fans = make_up_fans(case, device)
    fan = fans[0].device if fans else None
    return fan if isinstance(fan, Fan) else None


def asked_of(case: Case, device: Exhauster, field: str, of_fan: str) -> str:
    """The path to ask for a fact: of the make-up air where the design has it, else of its fan."""
    fan = fan_of(case, device)
    record = record_of(case, device)
    if fan is not None and (record is None or record.fan is not None):
        return path_of(fan, of_fan)
    return f"{path_of(device, 'make_up_air')}.{field}"


@quantity()
def damper_access(case: Case, device: Exhauster) -> bool:
    """Whether the make-up damper can be reached."""
    record, fan = record_of(case, device), fan_of(case, device)
    if record is not None and record.damper_access is not None:
        return bool(case.get(record, "damper_access"))
    if fan is not None and fan.duct is not None and fan.duct.damper_access is not None:
        return bool(case.get(fan.duct, "damper_access"))
    raise Missing(asked_of(case, device, "damper_access", "duct.damper_access"))


@quantity("house_pressure")
def damper_rating(case: Case, device: Exhauster) -> float:
    """Pressure at which its gravity damper passes the make-up flow, Pa."""
    return float(wanted(case, device, "damper_rated_at"))


@quantity()
def exhaust_room(case: Case, device: Exhauster) -> str:
    """The room that the exhaust takes air from."""
    rooms = rooms_exhausted(case, device)
    if len(rooms) != 1:
        raise Missing(path_of(device, "room"))
    return rooms[0]


@quantity()
def entry_room(case: Case, device: Exhauster) -> str:
    """The room where make-up air enters; "" where a fan feeds it to a duct system or equipment."""
    record, fan = record_of(case, device), fan_of(case, device)
    if record is not None and record.room is not None:
        return str(case.get(record, "room"))
    if fan is not None:
        rooms = [name for name in (*fan.to, *fan.room) if name in case.design.rooms]
        if rooms:
            return str(rooms[0])
        if any(name in case.design.equipment or name in case.design.ducts for name in fan.to):
            return ""
    raise Missing(asked_of(case, device, "room", "to"))


@quantity("small_area")
def way_to_exhaust(case: Case, device: Exhauster) -> float | None:
    """Net area of permanent openings from where make-up air enters to the exhaust, m2; None in the same open room."""
    entry, exhaust = entry_room(case, device), exhaust_room(case, device)
    if entry in ("", exhaust):
        return None
    record = record_of(case, device)
    if record is not None and record.transfer_area is not None:
        return float(case.get(record, "transfer_area"))
    one, other = case.design.rooms[entry], case.design.rooms[exhaust]
    if exhaust in one.open_to or entry in other.open_to:
        return None
    raise Missing(f"{path_of(device, 'make_up_air')}.transfer_area")


@quantity()
def has_outdoor_duct(case: Case, device: Exhauster) -> bool:
    """Whether make-up air comes by a duct from outdoors."""
    return wanted(case, device, "duct") is not None


@quantity()
def is_tempered(case: Case, device: Exhauster) -> bool:
    """Whether make-up air is warmed."""
    record, fan = record_of(case, device), fan_of(case, device)
    if record is not None and (record.tempered is not None or record.heater is not None):
        return bool(record.heater) or bool(case.get(record, "tempered"))
    if fan is not None and fan.tempering is not None:
        return bool(case.get(fan.tempering, "by") != "none")
    raise Missing(asked_of(case, device, "tempered", "tempering"))


@quantity()
def has_drawing_note(case: Case, device: Exhauster) -> bool:
    """Whether a drawing note tells of the make-up air."""
    record = record_of(case, device)
    note = case.maybe(record, "drawing_note") if record is not None else None
    if note is not None and fold(note) not in ("none", "no"):
        return True
    papers = case.design.papers
    undecided = [path for path in sorted(case.design.tbd) if path.startswith("papers.notes.")]
    for path in undecided:
        if fold(path.rpartition(".")[2]) in NOTE_TOPICS:
            raise Missing(path)
    return papers is not None and any(fold(topic) in NOTE_TOPICS for topic in papers.notes)



@quantity("small_area")
def way_area(case: Case, device: Exhauster) -> float:
    """Net area that permanent openings on the way must have, m2; none where the air enters the exhaust's room."""
    return 0.0 if way_to_exhaust(case, device) is None else make_up_area(case, device)


@quantity("temperature")
def winter_design(case: Case, _device: Exhauster) -> float:
    """Winter design temperature outdoors, K."""
    if case.design.site is None:
        raise Missing("site.winter_design")
    return float(case.get(case.design.site, "winter_design"))
