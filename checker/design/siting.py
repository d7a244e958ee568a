"""Where an outdoor unit stands, and how equipment is fed with electricity."""

from checker.design.annotated import Annotated
from checker.design.fields import (
    Choice,
    Flag,
    Length,
    Node,
    Plain,
    Quantity,
    Reference,
    record,
    said,
)

Current = Annotated[float, Quantity("current")]
Support = Annotated[
    str,
    Choice(
        "pad", "stand", "wall brackets", "roof", "soil",
        pad="concrete pad | slab | plastic pad", stand="steel stand | snow stand | feet",
        wall_brackets="brackets | bracket | wall bracket | hung on the wall", roof="roof curb | flat roof",
        soil="none | earth | grade | grass | gravel",
    ),
]  # fmt: skip
Cover = Annotated[
    str,
    Choice(
        "nothing", "deck", "eave", "stairs", "another unit", nothing="none | open | open sky",
        deck="porch | balcony", eave="roof overhang | overhang | soffit", another_unit="stacked | unit above",
    ),
]  # fmt: skip
DefrostDrain = Annotated[
    str,
    Choice(
        "falls free", "piped", "plugged", falls_free="open | drips | free | gravel bed | open below",
        piped="hose | drain hose | pipe | drain socket", plugged="blocked | closed",
    ),
]  # fmt: skip


@record
class Clearances(Node):
    """Clear distances around an outdoor unit: as drawn, or as its maker asks."""

    front: Length | None = said("in front, where it blows out", "40 in")
    back: Length | None = said("behind it", "6 in")
    left: Length | None = said("at its left side", "8 in")
    right: Length | None = said("at its right side", "14 in")
    above: Length | None = said("above it", "5 ft")


@record
class Siting(Node):
    """Where and how an outdoor unit stands."""

    place: Annotated[str, Reference("openings")] | None = said(
        "the unit among the openings, by name, where its position is stated", "outdoor-unit"
    )
    base_height: Length | None = said("height of its base above grade", "24 in")
    support: Support | None = said("what it stands on", "stand")
    clearance: Clearances | None = said("clear distances as drawn")
    service_space: Length | None = said("clear depth and width in front of its service side", "30 in")
    to_lot_line: Length | None = said("distance to the nearest lot line", "12 ft")
    roof_sheds_on_it: Flag | None = said("whether a roof sheds snow and water onto it", False)
    to_bedroom_window: Length | None = said("distance to the nearest bedroom window, a neighbor's included", "14 ft")
    below: Cover | None = said("what it stands below: nothing, deck, eave, stairs, another unit", "nothing")
    defrost_drain: DefrostDrain | None = said("where its defrost water goes: falls free, piped, plugged", "falls free")
    base_heater: Flag | None = said("whether its base pan has a heater", True)
    drips_on_walk: Flag | None = said("whether defrost water drips on a walk, stairs or a drive", False)
    salt_air: Flag | None = said("whether sea spray or road salt reaches it", False)
    coil_protected: Flag | None = said("whether coil and cabinet are protected against salt by the maker", True)


@record
class Electrical(Node):
    """How a piece of equipment is fed."""

    dedicated_circuit: Flag | None = said("whether its branch circuit feeds nothing else", True)
    overcurrent: Current | None = said("rating of its breaker or fuse", "20 A")
    least_ampacity: Current | None = said("minimum circuit ampacity on its nameplate", "14 A")
    greatest_overcurrent: Current | None = said("greatest overcurrent device on its nameplate", "20 A")
    conductor_ampacity: Current | None = said("ampacity of the conductors that feed it", "20 A")
    disconnect_in_sight: Flag | None = said("whether its disconnect is within sight of it", True)
    disconnect_behind_it: Flag | None = said("whether one must reach over or behind the unit to it", False)
    outlet: Flag | None = said("whether an outlet for service tools is near it at all", True)
    outlet_distance: Length | None = said("distance to the nearest service outlet", "12 ft")
    outlet_same_level: Flag | None = said("whether that outlet is on the level of the unit", True)
    outlet_after_disconnect: Flag | None = said(
        "whether that outlet is fed from the load side of the unit's disconnect", False
    )
    notes: Plain | None = said("anything a reader should know; no rule reads it")
