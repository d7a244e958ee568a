"""What equipment delivers by outdoor temperature, its ratings, its backup heat and its zones."""

from checker.design.annotated import Annotated
from checker.design.fields import (
    Airflow,
    Choice,
    Flag,
    HeatRate,
    Length,
    Node,
    Number,
    Plain,
    Power,
    Quantity,
    Reference,
    Temperature,
    listed,
    record,
    said,
)

SoundLevel = Annotated[float, Quantity("sound_level")]
Efficiency = Annotated[float, Number(0, 60)]
Percent = Annotated[float, Quantity("share")]
DataBasis = Annotated[
    str,
    Choice(
        "performance table", "rating", "nominal",
        performance_table="expanded data | maker's data | maker | engineering data | submittal | capacity table",
        rating="rated | certified rating | ahri | standard rating", nominal="nominal size | name plate | tons | model number",
    ),
]  # fmt: skip
Stages = Annotated[
    str,
    Choice(
        "single stage", "two stage", "variable speed",
        single_stage="single speed | one stage | one speed | 1 stage | single",
        two_stage="two speed | 2 stage | multi stage | two",
        variable_speed="variable | modulating | inverter | variable capacity | inverter driven",
    ),
]  # fmt: skip
BackupKind = Annotated[
    str,
    Choice(
        "electric resistance", "fuel",
        electric_resistance="electric | strip heat | electric strip | resistance | heat strips | strips | electric heat",
        fuel="gas | furnace | oil | propane | dual fuel",
    ),
]  # fmt: skip


@record
class PerformancePoint(Node):
    """What the equipment delivers at one outdoor temperature, by the maker's table."""

    outdoor: Temperature | None = said("outdoor temperature of this point", "17 degF")
    capacity: HeatRate | None = said("greatest capacity at that temperature", "9800 Btu/h")
    power: Power | None = said("electric power at that capacity", "1150 W")
    least: HeatRate | None = said("least capacity at that temperature", "2900 Btu/h")
    sensible: HeatRate | None = said("sensible part of a cooling capacity", "7600 Btu/h")
    entering_wet_bulb: Temperature | None = said("wet bulb of the room air that enters, for cooling", "63 degF")
    entering_dry_bulb: Temperature | None = said("temperature of the room air that enters, for heating", "70 degF")


@record
class Ratings(Node):
    """Certified ratings of the combination that is installed."""

    seer2: Efficiency | None = said("seasonal cooling efficiency (SEER2), Btu/Wh", 16.2)
    eer2: Efficiency | None = said("cooling efficiency at 95 degF (EER2), Btu/Wh", 10.5)
    hspf2: Efficiency | None = said("seasonal heating efficiency (HSPF2), Btu/Wh", 8.5)
    seer: Efficiency | None = said("seasonal cooling efficiency by the procedure before 2023 (SEER)", 18)
    hspf: Efficiency | None = said("seasonal heating efficiency by the procedure before 2023 (HSPF)", 10)
    afue: Percent | None = said("annual fuel use efficiency of a furnace or boiler (AFUE)", "95 %")
    combination: Plain | None = said(
        "certified reference number of the outdoor and indoor combination", "on the equipment schedule"
    )
    matched: Flag | None = said(
        "whether the ratings are those of this very outdoor and indoor combination", True
    )
    sound_level: SoundLevel | None = said("sound level of the outdoor unit, dB(A)", "52 dB")
    sound_distance: Length | None = said(
        "distance at which that level was measured; 1 m (3 ft) is usual", "3 ft"
    )
    sound_power: SoundLevel | None = said("sound power level of the outdoor unit, dB(A)", "62 dB")


@record
class Backup(Node):
    """Heat that helps a heat pump when it alone is too small; `none` where there is none."""

    short = ("power",)
    spoken = ("power", "kind")
    kind: BackupKind | None = said("what gives it", "electric resistance")
    power: Power | None = said("its heat output", "5 kW")
    held_off: Flag | None = said(
        "whether a control keeps it off while the heat pump alone carries the load", True
    )
    lock_out: Temperature | None = said("outdoor temperature above which it stays locked out", "30 degF")
    compressor_lock_out: Temperature | None = said(
        "outdoor temperature below which the heat pump is switched off", "-5 degF"
    )


@record
class Zone(Node):
    """Rooms behind one zone damper, with a thermostat of their own."""

    rooms: list[Annotated[str, Reference("rooms")]] = listed("rooms of the zone", "bedroom", "bath")
    airflow: Airflow | None = said("airflow that the ducts of this zone can take alone", "350 cfm")


@record
class CoolingCoil(Node):
    """A cooling coil beside a furnace."""

    position: (
        Annotated[
            str,
            Choice(
                "downstream", "upstream", downstream="after the furnace | supply side", upstream="before the furnace | return side"
            ),
        ]
        | None
    ) = said("downstream or upstream of the heat exchanger", "downstream")
    listed_upstream: Flag | None = said("whether the furnace is listed for a coil upstream of it", False)
    blower_listed: Flag | None = said("whether the furnace is listed for use with a cooling coil", True)


@record
class DuctHeater(Node):
    """An electric heater in the duct."""

    power: Power | None = said("its power", "3 kW")
    to_unit: Length | None = said("duct length between it and the heat pump or air conditioner", "6 ft")
    listed_for_unit: Flag | None = said(
        "whether heater and unit are both listed for use this near each other", True
    )
    fan_interlock: Flag | None = said("whether it can only be on while the blower runs", True)
    listing: Plain | None = said("its listing", "UL 1996")
