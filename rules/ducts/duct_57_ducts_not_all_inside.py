"""The ducts are said to be all inside, and some of them, or the unit, are outside.

Ducts inside the conditioned space need no insulation, may leak more and, in older editions, need no test. All of
it hangs on every run and the unit being inside the air barrier and the insulation. One run in the attic undoes it.

Move that run inside, or drop the claim. Ducts buried in ceiling insulation can count as inside on further terms:
the unit inside, leakage to outdoors of 1.5 cfm per 100 ft2, and full insulation over the duct.
"""

from checker.case import CannotJudge, Case, Missing
from checker.design.ducts import DuctSystem
from checker.quantities.duct_exposure import house_air_systems
from checker.quantities.duct_leakage import Whereabouts, whereabouts
from checker.rule import Finding, Meets, Num, Rule


def is_claimed(case: Case, system: DuctSystem) -> bool:
    """It is not said to be all inside."""
    return bool(case.maybe(system, "all_inside"))


def check(system: DuctSystem, where: Whereabouts) -> Meets | Finding:
    """Nothing outside."""
    outside = list(where.outside)
    if not outside:
        if where.open:
            raise Missing(*where.open)
        return Meets()
    if all(name in system.runs and system.runs[name].buried for name in outside):
        raise CannotJudge("buried ducts count as inside on terms of leakage and cover that are not all in the file")
    first = next(name for name in outside if not (name in system.runs and system.runs[name].buried))
    run = system.runs.get(first)
    return Finding(
        f"{system.name} is said to be all inside, and {{outside}} is not",
        at=f"runs.{first}.location" if run is not None else "all_inside",
        help="move it inside the conditioned space, or write `all_inside: no`",
        numbers={"outside": Num(", ".join(outside[:4]))},
    )


RULE = Rule(
    code="DUCT-57", name="ducts-not-all-inside", severity="correction", since="0.1",
    over=house_air_systems, when=is_claimed, needs=(whereabouts,), cites=("ducts-inside",), check=check,
    nothing="no duct system heats or cools rooms", answers=("F24",),
)  # fmt: skip
