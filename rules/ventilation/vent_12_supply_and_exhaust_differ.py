"""Supply and exhaust that run all day differ in a house that is balanced or not said to be anything else.

A balanced system pushes in as much air as it takes out. What is left over goes through the cracks: too much
exhaust draws cold air, soil gas and flue gas in; too much supply presses moist air into cold walls.

The usual cause is a hood or bath fan that also runs slowly all day and was left out of the sum. Set the
supply fan to the sum of everything that exhausts all day, or slow one of them.
"""

from checker import each
from checker.case import Case
from checker.design import Design
from checker.quantities.ventilation import SLACK, mean_exhaust, mean_supply, moves_both_ways
from checker.rule import Finding, Meets, Num, Rule


def said_to_be_balanced(case: Case, design: Design) -> bool:
    """The house is said to be ventilated in another way, or one side alone runs, of which another rule speaks."""
    said = case.maybe(design.house, "strategy") if design.house is not None else None
    return said in (None, "balanced", "balanced with recovery") and moves_both_ways(case, design)


def check(_design: Design, supply: float, exhaust: float, tolerance: float) -> Meets | Finding:
    """Compare the two sums with the tolerance, a share of the larger."""
    difference = abs(supply - exhaust)
    numbers = {"difference": Num(difference, "airflow")}
    if difference <= tolerance * max(supply, exhaust) * (1 + SLACK):
        return Meets(numbers)
    short = "supply" if supply < exhaust else "exhaust"
    return Finding(
        "all day fans bring in {mean_supply} and take out {mean_exhaust}: {difference} apart, not in balance",
        at="house.strategy",
        help=f"raise the {short} by {{difference}}, or slow the other side; count what every slow setting moves",
        numbers=numbers,
    )


RULE = Rule(
    code="VENT-12", name="supply-and-exhaust-differ", severity="caution", since="0.1",
    over=each.design, when=said_to_be_balanced, needs=(mean_supply, mean_exhaust),
    limits=("balance-tolerance",), check=check, answers=("A29",),
)  # fmt: skip
