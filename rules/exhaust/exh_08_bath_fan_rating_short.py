"""A bath fan's listed airflow is too low at 0.25 in. of water, or is listed at a lower pressure.

A fan that is tested against next to nothing moves far less once duct, damper and hood stand in its way. The code
therefore counts the airflow that is listed at a static pressure which real ducts cause.

The usual cause is the large figure on the box, which holds at 0.1 in. Take the listed airflow at 0.25 in. from
the fan's data sheet or from the directory of certified products, and choose the fan by it.
"""

from checker.case import Case, Missing, path_of, quantity
from checker.design.fans import Fan
from checker.quantities.exhaust_end import bath_fans, takes_out
from checker.quantities.fan_ratings import SLACK, Rated, flow_rated_at, rated_points, speaks_of_a_point
from checker.quantities.movers import is_continuous
from checker.rule import Finding, Meets, Num, Rule


@quantity()
def listed_airflow(case: Case, fan: Fan) -> Rated:
    """The airflow listed at the code's static pressure or more, else at the highest that is listed.

    Where a fan works at less pressure than that tells nothing of its listing.
    """
    static = case.limit("bath-fan-rating-static")
    found = flow_rated_at(rated_points(case, fan), static)
    listed = fan.rating is not None and speaks_of_a_point(case, fan.rating)
    if found.static < static * (1 - SLACK) and not listed:
        raise Missing(path_of(fan, "rating"))
    return found


@quantity()
def runs_all_day(case: Case, fan: Fan) -> bool:
    """Whether any of its settings runs all the time."""
    return any(is_continuous(case, setting) for setting in case.get(fan, "settings").values())


def check(
    fan: Fan, rated: Rated, all_day: bool, static: float, continuous: float, on_demand: float
) -> Meets | Finding:
    """First the pressure of the rating, then the airflow at it."""
    least = continuous if all_day else on_demand
    numbers = {
        "name": Num(fan.name), "rated": Num(rated.airflow, "airflow"), "at": Num(rated.static, "pressure"),
        "least": Num(least, "airflow"),
    }  # fmt: skip
    if rated.static < static * (1 - SLACK):
        return Finding(
            "{name} is rated for {rated} at {at}; its airflow at {bath_fan_rating_static} is what counts",
            at="rating", help="state the airflow listed at {bath_fan_rating_static} or more", numbers=numbers,
        )  # fmt: skip
    if rated.airflow < least * (1 - SLACK):
        return Finding(
            "{name} is rated for {rated} at {at}, below {least}",
            at="rating", help="choose a fan listed for {least} or more at {bath_fan_rating_static}", numbers=numbers,
        )  # fmt: skip
    return Meets(numbers)


RULE = Rule(
    code="EXH-08", name="bath-fan-rating-short", severity="correction", since="0.1",
    over=bath_fans, when=takes_out, needs=(listed_airflow, runs_all_day),
    limits=("bath-fan-rating-static", "bath-exhaust-continuous", "bath-exhaust-on-demand"), check=check,
    nothing="the design has no bath fan", answers=("B03",),
)  # fmt: skip
