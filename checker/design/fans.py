"""The `fans` section: whatever moves outdoor, exhaust or room air, with its settings."""

from checker.design.airway import PLACES, Airway, Where
from checker.design.annotated import Annotated
from checker.design.fields import (
    Airflow,
    Choice,
    Diameter,
    Flag,
    Humidity,
    Length,
    Node,
    Number,
    Plain,
    Power,
    Pressure,
    Reference,
    Share,
    Sound,
    Temperature,
    listed,
    named,
    record,
    said,
)
from checker.design.make_up_air import MakeUpAir

FanRole = Annotated[
    str,
    Choice(
        "supply", "exhaust", "recovery", "recirculating", "transfer", "booster",
        supply="fresh air | outdoor air | intake | supply fan | make up air",
        recovery="hrv | erv | heat recovery | energy recovery | balanced | recovery unit | heat recovery ventilator | "
        "energy recovery ventilator | heat recovery ventilation | energy recovery ventilation | mvhr",
        exhaust="extract | exhaust fan | local exhaust | bath exhaust | whole house exhaust | bath fan | bathroom fan | "
        "bathroom exhaust | kitchen exhaust | toilet exhaust",
        recirculating="circulating | recirculation",
    ),
]  # fmt: skip
FanKind = Annotated[
    str,
    Choice(
        "in-line", "ceiling", "wall", "remote", "through-the-wall", "recovery unit", "attic", "whole-house cooling",
        in_line="inline | inline fan | in line fan | duct fan",
        ceiling="bath fan | bathroom fan | utility | ceiling fan unit | ceiling mounted",
        recovery_unit="hrv | erv | heat recovery ventilator | energy recovery ventilator | heat recovery | energy recovery",
        wall="wall mounted",
        whole_house_cooling="whole house fan",
    ),
]  # fmt: skip
RunWord = Annotated[
    str,
    Choice(
        "continuous", "on demand",
        continuous="always | all day | 24/7 | 24 h | cont | always on | 24 hours",
        on_demand="intermittent | boost | demand",
    ),
]
SwitchKind = Annotated[
    str,
    Choice(
        "switch", "timer", "occupancy", "humidity", "contaminant", "always on", "with light", "programmable",
        "delay off", "wall control",
        switch="manual | wall switch | boost switch | manual switch | on off switch | toggle switch",
        timer="countdown timer", occupancy="motion | occupancy sensor | motion sensor",
        humidity="humidistat | humidity sensor | dehumidistat | humidity sensing", always_on="none | continuous",
        with_light="light switch", contaminant="carbon dioxide | co2 | air quality", delay_off="off delay",
        programmable="scheduler | programmable timer | cycle timer | 24 hour timer | 24 h timer | clock timer | time clock",
    ),
]  # fmt: skip
CurveBasis = Annotated[str, Choice("static", "total", static="static pressure", total="total pressure")]
OpeningRef = Annotated[str, Reference("openings", "rooms", "equipment", "ducts", words=PLACES)]
SettingRef = Annotated[str, Reference("settings")]


@record
class MeasuredFlow(Node):
    """Values measured on site at one setting."""

    short = ("airflow", "static")
    airflow: Airflow | None = said("airflow measured", "47 cfm")
    supply_airflow: Airflow | None = said("recovery unit: supply airflow measured", "70 cfm")
    exhaust_airflow: Airflow | None = said("recovery unit: exhaust airflow measured", "66 cfm")
    static: Pressure | None = said("static pressure measured", "0.3 in w.c.")


@record
class Setting(Node):
    """One speed or mode; a plain airflow in its place is read as `airflow`, `80 cfm at 0.25 in w.c.` as both."""

    short = ("airflow", "static")
    spoken = ("airflow", "static", "power", "sound", "on_time", "run")
    airflow: Airflow | None = said("airflow that the mover gives, installed", "55 cfm")
    supply_airflow: Airflow | None = said("recovery unit: outdoor air in, where it differs", "70 cfm")
    exhaust_airflow: Airflow | None = said("recovery unit: air out, where it differs", "70 cfm")
    static: Pressure | None = said("static pressure at which that airflow is stated", "0.25 in w.c.")
    power: Power | None = said("electric power at this setting", "16 W")
    sound: Sound | None = said("loudness at this setting", "0.5 sone")
    run: RunWord | None = said(
        "continuous or on demand; a setting called `continuous` needs no word", "continuous"
    )
    on_time: Share | None = said("share of time it runs, when it cycles by a timer", "20 min/h")
    cycle: Annotated[float, Number(0)] | None = said(
        "length of one on-off cycle in hours; an `on_time` in minutes per hour has one of an hour", 1
    )
    runs_with: list[SettingRef] = listed("settings of others that start together with it", "range-hood.high")
    not_with: list[SettingRef] = listed("settings of others that it locks out", "range-hood.high")
    measured: MeasuredFlow | None = said("values measured on site, beside the designed ones")


@record
class CurvePoint(Node):
    """A point of a fan curve."""

    airflow: Airflow | None = said("airflow", "120 cfm")
    pressure: Pressure | None = said("pressure rise at that airflow", "0.2 in w.c.")


@record
class Curve(Node):
    """A fan curve at one speed in standard air."""

    points: list[CurvePoint] = listed(
        "points by rising airflow", {"airflow": "100 cfm", "pressure": "0.3 in w.c."}
    )
    basis: CurveBasis | None = said("static or total pressure", "static")
    setting: Plain | None = said("setting that the curve belongs to", "boost")


@record
class Rating(Node):
    """What the listing certifies."""

    short = ("airflow", "static")
    spoken = ("airflow", "static", "power")
    airflow: Airflow | None = said("certified airflow", "80 cfm")
    static: Pressure | None = said("static pressure of that airflow", "0.25 in w.c.")
    power: Power | None = said("electric power at that airflow and static pressure", "22 W")
    standard: Plain | None = said("test standard of the airflow rating", "AMCA 210", "HVI 916")


@record
class Recovery(Node):
    """Heat and moisture recovery at stated conditions."""

    sensible: Share | None = said("sensible recovery efficiency (SRE)", "75 %")
    apparent: Share | None = said("apparent sensible effectiveness (ASE)", "80 %")
    moisture: Share | None = said("moisture (latent) recovery", "45 %")
    at: Temperature | None = said("outdoor temperature of the figures", "32 degF")
    both_sides_filtered: Flag | None = said(
        "whether incoming and outgoing air both pass a filter before the core", True
    )
    frost_control: Plain | None = said("how it keeps from freezing", "recirculating defrost")


@record
class Tempering(Node):
    """How outdoor air is warmed before it reaches people or equipment."""

    by: Annotated[str, Choice("mixing", "heater", "recovery", "none", mixing="return air | mixed")] | None = (
        said("mixing with return air, a heater, recovery or none", "mixing")
    )
    power: Power | None = said("heater power", "1.0 kW")
    mixed_with: Airflow | None = said("airflow of the return air it mixes with", "350 cfm")
    least_entering: Temperature | None = said("least air temperature that the equipment allows", "55 degF")


@record
class Control(Node):
    """What switches it and how people reach the switch."""

    short = ("by",)
    by: SwitchKind | None = said("what switches it", "humidity")
    override: Flag | None = said("whether people can override it by hand", True)
    label: Plain | None = said("text or symbol on the control, or `none`", "WHOLE-HOUSE VENTILATION")
    location: Plain | None = said("where the control is", "hall")
    accessible: Flag | None = said("whether people can readily reach it", True)
    delay: Annotated[float, Number(0)] | None = said("longest delay-off setting in minutes", 20)
    shortest_delay: Annotated[float, Number(0)] | None = said("shortest delay-off setting in minutes", 10)
    humidity_low: Humidity | None = said("lowest humidity set point", "50 %")
    humidity_high: Humidity | None = said("highest humidity set point", "80 %")
    humidity_set: Humidity | None = said("humidity that it is to be set to", "50 %")
    follows_outdoor: Flag | None = said(
        "humidifier: whether its set point falls by itself with the outdoor temperature", True
    )


@record
class FanByMaker(Node):
    """Limits from the fan's instructions."""

    greatest_static: Pressure | None = said("greatest static pressure", "0.4 in w.c.")
    greatest_length: Length | None = said("greatest equivalent duct length", "60 ft")
    least_duct: Diameter | None = said("least duct diameter", "6 in")
    least_entering: Temperature | None = said("least entering air temperature", "0 degF")


@record
class Fan(Node):
    """A fan, its settings, its ducts and what switches it."""

    role: FanRole | None = said("what it does with the air", "supply")
    kind: FanKind | None = said("how it is built", "in-line")
    whole_house: Flag | None = said("whether it belongs to the whole-house ventilation", True)
    room: list[Annotated[str, Reference("rooms")]] = listed("rooms it exhausts from or supplies to", "bath")
    location: Where | None = said("where the fan itself hangs", "attic")
    settings: dict[str, Setting] = named("its speeds or modes by name", {"continuous": "55 cfm"})
    rating: Rating | None = said("certified airflow, static pressure and test standard")
    curves: dict[str, Curve] = named("fan curves by the setting they belong to")
    from_: list[OpeningRef] = listed("outdoor opening or room it draws from", "gable-intake", key="from")
    to: list[OpeningRef] = listed("outdoor opening or rooms it delivers to", "bath-exhaust")
    duct: Airway | None = said("its duct, as one line")
    exhaust_duct: Airway | None = said("recovery unit: the duct of the outgoing side")
    outlet_size: Diameter | None = said("diameter of its outlet collar", "6 in")
    turn_at_outlet: Annotated[str, Choice("none", "90", "180", none="straight")] | None = said(
        "a turn directly at the fan's outlet, in degrees", "180"
    )
    filter: Annotated[str, Reference("filters")] | None = said("its filter, by name", "fresh-air-filter")
    recovery: Recovery | None = said("heat and moisture recovery", {"sensible": "75 %", "at": "32 degF"})
    make_up_air: MakeUpAir | None = said("make-up air for a big exhaust fan, or `none`")
    tempering: Tempering | None = said("how the outdoor air is warmed")
    control: Control | None = said("what switches it")
    damper: Flag | None = said("whether an automatic or gravity damper closes it when off", True)
    listing: Plain | None = said("listing", "UL 507")
    motor: Plain | None = said("motor kind", "ECM")
    duct_to_grille: Length | None = said("duct length between a remote fan and its grille", "6 ft")
    for_cooling_only: Flag | None = said("used only to cool the house with windows open", False)
    by_maker: FanByMaker | None = said("what its instructions require")
    notes: Plain | None = said("anything a reader should know; no rule reads it")
