"""A fan moves far more air through its ducts than the design asks for, and no damper holds it back.

A fan runs where its curve meets the resistance of its ducts, not where the drawing says. Short wide ducts on a
strong fan give noise at the outlets, a ventilation rate that dries the house in winter, and a motor that works
at the end of its curve.

Take a slower setting, put a volume damper where all the air passes, or draw the ducts for the airflow that comes.
Every loss is taken at its highest here, so the true airflow is more than the one named.
"""

from checker.quantities.circuits import Circuit, at_setting, circuit_flow
from checker.quantities.fan_operation import Overrun, overrun
from checker.quantities.solved_airflows import curved_circuits
from checker.rule import Finding, Meets, Num, Rule


def check(circuit: Circuit, found: Overrun, design: float, tolerance: float) -> Meets | Finding:
    """Compare the least airflow that comes with the design and its tolerance."""
    numbers = {"fan": Num(at_setting(circuit)), "least": Num(found.least, "airflow"), "wanted": Num(design, "airflow")}
    if found.held_back or found.least <= design * (1.0 + tolerance) * (1.0 + 1e-9):
        return Meets(numbers)
    return Finding(
        "{fan} moves {least} or more through these ducts on its curve; {wanted} is designed",
        help="take a slower setting, or put a volume damper where all of its air passes",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-71", name="fan-moves-more-than-designed", severity="caution", since="0.1",
    over=curved_circuits, needs=(overrun, circuit_flow), limits=("room-airflow-tolerance",), cites=("network-balance",),
    check=check, nothing="no fan or unit with described ducts states a curve",
)  # fmt: skip
