"""The whole-house fans move less outdoor air than the chosen ventilation standard asks for.

Since 2013 the standard counts the floor area three times as much as the residential code does, so that a
house can meet the code and miss the standard. What leaks in, by a blower-door test, may be taken off, in the
way of the edition; for supply-only and exhaust-only houses the editions since 2019 let little of it count.

The credit is asked for only where the fans do not reach the total without it. Raise the rate, or show
airtightness, height and weather factor so that the credit can be worked out.
"""

from checker import each
from checker.design import Design
from checker.quantities.ventilation import SLACK, strongest
from checker.quantities.ventilation_standard import rate_by_standard, rate_wanted_by_standard, standard_rate
from checker.quantities.whole_house import Running
from checker.rule import Finding, Meets, Num, Rule


def check(_design: Design, provided: float, wanted: float, total: float, part: Running) -> Meets | Finding:
    """What the fans are worth against the total less the credit."""
    credit = total - wanted
    numbers = {"credit": Num(credit, "airflow"), "short": Num(wanted - provided, "airflow")}
    if provided >= wanted * (1 - SLACK):
        return Meets({"credit": numbers["credit"]})
    return Finding(
        "the whole-house fans are worth {rate_by_standard}, below {rate_wanted_by_standard}: "
        "{standard_rate} in all, less {credit} for air leakage",
        at=part.path,
        help="raise the setting that runs all day by {short}",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-05", name="rate-below-the-ventilation-standard", severity="correction", since="0.1",
    over=each.design, needs=(rate_by_standard, rate_wanted_by_standard, standard_rate, strongest),
    cites=("standard-rate",), check=check, answers=("A18", "A19", "A20", "A21", "A22", "A24"),
)  # fmt: skip
