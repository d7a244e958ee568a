"""A branch takes more than its share of the air and has no balancing damper.

Air takes the easy way. With every damper open the design airflow of the whole system divides itself by the
friction of the branches: the short ones get too much and the far rooms what is left. A branch that takes more
than a fifth over its design needs something to hold it back, and the lever in a register is loud and gets moved.

Put a volume damper at the take-off of this branch, with a handle that can be reached, or give it a smaller duct.
"""

from checker.design.airway import Run
from checker.quantities.duct_balance import Excess, balanced_runs, excess
from checker.rule import Finding, Meets, Num, Rule


def check(run: Run, branch: Excess, tolerance: float) -> Meets | Finding:
    """Compare what the undamped branch takes with its design."""
    numbers = {
        "run": Num(run.name),
        "taken": Num(branch.low, "airflow"),
        "design": Num(branch.design, "airflow"),
    }
    if branch.has_damper or branch.low <= branch.design * (1.0 + tolerance):
        return Meets(numbers)
    return Finding(
        "{run} takes {taken} or more with every damper open, against {design} by design, and has no balancing damper",
        at="balancing_damper",
        help="put a volume damper at its take-off, where it can be reached",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-17", name="balancing-damper-missing", severity="caution", since="0.1",
    over=balanced_runs, needs=(excess,), limits=("room-airflow-tolerance",), check=check, answers=("F17", "F54"),
    nothing="no system with several supply branches is described",
)  # fmt: skip
