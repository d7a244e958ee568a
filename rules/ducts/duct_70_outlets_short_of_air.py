"""The outlets of a duct system cannot all get near their design airflow, however the dampers are set.

Balancing takes air from the outlets that get too much and gives it to the others. It cannot make air: when the
way to one outlet takes all the pressure that the fan has, closing the other dampers brings that outlet only so
far. Here the whole network is solved with the fan's own curve and every damper set at its best.

Where the fan offers too little static pressure this tells what arrives. Enlarge the way to the outlet that is
named first: its damper is the one that stands open while the others are closed down.
"""

from checker.case import CannotJudge, Missing
from checker.quantities.circuits import Circuit
from checker.quantities.duct_solved import SolvedSystem, solved_if_any
from checker.quantities.solved_airflows import DEPENDS, NOT_PRINTED, Reach, reach, reaching_circuits
from checker.rule import Finding, Meets, Num, Rule


def check(_circuit: Circuit, found: Reach, _solved: SolvedSystem | None, limit: float) -> Meets | Finding:
    """Compare the share that all outlets can reach with the least one."""
    numbers = {
        "outlet": Num(found.outlet),
        "reached": Num(found.reached, "airflow"),
        "wanted": Num(found.wanted, "airflow"),
        "share": Num(found.low, "share"),
        "system": Num(found.system),
    }
    least = limit * (1.0 - 1e-9)
    if found.low < least or (found.is_less and found.low <= limit):
        most = "less than {reached}" if found.is_less else "{reached}"
        return Finding(
            "the outlets of {system} cannot all get more than {share} of their design: {outlet} is left with "
            + most + " of its {wanted}",
            help="enlarge or shorten the way to {outlet}, or choose a fan with more static pressure",
            numbers=numbers,
        )  # fmt: skip
    if found.is_less:
        raise CannotJudge(NOT_PRINTED)
    if found.high < least:
        raise Missing(*found.asks) if found.asks else CannotJudge(DEPENDS)
    return Meets(numbers)


RULE = Rule(
    code="DUCT-70", name="outlets-short-of-air", severity="caution", since="0.1",
    over=reaching_circuits, needs=(reach, solved_if_any), limits=("outlet-shortage",), cites=("network-balance",),
    check=check, nothing="no supply fan, recovery unit or equipment has duct runs",
)  # fmt: skip
