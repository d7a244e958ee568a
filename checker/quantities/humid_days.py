"""Mild humid days: what dries the house while the sun asks for little cooling."""

from itertools import pairwise

from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.design import Design
from checker.design.equipment import Equipment
from checker.design.fields import HeatRate, Share
from checker.physics import moisture
from checker.physics.cooling_load import internal_latent
from checker.quantities.airtightness import house_of
from checker.quantities.climate import zone
from checker.quantities.equipment import all_cooling
from checker.quantities.latent_balance import (
    dehumidifiers,
    drying_of,
    latent_capacity,
    latent_of_people,
    latent_of_ventilation,
)
from checker.quantities.loads import block_cooling_sensible
from checker.quantities.moist_air import air_density, indoor_summer, outdoor_summer, people, state, worked_out
from checker.quantities.moisture_balance import outdoor_air, returned
from checker.quantities.sizing import SENSIBLE_AT_LEAST, cooling_of, full_of, least_of, sensible_of
from checker.record import Record


class Dried(Record):
    """Latent heat that is taken out, W: at least and at most; share of time the cooling runs; paths that would tell."""

    least: HeatRate
    most: HeatRate
    run_share: Share
    asked: tuple[str, ...]


def is_humid(case: Case, node: object) -> bool:
    """Whether summers are humid: by the climate zone with its letter, else by the dew point of the design day."""
    try:
        here = zone(case, node)
    except Missing as gap:
        if case.design.tbd & set(gap.paths):
            raise
        here = ""
    except CannotJudge:
        here = ""
    if len(here) == 2:
        return here in case.limit("humid-summer-zones")
    return outdoor_summer(case, node).dew_point >= float(case.limit("humid-dew-point"))


def is_short_at_design(case: Case, design: Design) -> bool:
    """Whether cooling and dehumidifiers are known to be too small on the design day already."""
    try:
        load = latent_of_ventilation(case, design) + latent_of_people(case, design)
        return latent_capacity(case, design) < load * (1 - 1e-9)
    except (Missing, CannotJudge, NotApplicable):
        return False


def cooling_units(case: Case) -> list[Equipment]:
    """Units that cool rooms by a coil."""
    return [unit for group in all_cooling(case) for unit in group.units]


@quantity("heat_rate", "outdoor air x (outdoor - indoor humidity ratio) + people and appliances")
def moisture_load(case: Case, design: Design) -> float:
    """Latent load of fans and people at the most indoor humidity that is good, air leakage left out."""
    return latent_load(case, design, returned(case, design).least)


def latent_load(case: Case, design: Design, kept_out: float) -> float:
    """The same with a flow in m3/s that comes in as dry as the room air."""
    ceiling = state(case, indoor_summer(case, design).temperature, float(case.limit("summer-humidity-most")))
    outdoor, exchange = outdoor_summer(case, design), (outdoor_air(case, design) - kept_out) * air_density(case, design)
    brought = worked_out(lambda: moisture.latent_load(exchange, outdoor.humidity_ratio, ceiling.humidity_ratio))
    area = float(case.get(house_of(case), "floor_area"))
    return max(0.0, brought) + internal_latent(area, people(case, design))


def kept(case: Case, run_share: float, blows_on: bool) -> float:
    """Share of the latent capacity that is left when cooling runs a share of the time; linear between table rows."""
    rows: list[list[float]] = case.limit("latent-kept-blower-on" if blows_on else "latent-kept-blower-cycling")
    if run_share <= rows[0][0]:
        return rows[0][1]
    for (low, at_low), (high, at_high) in pairwise(rows):
        if run_share <= high:
            return at_low + (at_high - at_low) * (run_share - low) / (high - low)
    return rows[-1][1]


def latent_shares(case: Case, unit: Equipment, total: float) -> tuple[float, float, tuple[str, ...]]:
    """Latent share of the cooling capacity of a unit at least and at most, and what would tell."""
    sensible = sensible_of(case, unit)
    if sensible is None:
        least = float(case.limit("least-latent-share"))
        return least, 1.0 - SENSIBLE_AT_LEAST, (path_of(cooling_of(case, unit), "sensible"),)
    if total <= 0.0:
        raise CannotJudge(f"{unit.name} is said to have no cooling capacity")
    share = min(max(0.0, 1.0 - sensible / total), 0.95)
    return share, share, ()


@quantity("heat_rate", "share of the sensible load of the design hour")
def mild_sensible_load(case: Case, design: Design) -> float:
    """Sensible load on a mild humid day."""
    return float(case.limit("mild-day-sensible-share")) * block_cooling_sensible(case, design)


@quantity("", "sensible load x latent / sensible capacity x what short cycles leave of it; and dehumidifiers")
def dried(case: Case, design: Design) -> Dried:
    """Latent heat that cooling and dehumidifiers take out on a mild humid day."""
    units = cooling_units(case)
    totals = {unit.path: full_of(case, cooling_of(case, unit)) for unit in units}
    everything = sum(totals.values())
    if everything <= 0.0:
        raise CannotJudge("the cooling is said to have no capacity")
    load = mild_sensible_load(case, design)
    least = most = slowest = 0.0
    asked: list[str] = []
    for unit in units:
        total = totals[unit.path]
        low, high, open_ = latent_shares(case, unit, total)
        turned_down, part = least_of(case, unit, cooling_of(case, unit)), load * total / everything
        blows_on = unit.outdoor_air is not None and unit.outdoor_air.control == "continuous fan"
        slow, fast = (total if turned_down is None else turned_down), (0.0 if turned_down is None else turned_down)
        for share, running, better in ((low, slow, False), (high, fast, True)):
            sensible = running * (1.0 - share)
            run_share = 1.0 if sensible <= part else part / sensible
            removed = part * share / (1.0 - share) * kept(case, run_share, blows_on)
            least, most = (least, most + removed) if better else (least + removed, most)
        slowest += slow * (1.0 - low)
        asked += [*open_, *(() if turned_down is not None else (path_of(cooling_of(case, unit), "least"),))]
    for unit in dehumidifiers(case):
        found = drying_of(case, unit)
        least, most = least + found.sure, (float("inf") if found.lacking else most + found.sure)
        asked += found.lacking
    return Dried(least, most, min(1.0, load / slowest) if slowest > 0.0 else 1.0, tuple(asked))


@quantity("", "what is taken out at most where even that is too little, else at least")
def settled(case: Case, design: Design) -> Dried:
    """The same once it is certain whether it is enough. Raises Missing for what decides."""
    found, load, cores = dried(case, design), moisture_load(case, design), returned(case, design)
    if found.least >= load * (1 - 1e-9):
        return found
    with_cores = latent_load(case, design, cores.most) if cores.lacking else load
    if found.most >= with_cores * (1 - 1e-9):
        raise Missing(*found.asked, *cores.lacking)
    return found
