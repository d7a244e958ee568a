"""The load calculation uses another summer temperature than the site.

The cooling load rests on the 1 % dry bulb of the place. A hotter figure makes the equipment too large, and an
oversized unit cools without drying the air; a milder one leaves the house warm on the days that count.

Use the 1 % temperature of the place, as the jurisdiction states it, in the calculation and on the drawings.
"""

from checker.case import Case, given, quantity
from checker.design.controls import LoadsPaper
from checker.quantities.load_paper import outdoor_dry_bulb, stating
from checker.rule import Finding, Meets, Num, Rule


@quantity("temperature")
def of_the_site(case: Case, paper: LoadsPaper) -> float:
    """The summer design temperature of the site. Raises Missing."""
    return outdoor_dry_bulb(case)


def check(_paper: LoadsPaper, stated: float, site: float, rounding: float) -> Meets | Finding:
    """Apart by more than rounding."""
    numbers = {"apart": Num(abs(stated - site), "temperature_difference")}
    if abs(stated - site) <= rounding + 1e-9:
        return Meets(numbers)
    return Finding(
        "the load calculation uses {summer_outdoor} outdoors in summer; the design temperature of the site is {of_the_site}",
        at="summer_outdoor", help="work the loads out for {of_the_site}, or correct the site's design temperature",
        numbers=numbers,
    )


RULE = Rule(
    code="LOAD-05", name="summer-design-temperature-differs", severity="caution", since="0.1",
    over=stating("summer_outdoor"), needs=(given("summer_outdoor"), of_the_site), limits=("outdoor-design-on-paper",),
    check=check, answers=("H04",), nothing="the load calculation states no outdoor summer temperature",
)  # fmt: skip
