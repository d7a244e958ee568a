"""Ventilation without recovery costs enough that a recovery unit would pay.

Outdoor air is heated all winter, and in summer cooled and dried. A recovery unit hands back about 70 % of the heat,
one that passes moisture also half of the moisture, and takes fan power of its own. The worksheet sets the three ways
side by side: energy of the air, of the fans, cost of a year. Where nothing is rated or stated, the end is taken that
makes recovery worth less: efficient heating, thirsty fans, no credit for the heat of the fans. Without temperature
bins of the whole year or a cooling season for the site, cooling and moisture are left out.

State the extra first cost under `site.prices` and the comment tells the years it takes to come back; without it, the
greatest extra cost that comes back within 15 years. Both follow prices and degree days: at half and double the
prices the comment says so, the worksheet also at a fifth more or less of degree days.
"""

from checker import each
from checker.case import Case, Missing, NotApplicable
from checker.design import Design
from checker.design.fans import Fan
from checker.quantities.climate import zone_number
from checker.quantities.recovery_options import Comparison, Sensitivity, told
from checker.quantities.recovery_worth import offer_range, offers, ventilation_flow
from checker.quantities.ventilation import strongest
from checker.quantities.whole_house import Running, needed
from checker.rule import Finding, Meets, Rule


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
    _design: Design, flow: float, found: Comparison, reach: Sensitivity, part: Running, least: float, years: float
) -> Meets | Finding:
    """Whether the extra cost, stated or usual, comes back in time."""
    saving = found.worth.saving()
    worth = reach.worth.first_cost(years)
    numbers = told(found, reach)
    wanted = least if reach.cost is None else reach.cost
    if worth < wanted:
        return Meets(numbers)
    message = "{air} {ventilation_flow} of ventilation air costs about {yearly_cost} USD a year, and {recovery} would save "
    if reach.cost is None:
        message += "{saving} USD of it: an extra cost of up to {first_cost} USD comes back in {years} years; "
        message += "{first_cost_half_price} to {first_cost_double_price} as prices halve or double"
        help_ = "hold an offer for a recovery unit against {first_cost} USD"
    else:
        message += "{saving} USD of it: {cost} USD come back in {payback} years; {payback_double_price} to "
        message += "{payback_half_price} as prices double or halve"
        help_ = "weigh {cost} USD against {saving} USD a year, and hold offers against {first_cost} USD"
    return Finding(message, at=part.path, help=help_, numbers=numbers) if saving > 0.0 else Meets(numbers)


RULE = Rule(
    code="VENT-36", name="recovery-would-pay", severity="note", since="0.1",
    over=each.design, when=could_recover, needs=(ventilation_flow, offers, offer_range, strongest),
    limits=("recovery-first-cost", "payback-time"),
    cites=(
        "recovery-assumed", "moisture-recovery-assumed", "recovery-fan-efficacy", "heating-efficiency",
        "cooling-efficiency", "ventilation-heated-below",
    ), check=check,
)  # fmt: skip
