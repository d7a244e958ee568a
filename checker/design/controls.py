"""The `controls`, `papers` and `accepted` sections."""

from typing import Annotated

from checker.design.fields import (
    Airflow,
    Area,
    Choice,
    Count,
    Flag,
    FrictionRate,
    Length,
    Node,
    Plain,
    Pressure,
    listed,
    named,
    record,
    said,
)


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


@record
class Test(Node):
    """A test: planned or done; a plain word is read as `state`."""

    short = ("state",)

    state: (
        Annotated[str, Choice("planned", "done", "none", done="passed | tested", none="not planned")] | None
    ) = said("planned, done or none", "planned")
    report: Plain | None = said("where the report is", "packet page 12")
    by: Plain | None = said("who does it", "third party")


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
