"""The `controls`, `papers` and `accepted` sections."""

from checker.design.annotated import Annotated
from checker.design.certificate import EnergyCertificate
from checker.design.energy_paper import EnergyPaper
from checker.design.fields import (
    Airflow,
    AirtightnessFact,
    Area,
    Choice,
    Count,
    Flag,
    FrictionRate,
    HeatRate,
    Length,
    Node,
    Number,
    Plain,
    Pressure,
    Quantity,
    Share,
    Temperature,
    TemperatureDifference,
    UValue,
    listed,
    named,
    record,
    said,
)
from checker.design.house import FrontFaces
from checker.design.selection_paper import SelectionPaper

Schedule = Annotated[
    str,
    Choice(
        "weekly", "daily", "none",
        weekly="7 day | seven day | 5-2 day | 5-1-1 day | days of the week | learning | smart",
        daily="day | every day alike | 24 hour", none="not programmable | non programmable | fixed | one set point",
    ),
]  # fmt: skip
DemandResponse = Annotated[
    str,
    Choice("OpenADR 2.0a", "OpenADR 2.0b", "IEC 62746-10-1", "CTA-2045-A", "CTA-2045-B", "AHRI 1380",
           "utility protocol", "none", utility_protocol="utility | protocol of the utility"),
]  # fmt: skip


@record
class ControlPoint(Node):
    """A thermostat, switch, timer or interlock."""

    switches: list[Plain] = listed(
        "fans, hoods, dampers or equipment that it switches", "fresh-air", "range-hood.high"
    )
    kind: Plain | None = said("thermostat, switch, timer, interlock, humidity ...", "interlock")
    location: Plain | None = said("where it is", "hall")
    override: Flag | None = said("whether people can override it by hand", True)
    label: Plain | None = said("text or symbol on it, or `none`", "WHOLE-HOUSE VENTILATION")
    accessible: Flag | None = said("whether it is readily accessible", True)
    whole_house_ventilation: Flag | None = said("whether it controls the whole-house ventilation", True)
    primary: Flag | None = said("thermostat: whether it is that of the primary heating or cooling", True)
    schedule: Schedule | None = said("thermostat: set points by hours alone, by days of the week as well, or none", "weekly")
    lowest_setting: Temperature | None = said("thermostat: lowest temperature that it can hold", "45 degF")
    highest_setting: Temperature | None = said("thermostat: highest temperature that it can hold", "90 degF")
    heating_preset: Temperature | None = said("thermostat: heating set point as it comes from its maker", "70 degF")
    cooling_preset: Temperature | None = said("thermostat: cooling set point as it comes from its maker", "78 degF")
    heating_set: Temperature | None = said("thermostat: heating set point that the design wants", "69 degF")
    cooling_set: Temperature | None = said("thermostat: cooling set point that the design wants", "76 degF")
    setback: TemperatureDifference | None = said("thermostat: by how much it lowers heating at night", "4 delta_degF")
    recovers_early: Flag | None = said(
        "thermostat: whether it warms up early and holds backup heat off meanwhile", True
    )
    deadband: TemperatureDifference | None = said(
        "thermostat: least difference that it keeps between heating and cooling", "3 delta_degF"
    )
    demand_response: DemandResponse | None = said("thermostat: how the utility can reach it, or `none`", "OpenADR 2.0b")
    demand_response_steps: list[Annotated[float, Quantity("temperature_difference")]] = listed(
        "thermostat: by how much it can move its set points for the utility", "1 delta_degF", "4 delta_degF"
    )


@record
class Test(Node):
    """A test: planned or done; a plain word is read as `state`."""

    short = ("state",)

    state: (
        Annotated[str, Choice("planned", "done", "none", done="passed | tested", none="not planned")] | None
    ) = said("planned, done or none", "planned")
    report: Plain | None = said("where the report is", "packet page 12")
    by: Plain | None = said("who does it", "third party")
    on: Plain | None = said("date", "2026-05-02")


@record
class VentilationWorksheet(Node):
    """What the ventilation worksheet states."""

    required_rate: Airflow | None = said("required whole-house rate on the worksheet", "45 cfm")
    floor_area: Area | None = said("floor area on the worksheet", "1120 ft2")
    bedrooms: Count | None = said("bedrooms on the worksheet", 2)


@record
class DuctWorksheet(Node):
    """What the duct worksheet states."""

    method: Plain | None = said("method", "ACCA Manual D")
    friction_rate: FrictionRate | None = said("friction rate", "0.08 in w.c./100 ft")
    total_effective_length: Length | None = said("total effective length", "210 ft")
    available_static: Pressure | None = said("available static pressure", "0.17 in w.c.")


InfiltrationClass = Annotated[
    str,
    Choice("tight", "semi-tight", "average", "semi-loose", "loose", semi_tight="good", loose="leaky",
           semi_loose="somewhat leaky"),
]  # fmt: skip


@record
class LoadsPaper(Node):
    """What the load calculation states."""

    method: Plain | None = said("method of the load calculation", "ACCA Manual J")
    selection_method: Plain | None = said("method of the equipment selection", "ACCA Manual S")
    heating: HeatRate | None = said("heating load of the house", "21000 Btu/h")
    cooling_sensible: HeatRate | None = said("sensible cooling load of the house", "13500 Btu/h")
    cooling_latent: HeatRate | None = said("latent cooling load of the house", "2600 Btu/h")
    cooling_total: HeatRate | None = said("total cooling load of the house", "16100 Btu/h")
    floor_area: Area | None = said("conditioned floor area it counts", "1120 ft2")
    window_area: Area | None = said("window area it counts", "168 ft2")
    front_faces: FrontFaces | None = said("compass point that the front of the house faces in it", "south")
    occupants: Count | None = said("people it counts", 3)
    bedrooms: Count | None = said("bedrooms it counts", 2)
    winter_outdoor: Temperature | None = said("outdoor winter design temperature it uses", "-4 degF")
    summer_outdoor: Temperature | None = said("outdoor summer design temperature it uses", "88 degF")
    winter_indoor: Temperature | None = said("indoor winter temperature it uses", "70 degF")
    summer_indoor: Temperature | None = said("indoor summer temperature it uses", "75 degF")
    infiltration: InfiltrationClass | None = said("infiltration class it uses", "tight")
    airtightness: AirtightnessFact | None = said("airtightness it uses", "1.4 ACH50")
    ventilation: Airflow | None = said("outdoor air of fans that it counts", "50 cfm")
    recovery: Share | None = said("sensible heat recovery that it counts, or `0 %`", "75 %")
    window_u: UValue | None = said("U-value of the windows it uses", "U-0.28")
    window_shgc: Annotated[float, Number(0, 1)] | None = said("solar heat gain coefficient it uses", 0.3)
    safety_factor: Share | None = said("what is added to the loads at the end, for safety", "10 %")
    sized_by_area: Flag | None = said("whether the equipment was sized by floor area alone", False)


@record
class Papers(Node):
    """Worksheets, drawing notes by topic, tests."""

    notes: dict[str, Plain] = named(
        "drawing notes by topic: sheet and note number", {"make-up-air": "M-101 note 16"}
    )
    tests: dict[str, Test] = named(
        "tests by topic: ventilation-flow, duct-leakage, blower-door",
        {"ventilation-flow": {"state": "planned"}},
    )
    ventilation: VentilationWorksheet | None = said("figures on the ventilation worksheet")
    ducts: DuctWorksheet | None = said("figures on the duct worksheet")
    loads: LoadsPaper | None = said("figures on the load calculation")
    selections: dict[str, SelectionPaper] = named(
        "figures of the equipment selection, by the name of the equipment",
        {"heat-pump": {"winter_outdoor": "-4 degF", "heating": "22500 Btu/h"}},
    )
    energy: EnergyPaper | None = said("what the energy papers claim")
    certificate: EnergyCertificate | None = said("figures on the energy certificate, or `none`")
    balancing_report: Plain | None = said("where the balancing report is", "packet page 14")


@record
class Acceptance(Node):
    """A finding accepted by a person, with a reason."""

    rule: Plain | None = said("rule code or name", "VENT-12")
    place: Plain | None = said("place in the design; everything below it counts", "fans.bath-fan", key="path")
    reason: Plain | None = said("why it is accepted; compulsory", "existing fan, kept by the owner")
    by: Plain | None = said("who accepts it; compulsory", "plan reviewer")
    on: Plain | None = said("date", "2026-03-14")
    until: Plain | None = said("date on which the acceptance ends", "2027-03-14")
