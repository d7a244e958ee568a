"""A heat pump in a cold zone loses much of its capacity, or of its efficiency, at 5 degF.

Units made for the cold keep 70 % or more of their 47 degF capacity at 5 degF and still give 1.75 units of heat for
each of electricity; ordinary ones fall to half of it. In the coldest zones the difference decides how much backup is
needed and what the winter costs.

Compare the maker's tables at 5 degF. The figures are those of a programme, recalled; a house with enough margin can
do with less.
"""


from checker.case import CannotJudge, Case, quantity
from checker.design.equipment import Equipment
from checker.design.fields import Ratio, Share
from checker.physics.heat_pump import capacity_at, value_at
from checker.quantities.climate import zone_number
from checker.quantities.equipment import is_heat_pump
from checker.quantities.heat_pump import RATING_TEMPERATURE, table_of
from checker.record import Record
from checker.rule import Finding, Meets, Num, Rule


class InTheCold(Record):
    """Share of the capacity at 47 F kept at 5 F, and heat per electricity there; None where no power is stated."""

    share: Share
    performance: Ratio | None


def pumps_with_tables(case: Case) -> list[Equipment]:
    """Heat pumps with a performance table."""
    return [
        unit
        for unit in case.design.equipment.values()
        if unit.heating is not None and len(unit.heating.points) > 1 and (is_heat_pump(case, unit) or unit.kind == "heat pump")
    ]


def is_cold(case: Case, _unit: Equipment) -> bool:
    """The climate zone is not among the coldest."""
    return zone_number(case, case.design) >= float(case.limit("cold-zones"))


@quantity()
def in_the_cold(case: Case, unit: Equipment) -> InTheCold:
    """How the unit does at 5 F by its table."""
    points = table_of(case, unit)
    at = float(case.limit("cold-rating-point"))
    warm, cold = capacity_at(points, RATING_TEMPERATURE), capacity_at(points, at)
    if warm <= 0.0:
        raise CannotJudge(f"{unit.name} is said to have no capacity at 47 degF")
    powers = [(each.temperature, each.power) for each in points]
    known = all(power > 0.0 for _, power in powers)
    return InTheCold(cold / warm, cold / value_at(powers, at) if known else None)


def check(unit: Equipment, found: InTheCold, least_share: float, least_performance: float) -> Meets | Finding:
    """Compare both figures."""
    weak = found.performance is not None and found.performance < least_performance * (1 - 1e-9)
    numbers = {
        "unit": Num(unit.name),
        "share": Num(found.share, "share"),
        "performance": Num(None if found.performance is None else round(found.performance, 2)),
    }
    if found.share >= least_share * (1 - 1e-9) and not weak:
        return Meets(numbers)
    if weak:
        message = "{unit} gives {performance} units of heat for each of electricity at 5 degF; one for the cold gives "
        message += "{cold_climate_performance} or more"
    else:
        message = "{unit} keeps {share} of its 47 degF capacity at 5 degF; one for the cold keeps {cold_climate_share}"
    return Finding(
        message,
        at="heating.points",
        help="compare it with a unit made for the cold, by capacity and power at 5 degF",
        numbers=numbers,
    )


RULE = Rule(
    code="ENER-12", name="heat-pump-weak-in-the-cold", severity="note", since="0.1",
    over=pumps_with_tables, when=is_cold, needs=(in_the_cold,),
    limits=("cold-climate-share", "cold-climate-performance"), cites=("cold-zones", "cold-rating-point"), check=check,
    nothing="no heat pump has a performance table", answers=("R19",),
)  # fmt: skip
