"""What moves air across the envelope: fans, hoods, dryers and outdoor-air ducts, at each of their settings."""


from checker.case import Case, Missing, quantity
from checker.design.equipment import Equipment
from checker.design.fans import Fan, Setting
from checker.design.fields import fold
from checker.design.hoods import Dryer, Hood
from checker.record import Record

Device = Fan | Hood | Dryer | Equipment
CONTINUOUS_NAMES = frozenset({"always on", "always", "all day", "24/7", "24 h"})


class Stream(Record):
    """One device at one setting: outdoor air brought in and indoor air taken out, m3/s."""

    device: Device
    setting: Setting | None
    path: str
    label: str
    supply: float
    exhaust: float
    continuous: bool

    def worksheet_lines(self, system: str) -> list[str]:
        """The stream on one line, in trade or metric units."""
        from checker.quantities.pressure_sheet import stream_line

        return [stream_line(self, system)]


def device_of(setting: Setting) -> Device:
    """The fan, hood or equipment that a setting belongs to."""
    device: Device = setting.up
    return device


def label(device: Device, setting: Setting | None) -> str:
    """How a device at a setting is called in messages."""
    return device.name if setting is None else f"{device.name} at {setting.name}"


@quantity()
def is_continuous(case: Case, setting: Setting) -> bool:
    """Whether a setting runs all the time: its `run` says so, its name does, or nothing can switch it."""
    run = case.maybe(setting, "run")
    if run is not None:
        return bool(run == "continuous")
    if case.maybe(setting, "on_time") is not None:
        return False
    device = device_of(setting)
    control = None if isinstance(device, Dryer) or len(device.settings) != 1 else device.control
    if control is not None and case.maybe(control, "by") == "always on":
        return True
    name = fold(setting.name.replace("(", " ").replace(")", " "))
    words = {*name.split()}
    return name in CONTINUOUS_NAMES or ("non" not in words and not words.isdisjoint(("continuous", "trickle")))


@quantity("airflow", source="the measured flow wins once the house is built, else the designed one")
def airflow(case: Case, setting: Setting) -> float:
    """Airflow of a setting."""
    return measured_or_designed(case, setting, "airflow")


def measured_or_designed(case: Case, setting: Setting, field: str) -> float:
    """A flow of a setting: as measured where the stage is as-built and it was measured, else as designed."""
    project = case.design.project
    if project is not None and project.stage == "as-built" and setting.measured is not None:
        measured = case.maybe(setting.measured, field)
        if measured is not None:
            return float(measured)
    return float(case.get(setting, field))


def side_flow(case: Case, setting: Setting, field: str) -> float:
    """A side of a recovery unit: as stated for it, else the one airflow that stands for both."""
    at = f"{setting.path}.{field}"
    measured = setting.measured is not None and getattr(setting.measured, field) is not None
    unsaid = setting.airflow is None and f"{setting.path}.airflow" not in case.design.tbd
    one_side = unsaid and (setting.supply_airflow, setting.exhaust_airflow) != (None, None)
    if measured or getattr(setting, field) is not None or at in case.design.tbd or one_side:
        return measured_or_designed(case, setting, field)
    return airflow(case, setting)


@quantity("airflow")
def supply_flow(case: Case, setting: Setting) -> float:
    """Outdoor air that the device brings in at a setting."""
    device = device_of(setting)
    if isinstance(device, Fan):
        role = case.get(device, "role")
        if role == "supply":
            return airflow(case, setting)
        if role == "recovery":
            return side_flow(case, setting, "supply_airflow")
    return 0.0


@quantity("airflow")
def exhaust_flow(case: Case, setting: Setting) -> float:
    """Indoor air that the device takes out at a setting."""
    device = device_of(setting)
    if isinstance(device, Hood):
        return 0.0 if case.maybe(device, "recirculating") else airflow(case, setting)
    if isinstance(device, Fan):
        role = case.get(device, "role")
        if role == "exhaust":
            return airflow(case, setting)
        if role == "recovery":
            return side_flow(case, setting, "exhaust_airflow")
    return 0.0


@quantity("airflow")
def dryer_exhaust(case: Case, dryer: Dryer) -> float:
    """Exhaust airflow of a dryer; none from one that condenses."""
    if case.maybe(dryer, "kind") in ("condensing", "heat pump"):
        return 0.0
    return float(case.get(dryer, "airflow"))


def stream(case: Case, setting: Setting) -> Stream:
    """A device at a setting. Raises Missing where a flow or role is not stated."""
    device = device_of(setting)
    return Stream(
        device, setting, setting.path, label(device, setting),
        supply_flow(case, setting), exhaust_flow(case, setting), is_continuous(case, setting),
    )  # fmt: skip


@quantity()
def streams(case: Case, _design: object) -> list[Stream]:
    """Every device at every setting, dryers and outdoor-air ducts included."""
    found, absent = known_streams(case)
    if absent:
        raise Missing(*absent)
    return found


def streams_but_dryers(case: Case) -> list[Stream]:
    """Every device at every setting, where need be without the dryers of unstated airflow, which never run all day."""
    found, absent = known_streams(case)
    if set(absent) - {f"{dryer.path}.airflow" for dryer in case.design.dryers.values()}:
        raise Missing(*absent)
    return found


def known_streams(case: Case) -> tuple[list[Stream], list[str]]:
    """The devices at the settings of which enough is stated, and what is absent of the others."""
    found: list[Stream] = []
    absent: list[str] = []
    movers: list[Fan | Hood] = [*case.design.fans.values(), *case.design.hoods.values()]
    for mover in movers:
        if isinstance(mover, Fan) and mover.role in ("recirculating", "transfer", "booster"):
            continue
        if isinstance(mover, Hood) and mover.recirculating:
            continue
        if not mover.settings:
            absent.append(f"{mover.path}.settings")
        for setting in mover.settings.values():
            try:
                found.append(stream(case, setting))
            except Missing as gap:
                absent.extend(gap.paths)
    for dryer in case.design.dryers.values():
        try:
            flow = dryer_exhaust(case, dryer)
        except Missing as gap:
            absent.extend(gap.paths)
            continue
        if flow > 0:
            found.append(Stream(dryer, None, dryer.path, label(dryer, None), 0.0, flow, False))
    for unit in case.design.equipment.values():
        if unit.outdoor_air is not None:
            try:
                flow = float(case.get(unit.outdoor_air, "airflow"))
            except Missing as gap:
                absent.extend(gap.paths)
                continue
            steady = unit.outdoor_air.control == "continuous fan"
            found.append(
                Stream(unit, None, unit.outdoor_air.path, f"outdoor air of {unit.name}", flow, 0.0, steady)
            )
    return found, absent
