"""The `openings` section: everything in the outside of the house that air, fumes or people use."""

from checker.design.annotated import Annotated
from checker.design.fields import (
    Airflow,
    Area,
    Choice,
    Flag,
    Length,
    Node,
    Plain,
    Pressure,
    Quantity,
    Reference,
    SignedLength,
    SmallArea,
    listed,
    named,
    record,
    said,
)

OPENING_KINDS = Choice(
        "outdoor air intake", "make-up air intake", "combustion air intake", "exhaust", "kitchen exhaust",
        "dryer exhaust", "combined intake and exhaust", "combustion vent", "direct vent", "chimney", "plumbing vent",
        "window", "door", "soffit vent", "attic vent", "gable vent", "ridge vent", "foundation vent", "gas meter",
        "gas regulator", "fixed window", "lot line", "street", "parking", "driveway", "walkway", "outdoor unit", "radon vent",
        "other",
        outdoor_air_intake="intake | fresh air intake | supply intake | air intake | outdoor air | hrv intake"
        " | erv intake | outside air"
        " | outside air intake | air inlet | fresh air inlet | fresh air | trickle vent | intake hood",
        make_up_air_intake="makeup air intake | make up air | makeup air",
        combustion_air_intake="combustion air",
        exhaust="bath exhaust | exhaust outlet | fan exhaust | exhaust terminal | hrv exhaust"
        " | bathroom exhaust | stale air"
        " | erv exhaust | bath fan exhaust | bath fan vent | bath vent | bath fan | exhaust vent | exhaust hood"
        " | exhaust cap"
        " | toilet exhaust | recovery exhaust | stale air exhaust",
        kitchen_exhaust="range hood exhaust | hood exhaust | cooking exhaust | range hood | range hood vent"
        " | hood vent | kitchen vent",
        dryer_exhaust="dryer vent | dryer | dryer terminal | dryer cap | clothes dryer exhaust | dryer outlet",
        combined_intake_and_exhaust="combination terminal | combination hood | combined terminal"
        " | combined hood | combo hood | dual hood | concentric terminal",
        combustion_vent="flue | appliance vent | b vent | gas vent | vent terminal | power vent | furnace vent"
        " | flue terminal"
        " | furnace flue | water heater vent | water heater flue | boiler flue | boiler vent",
        direct_vent="sealed vent | direct vent terminal | concentric vent",
        plumbing_vent="vent stack | plumbing stack | vtr | sewer vent | soil stack | vent through roof"
        " | plumbing vent stack | soil vent",
        window="operable window | window (operable) | openable window | windows "
        " | casement | skylight | roof window | egress window",
        fixed_window="picture window",
        door="exterior door | doors | sliding door | patio door | entry door | garage door",
        soffit_vent="eave vent | soffit | soffit vents",
        foundation_vent="crawl space vent | crawl vent | crawlspace vent", gable_vent="gable louver",
        gas_meter="meter",
        gas_regulator="regulator | gas regulator vent",
        lot_line="property line | boundary | property boundary",
        street="alley | road | loading dock",
        parking="parking lot | parking space", driveway="carport | drive | garage apron",
        walkway="sidewalk | path | deck | walk | patio | porch",
        outdoor_unit="heat pump | condenser | condensing unit | air conditioner | ac unit | ac condenser | ac",
)  # fmt: skip
OpeningKind = Annotated[str, OPENING_KINDS]
Neighbor = Annotated[str, Reference("openings", words=OPENING_KINDS)]
GRAVITY = (
    "backdraft | backdraft damper | gravity damper | spring loaded | barometric | spring | flap | gravity backdraft"
)
POWERED = "motorized | motorised | automatic | motor"
DamperKind = Annotated[str, Choice("gravity", "powered", "none", gravity=GRAVITY, powered=POWERED)]
# `yes`: a damper that is not described; rules that must know how it opens ask for it
OpeningDamper = Annotated[
    str,
    Choice("gravity", "powered", "yes", "none", gravity=GRAVITY, powered=POWERED, yes="fitted", none="no"),
]
Face = Annotated[str, Choice("wall", "roof", "soffit", "gable", "foundation", "ground", gable="gable wall")]
Into = Annotated[
    str,
    Choice(
        "outdoors", "attic", "soffit", "crawl space", "garage", "indoors", "ridge vent", "roof void", "wall cavity",
        outdoors="outside", attic="attic space", crawl_space="crawl | crawlspace",
    ),
]  # fmt: skip
Screen = Annotated[float, Quantity("length", none_is=0.0)]


@record
class Position(Node):
    """A point in the one frame of the house; up is from grade at that spot."""

    east: SignedLength | None = said("distance east of the origin", "12 ft")
    north: SignedLength | None = said("distance north of the origin", "0 ft")
    up: SignedLength | None = said("height above grade at that spot", "14 ft")


@record
class Opening(Node):
    """An outdoor opening or a thing outdoors that openings must keep away from."""

    short = ("kind",)
    kind: OpeningKind | None = said("what it is", "outdoor air intake")
    at: Position | None = said(
        "center of the opening in the frame of the house; the nearest point of a street, walkway or parking;"
        " one coordinate of a lot line", {"east": "8 ft", "north": "0 ft", "up": "13 ft"},
    )
    on: Face | None = said("what it is in: wall, roof, soffit", "wall")
    wall: Plain | None = said("name or compass point of the wall", "south gable")
    into: Into | None = said(
        "where an exhaust ends or an intake draws from; outdoors unless said", "outdoors"
    )
    clear_of: dict[Neighbor, Length] = named(
        "stated distances to other openings, by name or by kind (the nearest)", {"bath-exhaust": "11 ft"}
    )
    above: dict[Neighbor, SignedLength] = named(
        "stated heights above other openings, by name or kind (below: negative)", {"intake": "3 ft"}
    )
    height_over_grade: Length | None = said(
        "height of its lower edge above grade; else taken from `at`", "9 ft"
    )
    height_over_roof: Length | None = said("height above the roof it is in", "2 ft")
    to_lot_line: Length | None = said("distance to the nearest lot line", "6 ft")
    size: Plain | None = said("size as drawn; no rule reads it", "8x8 in")
    width: Length | None = said("width of a window or door", "3 ft")
    height: Length | None = said("height of a window or door", "4 ft")
    free_area: SmallArea | None = said("net free area", "28 in2")
    airflow: Airflow | None = said("airflow through it where no fan, hood or dryer tells", "80 cfm")
    screen: Screen | None = said("mesh opening of its screen, or `none`", "1/4 in")
    clear_in_front: Length | None = said("clear space straight in front of it", "3 ft")
    corrosion_resistant: Flag | None = said("whether its screen, louver or grille resists corrosion", True)
    hooded: Flag | None = said("protected from rain by a hood or louver", True)
    damper: OpeningDamper | None = said("what closes it when idle; `yes` where its kind is not decided", "gravity")
    operable: Flag | None = said("whether a window opens", True)
    combination_listed: Flag | None = said("factory-built combined terminal, listed for the purpose", False)
    drawing_note: Plain | None = said("sheet and note that show its listing or the official's consent", "M-101 note 7")
    faces_walkway: Flag | None = said("whether it blows onto a walkway", False)
    room: Annotated[str, Reference("rooms")] | None = said("room that a window or door belongs to", "kitchen")
    pressure_drop: Pressure | None = said(
        "pressure drop of hood or louver at the design airflow", "0.03 in w.c."
    )
    serves: list[Annotated[str, Reference("fans", "hoods", "dryers", "equipment", "combustion")]] = listed(
        "fans, hoods or appliances that use it", "fresh-air"
    )
    area: Area | None = said("gross area", "1 ft2")
    notes: Plain | None = said("anything a reader should know; no rule reads it")
