"""Air goes backward through an outlet where two fans share ducts.

Two fans on one duct push against each other. A fresh-air fan that blows more into a return duct than the air
handler draws sends the rest out of the return grille, through the filter the wrong way; a register becomes an
intake when another fan on the same duct pulls harder.

Keep the flows apart with ducts of their own, match the airflows of the two fans, and put a backdraft damper where
air may go one way only.
"""

from checker.quantities.circuits import Circuit
from checker.quantities.duct_solved import SolvedSystem, solved_system
from checker.quantities.solved_places import Backward, backward, shared_circuits
from checker.rule import Finding, Meets, Num, Rule


def check(_circuit: Circuit, solved: SolvedSystem, found: Backward | None) -> Meets | Finding:
    """Judge the direction of the air."""
    numbers = {"system": Num(solved.system)}
    if found is None:
        return Meets(numbers)
    return Finding(
        "at least {flow} goes backward through {outlet} of {system} while all its fans run",
        help="match the airflows of the fans, or give one of them ducts of its own",
        numbers={**numbers, "outlet": Num(found.name), "flow": Num(found.flow, "airflow")},
    )


RULE = Rule(
    code="DUCT-73", name="air-runs-backward", severity="caution", since="0.1",
    over=shared_circuits, needs=(solved_system, backward), cites=("network-balance",), check=check,
    nothing="no two fans share ducts",
)  # fmt: skip
