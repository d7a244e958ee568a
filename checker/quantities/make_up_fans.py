"""Which supply fans make up for an exhaust and do nothing else, and which could but are tied to none."""

from checker.case import Case, Missing, quantity
from checker.design.fans import Fan
from checker.quantities.make_up_air import (
    Exhauster,
    exhausters,
    greatest_exhaust,
    is_for_cooling,
    make_up_fans,
)
from checker.quantities.movers import is_continuous


def is_make_up_fan(case: Case, fan: Fan) -> bool:
    """Whether a supply fan runs only to make up for an exhaust."""
    if not fan.settings or any(is_continuous(case, each) or each.on_time for each in fan.settings.values()):
        return False
    for device in exhausters(case):
        try:
            if any(one.device is fan for one in make_up_fans(case, device)):
                return True
        except Missing:
            continue
    return False


@quantity()
def idle_supply_fan(case: Case, device: Exhauster) -> str:
    """Name of a supply fan large enough to make up for an exhaust, to which nothing ties it; "" where there is none."""
    for fan in case.design.fans.values():
        if fan.role != "supply" or is_for_cooling(case, fan):
            continue
        settings = list(fan.settings.values())
        tied = any(setting.runs_with or is_continuous(case, setting) or setting.on_time for setting in settings)
        flows = [setting.airflow for setting in settings if setting.airflow is not None]
        if not tied and flows and max(flows) >= greatest_exhaust(case, device) / 2.0:
            return str(fan.name)
    return ""
