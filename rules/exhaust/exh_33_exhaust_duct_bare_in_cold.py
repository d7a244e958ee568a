"""An exhaust duct runs bare or thinly insulated through a cold attic, crawl space or garage.

The moist air of a bath condenses inside a cold duct. The water runs back into the fan and the ceiling, or pools in
a sag and closes the duct.

The usual cause is flexible duct without a jacket, or a duct that rises out of the ceiling insulation. Insulate it,
lay it low under the ceiling insulation, or keep it inside the heated space.
"""

from checker.case import Case, NotApplicable, quantity
from checker.design.airway import Airway
from checker.design.fans import Fan
from checker.quantities.exhaust_duct import cold_sections, exhaust_line
from checker.rule import Finding, Meets, Num, Rule

WARM_ZONES = ("1", "2")


def exhaust_fans(case: Case) -> list[Fan]:
    """Exhaust fans; what a recovery unit blows out has already given off its heat."""
    return [fan for fan in case.design.fans.values() if fan.role == "exhaust"]


def is_cold_place(case: Case, _fan: Fan) -> bool:
    """It hardly gets cold in this climate zone."""
    site = case.design.site
    zone = case.maybe(site, "climate_zone") if site is not None else None
    return zone is None or str(zone)[:1] not in WARM_ZONES


@quantity()
def cold_run(case: Case, fan: Fan) -> Airway:
    """The first section of the duct that runs through the cold. Raises NotApplicable where none does."""
    cold = cold_sections(case, exhaust_line(case, fan))
    if not cold:
        raise NotApplicable("its duct does not run through a cold space")
    return cold[0]


@quantity("resistance")
def insulation(case: Case, fan: Fan) -> float:
    """Insulation of that section; what lies over a buried duct counts too."""
    run = cold_run(case, fan)
    over = case.maybe(run, "insulation_over") if case.maybe(run, "buried") else None
    return float(over) if over is not None else float(case.get(run, "insulation"))


def check(fan: Fan, run: Airway, insulation: float, least: float) -> Meets | Finding:
    """Compare with what practice gives such ducts."""
    numbers = {"name": Num(fan.name), "where": Num(", ".join(run.location))}
    if insulation >= least * (1 - 1e-9):
        return Meets(numbers)
    message = "the duct of {name} runs through {where} with {insulation} of insulation, less than {limit}"
    if insulation == 0:
        message = "the duct of {name} runs through {where} without insulation"
    return Finding(
        message, help="insulate it to {limit} or more, or lay it inside the heated space", numbers=numbers
    )


RULE = Rule(
    code="EXH-33", name="exhaust-duct-bare-in-cold", severity="caution", since="0.1",
    over=exhaust_fans, when=is_cold_place, needs=(cold_run, insulation), limits=("cold-exhaust-duct-insulation",),
    check=check, nothing="the design has no exhaust fan", answers=("B33",),
)  # fmt: skip
