"""The `ducts` section: duct systems by name, each with its runs and its outlets."""

from checker.design.airway import Run
from checker.design.annotated import Annotated
from checker.design.fields import (
    Airflow,
    Area,
    Choice,
    Count,
    DuctSize,
    Flag,
    FrictionRate,
    HeatRate,
    Leakage,
    Length,
    Node,
    Number,
    Plain,
    Pressure,
    Reference,
    SmallArea,
    Temperature,
    Velocity,
    listed,
    named,
    record,
    said,
)

OutletKind = Annotated[
    str,
    Choice(
        "supply register", "supply diffuser", "return grille", "filter grille", "exhaust grille", "outdoor air outlet",
        "transfer grille",
        supply_register="register | supply | supply grille | floor register | supply outlet | wall register | "
        "ceiling register | "
        "toe kick register | supply valve",
        supply_diffuser="diffuser | ceiling diffuser", return_grille="return | return air grille",
        filter_grille="return filter grille", exhaust_grille="exhaust | extract grille | extract | "
        "extract valve | exhaust valve | exhaust inlet",
        outdoor_air_outlet="fresh air outlet | fresh air | fresh air grille | ventilation outlet",
        transfer_grille="transfer | jumper duct | jump duct | jumper",
    ),
]  # fmt: skip
Mounting = Annotated[
    str,
    Choice(
        "floor",
        "low wall",
        "high wall",
        "ceiling",
        "toe kick",
        high_wall="wall | sidewall | high sidewall",
        low_wall="baseboard | low sidewall",
    ),
]
TestStage = Annotated[
    str,
    Choice(
        "rough-in without air handler", "rough-in with air handler", "complete",
        complete="post construction | finished | final | after construction", rough_in_with_air_handler="rough-in",
    ),
]  # fmt: skip


UNDER_ROOF = Choice("attic", "crawl space", "garage", "basement", crawl_space="crawl | crawlspace")


@record
class MeasuredOutlet(Node):
    """Values measured on site."""

    short = ("airflow",)
    airflow: Airflow | None = said("airflow measured", "52 cfm")


@record
class Outlet(Node):
    """Where duct air meets a room: register, diffuser, return or exhaust grille."""

    short = ("airflow",)
    spoken = ("airflow", "kind", "size")
    room: Annotated[str, Reference("rooms")] | None = said("room it is in", "bedroom")
    kind: OutletKind | None = said("what it is", "supply register")
    airflow: Airflow | None = said("design airflow", "60 cfm")
    measured: MeasuredOutlet | None = said("values measured on site")
    size: DuctSize | None = said("face size", "10x6 in")
    free_area: SmallArea | None = said("net free area", "40 in2")
    pressure_drop: Pressure | None = said("pressure drop at the design airflow", "0.03 in w.c.")
    throw: Length | None = said("throw to a terminal velocity of 75 fpm at the design airflow", "9 ft")
    throw_at: Airflow | None = said("airflow that the throw is listed at, where it is another", "80 cfm")
    throw_velocity: Velocity | None = said("terminal velocity that the throw is listed at, where it is another", "100 fpm")
    distance_to_wall: Length | None = said("distance from it to the wall or the end of the zone it blows toward", "11 ft")
    mounting: Mounting | None = said("floor, low wall, high wall, ceiling", "high wall")
    filter: Annotated[str, Reference("filters")] | None = said("filter that sits in it", "return-filter")
    distance_to_flame: Length | None = said("distance to an open combustion chamber or draft hood", "12 ft")
    distance_to_cooking: Length | None = said("distance to the cooking appliance", "12 ft")


@record
class Loss(Node):
    """A component that takes static pressure: coil, damper, heater, grille."""

    short = ("drop", "at")
    drop: Pressure | None = said("pressure drop", "0.08 in w.c.")
    at: Airflow | None = said("airflow of that drop; the design airflow unless said", "200 cfm")
    inside: Flag | None = said("inside the unit and already counted in its rated external static", False)


@record
class DuctLeakage(Node):
    """Duct leakage, target or tested."""

    short = ("total",)
    total: Leakage | None = said("total leakage at 25 Pa", "40 cfm25")
    to_outdoors: Leakage | None = said("leakage to outdoors at 25 Pa", "20 cfm25")
    stage: TestStage | None = said("when it is tested", "complete")
    leakage_class: Annotated[float, Number(1, 60)] | None = said(
        "leakage class, cfm per 100 ft2 of duct surface at 1 in w.c.", 12
    )
    seal_class: Annotated[str, Choice("A", "B", "C", "unsealed", unsealed="none | not sealed")] | None = said(
        "seal class of the ducts, where no leakage class is stated", "A"
    )
    tested: Flag | None = said("whether it is a test result", False)


@record
class DuctSystem(Node):
    """One duct system: what moves the air, its runs, its outlets and its losses."""

    mover: Annotated[str, Reference("equipment", "fans", "hoods")] | None = said(
        "equipment or fan that moves the air; the system's own name unless said", "slim-duct"
    )
    airflow: Airflow | None = said("design airflow of the system; else the sum of its outlets", "200 cfm")
    setting: Plain | None = said("setting of the mover that the system is designed at", "high")
    runs: dict[str, Run] = named("runs by name")
    outlets: dict[str, Outlet] = named("registers and grilles by name")
    losses: dict[str, Loss] = named("other components that take pressure, by name", {"coil": "0.1 in w.c."})
    returns_ducted: Count | None = said("ducted returns", 1)
    return_from: list[Annotated[str, Reference("rooms", words=UNDER_ROOF)]] = listed(
        "rooms that returns draw from, without outlets", "hall"
    )
    leakage: DuctLeakage | None = said("duct leakage, target or tested")
    floor_area_served: Area | None = said("conditioned floor area that it serves", "1120 ft2")
    all_inside: Flag | None = said(
        "whether all ducts and the air handler are inside the conditioned space", True
    )
    design_method: Plain | None = said("how the ducts were sized", "ACCA Manual D")
    sizing_basis_of_returns: Plain | None = said(
        "how returns and transfer openings were sized", "ACCA Manual D"
    )
    declared_friction_rate: FrictionRate | None = said(
        "friction rate on the designer's sheet", "0.08 in w.c./100 ft"
    )
    declared_total_effective_length: Length | None = said("total effective length on the sheet", "210 ft")
    declared_available_static: Pressure | None = said(
        "available static pressure on the sheet", "0.17 in w.c."
    )
    supply_temperature: Temperature | None = said("coldest supply air", "55 degF")
    greatest_supply_temperature: Temperature | None = said("hottest supply air", "120 degF")
    heat_output: HeatRate | None = said("heating output it carries", "7000 Btu/h")
    ventilation_only: Flag | None = said("carries outdoor or exhaust air only", False)
    sealant_listing: Plain | None = said("marking of the tape or mastic on all its joints", "UL 181B-M")
    underfloor_plenum: Flag | None = said("whether the space under the floor itself carries its air", False)
    serves_dwellings: Count | None = said("dwelling units it serves", 1)
    notes: Plain | None = said("anything a reader should know; no rule reads it")
