"""Subcooling or superheat, as measured, is not what the maker asks for.

They show whether a system holds the right charge of refrigerant. With too little the coil starves and cools poorly,
with too much the compressor can be harmed; either costs a tenth of the capacity before anyone notices.

First see that the airflow is right, then correct the charge by the maker's procedure, and measure again.
"""

from checker.case import Case
from checker.quantities.commissioning import Charge, Reading, charges, reading
from checker.rule import Finding, Meets, Num, Rule


def readings(case: Case) -> list[Charge]:
    """Every reading of subcooling or superheat."""
    return charges(case)


def check(charge: Charge, found: Reading, subcooling: float, superheat: float) -> Meets | Finding:
    """Within the tolerance of its kind, either way."""
    allowed = subcooling if charge.what == "subcooling" else superheat
    numbers = {
        "name": Num(charge.name), "measured": Num(found.measured, "temperature_difference"),
        "target": Num(found.target, "temperature_difference"), "allowed": Num(allowed, "temperature_difference"),
    }  # fmt: skip
    if abs(found.measured - found.target) <= allowed + 1e-6:
        return Meets(numbers)
    return Finding(
        f"{{name}} has a {charge.what} of {{measured}} as measured; its maker asks for {{target}}, give or take {{allowed}}",
        help="see that the airflow is right, correct the charge by the maker's procedure, and measure again",
        numbers=numbers,
    )


RULE = Rule(
    code="CTRL-15", name="refrigerant-charge-off-target", severity="caution", since="0.1",
    over=readings, needs=(reading,), limits=("subcooling-tolerance", "superheat-tolerance"), check=check,
    nothing="no subcooling or superheat was measured", answers=("Q16",),
)  # fmt: skip
