"""How leaky the house is: flow at 50 Pa, exponent, air changes, and the volume that they rest on."""

from checker import each
from checker.case import CannotJudge, Case, Missing, either, quantity
from checker.design.house import House
from checker.physics.infiltration import LEAKAGE_EXPONENT, air_changes_from_flow, flow_from_air_changes
from checker.units import Airtightness


def house_of(case: Case) -> House:
    """The house; an empty one where the file says nothing about it."""
    return each.house(case)[0]


@quantity("volume", "as stated, else floor area x ceiling height")
def house_volume(case: Case, _node: object) -> float:
    """Conditioned volume, m3."""
    house = house_of(case)

    def from_floor() -> float:
        area, height = case.all(house, "floor_area", "ceiling_height")
        return float(area * height)

    return either(lambda: float(case.get(house, "volume")), from_floor)


@quantity(source="the measured figure wins once the house is built, else the one of the design")
def airtightness(case: Case, _node: object) -> Airtightness:
    """Airtightness as stated or measured. Raises Missing("house.airtightness")."""
    house, project = house_of(case), case.design.project
    built = project is not None and project.stage == "as-built"
    if house.measured is not None and (built or house.airtightness is None):
        measured: Airtightness | None = case.maybe(house.measured, "airtightness")
        if measured is not None:
            return measured
    stated: Airtightness = case.get(house, "airtightness")
    return stated


@quantity("leakage_50", "Q50", "ASHRAE Handbook - Fundamentals 2021, chapter 16")
def leakage_flow(case: Case, node: object) -> float:
    """Leakage of the envelope at 50 Pa, m3/s. Raises Missing; CannotJudge for a house without any leakage."""
    kind, value = airtightness(case, node)
    if value <= 0.0:
        raise CannotJudge("a house without any leakage is outside the range of the power law")
    if kind == "ach50":
        return flow_from_air_changes(value, house_volume(case, node))
    if kind == "flow50-per-floor":
        return value * float(case.get(house_of(case), "floor_area"))
    if kind == "flow50-per-envelope":
        return value * float(case.get(house_of(case), "envelope_area"))
    return value


@quantity("ach50", "3600 Q50 / volume")
def air_changes_at_50(case: Case, node: object) -> float:
    """Air changes per hour at 50 Pa."""
    kind, value = airtightness(case, node)
    if kind == "ach50":
        return value
    return air_changes_from_flow(leakage_flow(case, node), house_volume(case, node))


@quantity(source="ASHRAE Handbook - Fundamentals 2021, chapter 16: 0.65 where no test gives one")
def leakage_exponent(case: Case, _node: object) -> float:
    """Exponent of the leakage power law."""
    house = house_of(case)
    try:
        stated = case.maybe(house, "leakage_exponent")
    except Missing:
        stated = None
    return LEAKAGE_EXPONENT if stated is None else float(stated)


@quantity("length", "above grade as stated, else in all; else stories x ceiling height")
def stack_height(case: Case, _node: object) -> float:
    """Height of the conditioned space that buoyancy and wind draw air through: a basement leaks little in the ground."""
    house = house_of(case)
    if case.speaks_of(house, "height_above_grade"):
        return float(case.get(house, "height_above_grade"))

    def by_stories() -> float:
        stories, height = case.all(house, "stories", "ceiling_height")
        return float(stories * height)

    return either(lambda: float(case.get(house, "height")), by_stories)
