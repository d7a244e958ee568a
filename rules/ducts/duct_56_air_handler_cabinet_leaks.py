"""The cabinet of an air handler leaks more than its maker may designate.

The cabinet is under the strongest pressure and suction of the system. Makers test it by ASHRAE 193 and designate
it to leak 2 % of the design airflow at most.

Choose a unit with that designation. Tape over panel gaps helps the house but is no designation.
"""

from checker.case import Case, given
from checker.design.equipment import Equipment
from checker.quantities.ducted_units import ducted_units
from checker.rule import Finding, Meets, Rule


def air_handlers(case: Case) -> list[Equipment]:
    """Ducted units but evaporative coolers and dehumidifiers."""
    return [unit for unit in ducted_units(case) if unit.kind not in ("evaporative cooler", "dehumidifier")]


def check(unit: Equipment, leakage: float, most: float) -> Meets | Finding:
    """Compare the designation with the limit."""
    if leakage <= most:
        return Meets()
    return Finding(
        f"the cabinet of {unit.name} leaks {{cabinet_leakage}} of its airflow, more than {{limit}}",
        at="cabinet_leakage",
        help="choose a unit that its maker designates to leak {limit} or less",
    )


RULE = Rule(
    code="DUCT-56", name="air-handler-cabinet-leaks", severity="correction", since="0.1",
    over=air_handlers, needs=(given("cabinet_leakage"),), limits=("air-handler-leakage",), check=check,
    nothing="no unit of the design has ducts", answers=("F27",),
)  # fmt: skip
