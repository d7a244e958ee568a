"""An electric duct heater is close to a heat pump or air conditioner, and neither is listed for that.

The heater's elements glow within sight of the coil or its plastic drain pan, and air that the coil has split into
streams leaves parts of the heater too hot. Both must then be listed for use together.

Move the heater farther away along the duct, or choose a heater and a unit that are listed for it.
"""

from checker.case import Case, Missing, quantity
from checker.design.equipment import Equipment
from checker.rule import Finding, Meets, Num, Rule


def with_heaters(case: Case) -> list[Equipment]:
    """Equipment with a duct heater."""
    return [unit for unit in case.design.equipment.values() if unit.duct_heater is not None]


@quantity("length")
def heater_distance(case: Case, unit: Equipment) -> float:
    """Duct length between heater and unit."""
    return float(case.get(unit.duct_heater, "to_unit"))


@quantity()
def listed_together(case: Case, unit: Equipment) -> bool:
    """Whether both are listed for it; asked only where they are near each other."""
    heater = unit.duct_heater
    try:
        if heater_distance(case, unit) > case.limit("duct-heater-distance"):
            return True
    except Missing:
        if case.maybe(heater, "listed_for_unit"):
            return True
        raise
    return bool(case.get(heater, "listed_for_unit"))


def check(unit: Equipment, listed: bool, distance: float, _limit: float) -> Meets | Finding:
    """A near heater without that listing is the finding."""
    if listed:
        return Meets()
    return Finding(
        "the duct heater is {heater_distance} from {unit}, within {limit}, and they are not listed for that",
        at="duct_heater.to_unit",
        help="move the heater more than {limit} away, or show a heater and a unit that are listed for it",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="EQUIP-24", name="duct-heater-near-unit", severity="correction", since="0.1",
    over=with_heaters, needs=(listed_together, heater_distance), limits=("duct-heater-distance",), check=check,
    nothing="no equipment has a duct heater", answers=("H25",),
)  # fmt: skip
