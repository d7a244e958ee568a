"""Make-up air of hoods and other big exhausts: whether it is required, and how the air comes in."""

from typing import Literal

from checker.case import Case, Missing, NotApplicable, path_of, quantity
from checker.design.fans import Fan, Setting
from checker.design.hoods import Dryer, Hood
from checker.design.make_up_air import MakeUpAir
from checker.quantities.burners import burners_for_make_up_air
from checker.quantities.make_up_record import make_up_opening, record_of, wanted
from checker.quantities.modes import linked
from checker.quantities.movers import Stream, exhaust_flow, stream

Exhauster = Hood | Fan
Way = Literal["none", "fan", "stated", "opening"]
SLACK = 1e-9


def exhausters(case: Case) -> list[Exhauster]:
    """Hoods that blow outdoors, and fans that exhaust, or may, and not only to cool with windows open."""
    hoods: list[Exhauster] = [hood for hood in case.design.hoods.values() if not case.maybe(hood, "recirculating")]
    fans = [fan for fan in case.design.fans.values() if fan.role in (None, "exhaust")]
    return hoods + [fan for fan in fans if not is_for_cooling(case, fan)]


def is_for_cooling(case: Case, fan: Fan) -> bool:
    """Whether a fan only cools the house with windows open."""
    return fan.kind == "whole-house cooling" or bool(case.maybe(fan, "for_cooling_only"))


@quantity("airflow", "flow of its highest setting")
def greatest_exhaust(case: Case, device: Exhauster) -> float:
    """The most that an exhaust can take out, m3/s."""
    settings = case.get(device, "settings")
    if not settings:
        raise Missing(path_of(device, "settings"))
    flows: list[float] = []
    absent: list[str] = []
    for setting in settings.values():
        try:
            flows.append(exhaust_flow(case, setting))
        except Missing as gap:
            absent.extend(gap.paths)
    if absent:
        raise Missing(*absent)
    return max(flows)


@quantity()
def needs_make_up_air(case: Case, device: Exhauster) -> bool:
    """Whether the code in force asks for make-up air for an exhaust."""
    if greatest_exhaust(case, device) <= case.limit("make-up-air-exhaust") * (1 + SLACK):
        return False
    if case.limit("make-up-air-scope") == "hoods":
        return isinstance(device, Hood)
    return bool(burners_for_make_up_air(case, case.design))


def with_make_up_air(case: Case) -> list[Exhauster]:
    """The exhausts for which make-up air is required and shown."""
    found = []
    for device in exhausters(case):
        try:
            needed = needs_make_up_air(case, device)
        except (Missing, NotApplicable):
            continue
        if needed and way_if_known(case, device) != "none":
            found.append(device)
    return found


def way_if_known(case: Case, device: Exhauster) -> Way | None:
    """How its make-up air comes; None where the rules that look closer have to ask."""
    try:
        return way_of(case, device)
    except Missing:
        return None


def with_record(case: Case) -> list[Exhauster]:
    """Those of them whose make-up air is no fan of its own."""
    return [device for device in with_make_up_air(case) if way_if_known(case, device) != "fan"]


@quantity()
def make_up_fans(case: Case, device: Exhauster) -> list[Stream]:
    """Settings of supply fans that bring its make-up air: those that start with it, and the fan that its record names."""
    record = record_of(case, device)
    named = case.maybe(record, "fan") if record is not None else None
    found = []
    for fan in case.design.fans.values():
        if fan.role not in (None, "supply"):
            continue
        for setting in fan.settings.values():
            if fan.name == named or starts_with(case, device, setting):
                case.get(fan, "role")
                found.append(stream(case, setting))
    return found


def starts_with(case: Case, device: Exhauster, setting: Setting) -> bool:
    """Whether a fan's setting starts with an exhaust: by `runs_with`, or by an interlock among the controls."""
    fan: Fan = setting.up
    bare = Stream(fan, setting, setting.path, "", 0.0, 0.0, False)
    own = [Stream(device, each, each.path, "", 0.0, 0.0, False) for each in device.settings.values()]
    return any(linked(one, bare, "runs_with") for one in own) or interlocked(case, device.name, fan.name)


def largest_of_each(fans: list[Stream]) -> float:
    """Flow of fans that run together, each at its highest setting, m3/s."""
    highest: dict[str, float] = {}
    for fan in fans:
        highest[fan.device.path] = max(highest.get(fan.device.path, 0.0), fan.supply)
    return sum(highest.values())


def interlocked(case: Case, one: str, other: str) -> bool:
    """Whether an interlock among the controls switches both things."""
    for control in case.design.controls.values():
        if control.kind is not None and "interlock" in control.kind.lower():
            names = {name.partition(".")[0] for name in control.switches}
            if {one, other} <= names:
                return True
    return False


@quantity()
def way_of(case: Case, device: Exhauster | Dryer) -> Way:
    """How make-up air comes: by a fan that runs with it, by an opening or duct, at a flow that is only stated, or not."""
    if not isinstance(device, Dryer) and make_up_fans(case, device):
        return "fan"
    record, opening = record_of(case, device), make_up_opening(case, device)
    if record is None and opening is None:
        return "none"
    if record is not None and says_nothing(case, record):
        raise Missing(path_of(record, "airflow"))
    if record is None or (opening is not None and case.maybe(opening, "free_area") is not None):
        return "opening"
    has_duct = record.duct is not None and case.maybe(record.duct, "size") is not None
    return "opening" if has_duct or case.maybe(record, "opening_area") is not None else "stated"


def says_nothing(case: Case, record: MakeUpAir) -> bool:
    """Whether all that is said of make-up air is an airflow that is to be decided or cannot be read."""
    facts = [getattr(record, field) for field in type(record).fields]
    return path_of(record, "airflow") in case.design.tbd and not any(fact is not None for fact in facts)


@quantity()
def opens_with_exhaust(case: Case, device: Exhauster | Dryer) -> bool:
    """Whether make-up air starts or opens when the exhaust runs: interlocked, or a gravity damper."""
    if way_of(case, device) == "fan" and not isinstance(device, Dryer):
        settings = [one.setting for one in make_up_fans(case, device) if one.setting is not None]
        return any(starts_with(case, device, each) for each in settings) or bool(wanted(case, device, "interlock"))
    record, opening = record_of(case, device), make_up_opening(case, device)
    if opening is not None and interlocked(case, device.name, opening.name):
        return True
    if (record is None or record.interlock is None) and damper_of(case, device) == "gravity":
        return True
    return bool(wanted(case, device, "interlock"))


@quantity()
def damper_of(case: Case, device: Exhauster | Dryer) -> str:
    """What closes the make-up air when it is idle: gravity, powered or none."""
    record, opening = record_of(case, device), make_up_opening(case, device)
    if way_of(case, device) == "fan" and (record is None or (record.damper is None and record.fan is not None)):
        return damper_of_fan(case, device)
    for told in (record, opening):
        damper = case.maybe(told, "damper") if told is not None else None
        if damper == "yes":
            raise Missing(path_of(told, "damper"))
        if damper is not None:
            return str(damper)
    if record is None and opening is not None:
        raise Missing(path_of(opening, "damper"))
    return str(wanted(case, device, "damper"))


def damper_of_fan(case: Case, device: Exhauster | Dryer) -> str:
    """What closes a make-up fan that nothing else is said about."""
    assert not isinstance(device, Dryer)
    fan = make_up_fans(case, device)[0].device
    assert isinstance(fan, Fan)
    in_duct = fan.duct is not None and case.maybe(fan.duct, "damper")
    if in_duct:
        return "gravity"
    return "powered" if case.get(fan, "damper") else "none"


@quantity("airflow", "stated make-up airflow; else the fans that run with the exhaust")
def make_up_flow(case: Case, device: Exhauster | Dryer) -> float:
    """Make-up airflow of an exhaust at its highest setting, m3/s. Raises Missing where it is not stated."""
    record = record_of(case, device)
    if record is not None and record.airflow is not None:
        return float(case.get(record, "airflow"))
    if not isinstance(device, Dryer) and make_up_fans(case, device):
        return largest_of_each(make_up_fans(case, device))
    if record is None:
        raise Missing(f"{path_of(device, 'make_up_air')}.airflow")
    return float(case.get(record, "airflow"))


@quantity("small_area", "stated; else its outdoor opening's; else its duct's cross-section")
def make_up_area(case: Case, device: Exhauster | Dryer) -> float:
    """Net area by which make-up air comes in, m2. Raises Missing."""
    record, opening = record_of(case, device), make_up_opening(case, device)
    if record is not None and record.opening_area is not None:
        return float(case.get(record, "opening_area"))
    if record is not None and record.duct is not None and case.maybe(record.duct, "size") is not None:
        return float(case.get(record.duct, "size").area)
    if opening is not None and opening.free_area is not None:
        return float(case.get(opening, "free_area"))
    if record is None and opening is not None:
        raise Missing(path_of(opening, "free_area"))
    if not isinstance(device, Dryer) and (record is None or record.fan is not None):
        fans = [one.device for one in make_up_fans(case, device)]
        ducts = [fan.duct for fan in fans if isinstance(fan, Fan) and fan.duct is not None and fan.duct.size is not None]
        if ducts:
            return float(sum(case.get(duct, "size").area for duct in dict.fromkeys(ducts)))
    return float(wanted(case, device, "opening_area"))


@quantity()
def reason_for_make_up_air(case: Case, device: Exhauster) -> str:
    """Why the code asks for it, in words for a message."""
    if not needs_make_up_air(case, device) or case.limit("make-up-air-scope") == "hoods":
        return "which this edition counts whatever burns"
    return "beside " + ", ".join(burner.name for burner in burners_for_make_up_air(case, case.design)[:3])
