"""Make-up air for a hood, a dryer or another big exhaust."""

from checker.design.airway import Airway
from checker.design.annotated import Annotated
from checker.design.fields import (
    Airflow,
    Flag,
    Node,
    Plain,
    Power,
    Pressure,
    Reference,
    SmallArea,
    record,
    said,
)
from checker.design.openings import DamperKind


@record
class MakeUpAir(Node):
    """How air comes back in when a big exhaust runs; a plain airflow in its place is read as `airflow`."""

    short = ("airflow",)
    airflow: Airflow | None = said("make-up airflow provided", "400 cfm")
    opening: Annotated[str, Reference("openings")] | None = said(
        "its outdoor opening, by name", "make-up-intake"
    )
    fan: Annotated[str, Reference("fans")] | None = said("the fan that brings it, by name", "make-up-fan")
    duct: Airway | None = said("its duct")
    damper: DamperKind | None = said("gravity, powered or none", "powered")
    damper_rated_at: Pressure | None = said(
        "pressure at which a gravity damper passes the flow", "0.01 in w.c."
    )
    damper_access: Flag | None = said("whether the damper can be reached without taking anything apart", True)
    interlock: Flag | None = said("whether it opens or starts with the exhaust", True)
    room: Annotated[str, Reference("rooms")] | None = said("room where it enters", "kitchen")
    opening_area: SmallArea | None = said("net free area of the opening", "50 in2")
    transfer_area: SmallArea | None = said(
        "net area of permanent openings on its way to the exhaust's room", "60 in2"
    )
    tempered: Flag | None = said("whether it is warmed", False)
    heater: Power | None = said("heater power", "6 kW")
    drawing_note: Plain | None = said("sheet and note where the drawing shows it", "M-101 note 16")
