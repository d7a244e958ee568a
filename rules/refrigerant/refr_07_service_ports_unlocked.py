"""The outdoor refrigerant ports have no locking caps.

An open port tempts children and others to breathe the gas, which has killed, and lets anybody vent the charge. Locking
caps cost little.

Show tamper-resistant locking caps on every service port outdoors, or another way to keep the ports closed to all but
certified technicians.
"""

from checker.case import Case, quantity
from checker.quantities.refrigerant import System, of_system, systems
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


@quantity()
def locking_caps(case: Case, system: System) -> bool:
    """Whether outdoor ports are locked."""
    return bool(of_system(case, system, "locking_caps"))


def check(system: System, locked: bool) -> Meets | Finding:
    """The ports must be locked."""
    if locked:
        return Meets()
    return Finding(
        f"the outdoor refrigerant ports of {system.name} have no locking caps",
        at="locking_caps",
        help="show locking, tamper-resistant caps on the outdoor service ports",
    )


RULE = Rule(
    code="REFR-07", name="service-ports-unlocked", severity="correction", since="0.1",
    over=systems, when=due("locking_caps"), needs=(locking_caps,), cites=("locking-caps",), check=check,
    nothing="no refrigerant line is drawn", answers=("I05",),
)  # fmt: skip
