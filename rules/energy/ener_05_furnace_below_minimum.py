"""A furnace is rated below the federal minimum of its fuel.

The annual fuel use efficiency (AFUE) of a furnace that stands indoors has a least value by fuel. Below it the
furnace may not be made for sale.

Choose one at the minimum or above; in a tight house a condensing one that takes its air from outdoors serves best.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.energy import afue, least_afue, rated_units
from checker.rule import Finding, Meets, Num, Rule


def furnaces(case: Case) -> list[Equipment]:
    """Furnaces that state their AFUE."""
    return [unit for unit in rated_units(case, "afue") if unit.kind == "furnace"]


@quantity("share")
def least_rating(case: Case, unit: Equipment) -> float:
    """Least AFUE of its fuel."""
    return least_afue(case, unit, "furnace-efficiency")


def check(unit: Equipment, rated: float, least: float) -> Meets | Finding:
    """Compare with the minimum."""
    if rated >= least * (1 - 1e-9):
        return Meets()
    return Finding(
        "{unit} is rated at {afue} AFUE, below the federal minimum of {least_rating}",
        at="ratings.afue",
        help="choose a furnace of {least_rating} AFUE or more",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="ENER-05", name="furnace-below-minimum", severity="correction", since="0.1",
    over=furnaces, needs=(afue, least_rating), cites=("furnace-efficiency",), check=check,
    nothing="no furnace states its AFUE", answers=("H33", "R01", "R07"),
)  # fmt: skip
