"""A unit that cools has no condensate drain.

A cooling coil takes water out of the air, a gallon or more in a humid hour for a whole house. Without a pipe it runs down
the wall or through the ceiling.

Draw a drain for every indoor unit, wall units included: where it goes, its size and its fall. A drain named after the
unit under `condensate` is enough to begin with.
"""

from checker.case import Case, Missing, quantity
from checker.design.equipment import Equipment
from checker.quantities.condensate import must_be_drained
from checker.quantities.condensing import cooling_units
from checker.rule import Finding, Meets, Rule


def with_coils(case: Case) -> list[Equipment]:
    """Units with a coil indoors. Raises Missing, once, where the file says nothing of condensate."""
    units = cooling_units(case)
    if units and not case.stated("condensate"):
        raise Missing("condensate")
    return units


@quantity()
def drained(case: Case, unit: Equipment) -> bool:
    """Whether a drain is drawn for it."""
    return must_be_drained(case, unit)


def check(unit: Equipment, found: bool) -> Meets | Finding:
    """A drain must be there."""
    if found:
        return Meets()
    return Finding(
        f"{unit.name} cools, and the design has no condensate drain",
        help="show a condensate drain from its pan to an accepted place, with size and fall",
    )


RULE = Rule(
    code="COND-01", name="coil-without-drain", severity="correction", since="0.1",
    over=with_coils, needs=(drained,), cites=("condensate-disposal",), check=check,
    nothing="no unit cools indoors", answers=("J03",),
)  # fmt: skip
