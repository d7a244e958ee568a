"""The outlets of a system do not add up to its airflow.

The airflow of the fan has to come out somewhere. When the registers add up to less, each of them gets more than
its tag says, or a room was forgotten; when they add up to more, each gets less.

Bring the outlet flows and the airflow of the system to the same sum.
"""

from checker.case import Case, quantity
from checker.design.ducts import DuctSystem
from checker.design.fans import Fan
from checker.quantities.duct_flow import declared_flow, sum_of_outlets
from checker.quantities.duct_graph import is_return_outlet
from checker.quantities.duct_scope import mover_or_none, systems
from checker.rule import Finding, Meets, Num, Rule


def summed(case: Case) -> list[DuctSystem]:
    """Systems with supply outlets whose whole airflow the file fixes."""
    found = []
    for system in systems(case):
        mover = mover_or_none(case, system)
        fixed = system.airflow is not None or system.setting is not None
        fixed = fixed or (isinstance(mover, Fan) and len(mover.settings) == 1)
        if fixed and any(not is_return_outlet(outlet) for outlet in system.outlets.values()):
            found.append(system)
    return found


@quantity("airflow")
def whole(case: Case, system: DuctSystem) -> float:
    """Airflow that the system or its fan states."""
    return declared_flow(case, system)


def check(system: DuctSystem, together: float, airflow: float, tolerance: float) -> Meets | Finding:
    """Compare within the tolerance."""
    numbers = {"system": Num(system.name), "difference": Num(abs(together - airflow), "airflow")}
    if abs(together - airflow) <= tolerance * airflow * (1.0 + 1e-9):
        return Meets(numbers)
    word = "less" if together < airflow else "more"
    return Finding(
        f"the outlets of {{system}} add up to {{sum_of_outlets}}, {{difference}} {word} than its {{whole}}",
        at="airflow" if system.airflow is not None else "outlets",
        help="bring the outlets and the airflow of the system to the same sum",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-21", name="outlets-do-not-sum", severity="caution", since="0.1",
    over=summed, needs=(sum_of_outlets, whole), limits=("outlet-sum-tolerance",), check=check,
    nothing="no system with outlets states its airflow",
)  # fmt: skip
