"""What ventilates the whole house: fans and hoods that run all day or by a timer, and outdoor-air ducts."""

from functools import partial

from checker.case import Case, Missing, NotApplicable, gather, path_of, quantity
from checker.design.equipment import Equipment
from checker.design.fans import Fan, Setting
from checker.design.fields import fold
from checker.design.hoods import Hood
from checker.quantities.movers import Device, exhaust_flow, is_continuous, label, supply_flow
from checker.record import Record

NOT_FOR_ROOMS = ("recirculating", "transfer", "booster")
NOT_VENTILATION = ("attic", "whole-house cooling")
ON_DEMAND_NAMES = frozenset({"on demand", "demand", "intermittent"})


class Running(Record):
    """One mover that runs all day or by a timer. Without a setting it is an air handler's outdoor-air duct."""

    device: Device
    setting: Setting | None
    path: str
    name: str
    supplies: bool
    exhausts: bool


def movers(case: Case) -> list[Fan | Hood]:
    """Fans and hoods that may ventilate: those that move air in or out of rooms, not for cooling only."""
    found: list[Fan | Hood] = []
    for fan in case.design.fans.values():
        apart = fan.role in NOT_FOR_ROOMS or fan.kind in NOT_VENTILATION
        if not apart and not case.maybe(fan, "for_cooling_only"):
            found.append(fan)
    found += [hood for hood in case.design.hoods.values() if not case.maybe(hood, "recirculating")]
    return found


def way_of_running(case: Case, setting: Setting) -> str:
    """`continuous`, `cycles`, `on demand`, or "" where the file does not tell."""
    if is_continuous(case, setting):
        return "continuous"
    if case.maybe(setting, "on_time") is not None:
        return "cycles"
    told = case.maybe(setting, "run") is not None or setting.runs_with or fold(setting.name) in ON_DEMAND_NAMES
    return "on demand" if told or starts_with_an_exhaust(case, setting) else ""


def starts_with_an_exhaust(case: Case, setting: Setting) -> bool:
    """Whether its fan is named as the make-up air of an exhaust and is interlocked with it."""
    exhausts: list[Fan | Hood] = [*case.design.hoods.values(), *case.design.fans.values()]
    records = [each.make_up_air for each in exhausts if each.make_up_air is not None]
    return any(record.fan == setting.up.name and bool(case.maybe(record, "interlock")) for record in records)


def is_sure(case: Case, device: Fan | Hood) -> bool:
    """Whether a device is there to ventilate the house: said to, or a supply or recovery unit."""
    if case.maybe(device, "whole_house"):
        return True
    return isinstance(device, Fan) and case.get(device, "role") in ("supply", "recovery")


def parts_of(case: Case, device: Fan | Hood) -> list[Running]:
    """The setting at which a device ventilates, if it does. Raises Missing where that is left open."""
    sure = is_sure(case, device)
    if not device.settings and (sure or path_of(device, "settings") in case.design.tbd):
        raise Missing(path_of(device, "settings"))
    ways = {name: way_of_running(case, device.settings[name]) for name in sorted(device.settings)}
    named = [name for way in ("continuous", "cycles") for name in ways if ways[name] == way][:1]
    if not named:
        unknown = sorted((name for name in ways if not ways[name]), key=partial(slowness, device))
        timed = device.control is not None and device.control.by == "programmable"
        if unknown and (sure or timed):
            raise Missing(path_of(device.settings[unknown[0]], "on_time" if timed else "run"))
        return []
    role = "exhaust" if isinstance(device, Hood) else case.get(device, "role")
    setting = device.settings[named[0]]
    return [
        Running(device, setting, setting.path, label(device, setting), role != "exhaust", role != "supply")
    ]


def slowness(device: Fan | Hood, name: str) -> float:
    """How slow a setting is, to ask about the slowest first."""
    flow = device.settings[name].airflow
    return float("inf") if flow is None else flow


def outdoor_air_ducts(case: Case) -> list[Running]:
    """Outdoor-air ducts on the return side of air handlers."""
    return [
        Running(unit, None, unit.outdoor_air.path, f"outdoor air of {unit.name}", True, False)
        for unit in case.design.equipment.values()
        if unit.outdoor_air is not None
    ]


@quantity()
def running(case: Case, _design: object) -> list[Running]:
    """Everything that moves outdoor air all day or by a timer, local exhaust included, in order of its path."""
    found = [*parts_of_all(case, movers(case)), *outdoor_air_ducts(case)]
    return sorted(found, key=lambda part: part.path)


@quantity()
def whole_house(case: Case, _design: object) -> list[Running]:
    """What counts for the whole house: what is said to, else recovery units and whatever runs all day."""
    able = movers(case)
    named = [device for device in able if case.maybe(device, "whole_house")]
    chosen = named or [device for device in able if device.whole_house is None]
    found = sorted([*parts_of_all(case, chosen), *outdoor_air_ducts(case)], key=lambda part: part.path)
    if not found and not case.stated("fans"):
        raise Missing("fans")
    return found


def needed(case: Case, design: object) -> list[Running]:
    """What counts for the whole house. Raises NotApplicable where nothing does: another rule speaks of that."""
    found = whole_house(case, design)
    if not found:
        raise NotApplicable("no fan is there to ventilate the whole house")
    return found


def parts_of_all(case: Case, devices: list[Fan | Hood]) -> list[Running]:
    """The parts of several devices, or Missing with all that any lacks."""
    return [part for parts in gather([partial(parts_of, case, device) for device in devices]) for part in parts]


@quantity()
def is_ventilated(case: Case, design: object) -> bool:
    """Whether the design shows a fan, hood or duct for the whole house, its flow known or not."""
    able = movers(case)
    if any(device.whole_house or getattr(device, "role", "") == "recovery" for device in able):
        return True
    if any(unit.outdoor_air is not None for unit in case.design.equipment.values()):
        return True
    strategy = case.maybe(case.design.house, "strategy") if case.design.house is not None else None
    if strategy == "none" and not case.stated("fans"):
        return False
    return bool(whole_house(case, design))


def run_share(case: Case, part: Running) -> float:
    """Share of time that a part is sure to run. Raises Missing."""
    if part.setting is not None:
        if is_continuous(case, part.setting):
            return 1.0
        return float(case.get(part.setting, "on_time"))
    assert isinstance(part.device, Equipment) and part.device.outdoor_air is not None
    if case.get(part.device.outdoor_air, "control") == "continuous fan":
        return 1.0
    return float(case.get(part.device.outdoor_air, "fan_share"))


def cycle_hours(case: Case, setting: Setting) -> float:
    """Length of one on-off cycle; an hour where the time on is stated in minutes of each hour."""
    if case.maybe(setting, "cycle") is None and path_of(setting, "on_time") in case.design.hourly:
        return 1.0
    return float(case.get(setting, "cycle"))


def supply_of(case: Case, part: Running) -> float:
    """Outdoor air that a part brings in while it runs, m3/s."""
    if not part.supplies:
        return 0.0
    if part.setting is not None:
        return supply_flow(case, part.setting)
    assert isinstance(part.device, Equipment) and part.device.outdoor_air is not None
    return float(case.get(part.device.outdoor_air, "airflow"))


def exhaust_of(case: Case, part: Running) -> float:
    """Indoor air that a part takes out while it runs, m3/s."""
    return exhaust_flow(case, part.setting) if part.exhausts and part.setting is not None else 0.0
