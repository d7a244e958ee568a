"""The `filters` section."""

from checker.design.annotated import Annotated
from checker.design.fields import (
    Airflow,
    Area,
    Choice,
    FilterSize,
    Flag,
    Node,
    Number,
    Plain,
    Pressure,
    Reference,
    listed,
    record,
    said,
)

FilterPlace = Annotated[
    str,
    Choice(
        "upstream of coil", "downstream of coil", "return grille", "outdoor air inlet", "supply outlet",
        "exhaust inlet", "recovery core supply side", "recovery core exhaust side",
        upstream_of_coil="upstream | before coil | before the coil | at unit | at the unit | return plenum | return duct | "
        "filter rack | media cabinet | blower inlet | before unit | return side | at the air handler | in the unit | in unit",
        return_grille="grille | filter grille | in return | return | return air grille",
        outdoor_air_inlet="intake | inlet | in line box | fan inlet | before fan | fresh air inlet | "
        "outdoor air duct | fresh air duct",
        downstream_of_coil="after coil | after the coil | downstream", supply_outlet="supply register | outlet",
        exhaust_inlet="stale air inlet | exhaust",
    ),
]  # fmt: skip


@record
class DropPoint(Node):
    """A point of a filter's clean pressure drop."""

    airflow: Airflow | None = said("airflow through one filter", "300 cfm")
    drop: Pressure | None = said("clean pressure drop at that airflow", "0.15 in w.c.")


@record
class Filter(Node):
    """A filter: its rating, size, pressure drop and access."""

    serves: list[Annotated[str, Reference("fans", "equipment", "ducts", "hoods")]] = listed(
        "fan, equipment or duct system whose air it cleans, by name", "slim-duct"
    )
    count: Annotated[float, Number(1, 20)] | None = said("equal filters side by side", 1)
    place: FilterPlace | None = said("where in the stream it sits", "return grille")
    merv: Annotated[float, Number(1, 20)] | None = said("MERV rating", 11)
    size: FilterSize | None = said("nominal width x height x depth", "16x20x1 in")
    face_area: Area | None = said("net face area, where the nominal size misleads", "2.0 ft2")
    airflow: Airflow | None = said("airflow through it; that of what it serves unless said", "200 cfm")
    drop_clean: Pressure | None = said("pressure drop clean, at the airflow of `at`", "0.08 in w.c.")
    drop_final: Pressure | None = said(
        "pressure drop at which it is changed, at the same airflow", "0.20 in w.c."
    )
    at: Airflow | None = said(
        "airflow of the stated pressure drops; the design airflow unless said", "200 cfm"
    )
    drops: list[DropPoint] = listed(
        "clean pressure drop of one filter at several airflows, rising; it goes before `drop_clean`",
        {"airflow": "300 cfm", "drop": "0.15 in w.c."},
    )
    exponent: Annotated[float, Number(0.5, 2.5)] | None = said(
        "exponent of its pressure drop over airflow", 1.3
    )
    access: Flag | None = said("whether people can reach it without tools or taking things apart", True)
    label: Flag | None = said("whether its place shows the design airflow and greatest clean drop", True)
    box_sealed: Flag | None = said("whether its slot or box is sealed", True)
    ozone: Annotated[str, Choice("none", "listed", "produces ozone")] | None = said(
        "electronic air cleaner: whether it makes ozone", "none"
    )
    notes: Plain | None = said("anything a reader should know; no rule reads it")
