"""The `hoods` and `dryers` sections: the big exhausts of a house."""

from checker.design.airway import Airway
from checker.design.annotated import Annotated
from checker.design.fans import Control, Curve, OpeningRef, Setting
from checker.design.fields import (
    Airflow,
    Choice,
    Diameter,
    Flag,
    HeatRate,
    Length,
    Node,
    Plain,
    Reference,
    SmallArea,
    named,
    record,
    said,
)
from checker.design.make_up_air import MakeUpAir

Fuel = Annotated[
    str,
    Choice(
        "electric", "gas", "propane", "oil", "wood", "pellet", "induction",
        gas="natural gas | ng | nat gas | dual fuel", propane="lp | lp gas | lpg | propane gas", electric="electricity | elec",
        induction="induction cooktop | induction range",
        wood="solid fuel | firewood | cordwood", oil="fuel oil | heating oil", pellet="wood pellets",
    ),
]  # fmt: skip
HoodMount = Annotated[
    str,
    Choice(
        "wall", "island", "under cabinet", "over-the-range microwave", "downdraft", "ceiling",
        over_the_range_microwave="microwave | over the range | microwave hood | otr microwave | otr",
        under_cabinet="undercabinet | under the cabinet", downdraft="down draft",
        wall="wall mounted | wall mount | chimney | wall canopy", island="island mounted | island mount",
    ),
]  # fmt: skip


@record
class Cooking(Node):
    """The cooking appliance under a hood."""

    short = ("fuel",)
    spoken = ("fuel", "kind", "width", "input")
    fuel: Fuel | None = said("what it burns or uses", "induction")
    input: HeatRate | None = said("total burner input", "48000 Btu/h")
    width: Length | None = said("width", "30 in")
    kind: (
        Annotated[
            str,
            Choice(
                "range",
                "cooktop",
                "open-top broiler",
                range="stove | oven",
                open_top_broiler="broiler | grill",
            ),
        ]
        | None
    ) = said("range, cooktop or open-top broiler", "range")
    combustible_clearance: Length | None = said(
        "height from the cooking top to unprotected combustibles", "30 in"
    )


@record
class HoodByMaker(Node):
    """Limits from the hood's instructions."""

    greatest_length: Length | None = said("greatest equivalent duct length", "60 ft")
    least_duct: Diameter | None = said("least duct diameter", "8 in")
    least_height: Length | None = said("least mounting height", "24 in")
    greatest_height: Length | None = said("greatest mounting height", "30 in")


@record
class Hood(Node):
    """A kitchen hood or other kitchen exhaust."""

    room: Annotated[str, Reference("rooms")] | None = said("room it hangs in", "kitchen")
    mount: HoodMount | None = said("how it hangs", "wall")
    cooking: Cooking | None = said("the appliance below it")
    settings: dict[str, Setting] = named("its speeds by name", {"continuous": "30 cfm", "high": "420 cfm"})
    curves: dict[str, Curve] = named("fan curves by the setting they belong to")
    whole_house: Flag | None = said("whether its slow speed belongs to the whole-house ventilation", True)
    recirculating: Flag | None = said("whether it blows back into the room", False)
    width: Length | None = said("hood width", "30 in")
    mounting_height: Length | None = said("height of its underside above the cooking top", "28 in")
    listed_clearance: Length | None = said("clearance to combustibles by its listing", "24 in")
    gap_to_combustibles: Length | None = said("gap between hood and combustibles above it", "1/4 in")
    thickness: Length | None = said("sheet thickness of the hood", "0.0157 in")
    duct: Airway | None = said("its duct")
    duct_connection: Diameter | None = said("diameter of its outlet collar", "8 in")
    to: OpeningRef | None = said("outdoor opening it ends in", "hood-exhaust")
    damper: Flag | None = said("whether it has a backdraft damper", True)
    make_up_air: MakeUpAir | None = said("make-up air for it, or `none`")
    control: Control | None = said("what switches it")
    listing: Plain | None = said("listing", "UL 507")
    by_maker: HoodByMaker | None = said("what its instructions require")
    notes: Plain | None = said("anything a reader should know; no rule reads it")


@record
class Transition(Node):
    """The flexible connector behind the dryer."""

    short = ("length",)
    length: Length | None = said("length", "5 ft")
    one_piece: Flag | None = said("whether it is a single length", True)
    concealed: Flag | None = said("whether any of it is hidden", False)
    listing: Plain | None = said("listing", "UL 2158A")


@record
class DryerByMaker(Node):
    """Limits from the dryer's or power ventilator's instructions."""

    greatest_length: Length | None = said("greatest duct length", "45 ft")
    elbow_allowance: Length | None = said("length that each 90 degree elbow counts for", "5 ft")
    closet_opening: SmallArea | None = said("net area of the closet's make-up opening", "120 in2")
    terminal_clearance: Length | None = said("distance of the terminal from openings", "3 ft")


@record
class Dryer(Node):
    """A clothes dryer and its exhaust."""

    kind: (
        Annotated[
            str,
            Choice(
                "vented",
                "condensing",
                "heat pump",
                vented="exhausted | ducted | conventional | standard",
                condensing="ductless | ventless | condenser",
                heat_pump="heat pump dryer",
            ),
        ]
        | None
    ) = said("vented, condensing or heat pump", "vented")
    fuel: Fuel | None = said("what heats it", "electric")
    room: Annotated[str, Reference("rooms")] | None = said("room it stands in", "laundry")
    airflow: Airflow | None = said("rated exhaust airflow", "150 cfm")
    duct: Airway | None = said("its exhaust duct")
    transition: Transition | None = said("the connector behind it")
    to: OpeningRef | None = said("outdoor opening it ends in", "dryer-exhaust")
    booster: Flag | None = said("a booster fan in its duct", False)
    power_ventilator: Plain | None = said("listed exhaust power ventilator: its listing, or `none`", "UL 705")
    length_label: Flag | None = said("a permanent label that states the duct's length", True)
    in_closet: Flag | None = said("whether it stands in a closet", False)
    closet_opening: SmallArea | None = said("net area of the closet's make-up opening", "100 in2")
    make_up_air: MakeUpAir | None = said("make-up air for it, or `none`")
    terminal_area: SmallArea | None = said("open area of the terminal", "12.5 in2")
    duct_for_future: Flag | None = said("duct capped and marked for a future dryer", False)
    by_maker: DryerByMaker | None = said("what its instructions require")
    notes: Plain | None = said("anything a reader should know; no rule reads it")
