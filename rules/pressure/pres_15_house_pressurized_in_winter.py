"""Fans that run all day press moist air into the walls of a house in a cold climate.

What a supply fan brings in beyond the exhaust leaves through cracks. In winter it carries the moisture of the house into
walls and attic, where it meets cold sheathing and freezes. A pascal or two do no harm; more of it, all winter, does.

Let an exhaust run with the supply, slow the supply fan, or choose a balanced unit.
"""

from checker import each
from checker.case import Case
from checker.design import Design
from checker.quantities.cold_climate import is_cold
from checker.quantities.combined_exhaust import running_all_day
from checker.quantities.house_pressure import HousePressure, pressure_all_day
from checker.rule import Finding, Meets, Num, Rule


def presses_in_the_cold(case: Case, design: Design) -> bool:
    """Fans do not bring in more than they take out all day, or the climate is not cold."""
    return running_all_day(case, design).net < 0.0 and is_cold(case, design)


def check(_design: Design, steady: HousePressure, limit: float) -> Meets | Finding:
    """Compare the all-day pressure with the limit."""
    numbers = {"surplus": Num(-steady.combination.net, "airflow"), "raised": Num(max(0.0, steady.value), "house_pressure")}
    if steady.within(limit):
        return Meets(numbers)
    more = "more than " if steady.beyond else ""
    return Finding(
        f"all day fans bring in {{surplus}} more than they take out and raise the house by {more}{{raised}}, beyond {{limit}}",
        at="house.airtightness",
        help="let an exhaust of up to {surplus} run all day, slow the supply fan, or choose a balanced unit",
        numbers=numbers,
    )


RULE = Rule(
    code="PRES-15", name="house-pressurized-in-winter", severity="caution", since="0.1",
    over=each.design, when=presses_in_the_cold, needs=(pressure_all_day,), limits=("house-pressurized-in-winter",),
    cites=("cold-climate-zone", "cold-winter-design"), check=check, answers=("C17",),
)  # fmt: skip
