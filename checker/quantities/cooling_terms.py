"""The terms of the sensible and latent cooling load, by the residential load factor method."""

from collections.abc import Callable
from functools import partial
from typing import Any

from checker.case import CannotJudge, Case, Missing, gather, quantity
from checker.design.envelope import POINTS, BelowGradeWall, Fenestration, OutsideDoor, Slab, Surface
from checker.physics.air import latent_heat_factor, sensible_heat_factor
from checker.physics.cooling_load import (
    MOST_GLASS,
    MOST_GLASS_OF_A_FACADE,
    ROOF_ABSORPTANCE,
    glass_share,
    opaque_factor,
    opaque_gain,
    require_method_applies,
    window_gain,
)
from checker.physics.ground import covered_slab_gain
from checker.physics.solar import (
    SCREEN,
    exterior_irradiance,
    peak_irradiance,
)
from checker.physics.validity import OutOfRange
from checker.quantities.airtightness import house_of
from checker.quantities.assembly_values import UValueOf, assembly_of, envelope_of, surface_kind, surface_u
from checker.quantities.default_glass import assumption, door_u
from checker.quantities.envelope_parts import (
    Part,
    as_warm,
    defaulted,
    glass_by_facade,
    is_inside,
    net_area,
    of_window,
    parts,
    require_there,
    window_area,
)
from checker.quantities.load_records import Factor, Term
from checker.quantities.moist_air import indoor_summer, outdoor_summer, pressure
from checker.quantities.outdoor_air import OutdoorAir, Recovered, assumed_splits
from checker.quantities.sun_on_windows import in_shadow, inside_shade, peak_factor
from checker.quantities.ventilation_standard import site_of

CHAPTER = "ASHRAE Handbook - Fundamentals 2021, chapter 17"
OPAQUE = "walls, ceilings and floors"
OUTDOORS = (*POINTS, "outdoors")  # a wall of no stated compass point may have the sun on it
WORST_ROOF = "dark shingles"


def summer_difference(case: Case) -> float:
    """Outdoors less indoors at summer design, K."""
    return outdoor_summer(case, case.design).temperature - indoor_summer(case, case.design).temperature


def daily_range(case: Case) -> float:
    """Mean daily range, K. Raises Missing: the method rests on it."""
    summer = site_of(case).summer_design
    if summer is None:
        raise Missing("site.summer_design.dry_bulb", "site.summer_design.daily_range")
    return float(case.get(summer, "daily_range"))


@quantity("", "latitude, elevation, design day, glass and mass within Table 1", CHAPTER)
def method_applies(case: Case, design: Any) -> bool:
    """True where the method covers the house. CannotJudge with the reason where it does not."""
    site, area = site_of(case), case.get(house_of(case), "floor_area")
    routes: list[Callable[[], Any]] = [
        lambda: float(case.get(site, "latitude")), lambda: daily_range(case), lambda: glass_by_facade(case, design),
    ]  # fmt: skip
    latitude, day, glass = gather(routes)
    elevation = float(case.maybe(site, "elevation") or 0.0)
    outdoor, indoor = outdoor_summer(case, design).temperature, indoor_summer(case, design).temperature
    try:
        require_method_applies(latitude, elevation, outdoor, indoor, day)
    except OutOfRange as problem:
        raise CannotJudge(str(problem)) from None
    share = glass_share(glass, float(area))
    if share.total > MOST_GLASS:
        raise CannotJudge(f"windows are {share.total:.0%} of the floor area: the load factors hold to 30 %")
    if share.facade > MOST_GLASS_OF_A_FACADE:
        raise CannotJudge(f"windows facing {share.faces} are {share.facade:.0%} of the floor area: the load factors hold to 15 %")
    found = parts(case, design)
    # the strip of a foundation above grade is small, and swings less than the factors say
    low = {part.room for part in found if isinstance(part, BelowGradeWall)}
    exposed = [part for part in found if isinstance(part, Surface) and part.faces in OUTDOORS and part.room not in low]
    for part in exposed:
        if assembly_of(case, part).framing == "masonry":
            raise CannotJudge(f"{part.name} is of masonry: the load factors are for light construction")
    return True


@quantity("", "opaque: A U (OFt dT + OFb + OFr DR); windows: A [U (dT - 0.46 DR) + PXI SHGC IAC FF]", CHAPTER)
def cooling_term(case: Case, part: Part) -> Term:
    """What a part of the envelope brings in at summer design, sensible."""
    if isinstance(part, Surface):
        return surface_gain(case, part, partial(net_area, case, part))
    if isinstance(part, Fenestration):
        return sun_and_heat(case, part)
    if isinstance(part, OutsideDoor):
        routes = [partial(door_u, case, part), partial(case.get, part, "area"), partial(case.get, part, "faces")]
        value, area, faces = gather(routes)
        what, u = f"door {part.name}", UValueOf(float(value), "as stated", assumption(part, "u"))
        shaded = case.maybe(part, "shaded") or faces not in OUTDOORS
        term = sheltered(case, what, str(faces), u, area, "doors")
        return term or opaque(case, what, "shaded wall" if shaded else "sunlit wall", u.value, area, u.assumed, group="doors")
    if isinstance(part, BelowGradeWall) or case.maybe(part, "depth"):
        assumed: tuple[str, ...] = ("no gain from walls and floors in the ground",)
        return Term(f"in the ground {part.name}", 0.0, (), assumed, CHAPTER, group="ground")
    assert isinstance(part, Slab)
    area, covering = float(case.get(part, "area")), case.maybe(part, "covering")
    flux = covered_slab_gain(float(covering)) if covering is not None else 0.0
    assumed = () if covering is not None else ("slab without a stated covering: no credit for its coolness",)
    factors = (Factor(area, "area"), Factor(flux, "flux"))
    return Term(f"slab {part.name}", area * flux, factors, assumed, CHAPTER, group="ground")


def opaque(case: Case, what: str, kind: str, u: float, area: float, assumed: tuple[str, ...] = (), memory: bool = False,
           absorptance: float = 0.92, group: str = OPAQUE) -> Term:  # fmt: skip
    """Gain through an opaque part by its factors."""
    factor = opaque_factor(kind, absorptance)
    flux = opaque_gain(u, factor, summer_difference(case), daily_range(case))
    return Term(f"{what} ({kind}, U {u:.3f} W/m2 K)", area * flux, (Factor(area, "area"), Factor(flux, "flux")),
                assumed, CHAPTER, memory, group)  # fmt: skip


def surface_gain(case: Case, part: Surface, net: Callable[[], float]) -> Term:
    """Gain through a wall, ceiling, roof or floor of a net area."""
    routes: list[Callable[[], Any]] = [
        partial(surface_u, case, part), net, partial(case.get, part, "faces"),
        partial(surface_kind, case, part),
    ]  # fmt: skip
    u, area, faces, kind = gather(routes)
    term = sheltered(case, part.name, str(faces), u, area, OPAQUE)
    if term is not None:
        return term
    word, absorptance, assumed = exposure(case, part, str(faces), str(kind))
    return opaque(case, part.name, word, u.value, area, (*u.assumed, *assumed), u.from_memory, absorptance)


def sheltered(case: Case, what: str, faces: str, u: UValueOf, area: float, group: str) -> Term | None:
    """Gain from a heated space or one of known temperature; None for what the factors cover. Raises Missing: sunroom."""
    require_there(case, what, faces)
    if faces == "heated space" or is_inside(case, faces):
        return Term(what, 0.0, (), (as_warm(faces),), CHAPTER, group=group)
    buffer = envelope_of(case).buffers.get(faces)
    stated = None if buffer is None else case.maybe(buffer, "summer_temperature")
    if stated is not None:
        difference = float(stated) - indoor_summer(case, case.design).temperature
        factors = (Factor(area, "area"), Factor(u.value, "u_value"), Factor(difference, "temperature_difference"))
        return Term(what, u.value * area * difference, factors, u.assumed, CHAPTER, u.from_memory, group)
    if faces == "basement":
        return Term(what, 0.0, (), ("basement no warmer than the rooms",), CHAPTER, group=group)
    if faces == "sunroom":  # hotter than outdoors by its glass, which nothing here works out
        raise Missing("envelope.buffers.sunroom.summer_temperature")
    return None


def exposure(case: Case, part: Surface, faces: str, kind: str) -> tuple[str, float, tuple[str, ...]]:
    """Row of the factors that a surface takes, absorptance of the roof over it, and what was assumed."""
    if faces == "attic" or kind in ("roof", "ceiling") or faces == "sky":
        if faces == "attic" and case.get(house_of(case), "attic") == "unvented":
            raise CannotJudge(f"{part.name} faces an unvented attic, which the load factors do not cover")
        color = part.roof or case.maybe(envelope_of(case), "roof")
        assumed = () if color else (f"roof of {WORST_ROOF} where none is stated",)
        return "below attic" if faces == "attic" else "roof", ROOF_ABSORPTANCE[str(color or WORST_ROOF)], assumed
    if kind == "floor":
        return "floor over crawl space" if faces == "crawl space" else "floor over outdoors", 0.92, ()
    shaded = bool(case.maybe(part, "shaded")) or faces not in OUTDOORS
    return "shaded wall" if shaded else "sunlit wall", 0.92, ()


def sun_and_heat(case: Case, part: Fenestration) -> Term:
    """Gain through a window: heat and sun."""
    routes: list[Callable[[], Any]] = [
        partial(window_area, case, part), partial(of_window, case, part, "u"), partial(of_window, case, part, "shgc"),
        partial(case.get, part, "faces"), partial(case.get, site_of(case), "latitude"),
    ]  # fmt: skip
    area, u, gain, faces, latitude = gather(routes)
    attenuation, assumed = inside_shade(case, part)
    screen = str(case.maybe(part, "screen") or "none")
    sun_screen = case.maybe(part, "sun_screen")
    transmission = SCREEN[screen] * (1.0 if sun_screen is None else float(sun_screen))
    try:
        sun = exterior_irradiance(
            peak_irradiance(str(faces), latitude), transmission, in_shadow(case, part, str(faces), latitude)
        )
    except OutOfRange as problem:
        raise CannotJudge(str(problem)) from None
    factor = peak_factor(case, str(faces))
    flux = window_gain(u, summer_difference(case), daily_range(case), sun, gain, attenuation, factor)
    what = (
        f"window {part.name} ({faces}; sun {sun:.0f} W/m2 x SHGC {gain:.2f} x shade {attenuation:.2f} x peak {factor:.2f}, "
        f"U {u:.2f} W/m2 K)"
    )
    assumed = (*defaulted(case, part, "u", "shgc"), *assumed)
    return Term(what, area * flux, (Factor(area, "area"), Factor(flux, "flux")), assumed, CHAPTER, screen == "inside",
                "windows")  # fmt: skip


def air_terms(case: Case, air: OutdoorAir, plain: float, recovered: list[tuple[Recovered, float]]) -> list[Term]:
    """Sensible gain of a share of the outdoor air: `plain` without recovery, the rest past recovery units, m3/s."""
    heat, difference = sensible_heat_factor(pressure(case, case.design)), summer_difference(case)
    split = assumed_splits(case, [each.device for each in air.supplied])
    flows = [("outdoor air by leakage and fans", plain, 0.0, split)] if air.unrecovered > 0 else []
    flows += [(f"outdoor air through {unit.fan.name}", flow, unit.sensible, assumed_splits(case, [unit.fan]))
              for unit, flow in recovered if flow > 0]  # fmt: skip
    return [
        Term(what, heat * flow * (1.0 - back) * difference,
             (Factor(flow, "airflow"), *([Factor(1.0 - back, "", "1 - recovery")] if back else []),
              Factor(difference, "temperature_difference"), Factor(heat, "air")), assumed, CHAPTER, group="outdoor air")
        for what, flow, back, assumed in flows
    ]  # fmt: skip


def latent_term(case: Case, plain: float, recovered: list[tuple[Recovered, float]]) -> Term:
    """Latent gain of a share of the outdoor air, m3/s as in `air_terms`; none where it is drier than the rooms."""
    heat = latent_heat_factor(pressure(case, case.design))
    moisture = outdoor_summer(case, case.design).humidity_ratio - indoor_summer(case, case.design).humidity_ratio
    flow = plain + sum(each * (1.0 - unit.latent) for unit, each in recovered)
    assumed = () if moisture > 0 else ("outdoor air no damper than the rooms",)
    watts = max(0.0, heat * flow * moisture)
    factors = (Factor(flow, "airflow"), Factor(moisture, "humidity_ratio"), Factor(heat, "moist air"))
    return Term("moisture of the outdoor air", watts, factors, assumed, CHAPTER, group="outdoor air")
