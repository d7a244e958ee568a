"""A fan's airflow is not listed by the test that the code names.

A figure from a brochure may be free air, or come from a bench that nobody else has. The code wants exhaust
fans, and since 2021 whole-house fans too, listed and labelled for their airflow by AMCA 210/ASHRAE 51, in 2024
also by HVI 916. HVI certification rests on that same test.

Name the standard of the rating in the schedule, or choose a fan that has one.
"""

from checker import each
from checker.case import Case, quantity
from checker.design.fans import Fan
from checker.design.fields import fold
from checker.quantities.whole_house import NOT_VENTILATION, whole_house
from checker.rule import Finding, Meets, Num, Rule

ROLES = ("exhaust", "supply", "recovery")


def is_ventilator(fan: Fan) -> bool:
    """Exhaust, supply and recovery fans of rooms."""
    return (fan.role is None or fan.role in ROLES) and fan.kind not in NOT_VENTILATION


def must_be_rated(case: Case, fan: Fan) -> bool:
    """The edition asks this of exhaust fans and, since 2021, of whole-house fans only."""
    if case.get(fan, "role") == "exhaust":
        return True
    case.limit("whole-house-fan-standards")
    return any(part.device is fan for part in whole_house(case, case.design))


@quantity()
def rated_by(case: Case, fan: Fan) -> str:
    """Test standard of the airflow rating."""
    from checker.case import Missing

    if fan.rating is None:
        raise Missing(f"{fan.path}.rating.standard")
    return str(case.get(fan.rating, "standard"))


@quantity()
def accepted(case: Case, fan: Fan) -> list[str]:
    """Words by which an accepted standard is known."""
    key = "exhaust-fan-standards" if fan.role == "exhaust" else "whole-house-fan-standards"
    words: list[str] = case.limit(key)
    return words


def check(fan: Fan, standard: str, words: list[str]) -> Meets | Finding:
    """The stated standard must be one of those."""
    stated = fold(standard)
    if any(word in stated for word in words) or stated.startswith("hvi"):
        return Meets()
    return Finding(
        f"{fan.name} has its airflow rated by `{{standard}}`, not by the test that the code names",
        at="rating.standard",
        help="name a rating by AMCA 210/ASHRAE 51 (or HVI 916), or choose a fan that has one",
        numbers={"standard": Num(standard)},
    )


RULE = Rule(
    code="VENT-11", name="airflow-not-rated-by-the-standard", severity="correction", since="0.1",
    over=each.where(each.fan, is_ventilator), when=must_be_rated, needs=(rated_by, accepted),
    cites=("exhaust-fan-standards",), check=check, answers=("A10",),
)  # fmt: skip
