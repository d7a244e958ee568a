"""The whole-house fans move less outdoor air than the code asks for.

The rate goes by floor area and bedrooms, from the code's table or, since 2018, from its equation, whichever
is less. Supply and exhaust are not added up: the larger of the two counts. A fan that runs part of the time
must move more while it runs, by the factor of the code's second table.

Where supply and exhaust both run, the editions since 2021 may let 70 % do; this rule then asks for that
much, and another rule looks at the conditions. A common cause is a rate taken from the fan's box at free air,
or a hood's high speed counted although it runs for minutes only.
"""

from checker import each
from checker.design import Design
from checker.quantities.ventilation import SLACK, provided_rate, required_rate, strongest
from checker.quantities.whole_house import Running
from checker.rule import Finding, Meets, Num, Rule


def check(_design: Design, provided: float, required: float, part: Running) -> Meets | Finding:
    """The larger of supply and exhaust against the required rate."""
    if provided >= required * (1 - SLACK):
        return Meets()
    return Finding(
        "the whole-house fans are worth {provided_rate} all day, {short} below the {required_rate} required",
        at=part.path,
        help="raise the setting that runs all day by {short}, or let a cycled fan run longer",
        numbers={"short": Num(required - provided, "airflow")},
    )


RULE = Rule(
    code="VENT-02", name="whole-house-rate-too-low", severity="correction", since="0.1",
    over=each.design, needs=(provided_rate, required_rate, strongest),
    cites=("whole-house-rate-table",), check=check, answers=("A02", "A03", "A05"),
)  # fmt: skip
