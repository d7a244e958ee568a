"""Air leakage is counted as ventilation, but no blower-door test is planned.

The ventilation standard takes off only what a test has shown. Where the fans alone do not reach the total
rate, the design leans on a leakage that is a hope until it has been measured, and a house that turns out
tighter gets too little air.

Plan the blower-door test and leave room to raise the fan afterwards, or provide the total rate by fans.
"""

from checker import each
from checker.case import Case, quantity
from checker.design import Design
from checker.quantities.ventilation import SLACK
from checker.quantities.ventilation_controls import Told, test_state
from checker.quantities.ventilation_standard import rate_by_standard, rate_wanted_by_standard, standard_rate
from checker.rule import Finding, Meets, Rule


def leans_on_leakage(case: Case, design: Design) -> bool:
    """The fans reach the total rate without any leakage, or fall short even with it."""
    case.codebook.require("standard-leakage-credit")
    provided, total = rate_by_standard(case, design), standard_rate(case, design)
    if provided >= total * (1 - SLACK):
        return False
    return provided >= rate_wanted_by_standard(case, design) * (1 - SLACK)


@quantity()
def leakage_test(case: Case, design: Design) -> Told:
    """Whether the leakage is or will be tested."""
    house = design.house
    if house is not None and (house.airtightness_is == "tested" or house.measured is not None):
        return Told(True, "house.airtightness_is")
    return test_state(case, "blower-door")


def check(_design: Design, provided: float, total: float, test: Told) -> Meets | Finding:
    """A test must stand behind the credit."""
    if test.so:
        return Meets()
    return Finding(
        "the fans give {rate_by_standard} of {standard_rate} and leakage the rest, but no blower-door test is planned",
        at=test.path,
        help="plan a blower-door test, or provide {standard_rate} by fans",
    )


RULE = Rule(
    code="VENT-07", name="leakage-credit-without-a-test", severity="caution", since="0.1",
    over=each.design, when=leans_on_leakage, needs=(rate_by_standard, standard_rate, leakage_test),
    cites=("standard-leakage-credit",), check=check, answers=("A20",),
)  # fmt: skip
