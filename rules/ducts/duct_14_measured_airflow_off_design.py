"""An outlet's measured airflow is more than a fifth away from its design.

Balancing means to bring each room to its design airflow; a fifth either way is the usual tolerance, and it is
the one that earns the credit for a tested distribution in the newest energy chapter.

Open or close the damper of this branch and measure again; where the damper is wide open, look for a crushed or
disconnected duct.
"""

from checker.case import Case, quantity
from checker.design.ducts import Outlet
from checker.quantities.duct_flow import outlet_flow
from checker.quantities.duct_scope import outlets
from checker.rule import Finding, Meets, Num, Rule


def measured_outlets(case: Case) -> list[Outlet]:
    """Outlets with measured values."""
    return [outlet for outlet in outlets(case) if outlet.measured is not None]


@quantity("airflow")
def measured(case: Case, outlet: Outlet) -> float:
    """Airflow measured at an outlet."""
    return float(case.get(outlet.measured, "airflow"))


def check(outlet: Outlet, found: float, design: float, tolerance: float) -> Meets | Finding:
    """Compare within the tolerance of the design airflow."""
    numbers = {"outlet": Num(outlet.name), "difference": Num(abs(found - design), "airflow")}
    if abs(found - design) <= tolerance * design * (1.0 + 1e-9):
        return Meets(numbers)
    turn = "open" if found < design else "close"
    return Finding(
        "outlet {outlet} was measured at {measured}, {difference} away from its design of {outlet_flow}",
        at="measured.airflow",
        help=f"{turn} the damper of its branch and measure again",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-14", name="measured-airflow-off-design", severity="caution", since="0.1",
    over=measured_outlets, needs=(measured, outlet_flow), limits=("room-airflow-tolerance",), check=check,
    answers=("F54",), nothing="no outlet has measured values",
)  # fmt: skip
