"""A duct buried in ceiling insulation lacks cover, or insulation of its own in a humid climate.

A buried duct counts on the insulation around it: over and under it together there is R-19 at every point, not
counting the duct's own. In hot and humid zones a buried supply duct is cold enough to sweat inside the
insulation, so it has R-13 of its own, a vapor retarder and cover all round, but for the last 3 ft to the outlet.

Blow more insulation over the duct, or take duct with more of its own.
"""


from checker.case import CannotJudge, Case, Missing, given, path_of, quantity
from checker.design.airway import Run
from checker.quantities.climate import zone
from checker.quantities.duct_exposure import side, supply_and_return_runs
from checker.rule import Finding, Meets, Num, Rule


def buried_runs(case: Case) -> list[Run]:
    """Runs that are buried in ceiling insulation, or of which that is to be decided."""
    runs = supply_and_return_runs(case)
    return [run for run in runs if run.buried or path_of(run, "buried") in case.design.tbd]


def is_buried(case: Case, run: Run) -> bool:
    """It is not buried."""
    return bool(case.get(run, "buried"))


@quantity("resistance", "over + under")
def cover(case: Case, run: Run) -> float:
    """Ceiling insulation over and under the duct, together."""
    over, under = case.all(run, "insulation_over", "insulation_under")
    return float(over + under)


@quantity("resistance")
def own_insulation(case: Case, run: Run) -> float:
    """Insulation of the duct itself that the climate asks for; 0 where it asks for none."""
    letters = zone(case, case.design)
    zones = list(case.limit("humid-zones"))
    if letters in {each[0] for each in zones}:
        raise CannotJudge(f"zone {letters} lacks its moisture letter; write for example {letters}A")
    if letters not in zones or side(case, run) != "supply":
        return 0.0
    if case.design.house is not None and case.design.house.attic == "unvented":
        raise CannotJudge("in an unvented attic the 2024 edition asks for less where vapor can leave by diffusion")
    if ends_at_outlet(case, run):
        return 0.0
    return float(case.limit("buried-duct-in-humid-zone"))


def ends_at_outlet(case: Case, run: Run) -> bool:
    """Whether it is a short piece next to an outlet."""
    length = case.maybe(run, "length")
    return length is not None and length < case.limit("buried-duct-outlet-end") and run.to in run.up.outlets


def check(run: Run, found: float, own: float, insulation: float, least: float) -> Meets | Finding:
    """Compare cover and own insulation."""
    numbers = {"own": Num(own, "resistance")}
    if found < least * (1.0 - 1e-9):
        return Finding(
            f"{run.name} is buried with {{cover}} over and under it, less than {{limit}}",
            at="insulation_over",
            help="blow insulation over it until over and under add up to {limit}",
            numbers=numbers,
        )
    if own > 0.0 and run.insulation_over == 0.0:
        return Finding(
            f"{run.name} is a supply duct in a humid climate with no ceiling insulation over it",
            at="insulation_over",
            help="bury it completely, or run it inside the conditioned space",
            numbers=numbers,
        )
    if insulation < own:
        return Finding(
            f"{run.name} is a supply duct buried in a humid climate with {{insulation}} of its own, less than {{own}}",
            at="insulation",
            help="use duct with {own} and a vapor retarder, or run it inside the conditioned space",
            numbers=numbers,
        )
    if own > 0.0 and run.vapor_jacket is None and run.jacket_permeance is None:
        raise Missing(path_of(run, "vapor_jacket"))
    if own > 0.0 and run.vapor_jacket is False:
        return Finding(
            f"{run.name} is a supply duct buried in a humid climate without a vapor retarder over its {{insulation}}",
            at="vapor_jacket",
            help="cover its insulation with a sealed vapor retarder of 0.05 perm or less",
            numbers=numbers,
        )
    return Meets(numbers)


RULE = Rule(
    code="DUCT-31", name="buried-duct-too-little-covered", severity="correction", since="0.1",
    over=buried_runs, when=is_buried, needs=(cover, own_insulation, given("insulation")),
    limits=("buried-duct-cover",), check=check, nothing="no duct is buried in ceiling insulation",
    answers=("F21", "F22"),
)  # fmt: skip
