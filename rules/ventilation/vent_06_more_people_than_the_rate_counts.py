"""More people will live in the house than its ventilation rate counts with.

The rate of the ventilation standard takes one person for each bedroom and one more. Where more are known to
come, each adds 7.5 cfm. This is recalled from the standard's text: check it there.

Raise the setting that runs all day, or add a higher setting for the time when everybody is at home.
"""

from checker import each
from checker.case import Case, NotApplicable, quantity
from checker.design import Design
from checker.quantities.ventilation import SLACK
from checker.quantities.ventilation_standard import rate_by_standard, rate_for_people, rate_wanted_by_standard
from checker.rule import Finding, Meets, Num, Rule


def is_crowded(case: Case, design: Design) -> bool:
    """No more people are stated than bedrooms and one."""
    case.codebook.require("standard-occupants")
    stated = design.house is not None and case.maybe(design.house, "occupants") is not None
    return stated and rate_for_people(case, design) > 0


@quantity("airflow", "rate by the standard + 7.5 cfm for each further person")
def rate_with_people(case: Case, design: Design) -> float:
    """Rate with everybody counted. NotApplicable where even the rate without them is missed."""
    wanted = rate_wanted_by_standard(case, design)
    if rate_by_standard(case, design) < wanted * (1 - SLACK):
        raise NotApplicable("the rate is too low without counting them")
    return wanted + rate_for_people(case, design)


def check(design: Design, provided: float, wanted: float) -> Meets | Finding:
    """What the fans are worth against the rate for everybody."""
    if provided >= wanted * (1 - SLACK):
        return Meets()
    people = design.house.occupants if design.house is not None else None
    return Finding(
        "with {people} people the rate is {rate_with_people}; the whole-house fans are worth {rate_by_standard}",
        at="house.occupants",
        help="raise the setting that runs all day by {short}",
        numbers={"people": Num(people), "short": Num(wanted - provided, "airflow")},
    )


RULE = Rule(
    code="VENT-06", name="more-people-than-the-rate-counts", severity="caution", since="0.1",
    over=each.design, when=is_crowded, needs=(rate_by_standard, rate_with_people),
    cites=("standard-occupants",), check=check, answers=("A23",),
)  # fmt: skip
