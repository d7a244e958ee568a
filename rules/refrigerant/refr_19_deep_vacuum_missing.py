"""No deep vacuum is planned before the lines are charged.

Air and water left in the lines freeze at the valve and make acid that eats the compressor. Purging with refrigerant
does not remove them and is against the law for most refrigerants.

Plan a nitrogen pressure test and then a deep vacuum that is held and recorded. Both are work for certified technicians.
"""

from checker.case import Case, quantity
from checker.quantities.refrigerant import System, of_system, systems
from checker.quantities.stage import due
from checker.rule import Finding, Meets, Rule


@quantity()
def vacuum(case: Case, system: System) -> str:
    """Whether the lines are evacuated: planned, done or none."""
    return str(of_system(case, system, "vacuum"))


def check(system: System, state: str) -> Meets | Finding:
    """A vacuum must be planned or done."""
    if state != "none":
        return Meets()
    return Finding(
        f"the lines of {system.name} are to be charged without a deep vacuum",
        at="vacuum",
        help="plan a deep vacuum, held and recorded, by a certified technician before charging",
    )


RULE = Rule(
    code="REFR-19", name="deep-vacuum-missing", severity="caution", since="0.1",
    over=systems, when=due("vacuum", on_site=True), needs=(vacuum,), cites=("deep-vacuum",), check=check,
    nothing="no refrigerant line is drawn", answers=("I20",),
)  # fmt: skip
