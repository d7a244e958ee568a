"""The `equipment` section: what heats, cools and moves room air. Air-side facts are complete here."""

from typing import Annotated

from checker.design.airway import Where
from checker.design.fans import Control, Curve, OpeningRef, Setting, Tempering
from checker.design.fields import (
    Airflow,
    Choice,
    Flag,
    HeatRate,
    Node,
    Plain,
    Power,
    Pressure,
    Reference,
    Share,
    Temperature,
    listed,
    named,
    record,
    said,
)

EquipmentKind = Annotated[
    str,
    Choice(
        "wall unit", "floor unit", "ceiling unit", "slim duct unit", "air handler", "furnace", "boiler",
        "heat pump", "air conditioner", "electric heat", "dehumidifier", "water heater", "fireplace", "stove",
        "evaporative cooler", "packaged unit",
        wall_unit="wall head | high wall unit | ductless wall unit | ductless | mini split | ductless head",
        slim_duct_unit="ducted unit | slim duct | ducted mini split | concealed duct unit | small ducted unit | mini duct",
        ceiling_unit="ceiling cassette | cassette", floor_unit="console | floor console",
        air_handler="ahu | fan coil", heat_pump="outdoor unit | outdoor heat pump",
        electric_heat="baseboard | electric baseboard | strip heat", stove="wood stove | pellet stove",
        furnace="gas furnace", air_conditioner="ac",
    ),
]  # fmt: skip


@record
class Capacity(Node):
    """Heating or cooling capacity; a plain heat rate is read as the rated one."""

    short = ("rated",)
    rated: HeatRate | None = said("rated capacity", "7000 Btu/h")
    at_design: HeatRate | None = said("capacity at the design temperature", "5900 Btu/h")
    least: HeatRate | None = said("least capacity at which it runs steadily", "2800 Btu/h")
    sensible: HeatRate | None = said("sensible cooling capacity at design", "5200 Btu/h")


@record
class OutdoorAirDuct(Node):
    """An outdoor-air duct on the return side of an air handler."""

    airflow: Airflow | None = said("outdoor airflow at the fan speed used for ventilation", "60 cfm")
    opening: OpeningRef | None = said("its outdoor opening, by name", "intake")
    damper: Annotated[str, Choice("motorized", "manual", "none", motorized="motorised | powered")] | None = (
        said("motorized, manual or none", "motorized")
    )
    control: (
        Annotated[
            str,
            Choice(
                "cycle timer",
                "continuous fan",
                "with heating and cooling only",
                cycle_timer="fan cycler | cycler",
            ),
        ]
        | None
    ) = said("what makes the fan run for ventilation", "cycle timer")
    fan_share: Share | None = said("share of time that the fan is sure to run", "20 min/h")


@record
class EquipmentByMaker(Node):
    """Limits from the equipment's instructions."""

    greatest_static: Pressure | None = said("greatest external static pressure", "0.2 in w.c.")
    least_static: Pressure | None = said("least external static pressure", "0.04 in w.c.")
    least_entering: Temperature | None = said("least entering air temperature", "55 degF")


@record
class Equipment(Node):
    """A piece of heating or cooling equipment."""

    kind: EquipmentKind | None = said("what it is", "slim duct unit")
    location: Where | None = said("where it stands: a room, attic, crawl space, garage, outdoors", "attic")
    serves: list[Annotated[str, Reference("rooms")]] = listed("rooms it heats or cools", "bath", "laundry")
    outdoor_unit: Annotated[str, Reference("equipment")] | None = said(
        "the outdoor unit it is joined to", "heat-pump"
    )
    heating: Capacity | None = said("heating capacity", "7000 Btu/h")
    cooling: Capacity | None = said("cooling capacity", "7000 Btu/h")
    airflow: Airflow | None = said("rated airflow; else that of its highest setting", "200 cfm")
    settings: dict[str, Setting] = named("blower speeds by name", {"high": "230 cfm", "low": "150 cfm"})
    available_static: Pressure | None = said(
        "external static pressure it offers at its rated airflow", "0.12 in w.c."
    )
    curves: dict[str, Curve] = named("blower curves by setting: airflow against external static pressure")
    internal_filter: Flag | None = said(
        "whether its rated external static already counts its own filter", False
    )
    filter: Annotated[str, Reference("filters")] | None = said("its filter, by name", "return-filter")
    outdoor_air: OutdoorAirDuct | None = said("an outdoor-air duct on its return side")
    tempering: Tempering | None = said("how outdoor air is warmed before it")
    power: Power | None = said("blower power", "60 W")
    motor: Plain | None = said("blower motor kind", "ECM")
    cabinet_leakage: Share | None = said("air leakage of its cabinet by the maker's rating", "2 %")
    return_location: Where | None = said("where it takes its return air without a duct", "hall")
    sealed_combustion: Flag | None = said("whether all its combustion air comes by its own pipe", True)
    control: Control | None = said("what switches it")
    by_maker: EquipmentByMaker | None = said("what its instructions require")
    refrigerant: Plain | None = said("refrigerant", "R-32")
    duct_accessories: list[Plain] = listed(
        "electric or other accessories in its ducts", "electric duct heater"
    )
    accessory_power: Power | None = said("switched power of those accessories", "1.5 kW")
    notes: Plain | None = said("anything a reader should know; no rule reads it")
