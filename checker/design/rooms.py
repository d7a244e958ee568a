"""The `rooms` section: use, size, air in and out, doors, windows and what stands in the room."""

from checker.design.annotated import Annotated
from checker.design.fields import (
    AirflowOrNone,
    Area,
    AreaOrNone,
    Choice,
    Count,
    Flag,
    HeatRate,
    Length,
    LengthOrNone,
    Node,
    Plain,
    Reference,
    SmallAreaOrNone,
    Volume,
    listed,
    record,
    said,
)

RoomUse = Annotated[
    str,
    Choice(
        "bedroom", "living", "dining", "kitchen", "bathroom", "toilet", "laundry", "closet", "hall", "office",
        "utility", "mechanical", "storage", "stair", "basement", "garage", "attic", "crawl space", "other",
        bedroom="bed | bed room | master bedroom | primary bedroom | guest room | guest bedroom | sleeping room | nursery",
        living="living room | family room | great room | den | lounge | sitting room | main room | open plan | "
        "living area | living/dining | rec room | recreation room | playroom | family",
        dining="dining room | dining area", kitchen="kitchenette | kitchen/dining",
        bathroom="bath | bath room | shower room | full bath | master bath | primary bath | ensuite | en suite | hall bath | "
        "3/4 bath | three quarter bath | guest bath | washroom",
        toilet="toilet room | wc | half bath | 1/2 bath | powder room | powder | water closet",
        laundry="laundry room | wash room | utility/laundry | laundry/utility",
        closet="walk in closet | wardrobe | cupboard | linen closet",
        hall="hallway | corridor | entry | foyer | mudroom | mud room | landing | vestibule",
        office="study | workroom | studio | home office",
        mechanical="mechanical room | mechanical closet | mech | mech room | furnace room | boiler room | plant room",
        utility="utility room", storage="store | pantry", stair="stairs | stairwell | stairway",
        crawl_space="crawl | crawlspace", attic="loft space", basement="cellar | unfinished basement | finished basement",
    ),
]  # fmt: skip
Fixture = Annotated[
    str,
    Choice(
        "toilet", "shower", "tub", "jetted tub", "sauna", "basin", "bidet",
        toilet="wc | water closet", tub="bath | bathtub", basin="sink | lavatory | washbasin | wash basin | hand basin | vanity",
        jetted_tub="whirlpool",
    ),
]  # fmt: skip
DoorKind = Annotated[str, Choice("door", "opening", "none", door="swing | sliding | pocket", opening="open")]
RoomRef = Annotated[str, Reference("rooms")]


@record
class Door(Node):
    """The way for air between a room and the rest of the house."""

    undercut: LengthOrNone | None = said("clear gap under the closed door, above the finished floor", "3/4 in")
    width: Length | None = said("door width", "30 in")
    transfer_area: SmallAreaOrNone | None = said("net free area of a transfer grille or jumper duct", "40 in2")
    weatherstripped: Flag | None = said("whether the door seals on all sides", False)
    to: RoomRef | None = said("room on the other side", "hall")


@record
class Window(Node):
    """Windows of a room, together."""

    glazed_area: AreaOrNone | None = said("glazed area", "14 ft2")
    openable_area: AreaOrNone | None = said("area that opens to outdoors", "6 ft2")


@record
class Room(Node):
    """A room or space, by its use."""

    short = ("use",)
    use: RoomUse | None = said("what the room is for", "bedroom")
    floor_area: Area | None = said("floor area", "140 ft2")
    ceiling_height: Length | None = said("ceiling height", "8 ft")
    volume: Volume | None = said("volume, where the ceiling is not flat", "1200 ft3")
    level: Plain | None = said("story it is on", "upper")
    conditioned: Flag | None = said("whether it is heated or cooled space; assumed for living uses", True)
    supply: AirflowOrNone | None = said("conditioned supply airflow designed for the room", "60 cfm")
    return_: AirflowOrNone | None = said("return airflow taken from the room", "60 cfm", key="return")
    outdoor_air: AirflowOrNone | None = said("outdoor air designed to reach the room", "15 cfm")
    exhaust: AirflowOrNone | None = said("exhaust airflow designed from the room", "50 cfm")
    exhaust_run: Annotated[str, Choice("continuous", "on demand", continuous="always | all day | 24/7 | 24 h")] | None = (
        said("how that exhaust runs: continuous or on demand", "continuous")
    )
    heating_load: HeatRate | None = said("heating load at winter design", "3200 Btu/h")
    cooling_load: HeatRate | None = said("sensible cooling load at summer design", "2400 Btu/h")
    door: Door | None = said("its door to the rest of the house", {"width": "30 in", "undercut": "3/4 in"})
    open_to: list[RoomRef] = listed("rooms it is open to without a door", "living")
    opening_area: Area | None = said("area of the permanent opening to the room it is open to", "30 ft2")
    common_wall_open: Annotated[str, Choice("half or more", "less than half")] | None = said(
        "how much of the common wall is open to the room it is open to", "half or more"
    )
    window: Window | None = said("its windows", {"glazed_area": "12 ft2", "openable_area": "6 ft2"})
    fixtures: list[Fixture] = listed("bath fixtures that stand in it", "toilet", "shower")
    compartments: Count | None = said("separate toilet compartments with their own door", 0)
    dryer_space: Flag | None = said("whether a space for a clothes dryer is planned", False)
    notes: Plain | None = said("anything a reader should know; no rule reads it")
