"""The `house` section: size, people, airtightness, and what lies around the heated rooms."""

from checker.design.annotated import Annotated
from checker.design.fields import (
    AirtightnessFact,
    Area,
    Choice,
    Count,
    Flag,
    Humidity,
    Length,
    Node,
    Number,
    Plain,
    Share,
    Temperature,
    UValue,
    Volume,
    record,
    said,
)

Basis = Annotated[
    str, Choice("target", "tested", target="design | goal | aim", tested="measured | blower door")
]
Attic = Annotated[
    str, Choice("vented", "conditioned", "unvented", "none", vented="ventilated | cold", conditioned="warm")
]
Crawl = Annotated[str, Choice("vented", "conditioned", "none", vented="ventilated | unconditioned")]
Foundation = Annotated[
    str,
    Choice(
        "slab", "crawl space", "basement", "piers",
        slab="slab on grade", crawl_space="crawl | crawlspace", piers="pier | posts",
    ),
]  # fmt: skip
Strategy = Annotated[
    str,
    Choice(
        "supply only", "exhaust only", "balanced", "balanced with recovery", "none",
        balanced_with_recovery="HRV | ERV | heat recovery | recovery | energy recovery | balanced with heat recovery | "
        "balanced with energy recovery | balanced with HRV | balanced with ERV | balanced HRV | balanced ERV | "
        "heat recovery ventilation | energy recovery ventilation | heat recovery ventilator | energy recovery ventilator",
        balanced="balanced without recovery | supply and exhaust",
        supply_only="supply | supply ventilation | positive pressure", exhaust_only="exhaust | exhaust ventilation | extract",
        none="natural | windows | natural ventilation",
    ),
]  # fmt: skip

FrontFaces = Annotated[
    str,
    Choice(
        "north", "northeast", "east", "southeast", "south", "southwest", "west", "northwest",
        north="N", northeast="NE | north east", east="E", southeast="SE | south east", south="S",
        southwest="SW | south west", west="W", northwest="NW | north west",
    ),
]  # fmt: skip


@record
class Indoor(Node):
    """Indoor air that the design assumes."""

    winter_temperature: Temperature | None = said("indoor temperature in winter", "70 degF")
    winter_humidity: Humidity | None = said("indoor relative humidity in winter", "35 %")
    summer_temperature: Temperature | None = said("indoor temperature in summer", "75 degF")
    summer_humidity: Humidity | None = said("indoor relative humidity in summer", "50 %")


@record
class MeasuredHouse(Node):
    """Values measured on site."""

    short = ("airtightness",)
    airtightness: AirtightnessFact | None = said("blower-door result", "1.6 ACH50")


@record
class House(Node):
    """The building as a whole."""

    floor_area: Area | None = said("conditioned floor area, basement included if conditioned", "1120 ft2")
    volume: Volume | None = said("conditioned volume", "9500 ft3")
    ceiling_height: Length | None = said("usual ceiling height", "8 ft 6 in")
    height: Length | None = said("height of the conditioned space, lowest floor to highest ceiling", "17 ft")
    height_above_grade: Length | None = said("the part of that height above grade, where a basement is conditioned", "18 ft")
    stories: Annotated[float, Number(0.5, 10)] | None = said("stories above grade", 1.5)
    bedrooms: Count | None = said("bedrooms; a den that could be one counts", 2)
    occupants: Count | None = said("people, where more than bedrooms plus one is known", 3)
    airtightness: AirtightnessFact | None = said("airtightness, target or tested", "1.4 ACH50", "650 cfm50")
    airtightness_is: Basis | None = said("whether the airtightness is a target or a test result", "target")
    envelope_area: Area | None = said(
        "area of the air barrier on all sides, for an airtightness stated per area of envelope", "4200 ft2"
    )
    leakage_exponent: Annotated[float, Number(0.5, 1.0)] | None = said(
        "exponent of the leakage test; 0.65 is assumed where absent", 0.65
    )
    measured: MeasuredHouse | None = said("values measured on site, beside the designed ones")
    strategy: Strategy | None = said("how the house is ventilated", "balanced")
    exterior_share: Share | None = said(
        "for an attached dwelling: share of its envelope that faces outdoors", "60 %"
    )
    front_faces: FrontFaces | None = said("compass point that the front of the house faces", "south")
    attached_garage: Flag | None = said("whether a garage shares a wall or ceiling with the dwelling", False)
    foundation: Foundation | None = said("what the house stands on", "slab")
    attic: Attic | None = said("what the attic is", "vented")
    crawl_space: Crawl | None = said("what the crawl space is", "none")
    indoor: Indoor | None = said("indoor air that the design assumes", {"winter_temperature": "70 degF"})
    glazing_u: UValue | None = said("U-value of the weakest window glass", "U-0.28")
    dwelling_units: Count | None = said("dwelling units that this file draws", 1)
    notes: Plain | None = said("anything a reader should know; no rule reads it")
