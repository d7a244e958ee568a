"""A duct system is designed at an airflow that its fan or unit does not reach.

The airflow on the duct sheet has to be one that the blower has: between its slowest and its fastest setting, and
not beyond the end of its curve. Otherwise duct sizes, registers and static pressure were all worked out for air
that never flows.

Take an airflow from the blower's table, or choose a unit with the airflow that the rooms need.
"""

from checker.case import Case
from checker.design.ducts import DuctSystem
from checker.quantities.duct_balance import Range, mover_range
from checker.quantities.duct_flow import system_flow
from checker.quantities.duct_graph import mover_of
from checker.quantities.duct_scope import mover_or_none, systems
from checker.rule import Finding, Meets, Num, Rule


def designed(case: Case) -> list[DuctSystem]:
    """Systems that state an airflow or outlets."""
    return [each for each in systems(case) if each.airflow is not None or each.outlets]


def has_mover(case: Case, system: DuctSystem) -> bool:
    """nothing tells what moves its air"""
    return mover_or_none(case, system) is not None or mover_of(case, system) is not None


def check(system: DuctSystem, airflow: float, reach: Range, tolerance: float) -> Meets | Finding:
    """Compare with both ends, within the tolerance."""
    numbers = {
        "system": Num(system.name),
        "least": Num(reach.low, "airflow"),
        "most": Num(reach.high, "airflow"),
    }
    at = "airflow" if system.airflow is not None else "outlets"
    if airflow > reach.high * (1.0 + tolerance):
        return Finding(
            "{system} is designed at {system_flow}; its fan reaches {most}",
            at=at,
            help="design the ducts at {most} or less, or choose a unit with more airflow",
            numbers=numbers,
        )
    if airflow < reach.low * (1.0 - tolerance):
        return Finding(
            "{system} is designed at {system_flow}; its fan moves {least} at its slowest",
            at=at,
            help="design the ducts at {least} or more, or choose a smaller unit",
            numbers=numbers,
        )
    return Meets(numbers)


RULE = Rule(
    code="DUCT-23", name="airflow-outside-unit-range", severity="caution", since="0.1",
    over=designed, when=has_mover, needs=(system_flow, mover_range), limits=("outlet-sum-tolerance",), check=check,
    nothing="no duct system states an airflow or outlets",
)  # fmt: skip
