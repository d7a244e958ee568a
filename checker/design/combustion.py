"""The `combustion` section: what burns, where, and how its gases leave. Facts that the air side needs."""

from checker.design.airway import Where
from checker.design.annotated import Annotated
from checker.design.fields import (
    Choice,
    Flag,
    HeatRate,
    Length,
    Node,
    Plain,
    Reference,
    fold,
    listed,
    record,
    said,
)
from checker.design.hoods import Fuel

BurnerKind = Annotated[
    str,
    Choice(
        "furnace", "boiler", "water heater", "fireplace", "stove", "range", "dryer", "space heater", "other",
        furnace="gas furnace | oil furnace | propane furnace | forced air furnace",
        boiler="gas boiler | oil boiler | propane boiler | combi boiler | combi | combination boiler",
        stove="wood stove | pellet stove | masonry heater | heating stove | woodstove",
        water_heater="gas water heater | tank water heater | storage water heater | tankless water heater | tankless | "
        "on demand water heater | instantaneous water heater | domestic water heater | hot water heater | wh | "
        "heat pump water heater | electric water heater",
        fireplace="open fireplace | gas fireplace | wood fireplace | masonry fireplace | insert | fireplace insert | "
        "gas insert | wood insert | pellet insert | gas log | gas log set | log set",
        space_heater="room heater | wall heater | heater | unit heater | wall furnace | floor furnace | gas heater | "
        "gas space heater | radiant heater | garage heater",
        range="cooktop | gas range | gas cooktop | oven | gas oven | cooker | range cooker",
        dryer="gas dryer | clothes dryer",
    ),
]  # fmt: skip
Draft = Annotated[
    str,
    Choice(
        "natural draft", "fan-assisted", "induced draft", "power vent", "direct vent", "sealed", "unvented", "open",
        natural_draft="atmospheric | draft hood | natural | gravity | b vent | category i natural | natural vent | "
        "naturally drafted | atmospherically vented | chimney | masonry chimney | type b vent",
        fan_assisted="fan assisted | category i fan assisted | category i fan",
        induced_draft="mechanical draft | induced | draft inducer | inducer",
        power_vent="power vented | power venter | powervent | forced draft | category iii | category 3 | cat iii | cat 3",
        direct_vent="balanced flue | direct vented | concentric vent | concentric | two pipe | two pipe direct vent",
        sealed="sealed combustion | category iv | category 4 | cat iv | cat 4 | "
        "condensing | room sealed | closed combustion | sealed condensing | "
        "condensing sealed | 90% condensing | 95% condensing | 90+ | condensing furnace | condensing boiler | "
        "high efficiency condensing",
        unvented="vent free | ventless", open="open hearth | chimney draft | solid fuel | open fire",
    ),
]  # fmt: skip


@record
class Burner(Node):
    """An appliance that burns fuel."""

    short = ("draft",)
    spoken = ("draft", "fuel", "input")
    kind: BurnerKind | None = said("what it is", "water heater")
    fuel: Fuel | None = said("what it burns", "gas")
    input: HeatRate | None = said("input rate", "40000 Btu/h")
    draft: Draft | None = said("how its gases are driven out and its air comes in", "natural draft")
    location: Where | None = said("where it stands", "mechanical-room")
    inside_air_barrier: Flag | None = said("whether it stands inside the air barrier of the house", True)
    shares_vent_with: list[Annotated[str, Reference("combustion")]] = listed(
        "appliances on the same vent", "furnace"
    )
    alone_on_larger_vent: Flag | None = said("left alone on a vent sized for more (orphaned)", False)
    vent_damper: Flag | None = said("whether it has a vent damper", False)
    outside_chimney: Flag | None = said("whether its chimney is in an outside wall", False)
    room_sealed: Flag | None = said(
        "whether its room is sealed from the house, with air from outdoors", False
    )
    terminal: Annotated[str, Reference("openings")] | None = said(
        "its vent terminal among the openings, by name", "flue"
    )
    return_distance: Length | None = said("distance of the nearest return inlet to it", "12 ft")
    notes: Plain | None = said("anything a reader should know; no rule reads it")


def kind_by_name(name: str) -> str | None:
    """The kind that the whole name of a burner says, such as `range` or `water heater 2`."""
    spellings: dict[str, str] = BurnerKind.kind.spellings  # type: ignore[attr-defined]
    return spellings.get(fold(name)) or spellings.get(fold(name).rstrip("0123456789 "))
