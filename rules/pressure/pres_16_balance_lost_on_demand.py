"""A house that is said to be balanced is out of balance when its fans run on demand.

Balance at the trickle setting says nothing of the evening, when hood and dryer run. This note names what moves the house
furthest, the two largest exhausts together or supply that speeds up alone, so that the designer has seen it.

Where it matters, let the supply speed up with the exhaust, or show make-up air for the largest of them.
"""

from checker import each
from checker.case import Case, Missing, NotApplicable
from checker.design import Design
from checker.quantities.house_pressure import HousePressure, farthest_from_balance, pressure_by_largest
from checker.quantities.spillage import spillage
from checker.rule import Finding, Meets, Num, Rule


def is_said_to_be_balanced(case: Case, design: Design) -> bool:
    """The house is not said to be balanced, or it is drawn so low that other rules speak."""
    if design.house is None or design.house.strategy not in ("balanced", "balanced with recovery"):
        return False
    return pressure_by_largest(case, design).within(case.limit("house-drawn-down")) and not draft_is_lost(case, design)


def draft_is_lost(case: Case, design: Design) -> bool:
    """Whether a burner loses its draft in the worst case, which says more."""
    try:
        return spillage(case, design).spills
    except (Missing, NotApplicable):
        return False


def check(_design: Design, farthest: HousePressure, limit: float, _low: float) -> Meets | Finding:
    """Compare the pressure that is farthest from balance with the limit."""
    net = farthest.combination.net
    numbers = {"net": Num(abs(net), "airflow"), "moved": Num(abs(farthest.value), "house_pressure")}
    if farthest.within(limit):
        return Meets(numbers)
    more = "more than " if farthest.beyond else ""
    runs, way = ("goes out than comes in", "below") if net > 0 else ("comes in than goes out", "above")
    return Finding(
        f"with {farthest.combination.name} running, {{net}} more {runs}: the house stands {more}{{moved}} {way} outdoors, beyond "
        "{on_demand_balance}",
        at="house.strategy",
        help="let the other side speed up with it by an interlock, show make-up air, or note that this combination was seen",
        numbers=numbers,
    )


RULE = Rule(
    code="PRES-16", name="balance-lost-on-demand", severity="note", since="0.1",
    over=each.design, when=is_said_to_be_balanced, needs=(farthest_from_balance,),
    limits=("on-demand-balance", "house-drawn-down"), check=check, answers=("C17",),
)  # fmt: skip
