"""The `outdoor_heat` section: heat that is given outside the house on purpose, and what switches it."""

from checker.design.annotated import Annotated
from checker.design.fields import Choice, Flag, Node, Plain, Power, Temperature, record, said

OutdoorHeatKind = Annotated[
    str,
    Choice(
        "snow melting", "roof deicing", "freeze protection", "outdoor heating",
        snow_melting="snow melt | snow melting system | ice melting | heated driveway | heated walk | snowmelt",
        roof_deicing="gutter deicing | roof and gutter deicing | deicing | deicing cable | roof cable | gutter cable | heat cable",
        freeze_protection="heat trace | heat tracing | pipe heating | heat tape | pipe freeze protection",
        outdoor_heating="patio heater | outdoor heater | radiant heater | porch heater",
    ),
]  # fmt: skip
Shutoff = Annotated[str, Choice("automatic", "manual", "none", manual="hand | switch", automatic="auto")]
OffAlone = Annotated[
    str,
    Choice(
        "occupancy sensor", "timer switch", "none",
        occupancy_sensor="occupancy | motion sensor | presence", timer_switch="timer | countdown timer | time switch",
        none="switch | manual",
    ),
]  # fmt: skip


@record
class OutdoorHeat(Node):
    """One system that heats outside the house: a drive, a roof edge, a pipe, a seat."""

    kind: OutdoorHeatKind | None = said(
        "snow melting, roof deicing, freeze protection or outdoor heating", "snow melting"
    )
    location: Plain | None = said("where", "front walk")
    power: Power | None = said("its power", "4 kW")
    pavement_sensor: Flag | None = said("whether a sensor in the pavement turns it off", True)
    off_above_pavement: Temperature | None = said("pavement temperature above which that sensor turns it off", "50 degF")
    precipitation_sensor: Flag | None = said("whether it goes off by itself while nothing falls", True)
    off_above: Temperature | None = said("outdoor temperature above which it goes off by itself", "40 degF")
    shutoff: Shutoff | None = said("whether it goes off there by itself or by hand", "automatic")
    moisture_sensor: Flag | None = said("whether it goes off by itself while nothing is wet", True)
    daylight_control: Flag | None = said("whether it goes off by itself from sunset to sunrise", False)
    senses_fluid: Flag | None = said("whether it goes off by itself when the fluid cannot freeze", False)
    radiant: Flag | None = said("whether it heats by radiation", True)
    off_alone: OffAlone | None = said("what turns it off when nobody is there", "occupancy sensor")
    notes: Plain | None = said("anything a reader should know; no rule reads it")
