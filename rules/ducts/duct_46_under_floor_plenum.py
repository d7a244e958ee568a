"""The space under the floor serves as a plenum.

A crawl space that carries the air of the house carries its moisture, soil gas and dust too, and heats the ground.
New buildings may not have one; the code only says how existing ones are kept up.

Run ducts from the unit to the registers.
"""

from checker.case import Case, given, path_of
from checker.design.ducts import DuctSystem
from checker.rule import Finding, Meets, Rule


def told_systems(case: Case) -> list[DuctSystem]:
    """Systems of which the file says whether the under-floor space carries their air."""
    return [
        system
        for system in case.design.ducts.values()
        if system.underfloor_plenum is not None or path_of(system, "underfloor_plenum") in case.design.tbd
    ]


def check(system: DuctSystem, plenum: bool) -> Meets | Finding:
    """No under-floor plenum."""
    if not plenum:
        return Meets()
    return Finding(
        f"the space under the floor carries the air of {system.name}",
        at="underfloor_plenum",
        help="run ducts from the unit to the registers",
    )


RULE = Rule(
    code="DUCT-46", name="under-floor-plenum", severity="correction", since="0.1",
    over=told_systems, needs=(given("underfloor_plenum"),), cites=("under-floor-plenum",), check=check,
    nothing="no duct system is said to use the space under the floor", answers=("F18",),
)  # fmt: skip
