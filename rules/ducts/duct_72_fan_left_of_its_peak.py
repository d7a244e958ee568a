"""A fan is designed to run left of the peak of its curve, where its airflow is not stable.

Left of the peak the pressure of a fan falls as its airflow falls. Nothing holds it there: the airflow hunts, the
fan rumbles, and it may settle at far less air than designed.

Lower the resistance of the ducts until the fan runs right of its peak, or choose a smaller fan whose peak lies at
less air.
"""

from checker.quantities.circuits import Circuit, at_setting
from checker.quantities.fan_operation import Stall, peaked_circuits, stall
from checker.rule import Finding, Meets, Num, Rule


def check(circuit: Circuit, found: Stall) -> Meets | Finding:
    """Compare what the ducts take at the airflow of the peak with the pressure there."""
    numbers = {
        "fan": Num(at_setting(circuit)),
        "peak_flow": Num(found.peak_flow, "airflow"),
        "peak": Num(found.peak, "pressure"),
        "taken": Num(found.taken, "pressure"),
    }
    if not found.is_left:
        return Meets(numbers)
    return Finding(
        "{fan} runs left of the peak of its curve: at {peak_flow}, where the peak gives {peak}, {taken} or more is taken",
        help="lower what the ducts take at {peak_flow} below {peak}, or choose a fan whose peak lies at less air",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-72", name="fan-left-of-its-peak", severity="caution", since="0.1",
    over=peaked_circuits, needs=(stall,), cites=("fan-stable-range",), check=check,
    nothing="no fan with described ducts has a curve with a peak",
)  # fmt: skip
