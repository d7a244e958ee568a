"""The `refrigerant` section: the lines between outdoor and indoor units, and the refrigerant in them."""

from checker.design.airway import Where
from checker.design.annotated import Annotated
from checker.design.fields import (
    Area,
    Choice,
    Diameter,
    Flag,
    Length,
    Node,
    Permeance,
    Plain,
    Quantity,
    Reference,
    Resistance,
    SignedLength,
    TemperatureDifference,
    listed,
    record,
    said,
)

Mass = Annotated[float, Quantity("mass")]
ChargePerLength = Annotated[float, Quantity("charge_per_length")]
Protection = Annotated[
    str,
    Choice(
        "cover", "jacket", "coating", "tape", "none",
        cover="line cover | line set cover | lineset cover | cover set | channel | duct cover",
        jacket="metal jacket | aluminum jacket | pvc jacket | jacketed | wrap", none="bare | unprotected | no",
        coating="paint | uv coating | uv paint | factory coating", tape="adhesive tape | uv tape | vinyl tape",
    ),
]  # fmt: skip
Penetration = Annotated[
    str,
    Choice(
        "sleeved and sealed", "sealed", "sleeved", "open",
        sleeved_and_sealed="sleeve and seal | sleeved + sealed", sealed="caulked | foamed | gasketed",
        sleeved="sleeve only", open="unsealed | not sealed",
    ),
]  # fmt: skip
Done = Annotated[
    str, Choice("planned", "done", "none", planned="yes", done="passed | tested", none="not planned | no")
]


@record
class LinesByMaker(Node):
    """Limits from the equipment's instructions."""

    greatest_length: Length | None = said("greatest length of the lines, one way", "65 ft")
    least_length: Length | None = said("least length of the lines, one way", "10 ft")
    greatest_lift: Length | None = said("greatest height between the units, whichever is above", "40 ft")
    greatest_indoor_above: Length | None = said(
        "greatest height of the indoor unit above the outdoor one, where it differs", "40 ft"
    )
    greatest_indoor_below: Length | None = said(
        "greatest height of the indoor unit below the outdoor one, where it differs", "50 ft"
    )
    liquid: list[Diameter] = listed("liquid line sizes allowed, outside diameter", "1/4 in")
    suction: list[Diameter] = listed("suction (gas) line sizes allowed, outside diameter", "3/8 in")
    included_length: Length | None = said("length that the factory charge covers", "25 ft")
    charge_per_length: ChargePerLength | None = said("charge to add beyond that length", "0.2 oz/ft")
    greatest_charge: Mass | None = said("greatest charge of the system", "3 lb 8 oz")
    least_room_area: Area | None = said(
        "least floor area of the room for this charge and mounting height, by the maker's table", "120 ft2"
    )


@record
class RefrigerantLine(Node):
    """A pair of refrigerant lines from an outdoor unit to an indoor unit.

    What belongs to the whole system (refrigerant, charge, caps, tests, label) may stand on any one of its lines.
    """

    from_: Annotated[str, Reference("equipment")] | None = said(
        "outdoor unit, by name; else the indoor unit tells it", "heat-pump", key="from"
    )
    to: list[Annotated[str, Reference("equipment")]] = listed(
        "indoor unit, by name; a line named after the unit needs no word", "bedroom-unit"
    )
    existing: Flag | None = said("an existing system that stays as it is", False)
    refrigerant: Plain | None = said("refrigerant; else the equipment tells it", "R-32")
    length: Length | None = said("length of the lines, one way", "24 ft")
    rise: SignedLength | None = said("height of the indoor unit above the outdoor unit; below: negative", "8 ft")
    liquid: Diameter | None = said("outside diameter of the liquid line", "1/4 in")
    suction: Diameter | None = said("outside diameter of the suction (gas) line", "3/8 in")
    insulation: Resistance | None = said("insulation of the suction line, or `none`", "R-3")
    insulation_permeance: Permeance | None = said("permeance of the outer surface of the insulation", "0.05 perm")
    protection: Protection | None = said("what shields the insulation outdoors from sun and damage", "cover")
    protection_removable: Length | None = said(
        "length at the outdoor unit over which that protection can be taken off", "6 ft"
    )
    location: list[Where] = listed("where the lines run: rooms, attic, exterior wall, outdoors ...", "exterior wall")
    concealed: Flag | None = said("whether they run hidden in framed walls, floors or ceilings", True)
    edge_distance: Length | None = said("least distance from the face of the framing that hides them", "1 1/2 in")
    deck_clearance: Length | None = said("distance below the roof deck, where they run near it", "4 in")
    nail_plates: Flag | None = said("whether steel shield plates protect them from nails and screws", True)
    penetration: Penetration | None = said("how they pass the outer wall or roof", "sleeved and sealed")
    first_support: Length | None = said("distance of the first fixed support from the outdoor unit", "3 ft")
    locking_caps: Flag | None = said("whether outdoor service ports have locking caps", True)
    listing: Plain | None = said("safety standard that the system is listed to", "UL/CSA 60335-2-40")
    made_on: Plain | None = said("date on which the outdoor unit was made", "2025-06-30")
    installed_on: Plain | None = said("date on which the system is to be installed", "2026-09-01")
    charge: Mass | None = said("charge of the whole system, what is added on site included", "2 lb 6 oz")
    added_charge: Mass | None = said("charge to be added on site for this line", "2 oz")
    subcooling: TemperatureDifference | None = said("subcooling of the liquid at the outdoor unit", "10 delta_degF")
    room: Annotated[str, Reference("rooms")] | None = said(
        "room into which a leak would run; else where the indoor unit stands", "bedroom"
    )
    room_area: Area | None = said("floor area of that room with those always open to it; else by the room", "130 ft2")
    mounting_height: Length | None = said("height of the indoor unit above the floor; else by its kind", "6 ft")
    leak_detection: Flag | None = said("a refrigerant detector that starts the blower", True)
    label: Flag | None = said("label with installer, charge and refrigerant number", True)
    papers_left: Flag | None = said("whether manuals stay with the indoor unit or the owner", True)
    pressure_test: Done | None = said("pressure test of the lines: planned, done or none", "planned")
    vacuum: Done | None = said("deep vacuum before charging: planned, done or none", "planned")
    by_maker: LinesByMaker | None = said("what the equipment's instructions require")
    notes: Plain | None = said("anything a reader should know; no rule reads it")
