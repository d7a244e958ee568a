"""The `envelope` section: what the heated rooms are enclosed by, room by room, for the loads."""

from checker.design.annotated import Annotated
from checker.design.details import Detail
from checker.design.fields import (
    Area,
    Choice,
    Count,
    DuctSize,
    Flag,
    Length,
    LengthOrNone,
    Node,
    Number,
    Plain,
    Reference,
    Resistance,
    Share,
    SmallArea,
    Temperature,
    UValue,
    Volume,
    named,
    record,
    said,
)
from checker.design.window_words import DoorKind, FrameKind, GlassKind, InsectScreen, PaneCount, ShadeKind

POINTS = ("north", "northeast", "east", "southeast", "south", "southwest", "west", "northwest")
COMPASS_SPELLINGS = {
    "north": "N", "northeast": "NE | north east", "east": "E", "southeast": "SE | south east", "south": "S",
    "southwest": "SW | south west", "west": "W", "northwest": "NW | north west",
}  # fmt: skip
SUNROOM = "sun porch | sunspace | enclosed porch | three season porch | conservatory | glazed porch"
BufferPlace = Annotated[
    str,
    Choice(
        "attic", "crawl space", "garage", "basement", "sunroom",
        attic="attic space | vented attic", crawl_space="crawl | crawlspace", garage="attached garage",
        basement="unheated basement | cellar", sunroom=SUNROOM,
    ),
]  # fmt: skip
Facing = Annotated[
    str,
    Choice(
        *POINTS, "sky", "outdoors", "attic", "crawl space", "garage", "basement", "sunroom",
        "heated space",
        **COMPASS_SPELLINGS, sky="up | roof", attic="attic space | vented attic", outdoors="outside | outdoors below | open air",
        crawl_space="crawl | crawlspace | vented crawl space", basement="unheated basement | cellar",
        heated_space="neighbour | neighbor | adjacent heated | other dwelling | conditioned",
        garage="attached garage | unheated garage",
        sunroom=SUNROOM,
    ),
]  # fmt: skip
Outlook = Annotated[str, Choice(*POINTS, "sky", **COMPASS_SPELLINGS, sky="up | roof | skylight")]
AssemblyKind = Annotated[
    str,
    Choice(
        "wall", "ceiling", "roof", "floor", "door",
        ceiling="flat ceiling | attic ceiling", roof="vault | cathedral ceiling | rafter roof | roof ceiling",
        wall="exterior wall | outside wall",
    ),
]  # fmt: skip
Framing = Annotated[
    str,
    Choice("2x4", "2x6", "2x8", "2x10", "2x12", "none", "steel", "masonry",
           steel="metal", masonry="concrete | block | brick | log", none="panel | sip | no framing"),
]  # fmt: skip
RoofSurface = Annotated[
    str,
    Choice(
        "dark shingles", "medium shingles", "light shingles", "white shingles", "dark tile", "medium tile", "light tile",
        "white tile", "dark metal", "medium metal", "light metal", "white metal", "white coating",
        dark_shingles="black shingles | dark asphalt", medium_shingles="gray shingles | grey shingles | brown shingles",
    ),
]  # fmt: skip
SlabInsulation = Annotated[
    str,
    Choice(
        "none", "vertical 2 ft", "vertical 4 ft", "horizontal 2 ft", "horizontal 4 ft", "full",
        full="full underslab | under the whole slab", vertical_2_ft="2 ft vertical | edge 2 ft",
        vertical_4_ft="4 ft vertical | edge 4 ft", horizontal_2_ft="2 ft horizontal", horizontal_4_ft="4 ft horizontal",
    ),
]  # fmt: skip
InRoom = Annotated[str, Reference("rooms")]
OfAssembly = Annotated[str, Reference("assemblies")]
OfGlazing = Annotated[str, Reference("glazing")]
HeatGainCoefficient = Annotated[float, Number(0.0, 1.0)]


@record
class Assembly(Node):
    """A wall, ceiling, roof or floor; a plain U-value in its place is read as `u`."""

    short = ("u",)
    kind: AssemblyKind | None = said("wall, ceiling, roof, floor or door; its name may say so", "wall")
    u: UValue | None = said("U-value of the whole, framing and air films included", "U-0.057")
    r: Resistance | None = said("R-value of the whole, framing and air films included", "R-17.5")
    cavity: Resistance | None = said("insulation between the framing, or the loose fill of a ceiling", "R-21")
    layers: dict[str, Resistance] = named(
        "what runs across the framing: boards, siding, continuous insulation; without air films",
        {"siding": "R-0.6", "continuous insulation": "R-5", "gypsum board": "R-0.45"},
    )
    continuous: Resistance | None = said("continuous insulation beside the usual boards", "R-5")
    framing: Framing | None = said("framing members, or `none`", "2x6")
    framing_share: Share | None = said("share of the area that is framing", "23 %")
    raised_heel: Flag | None = said("whether a ceiling keeps its full insulation over the outer walls", True)
    notes: Plain | None = said("anything a reader should know; no rule reads it")


@record
class Surface(Node):
    """One wall, ceiling, roof or floor of a room, gross: its windows and doors are taken off."""

    room: InRoom | None = said("room that it encloses", "living")
    assembly: OfAssembly | None = said("its assembly, by name", "wall")
    area: Area | None = said("gross area, windows and doors included", "120 ft2")
    net_area: Area | None = said("area without windows and doors, in place of the gross one", "96 ft2")
    faces: Facing | None = said(
        "compass point it faces; else what is beyond: sky, outdoors (below a floor), attic, crawl space, garage ...",
        "south", "attic",
    )  # fmt: skip
    shaded: Flag | None = said("whether trees or buildings keep the summer sun off it", False)
    roof: RoofSurface | None = said("color and kind of the roof over it, where it differs", "dark shingles")


@record
class Glazing(Node):
    """A kind of window."""

    u: UValue | None = said("U-value of the window with its frame", "U-0.28")
    shgc: HeatGainCoefficient | None = said("solar heat gain coefficient of the window with its frame", 0.3)
    glass: GlassKind | None = said("kind of glass", "low-e low-solar")
    frame: FrameKind | None = said("frame; with `panes` it gives the code's default where no label gives `u`", "nonmetal")
    panes: PaneCount | None = said("panes; they give the code's defaults where no label gives `u` and `shgc`", "double")


@record
class Overhang(Node):
    """What juts out over a window."""

    depth: Length | None = said("how far it juts out", "2 ft")
    drop: Length | None = said("height from the top of the glass up to it", "1 ft")


@record
class Fenestration(Node):
    """A window, glazed door or skylight, or several alike."""

    room: InRoom | None = said("room that it lights", "living")
    area: Area | None = said("area of one, frame included", "15 ft2")
    size: DuctSize | None = said("width and height of one, frame included, in place of `area` and `height`", "36x60 in")
    count: Count | None = said("how many are alike; one where absent", 2)
    faces: Outlook | None = said("compass point it faces; `sky` for a skylight", "south")
    glazing: OfGlazing | None = said("its kind, by name", "casement")
    u: UValue | None = said("U-value with its frame, where no kind says it", "U-0.28")
    shgc: HeatGainCoefficient | None = said("solar heat gain coefficient, where no kind says it", 0.3)
    height: Length | None = said("height of the glass", "4 ft")
    overhang: Overhang | None = said("what juts out over it, or `none`", {"depth": "2 ft", "drop": "1 ft"})
    shade: ShadeKind | None = said("inside shade, or `none`", "white blinds")
    shade_closed: Share | None = said("share of the window that the shade covers; half where absent", "50 %")
    screen: InsectScreen | None = said("insect screen over the glass: outside, inside or none", "outside")
    sun_screen: Share | None = said("share of the sun that a sun screen outside lets through", "50 %")
    shaded: Flag | None = said("whether a building or hill keeps the summer sun off it", False)


@record
class OutsideDoor(Node):
    """An opaque door of the envelope."""

    room: InRoom | None = said("room that it opens from", "hall")
    area: Area | None = said("area", "20 ft2")
    faces: Facing | None = said("compass point, or what is beyond", "north")
    u: UValue | None = said("U-value", "U-0.2")
    kind: DoorKind | None = said("kind; it gives the code's default where no label gives `u`", "insulated metal")
    shaded: Flag | None = said("whether a porch or building keeps the summer sun off it", True)


@record
class BelowGradeWall(Node):
    """A wall against the ground, down to the floor."""

    room: InRoom | None = said("room that it encloses", "basement")
    length: Length | None = said("length along the ground", "84 ft")
    depth: Length | None = said("depth of its foot below grade", "6 ft")
    insulation: Resistance | None = said("insulation of the wall, or `none`", "R-15")


@record
class Slab(Node):
    """A floor on the ground; one with a `depth` lies below grade."""

    room: InRoom | None = said("room that it carries", "living")
    area: Area | None = said("area", "420 ft2")
    perimeter: LengthOrNone | None = said("length of its edge along the outside, or `none`", "52 ft")
    insulation: Resistance | None = said("insulation of the edge, or of the whole underside, or `none`", "R-10")
    insulated: SlabInsulation | None = said("where that insulation is", "vertical 2 ft")
    heated: Flag | None = said("whether heating pipes lie in it", False)
    covering: Resistance | None = said("R-value of the floor covering", "R-0.5")
    depth: Length | None = said("depth below grade, for the floor of a basement", "6 ft")
    width: Length | None = said("shorter side of the whole basement floor", "24 ft")


@record
class Buffer(Node):
    """An unheated space between the rooms and outdoors."""

    winter_temperature: Temperature | None = said("its temperature at winter design", "30 degF")
    summer_temperature: Temperature | None = said("its temperature at summer design, in place of load factors", "95 degF")
    outside_area: Area | None = said("area of what divides it from outdoors", "620 ft2")
    outside_u: UValue | None = said("mean U-value of what divides it from outdoors", "U-0.12")
    volume: Volume | None = said("its volume", "4400 ft3")
    air_changes: Annotated[float, Number(0.0, 100.0)] | None = said("outdoor air changes per hour in it", 0.5)


@record
class Envelope(Node):
    """What encloses the heated rooms; enough of it lets the loads be worked out."""

    assemblies: dict[str, Assembly] = named("walls, ceilings, roofs and floors by name", {"wall": "U-0.057"})
    glazing: dict[str, Glazing] = named("kinds of window by name", {"casement": {"u": "U-0.28", "shgc": 0.3}})
    roof: RoofSurface | None = said("color and kind of the roof", "dark shingles")
    surfaces: dict[str, Surface] = named(
        "walls, ceilings, roofs and floors of each room",
        {"living-south": {"room": "living", "assembly": "wall", "area": "160 ft2", "faces": "south"}},
    )
    windows: dict[str, Fenestration] = named(
        "windows, glazed doors and skylights by name",
        {"living-south": {"room": "living", "glazing": "casement", "area": "15 ft2", "faces": "south"}},
    )
    doors: dict[str, OutsideDoor] = named("opaque outside doors by name")
    below_grade_walls: dict[str, BelowGradeWall] = named("walls against the ground by name")
    slabs: dict[str, Slab] = named("floors on or in the ground by name")
    details: dict[str, Detail] = named(
        "cold spots by name: slab edges, balconies, lintels, rim joists, corners",
        {"balcony": {"room": "living", "temperature_factor": 0.78}},
    )
    flue_area: SmallArea | None = said("net area of open flues and chimneys; none where absent", "28 in2")
    buffers: dict[BufferPlace, Buffer] = named("unheated spaces beside the rooms: attic, crawl space, garage, basement, sunroom")
    notes: Plain | None = said("anything a reader should know; no rule reads it")
