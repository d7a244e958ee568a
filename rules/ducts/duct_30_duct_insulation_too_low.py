"""A supply or return duct outside the conditioned space has too little insulation.

An attic is the hottest place of a house in summer and one of the coldest in winter. A small ducted unit may lose
a fifth of its output there, and the coldest rooms lose most.

The usual cause is flexible duct bought with the R-6 that an older code allowed. Buy it with the R-value that the
edition asks for, or bring the duct inside the insulation, where it needs none. From 2021 attics and all other
places outside are treated alike.
"""

from checker.case import CannotJudge, Case, Missing, NotApplicable, given, path_of, quantity
from checker.design.airway import Run
from checker.quantities.duct_exposure import (
    exposure,
    is_recovery,
    leads_outdoors,
    supply_and_return_runs,
)
from checker.quantities.duct_scope import mover_or_none
from checker.rule import Finding, Meets, Num, Rule
from checker.sizes import equivalent_diameter

IN_ATTIC = ("duct-insulation-in-attic", "small-duct-insulation-in-attic")
ELSEWHERE = ("duct-insulation-elsewhere", "small-duct-insulation-elsewhere")


def carries_room_air(case: Case, run: Run) -> bool:
    """It carries outdoor air, or is a cavity of the framing, which is judged by itself."""
    if is_recovery(mover_or_none(case, run.up)) or run.up.ventilation_only:
        case.codebook.require("ventilation-duct-rules")
    return run.material != "framing cavity" and not leads_outdoors(case, run)


@quantity()
def place(case: Case, run: Run) -> str:
    """The place outside the conditioned space where the duct needs most. Raises NotApplicable where it is inside."""
    where = exposure(case, run)
    outside = where.at("attic") or where.at("outside")
    if outside:
        return outside[0]
    if where.at("ground"):
        raise CannotJudge("a duct beneath a building may be insulated or listed for an equal efficiency")
    if where.at("shell"):
        raise NotApplicable("it runs in a wall or floor of the shell, which is judged by itself")
    raise NotApplicable("it runs inside the conditioned space")


@quantity("resistance", "by place and diameter")
def required(case: Case, run: Run) -> float:
    """Insulation that the edition asks for. Raises Missing for a size on which it depends."""
    keys = IN_ATTIC if exposure(case, run).at("attic") else ELSEWHERE
    usual, small = (float(case.limit(key)) for key in keys)
    insulation, size = case.maybe(run, "insulation"), case.maybe(run, "size")
    if size is None:
        if insulation is not None and not small <= insulation < usual:
            return usual if insulation >= usual else small
        raise Missing(path_of(run, "size"))
    return small if equivalent_diameter(size) < case.limit("small-duct") else usual


def check(run: Run, insulation: float, least: float, where: str) -> Meets | Finding:
    """Compare the insulation with what the edition asks for."""
    if insulation >= least:
        return Meets()
    return Finding(
        f"{run.name} runs in the {{where}} with {{insulation}}, less than {{required}}"
        if insulation > 0.0
        else f"{run.name} runs bare in the {{where}}, where it needs {{required}}",
        at="insulation",
        help="insulate it to {required}, or move it inside the conditioned space",
        numbers={"where": Num(where)},
    )


RULE = Rule(
    code="DUCT-30", name="duct-insulation-too-low", severity="correction", since="0.1",
    over=supply_and_return_runs, when=carries_room_air, needs=(given("insulation"), required, place),
    cites=("duct-insulation-in-attic",), check=check, nothing="no supply or return duct is drawn",
    answers=("F19", "F20"),
)  # fmt: skip
