"""A hot-water boiler is rated below the minimum of its fuel.

The annual fuel use efficiency (AFUE) of residential boilers has a least value by fuel. The figures here are
recalled: check them against the rule.

Choose a boiler at the minimum or above. With return water below 130 degF a condensing one pays.
"""

from checker.case import Case, quantity
from checker.design.equipment import Equipment
from checker.quantities.energy import afue, least_afue, rated_units
from checker.rule import Finding, Meets, Num, Rule


def boilers(case: Case) -> list[Equipment]:
    """Boilers that state their AFUE."""
    return [unit for unit in rated_units(case, "afue") if unit.kind == "boiler"]


@quantity("share")
def least_rating(case: Case, unit: Equipment) -> float:
    """Least AFUE of its fuel."""
    return least_afue(case, unit, "boiler-efficiency")


def check(unit: Equipment, rated: float, least: float) -> Meets | Finding:
    """Compare with the minimum."""
    if rated >= least * (1 - 1e-9):
        return Meets()
    return Finding(
        "{unit} is rated at {afue} AFUE, below the {least_rating} of hot-water boilers of its fuel",
        at="ratings.afue",
        help="choose a boiler of {least_rating} AFUE or more",
        numbers={"unit": Num(unit.name)},
    )


RULE = Rule(
    code="ENER-07", name="boiler-below-minimum", severity="caution", since="0.1",
    over=boilers, needs=(afue, least_rating), cites=("boiler-efficiency",), check=check,
    nothing="no boiler states its AFUE", answers=("R09",),
)  # fmt: skip
