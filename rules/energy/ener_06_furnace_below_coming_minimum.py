"""A gas furnace of a design dated 2029 or later, or late in 2028, is below the minimum that begins then.

Gas furnaces that stand indoors and are made from 18 December 2028 on must reach 95 % by the rule of December 2023,
which may still change. Older stock may be installed while it lasts.

Choose a condensing furnace, or show when the furnace was made. Venting and drain change with it, which a heating
contractor plans.
"""

from checker.case import Case, Missing
from checker.design.equipment import Equipment
from checker.quantities.energy import afue, fuel, rated_units
from checker.rule import Finding, Meets, Num, Rule

BEGIN = "2028-12-18"
LONG_DATE = 10


def dated(case: Case) -> str:
    """Date of the design as year-month-day, "" where it is not one."""
    project = case.design.project
    date = None if project is None else project.date
    return date if date is not None and len(date) == LONG_DATE and date[4] == date[7] == "-" else ""


def gas_furnaces(case: Case) -> list[Equipment]:
    """Furnaces that state their AFUE, in a design dated after the beginning of the rule."""
    if dated(case) < BEGIN:
        return []
    return [unit for unit in rated_units(case, "afue") if unit.kind == "furnace"]


def burns_gas(case: Case, unit: Equipment) -> bool:
    """It burns no gas."""
    try:
        return fuel(case, unit) in ("gas", "propane")
    except Missing:
        return True


def check(unit: Equipment, rated: float, fuel_of_it: str, least: float) -> Meets | Finding:
    """Compare with the coming minimum."""
    if rated >= least * (1 - 1e-9):
        return Meets()
    return Finding(
        "{unit} is rated at {afue} AFUE; gas furnaces made from 18 December 2028 on must reach {limit}",
        at="ratings.afue",
        help="choose a furnace of {limit} AFUE, or show that this one was made earlier",
        numbers={"unit": Num(unit.name), "fuel_of_it": Num(fuel_of_it)},
    )


RULE = Rule(
    code="ENER-06", name="furnace-below-coming-minimum", severity="caution", since="0.1",
    over=gas_furnaces, when=burns_gas, needs=(afue, fuel), limits=("furnace-efficiency-of-2028",), check=check,
    nothing="no furnace of a design dated after 17 December 2028 states its AFUE", answers=("R08",),
)  # fmt: skip
