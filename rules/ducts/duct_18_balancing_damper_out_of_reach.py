"""A balancing damper cannot be reached.

A volume damper behind finished drywall is set once, by guess, and never again. The code asks for access to
dampers and to whatever else the system is balanced with.

Put the damper at the trunk where the trunk is open, or give it an access panel or a remote handle.
"""

from checker.case import Case, given
from checker.design.airway import Airway
from checker.quantities.duct_flow import duct_label
from checker.quantities.duct_scope import ducts
from checker.rule import Finding, Meets, Num, Rule


def damped(case: Case) -> list[Airway]:
    """Ducts with a balancing damper."""
    return [duct for duct in ducts(case) if duct.balancing_damper or "damper" in duct.pieces]


def check(duct: Airway, reachable: bool) -> Meets | Finding:
    """Judge the fact as stated."""
    numbers = {"duct": Num(duct_label(duct))}
    if reachable:
        return Meets(numbers)
    return Finding(
        "the balancing damper in {duct} cannot be reached",
        at="damper_access",
        help="move it to where it can be reached, or show an access panel or a remote handle",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-18", name="balancing-damper-out-of-reach", severity="correction", since="0.1",
    over=damped, needs=(given("damper_access"),), cites=("balancing-damper-access",), check=check, answers=("F17",),
    nothing="no duct has a balancing damper",
)  # fmt: skip
