"""The ventilation carries out too little moisture, so that the house gets damp in winter.

People, showers and cooking give off about 3 kg of water a day for each person. When too little air is exchanged
for them, the indoor humidity rises above 60 % even on the driest day of the year, windows run with water and mold
grows in cold corners.

Usual causes are a fan that is too small for the number of people, one that runs a few minutes each hour, or a core
that returns more moisture than the house can do with. Raise the airflow that runs all day, or take a core that
returns less. Air leakage is counted where it decides. Only winters with frost are judged.
"""

from checker import each
from checker.case import Case, quantity
from checker.design.house import House
from checker.quantities.moist_air import has_frost, people
from checker.quantities.moisture_balance import flow_for, humidity_against, outdoor_air
from checker.rule import Finding, Meets, Num, Rule


@quantity("relative_humidity")
def humidity(case: Case, house: House) -> float:
    """Winter humidity, for the comparison with the most that is good."""
    return humidity_against(case, house, float(case.limit("winter-humidity-most")) * (1 + 1e-9))


@quantity("airflow")
def flow_that_helps(case: Case, house: House) -> float:
    """Outdoor airflow, without recovery of moisture, that keeps the humidity at the most that is good."""
    return flow_for(case, house, float(case.limit("winter-humidity-most")))


def check(_house: House, found: float, _flow: float, _people: int, _needed: float, limit: float) -> Meets | Finding:
    """Compare the humidity with the most."""
    if found <= limit * (1 + 1e-9):
        return Meets()
    return Finding(
        "{outdoor_air} of outdoor air all day for {people} people leaves {shown} relative humidity on the winter "
        "design day, above {limit}",
        help="raise the outdoor air that runs all day; {flow_that_helps} without moisture recovery keep it at {limit}",
        numbers={"shown": Num(min(found, 1.0), "relative_humidity")},
    )


RULE = Rule(
    code="VENT-41", name="winter-air-too-damp", severity="caution", since="0.1",
    over=each.house, when=has_frost, needs=(humidity, outdoor_air, people, flow_that_helps),
    limits=("winter-humidity-most",), check=check,
)  # fmt: skip
