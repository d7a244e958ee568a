"""What the equipment selection states of one piece of equipment: the figures on its worksheet."""

from checker.design.annotated import Annotated
from checker.design.fields import Airflow, HeatRate, Node, Power, Reference, Temperature, record, said


@record
class SelectionPaper(Node):
    """The figures of one selection: design conditions, loads, and capacities at those conditions."""

    unit: Annotated[str, Reference("equipment")] | None = said("equipment it selects; else the one of its name", "heat-pump")
    winter_outdoor: Temperature | None = said("outdoor winter design temperature it uses", "-4 degF")
    summer_outdoor: Temperature | None = said("outdoor summer design temperature it uses", "88 degF")
    entering_wet_bulb: Temperature | None = said("wet bulb of the entering air that it uses for cooling", "63 degF")
    heating_load: HeatRate | None = said("heating load it uses", "21000 Btu/h")
    cooling_sensible_load: HeatRate | None = said("sensible cooling load it uses", "13500 Btu/h")
    cooling_latent_load: HeatRate | None = said("latent cooling load it uses", "2600 Btu/h")
    heating: HeatRate | None = said("heating capacity at the winter design temperature", "22500 Btu/h")
    cooling_total: HeatRate | None = said("total cooling capacity at summer design", "17800 Btu/h")
    cooling_sensible: HeatRate | None = said("sensible cooling capacity at summer design", "14100 Btu/h")
    cooling_latent: HeatRate | None = said("latent cooling capacity at summer design", "3700 Btu/h")
    airflow: Airflow | None = said("airflow at which those capacities hold", "600 cfm")
    backup: Power | None = said("backup heat", "5 kW")
