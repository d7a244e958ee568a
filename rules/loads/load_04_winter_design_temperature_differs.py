"""The load calculation uses another winter temperature than the site.

The heating load grows with every degree between indoors and outdoors. A sheet made for the next town, or an
extreme instead of the 99 % temperature, gives equipment that is too small or too large.

Use the 99 % temperature of the place, as the jurisdiction states it, in the calculation and on the drawings.
"""

from checker.case import Case, given, quantity
from checker.design.controls import LoadsPaper
from checker.quantities.load_paper import stating
from checker.quantities.moist_air import winter_design
from checker.rule import Finding, Meets, Num, Rule


@quantity("temperature")
def of_the_site(case: Case, paper: LoadsPaper) -> float:
    """The winter design temperature of the site. Raises Missing."""
    return winter_design(case, paper)


def check(_paper: LoadsPaper, stated: float, site: float, rounding: float) -> Meets | Finding:
    """Apart by more than rounding."""
    numbers = {"apart": Num(abs(stated - site), "temperature_difference")}
    if abs(stated - site) <= rounding + 1e-9:
        return Meets(numbers)
    return Finding(
        "the load calculation uses {winter_outdoor} outdoors in winter; the design temperature of the site is {of_the_site}",
        at="winter_outdoor", help="work the loads out for {of_the_site}, or correct the site's design temperature",
        numbers=numbers,
    )


RULE = Rule(
    code="LOAD-04", name="winter-design-temperature-differs", severity="caution", since="0.1",
    over=stating("winter_outdoor"), needs=(given("winter_outdoor"), of_the_site), limits=("outdoor-design-on-paper",),
    check=check, answers=("H04",), nothing="the load calculation states no outdoor winter temperature",
)  # fmt: skip
