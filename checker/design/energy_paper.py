"""What the energy papers of a design claim: the path of compliance, and the measures chosen beyond the minimum."""

from checker.design.annotated import Annotated
from checker.design.fields import Choice, Node, listed, record, said

EnergyPath = Annotated[
    str,
    Choice(
        "prescriptive", "performance", "energy rating", "other",
        prescriptive="table | component", performance="simulated performance | total building performance | modeled | trade off",
        energy_rating="eri | energy rating index | hers | rating",
    ),
]  # fmt: skip
EnergyMeasure = Annotated[
    str,
    Choice(
        "furnace and cooling", "heat pump", "ground source heat pump", "water heating", "ducts inside",
        "tight ducts", "tight with recovery", "recovery", "demand response", "other",
        furnace_and_cooling="furnace and air conditioner | furnace and ac | efficient furnace",
        heat_pump="air source heat pump | efficient heat pump", ground_source_heat_pump="gshp | geothermal",
        water_heating="efficient water heating | water heater", ducts_inside="ducts in conditioned space | all ducts inside",
        tight_with_recovery="air sealing and ventilation | tight and ventilated | 3 ach50 and recovery",
        recovery="hrv | erv | recovery unit", tight_ducts="reduced duct leakage | low duct leakage",
        demand_response="demand responsive thermostat | demand response thermostat",
    ),
]  # fmt: skip


@record
class EnergyPaper(Node):
    """What the energy papers claim."""

    code_path: EnergyPath | None = said("path by which the energy code is met", "prescriptive")
    measures: list[EnergyMeasure] = listed(
        "the additional efficiency package (2021) or credit measures (2024) that are claimed", "heat pump"
    )
