"""Ventilation without recovery costs enough that a recovery unit would pay.

Outdoor air must be heated all winter. Its heat is the flow times the degree days; a recovery unit hands back
about 70 % of it and takes some fan power of its own, which is taken off. Of the prices and efficiencies the
cautious end is taken, and cooling and moisture are left out, so that the saving is rather too low than too high.

The extra first cost is not known here. The figure to compare with an offer is the greatest extra cost that
comes back within 15 years by simple payback. Degree days to another base than 65 degF change it in proportion.
"""

from checker import each
from checker.case import Case, Missing, NotApplicable
from checker.design import Design
from checker.design.fans import Fan
from checker.quantities.climate import zone_number
from checker.quantities.recovery_worth import extra_fan_cost, heat_cost, ventilation_flow
from checker.quantities.ventilation import strongest
from checker.quantities.whole_house import Running, needed
from checker.rule import Finding, Meets, Num, Rule


def could_recover(case: Case, design: Design) -> bool:
    """No energy prices are stated, or the design has recovery, or must have it by its climate zone."""
    if design.site is None or design.site.prices is None:
        return False
    if any(isinstance(part.device, Fan) and part.device.role == "recovery" for part in needed(case, design)):
        return False
    try:
        return zone_number(case, design) not in case.limit("recovery-zones")
    except (Missing, NotApplicable):
        return True


def check(
    _design: Design, flow: float, heat: float, fan: float, part: Running, recovery: float, years: float, least: float
) -> Meets | Finding:
    """Saving of a year, and the first cost that it pays back."""
    saving = recovery * heat - fan
    worth = max(0.0, saving) * years
    numbers = {
        "yearly_cost": Num(round(heat)),
        "saving": Num(round(saving)),
        "first_cost": Num(10 * round(worth / 10)),
        "years": Num(round(years)),
    }
    if worth < least:
        return Meets(numbers)
    return Finding(
        "heating {ventilation_flow} of ventilation air costs about {yearly_cost} USD a year, and recovery would save "
        "{saving} USD of it: an extra cost of up to {first_cost} USD comes back in {years} years",
        at=part.path,
        help="hold an offer for a recovery unit against {first_cost} USD",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-36", name="recovery-would-pay", severity="note", since="0.1",
    over=each.design, when=could_recover, needs=(ventilation_flow, heat_cost, extra_fan_cost, strongest),
    limits=("recovery-assumed", "payback-time", "recovery-first-cost"),
    cites=("recovery-fan-efficacy", "heating-efficiency"), check=check,
)  # fmt: skip
