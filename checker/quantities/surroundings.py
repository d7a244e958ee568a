"""What lies around openings that is no opening: lot lines, snow, the roof."""

from math import cos, radians, sin

from checker.case import Case, Missing, NotApplicable, quantity
from checker.design.openings import Opening
from checker.quantities.clearances import lower_edge
from checker.quantities.opening_kinds import of_kind, stated
from checker.quantities.places import bearing, coordinate
from checker.quantities.room_uses import room_use

WARM_ZONES = ("1", "2", "3", "4")
NOT_OUTDOORS = frozenset({
    "attic", "soffit", "crawl space", "garage", "indoors", "ridge vent", "roof void", "wall cavity", "basement",
    "chase", "floor over unconditioned", "conditioned", "room",
})  # fmt: skip
LEADS_INTO = {"soffit vent": "soffit", "attic vent": "attic", "gable vent": "attic", "ridge vent": "attic",
              "foundation vent": "crawl space"}  # fmt: skip


def place_of(case: Case, name: str, soffit_face: str = "outdoors") -> str:
    """What the name of a room, an opening or a place stands for; `soffit_face`: what a grille in a soffit faces."""
    design = case.design
    if name in design.rooms:
        try:
            use = room_use(case, design.rooms[name])
        except Missing:
            return "room"
        return use if use in NOT_OUTDOORS else "room"
    if name in design.openings:
        opening = design.openings[name]
        into = stated(case, opening, "into") or (soffit_face if stated(case, opening, "on") == "soffit" else None)
        return str(into or LEADS_INTO.get(opening.kind or "", "outdoors"))
    return name


def to_line(case: Case, opening: Opening, line: Opening) -> float | None:
    """Distance on the plan to a lot line drawn by one coordinate, or by a point and the compass word it lies to."""
    east, north = coordinate(case, opening, "east"), coordinate(case, opening, "north")
    at_east, at_north = coordinate(case, line, "east"), coordinate(case, line, "north")
    if at_east is not None and at_north is None:
        return None if east is None else abs(at_east - east)
    if at_north is not None and at_east is None:
        return None if north is None else abs(at_north - north)
    facing = bearing(line.wall)
    if None in (east, north, at_east, at_north) or facing is None:
        return None
    assert east is not None and north is not None and at_east is not None and at_north is not None
    return abs((at_east - east) * sin(radians(facing)) + (at_north - north) * cos(radians(facing)))


@quantity("length")
def lot_line_distance(case: Case, opening: Opening) -> float:
    """Distance of an opening to the nearest lot line: as stated, else from its position."""
    said = stated(case, opening, "to_lot_line")
    if isinstance(said, float):
        return said
    known = [opening.clear_of["lot line"]] if "lot line" in opening.clear_of else []
    for line in of_kind(case, frozenset({"lot line"})):
        apart = next((each for each in (opening.clear_of.get(line.name), line.clear_of.get(opening.name))
                      if each is not None), to_line(case, opening, line))  # fmt: skip
        if apart is None:
            return float(case.get(opening, "to_lot_line"))
        known.append(apart)
    return min(known) if known else float(case.get(opening, "to_lot_line"))


@quantity("length")
def snow_depth(case: Case, _design: object) -> float:
    """Depth of snow to reckon with. Raises NotApplicable in a zone of little snow that states none."""
    site = case.design.site
    if site is None:
        raise Missing("site.snow_depth")
    depth = case.maybe(site, "snow_depth")
    zone = stated(case, site, "climate_zone")
    if depth is None and isinstance(zone, str) and zone.strip().lower().removeprefix("zone").strip()[:1] in WARM_ZONES:
        raise NotApplicable("the climate zone has little snow and no snow depth is stated")
    return float(case.get(site, "snow_depth"))


def speaks_of_height(case: Case, opening: Opening) -> bool:
    """Whether the design says anything of how high an opening is, be it to be decided."""
    if stated(case, opening, "on") == "roof":
        return case.speaks_of(opening, "height_over_roof")
    at = opening.at
    placed = case.speaks_of(opening, "at") if at is None else case.speaks_of(at, "up")
    return placed or case.speaks_of(opening, "height_over_grade")


@quantity("length")
def clear_height(case: Case, opening: Opening) -> float:
    """Height of an opening's lower edge above what snow, splash and leaves lie on: its roof, or the ground."""
    if stated(case, opening, "on") == "roof":
        return float(case.get(opening, "height_over_roof"))
    return lower_edge(case, opening)
