"""The airflow that comes through the ducts is too little for the cooling coil.

A coil cools so much air. With far less than about 250 cfm for each 12000 Btu/h it gets colder than freezing, ices
up, and then passes no air at all; before that the unit sheds capacity and runs long.

Find what takes the pressure and enlarge it. Every loss is taken at its lowest here, so the true airflow is less
than the one named.
"""

from checker.case import CannotJudge
from checker.quantities.circuits import Circuit, at_setting
from checker.quantities.fan_operation import cooling_circuits, rated_cooling
from checker.quantities.solved_airflows import DEPENDS, NOT_PRINTED, Moved, moved
from checker.rule import Finding, Meets, Num, Rule

TON = 3516.8528420667
"""W in 12000 Btu/h."""
SLACK = 1e-6
"""Share that the search for the operating point may be off."""


def check(circuit: Circuit, found: Moved, cooling: float, each: float) -> Meets | Finding:
    """Compare what comes at best with what the rated cooling asks for."""
    least = each * cooling / TON
    numbers = {
        "fan": Num(at_setting(circuit)),
        "most": Num(found.low, "airflow"),
        "least": Num(least, "airflow"),
        "cooling": Num(cooling, "heat_rate"),
    }
    if found.low < least * (1.0 - SLACK) or (found.is_less and found.low <= least):
        return Finding(
            "{fan} moves {most} at most through its ducts; {cooling} of cooling asks for {least} or the coil ices",
            help="enlarge what takes most of the static pressure until {least} comes",
            numbers=numbers,
        )
    if found.is_less:
        raise CannotJudge(NOT_PRINTED)
    if found.high < least * (1.0 - SLACK):
        raise CannotJudge(DEPENDS)
    return Meets(numbers)


RULE = Rule(
    code="DUCT-76", name="airflow-too-low-for-cooling", severity="caution", since="0.1",
    over=cooling_circuits, needs=(moved, rated_cooling), limits=("cooling-airflow",), check=check,
    nothing="no cooling unit with described ducts states a curve",
)  # fmt: skip
