"""Fans that run all day draw a tight house down.

Exhaust-only ventilation takes its air in through cracks, wherever they are: from the garage, the attic, the soil. In a
tight house the steady suction adds up, draws soil gas in, and in a damp climate pulls moist outdoor air into the walls.

Let a supply fan run with the exhaust, show passive inlets of known area, or choose a balanced unit.
"""

from checker import each
from checker.case import Case
from checker.design import Design
from checker.quantities.combined_exhaust import running_all_day
from checker.quantities.house_pressure import HousePressure, pressure_all_day
from checker.rule import Finding, Meets, Num, Rule


def takes_out_more(case: Case, design: Design) -> bool:
    """Fans do not take out more than they bring in all day."""
    return running_all_day(case, design).net > 0.0


def check(_design: Design, steady: HousePressure, limit: float) -> Meets | Finding:
    """Compare the all-day pressure with the limit."""
    numbers = {
        "surplus": Num(steady.combination.net, "airflow"),
        "drawn": Num(max(0.0, -steady.value), "house_pressure"),
        "make_up": Num(max(0.0, steady.combination.net - steady.inflow_at(limit)), "airflow"),
    }
    if steady.within(limit):
        return Meets(numbers)
    more = "more than " if steady.beyond else ""
    return Finding(
        f"all day fans take out {{surplus}} more than they bring in and draw the house down by {more}{{drawn}}, beyond "
        "{limit}",
        at="house.airtightness",
        help="let a supply of {make_up} or more run all day, show passive inlets, or choose a balanced unit",
        numbers=numbers,
    )


RULE = Rule(
    code="PRES-22", name="house-drawn-down-all-day", severity="caution", since="0.1",
    over=each.design, when=takes_out_more, needs=(pressure_all_day,), limits=("house-drawn-down-all-day",), check=check,
    answers=("C17",),
)  # fmt: skip
