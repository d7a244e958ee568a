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
    FENESTRATION_FACTOR,
    ONE_EXPOSURE_FACTOR,
    SCREEN,
    exterior_irradiance,
    interior_attenuation,
    peak_irradiance,
    shaded_share,
)
from checker.physics.validity import OutOfRange
from checker.quantities.airtightness import house_of
from checker.quantities.assembly_values import assembly_of, envelope_of, surface_kind, surface_u
from checker.quantities.envelope_parts import (
    Part,
    glass_by_facade,
    glazing_of,
    is_inside,
    net_area,
    of_window,
    parts,
    window_area,
)
from checker.quantities.load_records import Factor, Term
from checker.quantities.moist_air import indoor_summer, outdoor_summer, pressure
from checker.quantities.outdoor_air import OutdoorAir, Recovered
from checker.quantities.ventilation_standard import site_of

CHAPTER = "ASHRAE Handbook - Fundamentals 2021, chapter 17"
OPAQUE = "walls, ceilings and floors"
WORST_GLASS, WORST_ROOF = "low-e low-solar", "dark shingles"


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
    for part in parts(case, design):
        if isinstance(part, Surface) and part.faces in POINTS and assembly_of(case, part).framing == "masonry":
            raise CannotJudge(f"{part.name} is of masonry: the load factors are for light construction")
    return True


@quantity("", "opaque: A U (OFt dT + OFb + OFr DR); windows: A [U (dT - 0.46 DR) + PXI SHGC IAC FF]", CHAPTER)
def cooling_term(case: Case, part: Part) -> Term:
    """What a part of the envelope brings in at summer design, sensible."""
    if isinstance(part, Surface):
        return surface_gain(case, part)
    if isinstance(part, Fenestration):
        return sun_and_heat(case, part)
    if isinstance(part, OutsideDoor):
        u, area, faces = case.all(part, "u", "area", "faces")
        shaded = case.maybe(part, "shaded") or faces not in POINTS
        return opaque(case, f"door {part.name}", "shaded wall" if shaded else "sunlit wall", u, area, group="doors")
    if isinstance(part, BelowGradeWall) or case.maybe(part, "depth"):
        return Term(f"in the ground {part.name}", 0.0, (), ("no gain from the ground",), CHAPTER, group="ground")
    assert isinstance(part, Slab)
    area, covering = float(case.get(part, "area")), case.maybe(part, "covering")
    flux = covered_slab_gain(float(covering)) if covering is not None else 0.0
    assumed = () if covering is not None else ("no credit without a stated covering",)
    factors = (Factor(area, "area"), Factor(flux, "flux"))
    return Term(f"slab {part.name}", area * flux, factors, assumed, CHAPTER, group="ground")


def opaque(case: Case, what: str, kind: str, u: float, area: float, assumed: tuple[str, ...] = (), memory: bool = False,
           absorptance: float = 0.92, group: str = OPAQUE) -> Term:  # fmt: skip
    """Gain through an opaque part by its factors."""
    factor = opaque_factor(kind, absorptance)
    flux = opaque_gain(u, factor, summer_difference(case), daily_range(case))
    return Term(f"{what} ({kind}, U {u:.3f} W/m2 K)", area * flux, (Factor(area, "area"), Factor(flux, "flux")),
                assumed, CHAPTER, memory, group)  # fmt: skip


def surface_gain(case: Case, part: Surface) -> Term:
    """Gain through a wall, ceiling, roof or floor."""
    routes: list[Callable[[], Any]] = [
        partial(surface_u, case, part), partial(net_area, case, part), partial(case.get, part, "faces"),
        partial(surface_kind, case, part),
    ]  # fmt: skip
    u, area, faces, kind = gather(routes)
    if faces == "heated space" or is_inside(case, str(faces)):
        return Term(part.name, 0.0, (), ("as warm as the rooms",), CHAPTER, group=OPAQUE)
    buffer = envelope_of(case).buffers.get(str(faces))
    stated = None if buffer is None else case.maybe(buffer, "summer_temperature")
    if stated is not None:
        difference = float(stated) - indoor_summer(case, case.design).temperature
        factors = (Factor(area, "area"), Factor(u.value, "u_value"), Factor(difference, "temperature_difference"))
        return Term(part.name, u.value * area * difference, factors, u.assumed, CHAPTER, u.from_memory, OPAQUE)
    if faces == "basement":
        return Term(part.name, 0.0, (), ("the basement is no warmer than the rooms",), CHAPTER, group=OPAQUE)
    word, absorptance, assumed = exposure(case, part, str(faces), str(kind))
    return opaque(case, part.name, word, u.value, area, (*u.assumed, *assumed), u.from_memory, absorptance)


def exposure(case: Case, part: Surface, faces: str, kind: str) -> tuple[str, float, tuple[str, ...]]:
    """Row of the factors that a surface takes, absorptance of the roof over it, and what was assumed."""
    if faces == "attic" or kind in ("roof", "ceiling") or faces == "sky":
        if faces == "attic" and case.get(house_of(case), "attic") == "unvented":
            raise CannotJudge(f"{part.name} faces an unvented attic, which the load factors do not cover")
        colour = part.roof or case.maybe(envelope_of(case), "roof")
        assumed = () if colour else (f"{WORST_ROOF} where no roof is stated",)
        return "below attic" if faces == "attic" else "roof", ROOF_ABSORPTANCE[str(colour or WORST_ROOF)], assumed
    if kind == "floor":
        return "floor over crawl space" if faces == "crawl space" else "floor over outdoors", 0.92, ()
    shaded = bool(case.maybe(part, "shaded")) or faces not in POINTS
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
    attached = (case.maybe(house_of(case), "dwelling_units") or 1) > 1
    factor = (ONE_EXPOSURE_FACTOR if attached else FENESTRATION_FACTOR)[str(faces)]
    flux = window_gain(u, summer_difference(case), daily_range(case), sun, gain, attenuation, factor)
    what = (
        f"window {part.name} ({faces}; sun {sun:.0f} W/m2 x SHGC {gain:.2f} x shade {attenuation:.2f} x peak {factor:.2f}, "
        f"U {u:.2f} W/m2 K)"
    )
    return Term(what, area * flux, (Factor(area, "area"), Factor(flux, "flux")), assumed, CHAPTER, screen == "inside",
                "windows")  # fmt: skip


def in_shadow(case: Case, part: Fenestration, faces: str, latitude: float) -> float:
    """Share of a window in the shadow of an overhang, or of all that stands before it."""
    if case.maybe(part, "shaded"):
        return 1.0
    overhang = case.maybe(part, "overhang")
    if overhang is None or faces == "sky":
        return 0.0
    depth, drop = case.all(overhang, "depth", "drop")
    return shaded_share(faces, latitude, depth, drop, float(case.get(part, "height")))


def inside_shade(case: Case, part: Fenestration) -> tuple[float, tuple[str, ...]]:
    """Share of the sun that gets past inside shades, and what was assumed."""
    shade = str(case.maybe(part, "shade") or "none")
    if shade == "none":
        return 1.0, () if part.shade else ("no inside shade",)
    glass = case.maybe(glazing_of(case, part), "glass")
    closed = case.maybe(part, "shade_closed")
    assumed = [] if glass else [f"glass taken as {WORST_GLASS}"]
    assumed += [] if closed is not None else ["half closed"]
    return interior_attenuation(str(glass or WORST_GLASS), shade, 0.5 if closed is None else float(closed)), tuple(assumed)


def air_terms(case: Case, air: OutdoorAir, plain: float, recovered: list[tuple[Recovered, float]]) -> list[Term]:
    """Sensible gain of a share of the outdoor air: `plain` without recovery, the rest past recovery units, m3/s."""
    heat, difference = sensible_heat_factor(pressure(case, case.design)), summer_difference(case)
    flows = [("outdoor air by leakage and fans", plain, 0.0)] if air.unrecovered > 0 else []
    flows += [(f"outdoor air through {unit.fan.name}", flow, unit.sensible) for unit, flow in recovered if flow > 0]
    return [
        Term(what, heat * flow * (1.0 - back) * difference,
             (Factor(flow, "airflow"), *([Factor(1.0 - back, "", "1 - recovery")] if back else []),
              Factor(difference, "temperature_difference"), Factor(heat, "air")), (), CHAPTER, group="outdoor air")
        for what, flow, back in flows
    ]  # fmt: skip


def latent_terms(case: Case, air: OutdoorAir) -> list[Term]:
    """Latent gain of the outdoor air of the house; none where it is drier than the rooms."""
    heat = latent_heat_factor(pressure(case, case.design))
    moisture = outdoor_summer(case, case.design).humidity_ratio - indoor_summer(case, case.design).humidity_ratio
    flow = air.unrecovered + sum(each.flow * (1.0 - each.latent) for each in air.recovered)
    assumed = () if moisture > 0 else ("outdoor air is no damper than the rooms",)
    watts = max(0.0, heat * flow * moisture)
    factors = (Factor(flow, "airflow", "moist"), Factor(moisture, "humidity_ratio"))
    return [Term("moisture of the outdoor air", watts, factors, assumed, CHAPTER, group="outdoor air")]
