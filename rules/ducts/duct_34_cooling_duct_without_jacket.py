"""A cooling supply duct in an unconditioned space has no vapor retarder outside its insulation.

Damp attic or crawl-space air passes through bare insulation and its water condenses on the cold metal. The
insulation soaks, sags and stains the ceiling. A jacket of 0.05 perm or less, or foil of 2 mils, keeps the water out.

Factory-insulated flexible duct has such a jacket: say so with `vapor_jacket`. Duct wrap needs its facing outside
with the seams taped. Spray foam of 3 perm-inch or less needs none.
"""

from checker.case import CannotJudge, Case, Missing, NotApplicable, path_of, quantity
from checker.design.airway import Run
from checker.design.equipment import Equipment
from checker.quantities.climate import zone
from checker.quantities.cold_ducts import cools
from checker.quantities.duct_exposure import exposure, house_air_systems, side
from checker.quantities.duct_scope import mover_or_none
from checker.rule import Finding, Meets, Num, Rule


def cooled_runs(case: Case) -> list[Run]:
    """Runs of systems whose equipment cools."""
    found = []
    for system in house_air_systems(case):
        unit = mover_or_none(case, system)
        if isinstance(unit, Equipment) and cools(case, unit):
            found += [run for run in system.runs.values() if run.material != "framing cavity"]
    return found


@quantity()
def damp_place(case: Case, run: Run) -> str:
    """The unconditioned place that the cold supply duct passes. Raises NotApplicable where there is none."""
    places = exposure(case, run).at("attic", "outside")
    if not places:
        raise NotApplicable("it runs inside the conditioned space")
    if side(case, run) != "supply":
        raise NotApplicable("it carries return air")
    if run.material == "lined steel" or run.insulation_kind == "spray foam":
        raise NotApplicable("its steel or its foam keeps vapor out")
    insulation = case.maybe(run, "insulation")
    if insulation is not None and insulation <= 0.0:
        raise NotApplicable("it has no insulation to protect")
    site = case.design.site
    if site is not None and site.climate_zone is not None and zone(case, run).endswith("B"):
        raise CannotJudge("whether the place is conducive to condensation is open in a dry climate")
    return places[0]


@quantity("permeance")
def jacket(case: Case, run: Run) -> float | None:
    """Permeance of the jacket: as stated; 0 for one without a figure, None where there is no jacket."""
    damp_place(case, run)
    stated = case.maybe(run, "jacket_permeance")
    if stated is not None:
        return float(stated)
    present = case.maybe(run, "vapor_jacket")
    if present is None:
        raise Missing(path_of(run, "vapor_jacket"))
    return 0.0 if present else None


def check(run: Run, place: str, permeance: float | None, most: float) -> Meets | Finding:
    """Compare the jacket with the greatest permeance."""
    numbers = {"place": Num(place)}
    if permeance is None:
        return Finding(
            f"{run.name} carries cooled air through the {{place}} without a vapor retarder outside its insulation",
            at="vapor_jacket",
            help="cover the insulation with a sealed vapor retarder of {limit} or less",
            numbers=numbers,
        )
    if permeance <= most:
        return Meets(numbers)
    return Finding(
        f"the jacket of {run.name} in the {{place}} has {{jacket}}, more than {{limit}}",
        at="jacket_permeance",
        help="use a jacket of {limit} or less, or foil of 2 mils or more",
        numbers=numbers,
    )


RULE = Rule(
    code="DUCT-34", name="cooling-duct-without-jacket", severity="correction", since="0.1",
    over=cooled_runs, needs=(damp_place, jacket), limits=("cooling-duct-jacket",), check=check,
    nothing="no duct carries cooled air", answers=("F13",),
)  # fmt: skip
