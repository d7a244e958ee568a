"""A duct in an exterior wall or in a floor over unconditioned space has too little insulation on its cold side.

A duct in the shell takes the place of insulation. To count as inside, there must be an air barrier and enough
insulation between the duct and the outside: R-10 in a wall and R-19 in a floor; from 2024 in both R-10, or half of
what the energy chapter's table asks of the assembly, whichever is more. Otherwise it is a duct outside the
conditioned space and carries its own insulation.

Move the duct into an interior wall, or give the cavity the depth for both.
"""

from typing import Any

from checker.case import CannotJudge, Case, Missing, NotApplicable, quantity
from checker.codebook import converted
from checker.design.airway import Run
from checker.quantities.climate import zone
from checker.quantities.duct_exposure import leads_outdoors, supply_and_return_runs
from checker.rule import Finding, Meets, Num, Rule

SHELL = ("exterior wall", "floor over unconditioned")


@quantity()
def shell_place(case: Case, run: Run) -> str:
    """The wall or floor of the shell that a duct runs in. Raises NotApplicable where there is none."""
    places = [place for place in case.get(run, "location") if place in SHELL]
    if not places or leads_outdoors(case, run):
        raise NotApplicable("it runs in no exterior wall and no floor over unconditioned space")
    return "floor over unconditioned" if "floor over unconditioned" in places else "exterior wall"


@quantity("resistance", "by wall or floor")
def least_outboard(case: Case, run: Run) -> float:
    """Insulation that the edition asks for on the cold side of the duct."""
    floor = shell_place(case, run) == "floor over unconditioned"
    plain = float(case.limit("floor-below-duct" if floor else "wall-outside-duct"))
    try:
        halves = case.limit("half-of-shell")["floor" if floor else "wall"]
    except NotApplicable:
        return plain
    found = outboard(case, run)
    if found < plain or found >= converted(halves[-1][2], "resistance"):
        return plain
    low, high = half_of_table(case, run, halves)
    if low <= found < high:
        raise CannotJudge("half of the table's insulation depends on which of its columns the wall or floor follows")
    return high if found >= high else low


def half_of_table(case: Case, run: Run, halves: list[list[Any]]) -> tuple[float, float]:
    """Least and greatest half of what the table asks of the assembly, by its ways and the climate zone."""
    word = zone(case, run)
    number = 5 if word == "4C" else int(word[0])
    low, high = next(row[1:] for row in halves if number <= row[0])
    return float(converted(low, "resistance")), float(converted(high, "resistance"))


@quantity("resistance")
def outboard(case: Case, run: Run) -> float:
    """Insulation on the cold side; asked for unless the duct's own already suffices for a duct outside."""
    shell_place(case, run)
    own = case.maybe(run, "insulation")
    stated = case.maybe(run, "insulation_outboard")
    if stated is None and own is not None and own >= case.limit("duct-insulation-elsewhere"):
        return 0.0
    return float(case.get(run, "insulation_outboard"))


def check(run: Run, place: str, found: float, least: float, own_least: float) -> Meets | Finding:
    """Enough on the cold side, or enough around the duct."""
    own = run.insulation
    if found >= least or (own is not None and own >= own_least):
        return Meets()
    if own is None:
        raise Missing(f"{run.path}.insulation")
    return Finding(
        f"{run.name} runs in the {{place}} with {{outboard}} on its cold side, less than {{least_outboard}}",
        at="insulation_outboard",
        help="move it into an interior wall or floor, or put {least_outboard} between it and the cold side",
        numbers={"place": Num("floor over unconditioned space" if place.startswith("floor") else place)},
    )


RULE = Rule(
    code="DUCT-33", name="duct-in-shell-exposed", severity="correction", since="0.1",
    over=supply_and_return_runs, needs=(shell_place, outboard, least_outboard),
    limits=("duct-insulation-elsewhere",), cites=("wall-outside-duct", "floor-below-duct"), check=check,
    nothing="no supply or return duct is drawn", answers=("F25",),
)  # fmt: skip
