"""The `equipment` section: what heats, cools and moves room air."""

from checker.design.airway import Where
from checker.design.annotated import Annotated
from checker.design.commissioning import Commissioning
from checker.design.fans import Control, Curve, OpeningRef, Setting, Tempering
from checker.design.fields import (
    Airflow,
    Choice,
    Energy,
    Flag,
    HeatRate,
    Length,
    MoistureFlow,
    Node,
    Plain,
    Power,
    Pressure,
    Reference,
    Share,
    Temperature,
    TemperatureDifference,
    listed,
    named,
    record,
    said,
)
from checker.design.hoods import Fuel
from checker.design.performance import (
    Backup,
    CoolingCoil,
    DataBasis,
    DuctHeater,
    PerformancePoint,
    Ratings,
    Stages,
    Zone,
)
from checker.design.siting import Clearances, Electrical, Siting

EquipmentKind = Annotated[
    str,
    Choice(
        "wall unit", "floor unit", "ceiling unit", "slim duct unit", "air handler", "furnace", "boiler",
        "heat pump", "air conditioner", "electric heat", "dehumidifier", "water heater", "fireplace", "stove",
        "evaporative cooler", "packaged unit", "humidifier", "portable heater",
        wall_unit="wall head | high wall unit | ductless wall unit | ductless | mini split | ductless head | minisplit | "
        "ductless mini split | wall mounted unit | high wall | high wall head | "
        "mini split head | minisplit head | ductless wall head | wall mounted head | wall mounted | wall cassette | "
        "split wall unit",
        slim_duct_unit="ducted unit | slim duct | ducted mini split | concealed duct unit | small ducted unit | mini duct | "
        "ducted minisplit | slim ducted unit | concealed ducted | horizontal ducted | low static ducted | mid static ducted",
        ceiling_unit="ceiling cassette | cassette", floor_unit="console | floor console | floor mounted unit | "
        "floor head | floor mounted head",
        air_handler="ahu | fan coil | fancoil | ducted air handler | hydronic air handler | electric furnace",
        heat_pump="outdoor unit | mini split outdoor unit | minisplit outdoor unit | multi split outdoor unit | "
        "multisplit outdoor unit | outdoor heat pump | air source heat pump | ashp | central heat pump",
        electric_heat="baseboard | electric baseboard | strip heat | heat strip | electric heater | electric wall heater | "
        "resistance heater | baseboard heater | electric baseboard heater | wall heater | cove heater | electric cove heater | "
        "electric radiant | electric radiant floor | electric floor heat | toe kick heater",
        stove="wood stove | pellet stove",
        furnace="gas furnace | oil furnace | propane furnace",
        boiler="gas boiler | oil boiler | combi boiler | hydronic boiler | hot water boiler",
        air_conditioner="ac | a/c | central ac | central air | central air conditioner | condenser | condensing unit",
        packaged_unit="package unit | rooftop unit | rtu | ptac | pthp | window unit | window ac",
        dehumidifier="whole house dehumidifier | ducted dehumidifier | portable dehumidifier | ventilating dehumidifier",
        humidifier="whole house humidifier | steam humidifier | bypass humidifier | fan powered humidifier | furnace humidifier",
        fireplace="gas fireplace",
        water_heater="heat pump water heater | hpwh | tankless | tankless water heater",
        evaporative_cooler="swamp cooler",
        portable_heater="portable space heater | portable electric heater | plug in heater",
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
    points: list[PerformancePoint] = listed(
        "capacity and power by outdoor temperature, from the maker's table",
        {"outdoor": "17 degF", "capacity": "9800 Btu/h", "power": "1150 W"},
    )
    basis: DataBasis | None = said("where the capacity at the design temperature was taken from", "performance table")
    winter_electricity: Energy | None = said(
        "heating: electricity of a winter, backup included, as the energy papers state it", "4300 kWh"
    )


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
    least_outdoor: Temperature | None = said("lowest outdoor temperature at which it heats", "-13 degF")
    least_rise: TemperatureDifference | None = said("least temperature rise of the air", "35 delta_degF")
    greatest_rise: TemperatureDifference | None = said("greatest temperature rise of the air", "65 delta_degF")
    altitude_factor: Share | None = said("capacity at this elevation as a share of that at sea level", "90 %")
    greatest_connected: Share | None = said(
        "greatest sum of indoor capacities as a share of the outdoor unit's", "130 %"
    )
    least_connected: Share | None = said(
        "least sum of indoor capacities as a share of the outdoor unit's", "50 %"
    )
    base_above_snow: Length | None = said("height of the base that it wants above the snow", "8 in")
    clearance: Clearances | None = said("clear distances that it wants around the outdoor unit")


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
    moisture_removal: MoistureFlow | None = said("dehumidifier: water that it takes out of the air, as rated", "70 pints/day")
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
    made_on: Plain | None = said("date on which it was made or imported", "2025-06-30")
    stages: Stages | None = said("how its capacity follows the load", "variable speed")
    nominal: HeatRate | None = said("nominal size, the figure in its model number", "3 ton")
    fuel: Fuel | None = said("fuel of a furnace or boiler", "gas")
    ratings: Ratings | None = said("certified ratings")
    backup: Backup | None = said("heat that helps a heat pump in the cold, or `none`")
    zones: dict[str, Zone] = named(
        "zones with a damper and thermostat each", {"upstairs": {"rooms": ["bedroom"], "airflow": "350 cfm"}}
    )
    bypass_damper: Flag | None = said("whether surplus air of closed zones goes back by a bypass damper", False)
    coil: CoolingCoil | None = said("the cooling coil beside a furnace")
    duct_heater: DuctHeater | None = said("an electric heater in its duct")
    electrical: Electrical | None = said("circuit, overcurrent device, disconnect and service outlet")
    siting: Siting | None = said("where and how an outdoor unit stands")
    commissioning: Commissioning | None = said("what was measured when it was set to work")
    listing: Plain | None = said("standard that it is listed by", "UL 60335-2-40")
    duct_accessories: list[Plain] = listed(
        "electric or other accessories in its ducts", "electric duct heater"
    )
    accessory_power: Power | None = said("switched power of those accessories", "1.5 kW")
    notes: Plain | None = said("anything a reader should know; no rule reads it")
