"""What stands between the sun and the load of a window: overhangs, inside shades, the hour of the house's peak."""

from checker.case import Case
from checker.design.envelope import POINTS, Fenestration
from checker.physics.solar import FENESTRATION_FACTOR, ONE_EXPOSURE_FACTOR, interior_attenuation, shaded_share
from checker.quantities.airtightness import house_of
from checker.quantities.envelope_parts import glass_by_facade, glazing_of

WORST_GLASS = "low-e low-solar"


def peak_factor(case: Case, faces: str) -> float:
    """Share of a window's sun that is load at the peak of the house (ASHRAE Handbook - Fundamentals 2021, chapter 17,
    Table 13): of a detached house, or of an attached dwelling; the larger where that has windows on opposite sides."""
    if (case.maybe(house_of(case), "dwelling_units") or 1) <= 1:
        return FENESTRATION_FACTOR[faces]
    sides = {POINTS.index(point) for point in glass_by_facade(case, case.design) if point in POINTS}
    through = any((side + 4) % 8 in sides for side in sides)
    return max(FENESTRATION_FACTOR[faces], ONE_EXPOSURE_FACTOR[faces]) if through else ONE_EXPOSURE_FACTOR[faces]


def in_shadow(case: Case, part: Fenestration, faces: str, latitude: float) -> float:
    """Share of a window in the shadow of an overhang, or of all that stands before it."""
    if case.maybe(part, "shaded"):
        return 1.0
    overhang = case.maybe(part, "overhang")
    if overhang is None or faces == "sky":
        return 0.0
    depth, drop = case.all(overhang, "depth", "drop")
    size = case.maybe(part, "size")
    height = case.get(part, "height") if size is None or part.height is not None else size.height
    return shaded_share(faces, latitude, depth, drop, float(height))


def inside_shade(case: Case, part: Fenestration) -> tuple[float, tuple[str, ...]]:
    """Share of the sun that gets past inside shades, and what was assumed."""
    shade = str(case.maybe(part, "shade") or "none")
    if shade == "none":
        return 1.0, () if part.shade else ("windows without an inside shade where none is stated",)
    glass = case.maybe(glazing_of(case, part), "glass")
    closed = case.maybe(part, "shade_closed")
    assumed = [] if glass else [f"glass taken as {WORST_GLASS}"]
    assumed += [] if closed is not None else ["inside shades half closed"]
    return interior_attenuation(str(glass or WORST_GLASS), shade, 0.5 if closed is None else float(closed)), tuple(assumed)
