"""Heat recovery saves so little in this house that its cost alone does not speak for it.

In a mild climate, with cheap fuel or a good heat pump, the heat in the outgoing air is worth little, and the fans
of the recovery unit take some of it back. Recovery may still be wanted: for warm fresh air, for balance, for dry or
humid air that it tempers, or because the code asks for it.

The unit's own recovery counts, less where its two flows differ and while it thaws, against plain supply fans; what is
not rated is taken at the end that favours recovery. In a hot climate the warm part of the year is asked for. Where
`site.prices` states the extra first cost, the comment comes when it takes longer than 15 years to come back, and says
how far prices move that; without it, when the yearly saving is small. The worksheet shows the whole reckoning.
"""

from checker import each
from checker.case import Case, Missing, NotApplicable, quantity
from checker.design import Design
from checker.quantities.air_year import is_hot, lacking_warm_part
from checker.quantities.climate import zone_number
from checker.quantities.recovery_options import Comparison, Sensitivity, told
from checker.quantities.recovery_worth import as_designed, design_range, recovery_parts
from checker.rule import Finding, Meets, Num, Rule


def by_choice(case: Case, design: Design) -> bool:
    """No energy prices are stated, the design has no recovery, or its climate zone asks for it."""
    if design.site is None or design.site.prices is None or not recovery_parts(case, design):
        return False
    try:
        return zone_number(case, design) not in case.limit("recovery-zones")
    except (Missing, NotApplicable):
        return True


@quantity()
def whole_year(case: Case, design: Design) -> Comparison:
    """The comparison, for which a hot climate needs the warm part of the year."""
    found = as_designed(case, design)
    if is_hot(case, design) and not found.warm_part:
        raise Missing(*lacking_warm_part(case, design))
    return found


def check(_design: Design, found: Comparison, reach: Sensitivity, least: float, years: float) -> Meets | Finding:
    """Saving of a year against the stated cost, else against what is had for its cost alone."""
    saving = found.worth.saving()
    numbers = told(found, reach) | {
        "flow": Num(found.flow, "airflow"),
        "share": Num(found.best.sensible, "share"),
        "passed": Num(found.best.moisture, "share"),
        "saving": Num(max(0, round(saving))),
    }
    pays = saving >= least if reach.cost is None else reach.worth.first_cost(years) >= reach.cost
    if pays:
        return Meets(numbers)
    message = "recovery of {share}" + (" of the heat and {passed} of the moisture" if found.best.moisture else "")
    message += " from {flow} saves about {saving} USD a year here; "
    if reach.cost is None:
        message += "{first_cost} USD come back in {years} years, {first_cost_half_price} to {first_cost_double_price} as "
        message += "prices halve or double"
        return Finding(
            message,
            at="fans",
            help="keep it for comfort and moisture, or hold its extra cost against {first_cost} USD",
            numbers=numbers,
        )
    never = numbers["payback"].value == "never"
    message += "its {cost} USD never come back" if never else "its {cost} USD come back in {payback} years"
    message += "; {payback_double_price} to {payback_half_price} as prices double or halve"
    return Finding(
        message,
        at="fans",
        help="keep it for comfort and moisture, or look for one that costs no more than {first_cost} USD extra",
        numbers=numbers,
    )


RULE = Rule(
    code="ENER-13", name="recovery-saves-little", severity="note", since="0.1",
    over=each.design, when=by_choice, needs=(whole_year, design_range), limits=("recovery-saving", "payback-time"),
    cites=(
        "plain-fan-efficacy", "heating-efficiency-least", "cooling-efficiency", "ventilation-heated-below", "cooling-zones",
    ), check=check,
)  # fmt: skip
