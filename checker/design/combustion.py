"""The `combustion` section: what burns, where, and how its gases leave. Facts that the air side needs."""

from typing import Annotated

from checker.design.airway import Where
from checker.design.fields import (
    Choice,
    Flag,
    HeatRate,
    Length,
    Node,
    Plain,
    Reference,
    listed,
    record,
    said,
)
from checker.design.hoods import Fuel

BurnerKind = Annotated[
    str,
    Choice(
        "furnace", "boiler", "water heater", "fireplace", "stove", "range", "dryer", "space heater", "other",
        stove="wood stove | pellet stove", water_heater="gas water heater", fireplace="open fireplace | gas fireplace",
        space_heater="room heater | wall heater", range="cooktop | gas range",
    ),
]  # fmt: skip
Draft = Annotated[
    str,
    Choice(
        "natural draft", "fan-assisted", "induced draft", "power vent", "direct vent", "sealed", "unvented", "open",
        natural_draft="atmospheric | draft hood | natural | gravity | b vent | category i natural",
        fan_assisted="fan assisted | category i fan assisted", induced_draft="mechanical draft | induced",
        power_vent="power vented | power venter", direct_vent="balanced flue",
        sealed="sealed combustion | category iv | condensing", unvented="vent free | ventless",
        open="open hearth | chimney draft | solid fuel",
    ),
]  # fmt: skip


@record
class Burner(Node):
    """An appliance that burns fuel."""

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
