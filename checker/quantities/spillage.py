"""What the exhausts of a house do to the draft of what burns in it."""


from checker.case import Case, Missing, NotApplicable, quantity
from checker.design.combustion import Burner
from checker.design.fields import Airflow
from checker.design.fields import HousePressure as PressureDifference
from checker.design.hoods import Dryer
from checker.quantities.airtightness import house_of
from checker.quantities.burners import (
    Sensitive,
    atmospheric_burners,
    draft,
    most_sensitive,
    most_sensitive_known,
)
from checker.quantities.combined_exhaust import exhaust_of_rooms
from checker.quantities.house_pressure import HousePressure, winter_stack
from checker.quantities.known_exhaust import glance, worst_pressure_at_least
from checker.quantities.make_up_air import exhausters, greatest_exhaust, make_up_flow, way_of
from checker.quantities.movers import dryer_exhaust
from checker.record import Record

SLACK = 1e-9
BURNER_FACTS = ("kind", "draft", "location", "inside_air_barrier", "room_sealed")
EXHAUST_SECTIONS = ("hoods", "dryers", "fans")


class Largest(Record):
    """The two largest exhausts, by name, and what they take out together beyond their make-up air, m3/s."""

    names: str
    net: Airflow


class Spillage(Record):
    """The most sensitive burner against the worst case: make-up flow that would hold its limit m3/s, winter stack Pa."""

    sensitive: Sensitive
    pressure: HousePressure
    make_up: Airflow
    stack: PressureDifference | None

    @property
    def spills(self) -> bool:
        """Whether the house is drawn lower than the burner bears."""
        return not self.pressure.within(self.sensitive.limit)


@quantity()
def two_largest(case: Case, design: object) -> Largest:
    """The two largest exhausts and their net flow; fans for cooling with windows open do not count."""
    found = [(one.net, one.net, one.label) for one in exhaust_of_rooms(case)]
    absent: list[str] = []
    for device in (*exhausters(case), *case.design.dryers.values()):
        try:
            flow = dryer_exhaust(case, device) if isinstance(device, Dryer) else greatest_exhaust(case, device)
            made_up = make_up_flow(case, device) if way_of(case, device) != "none" else 0.0
        except Missing as gap:
            absent.extend(gap.paths)
            continue
        found.append((flow, max(0.0, flow - made_up), device.name))
    if absent:
        raise Missing(*absent)
    largest = sorted(found, key=lambda one: (-one[0], one[2]))[:2]
    if not largest or largest[0][0] <= 0.0:
        raise NotApplicable("nothing takes air out of the house")
    return Largest(" and ".join(name for _, _, name in largest), sum(net for _, net, _ in largest))


@quantity("airflow_per_area", "net flow of the two largest exhausts / floor area")
def two_largest_per_floor(case: Case, design: object) -> float:
    """Net flow of the two largest exhausts for each area of floor. A pass asks that every section with exhausts is stated."""
    found = two_largest(case, design).net / floor_area(case, design)
    absent = [section for section in EXHAUST_SECTIONS if not case.stated(section)]
    if absent and found <= case.limit("two-largest-exhausts-open-fire") * (1 + SLACK):
        raise Missing(*absent)
    return found


@quantity()
def open_fires(case: Case, design: object) -> list[Burner]:
    """Open fireplaces and stoves that draw room air up a chimney."""
    return [burner for burner in atmospheric_burners(case, design) if draft(case, burner) == "open"]


@quantity()
def names_of_open_fires(case: Case, design: object) -> str:
    """Names of the open fires."""
    return ", ".join(burner.name for burner in open_fires(case, design))


@quantity("area")
def floor_area(case: Case, _design: object) -> float:
    """Conditioned floor area, m2."""
    return float(case.get(house_of(case), "floor_area"))


@quantity()
def fires(case: Case, design: object) -> str:
    """Names of the burners that vent by buoyancy alone."""
    return ", ".join(burner.name for burner in atmospheric_burners(case, design))


@quantity()
def spillage(case: Case, design: object) -> Spillage:
    """The worst case for the most sensitive burner. A pass asks that every section with exhausts is stated."""
    unknown: Missing | None = None
    if len(case.design.combustion) > 1:  # one of them that spills is enough, whatever the others are
        for burner in case.design.combustion.values():
            glance(case, burner, *BURNER_FACTS)
    try:
        sensitive = most_sensitive(case, design)
    except Missing as gap:
        unknown, sensitive = gap, most_sensitive_known(case, design)
        if sensitive is None:
            raise
    if sensitive is None:
        raise NotApplicable("no burner inside the air barrier has a vent that fans could upset")
    pressure = worst_pressure_at_least(case, design, sensitive.limit)
    make_up = max(0.0, pressure.combination.net - pressure.inflow_at(sensitive.limit))
    found = Spillage(sensitive, pressure, make_up, stack_if_known(case, design))
    absent = [section for section in EXHAUST_SECTIONS if not case.stated(section)]
    if unknown is not None and not found.spills:
        raise unknown
    if absent and not found.spills:
        raise Missing(*absent)
    return found


def stack_if_known(case: Case, design: object) -> float | None:
    """Winter buoyancy at the lowest floor, where the height of the house and the winter are known."""
    try:
        return winter_stack(case, design)
    except Missing:
        return None
