"""One exhaust draws the house down further than fans and doors bear.

Hoods and bath fans are rated at about 0.1 in w.c. A house that is drawn down as far has used up the whole of it before
any duct begins: the hood moves less than its label says, backdraft dampers of other fans are pulled open, soil gas comes
in, and doors are hard to open. At this pressure the real flow is already lower than the stated one.

The usual cause is a strong hood in a tight house; a dryer can be enough in a very tight one. The largest exhaust is
counted, beside what runs all day. Choose a smaller hood, or bring in make-up air that runs with it.
"""

from checker import each
from checker.case import Case, Missing, quantity
from checker.design import Design
from checker.quantities.burners import most_sensitive
from checker.quantities.combined_exhaust import largest_alone
from checker.quantities.house_pressure import HousePressure
from checker.quantities.known_exhaust import largest_pressure_at_least
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def drawn_by_largest(case: Case, design: Design) -> HousePressure:
    """With the largest exhaust on demand and what runs all day."""
    return largest_pressure_at_least(case, design, case.limit("house-drawn-down"))


def has_no_lower_limit(case: Case, design: Design) -> bool:
    """No exhaust runs on demand, or a burner sets a lower limit, which is judged by itself."""
    try:
        together = largest_alone(case, design)
    except Missing:
        together = drawn_by_largest(case, design).combination
    if together.net <= 0.0 or all(one.continuous or one.net <= 0.0 for one in together.running):
        return False
    try:
        return most_sensitive(case, design) is None
    except Missing:
        return True


def check(_design: Design, drawn: HousePressure, limit: float) -> Meets | Finding:
    """Compare the lowest pressure with the limit."""
    numbers = {
        "net": Num(drawn.combination.net, "airflow"),
        "drawn": Num(max(0.0, -drawn.value), "house_pressure"),
        "make_up": Num(max(0.0, drawn.combination.net - drawn.inflow_at(limit)), "airflow"),
    }
    if drawn.within(limit):
        return Meets(numbers)
    more = "more than " if drawn.beyond else ""
    return Finding(
        f"with {drawn.combination.name} running, {{net}} more goes out than comes in: the house stands {more}{{drawn}} below "
        "outdoors, beyond {limit}",
        at="house.airtightness",
        help="bring in {make_up} of make-up air or more that runs with it, or choose a smaller exhaust",
        numbers=numbers,
    )


RULE = Rule(
    code="PRES-14", name="house-drawn-too-low", severity="caution", since="0.1",
    over=each.design, when=has_no_lower_limit, needs=(drawn_by_largest,), limits=("house-drawn-down",), check=check,
    answers=("C17",),
)  # fmt: skip
