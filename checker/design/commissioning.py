"""What was measured when a heating or cooling system was set to work, and the grade that is claimed for it."""

from checker.design.annotated import Annotated
from checker.design.fields import (
    Airflow,
    Choice,
    Node,
    Plain,
    Power,
    Pressure,
    TemperatureDifference,
    record,
    said,
)

Grade = Annotated[
    str, Choice("I", "II", "III", i="1 | grade I | grade 1", ii="2 | grade II | grade 2", iii="3 | grade III | grade 3")
]


@record
class Commissioning(Node):
    """Values measured on the running system, beside the designed ones."""

    grade: Grade | None = said("grade of installation that the papers claim: I, II or III", "I")
    airflow: Airflow | None = said("airflow of the system as measured", "780 cfm")
    design_airflow: Airflow | None = said(
        "airflow that the design wanted at that speed; the rated one where absent", "800 cfm"
    )
    power: Power | None = said("blower power as measured at that airflow", "320 W")
    static: Pressure | None = said("total external static pressure as measured", "0.5 in w.c.")
    subcooling: TemperatureDifference | None = said("subcooling as measured", "9 delta_degF")
    target_subcooling: TemperatureDifference | None = said("subcooling that the maker asks for", "10 delta_degF")
    superheat: TemperatureDifference | None = said("superheat as measured", "12 delta_degF")
    target_superheat: TemperatureDifference | None = said("superheat that the maker asks for", "12 delta_degF")
    by: Plain | None = said("who measured", "third party")
    on: Plain | None = said("date", "2026-05-02")
