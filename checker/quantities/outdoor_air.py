"""Outdoor air in the design hour: leakage by weather, fans, heat recovery, and which rooms it comes into."""

from typing import Literal

from checker.case import Case, Missing, gather, quantity
from checker.design.fans import Fan
from checker.design.fields import Airflow, Share
from checker.design.rooms import Room
from checker.physics.infiltration import combined_outdoor_air, design_infiltration, effective_leakage_area
from checker.quantities.airtightness import leakage_exponent, leakage_flow, stack_height
from checker.quantities.assembly_values import envelope_of
from checker.quantities.duct_surface import sensible_recovery
from checker.quantities.fresh_split import fresh_split, volume_shares
from checker.quantities.moist_air import indoor_summer, indoor_winter, outdoor_summer, winter_design
from checker.quantities.movers import Device
from checker.quantities.whole_house import exhaust_of, run_share, running, supply_of
from checker.record import Record
from checker.units import show

Season = Literal["heating", "cooling"]


class Recovered(Record):
    """Air that passes a recovery unit both ways, m3/s, and what it recovers."""

    fan: Fan
    flow: Airflow
    sensible: Share
    latent: Share


class Supplied(Record):
    """Outdoor air that a fan brings in without recovery, m3/s."""

    device: Device
    flow: Airflow


class OutdoorAir(Record):
    """Outdoor air of the design hour, m3/s: by weather, in all without recovery, by fans, through recovery."""

    infiltration: float
    unrecovered: float
    supplied: tuple[Supplied, ...]
    exhausted: float
    recovered: tuple[Recovered, ...]

    @property
    def by_fans(self) -> float:
        """Outdoor air that fans bring in, m3/s."""
        return sum(each.flow for each in self.supplied) + sum(each.flow for each in self.recovered)

    @property
    def leaking(self) -> float:
        """Outdoor air that comes in through cracks, m3/s."""
        return self.unrecovered - sum(each.flow for each in self.supplied)

    def worksheet_lines(self, system: str) -> list[str]:
        """Leakage by weather, fans, and what they come to together."""
        supplied = sum(each.flow for each in self.supplied)
        lines = [
            f"infiltration by weather {show(self.infiltration, 'airflow', system)}, supplied without recovery "
            f"{show(supplied, 'airflow', system)}, exhausted {show(self.exhausted, 'airflow', system)}: together "
            f"{show(self.unrecovered, 'airflow', system)} (the larger of the fans' difference, and infiltration with half of it)"
        ]
        return lines + [
            f"{each.fan.name}: {show(each.flow, 'airflow', system)} at {each.sensible:.0%} sensible, {each.latent:.0%} "
            "moisture recovery"
            for each in self.recovered
        ]


@quantity("small_area", "Q50 at 4 Pa, coefficient 1", "ASHRAE Handbook - Fundamentals 2021, chapter 16")
def leakage_area(case: Case, design: object) -> float:
    """Effective leakage area of the envelope at 4 Pa, from its airtightness."""
    return effective_leakage_area(leakage_flow(case, design), leakage_exponent(case, design))


def infiltration(case: Case, season: Season) -> float:
    """Infiltration in the design hour, m3/s."""
    design = case.design
    area, height = gather([lambda: leakage_area(case, design), lambda: stack_height(case, design)])
    if season == "heating":
        difference = indoor_winter(case, design).temperature - winter_design(case, design)
    else:
        difference = outdoor_summer(case, design).temperature - indoor_summer(case, design).temperature
    flue = case.maybe(envelope_of(case), "flue_area")
    return design_infiltration(area, height, difference, season, 0.0 if flue is None else float(flue))


@quantity("", "max(U, infiltration + U / 2) + balanced air", "ASHRAE Handbook - Fundamentals 2021, chapter 17, equations 8 to 14")
def heating_air(case: Case, _design: object) -> OutdoorAir:
    """Outdoor air at winter design. Raises Missing for airtightness, height or fans that are not told."""
    return outdoor_air(case, "heating")


@quantity("", "max(U, infiltration + U / 2) + balanced air", "ASHRAE Handbook - Fundamentals 2021, chapter 17, equations 8 to 14")
def cooling_air(case: Case, _design: object) -> OutdoorAir:
    """Outdoor air at summer design."""
    return outdoor_air(case, "cooling")


def outdoor_air(case: Case, season: Season) -> OutdoorAir:
    """Outdoor air of the design hour: leakage, and everything that runs all day or by a timer."""
    house = case.design.house
    if not case.stated("fans") and (house is None or house.strategy != "none"):
        raise Missing("fans")
    leak = infiltration(case, season)
    supplied: list[Supplied] = []
    recovered: list[Recovered] = []
    exhausted = 0.0
    for part in running(case, case.design):
        share = run_share(case, part)
        supply, exhaust = share * supply_of(case, part), share * exhaust_of(case, part)
        if isinstance(part.device, Fan) and part.device.role == "recovery":
            both = min(supply, exhaust)
            moisture = None if part.device.recovery is None else case.maybe(part.device.recovery, "moisture")
            sensible = sensible_recovery(case, part.device)
            recovered.append(Recovered(part.device, both, sensible, float(moisture or 0.0)))
            supply, exhaust = supply - both, exhaust - both
        if supply > 0:
            supplied.append(Supplied(part.device, supply))
        exhausted += exhaust
    total = combined_outdoor_air(leak, sum(each.flow for each in supplied), exhausted)
    return OutdoorAir(leak, total, tuple(supplied), exhausted, tuple(recovered))


def room_airs(case: Case, air: OutdoorAir, room: Room) -> tuple[float, list[tuple[Recovered, float]]]:
    """Outdoor air of a room without recovery, and through each recovery unit, m3/s."""
    plain = air.leaking * volume_shares(case, case.design)[room.name]
    plain += sum(each.flow * fresh_split(case, each.device).shares.get(room.name, 0.0) for each in air.supplied)
    return plain, [(each, each.flow * fresh_split(case, each.fan).shares.get(room.name, 0.0)) for each in air.recovered]


def assumed_splits(case: Case, devices: list[Device]) -> tuple[str, ...]:
    """What is assumed of how devices split their outdoor air between the rooms."""
    return tuple(found.assumed for found in (fresh_split(case, device) for device in devices) if found.assumed)
