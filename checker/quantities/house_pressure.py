"""Pressure of the house against outdoors under its fans, by its leakage and its passive openings.

One zone; fans keep their stated flow; openings pass air of the site's elevation, the leakage is as tested.
Source: mass balance; ASHRAE Handbook - Fundamentals 2021, chapter 16.
"""

from math import pi, sqrt

from checker.case import Case, Missing, path_of, quantity
from checker.design.airway import Airway
from checker.design.hoods import Dryer
from checker.design.make_up_air import MakeUpAir
from checker.design.openings import Opening
from checker.physics.house_pressure import (
    HIGHEST_PRESSURE,
    Path,
    envelope,
    makeup_duct,
    passive_opening,
    stack_pressure,
)
from checker.physics.house_pressure import house_pressure as balanced_pressure
from checker.physics.makeup_opening import ELBOW_LOSS_COEFFICIENT, ORIFICE_COEFFICIENT
from checker.physics.validity import OutOfRange
from checker.quantities.airtightness import house_of, leakage_exponent, leakage_flow
from checker.quantities.combined_exhaust import (
    Combination,
    largest_alone,
    most_pushed,
    passes_by_damper,
    running_all_day,
    two_largest_together,
)
from checker.quantities.make_up_air import (
    Exhauster,
    exhausters,
    make_up_area,
    make_up_flow,
    opens_with_exhaust,
    way_of,
)
from checker.quantities.make_up_record import make_up_opening, record_of, wanted
from checker.quantities.moist_air import air_density
from checker.quantities.moist_air import pressure as barometric
from checker.record import Record

INDOOR_WINTER = 294.26
"""K, 70 degF, where the design does not say (common practice)."""


SLACK = 1e-9


class HousePressure(Record):
    """House pressure in Pa, below outdoors negative; where `beyond` is set it lies further out than that."""

    value: float
    beyond: bool
    combination: Combination
    paths: tuple[Path, ...]

    def inflow_at(self, drawn_down: float) -> float:
        """Flow into the house in m3/s where it stands this many Pa below outdoors."""
        return sum(path.flow(drawn_down) for path in self.paths)

    def within(self, limit: float) -> bool:
        """Whether the house stays within this many Pa of outdoors, by the flows at that pressure."""
        ways = [path for path in self.paths if self.combination.net > 0 or not path.one_way]
        return abs(self.combination.net) <= sum(path.flow(limit) for path in ways) * (1 + SLACK)

    def worksheet_lines(self, system: str) -> list[str]:
        """The balance step by step, in trade or metric units."""
        from checker.quantities.pressure_sheet import pressure_lines

        return pressure_lines(self, system)


def pressure_under(case: Case, node: object, combination: Combination) -> HousePressure:
    """The house pressure under a combination of settings. Raises Missing."""
    paths = (envelope(leakage_flow(case, node), leakage_exponent(case, node)), *passive_paths(case, combination))
    try:
        value, beyond = balanced_pressure(combination.net, paths), False
    except OutOfRange:
        value, beyond = -HIGHEST_PRESSURE if combination.net > 0 else HIGHEST_PRESSURE, True
    return HousePressure(value, beyond, combination, paths)


@quantity()
def pressure_by_two(case: Case, design: object) -> HousePressure:
    """With the two largest exhausts on demand and what runs all day."""
    return pressure_under(case, design, two_largest_together(case, design))


@quantity()
def pressure_by_largest(case: Case, design: object) -> HousePressure:
    """With the largest exhaust on demand and what runs all day."""
    return pressure_under(case, design, largest_alone(case, design))


@quantity()
def pressure_pushed(case: Case, design: object) -> HousePressure:
    """With the settings that push the house up most."""
    return pressure_under(case, design, most_pushed(case, design))


@quantity()
def pressure_all_day(case: Case, design: object) -> HousePressure:
    """With what runs all the time."""
    return pressure_under(case, design, running_all_day(case, design))


@quantity()
def farthest_from_balance(case: Case, design: object) -> HousePressure:
    """With the two largest exhausts on demand, or with what pushes the house up most: the further from outdoors."""
    both = (pressure_by_two(case, design), pressure_pushed(case, design))
    return max(both, key=lambda one: (abs(one.value), abs(one.combination.net)))


def passive_paths(case: Case, combination: Combination) -> list[Path]:
    """Make-up openings and ducts that are open under a combination, and intakes that nothing drives."""
    running = {one.device for one in combination.running}
    devices: list[Exhauster | Dryer] = [*exhausters(case), *case.design.dryers.values()]
    found = []
    for device in devices:
        path = make_up_path(case, device, device.path in running)
        found += [path] if path is not None else []
    return found + [idle_intake(case, opening) for opening in idle_intakes(case, devices)]


def make_up_path(case: Case, device: Exhauster | Dryer, running: bool) -> Path | None:
    """The opening or duct of a device's make-up air, where it is open; None where a fan or a stated flow counts."""
    way = way_of(case, device)
    if way in ("none", "fan"):
        return None
    record = record_of(case, device)
    damper = record.damper if record is not None else None
    opening = make_up_opening(case, device)
    if damper is None and opening is not None:
        damper = opening.damper
    if damper not in ("gravity", "none") and not (opens_with_exhaust(case, device) and running):
        return None
    if way == "opening":
        return path_of_opening(case, device, record, one_way=damper == "gravity")
    if not passes_by_damper(device):
        return None
    flow, rated = make_up_flow(case, device), float(wanted(case, device, "damper_rated_at"))
    if rated <= 0.0:
        raise Missing(f"{path_of(device, 'make_up_air')}.damper_rated_at")
    return Path(lambda pressure: flow * sqrt(pressure / rated), one_way=True)


def path_of_opening(case: Case, device: Exhauster | Dryer, record: MakeUpAir | None, one_way: bool) -> Path:
    """Path of a make-up opening, or of its duct where that is the narrower of the two."""
    area = make_up_area(case, device)
    duct = record.duct if record is not None else None
    if duct is None or duct.size is None or area < duct.size.area * (1 - SLACK):
        return passive_opening(area, one_way=one_way, density=air_density(case, case.design))
    return duct_path(case, duct, one_way)


def duct_path(case: Case, duct: Airway, one_way: bool) -> Path:
    """Path of a duct with ends that lose what a plain opening of its size would, elbows and friction beside."""
    diameter = sqrt(4.0 * case.get(duct, "size").area / pi)
    length, losses, density = float(case.get(duct, "length")), local_losses(case, duct), air_density(case, case.design)
    return makeup_duct(diameter, length, losses, one_way=one_way, density=density)


def local_losses(case: Case, duct: Airway) -> float:
    """Loss coefficients of a make-up duct's two ends and elbows together."""
    elbows = sum(count for piece, count in case.maybe(duct, "pieces").items() if piece.startswith("elbow-90"))
    return float(1.0 / ORIFICE_COEFFICIENT**2 + elbows * ELBOW_LOSS_COEFFICIENT)


def idle_intakes(case: Case, devices: list[Exhauster | Dryer]) -> list[Opening]:
    """Intakes with a known free area that no fan draws by and that no make-up record counts already."""
    driven: set[str | None] = {name for fan in case.design.fans.values() for name in fan.from_}
    driven |= {unit.outdoor_air.opening for unit in case.design.equipment.values() if unit.outdoor_air is not None}
    driven |= {run.from_ for system in case.design.ducts.values() for run in system.runs.values()}
    counted = {opening.name for device in devices if (opening := make_up_opening(case, device)) is not None}
    return [
        opening
        for opening in case.design.openings.values()
        if opening.kind in ("make-up air intake", "outdoor air intake")
        and opening.name not in driven | counted
        and not opening.serves
        and opening.free_area
        and opening.damper in ("none", "gravity")
    ]


def idle_intake(case: Case, opening: Opening) -> Path:
    """Path of such an intake."""
    area, one_way = float(case.maybe(opening, "free_area")), case.maybe(opening, "damper") == "gravity"
    return passive_opening(area, one_way=one_way, density=air_density(case, case.design))


@quantity("house_pressure", "half of 0.0342 p h (1/To - 1/Ti)", "ASHRAE Handbook - Fundamentals 2021, chapter 16")
def winter_stack(case: Case, _node: object) -> float:
    """How far buoyancy draws the lowest floor down on the winter design day, Pa, with the neutral level at mid height."""
    house, site = house_of(case), case.design.site
    if site is None:
        raise Missing("site.winter_design")
    height, outdoors = case.maybe(house, "height"), case.maybe(site, "winter_design")
    if height is None or outdoors is None:
        raise Missing("house.height", "site.winter_design")
    stated = case.maybe(house.indoor, "winter_temperature") if house.indoor is not None else None
    return max(0.0, stack_pressure(height, stated or INDOOR_WINTER, outdoors, barometric(case, case.design)) / 2.0)
