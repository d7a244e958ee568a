"""The pressure drop of a filter is stated at another airflow than the filter sees.

A drop of 0.10 in w.c. at 400 cfm says little about 600 cfm: it grows by a power of about 1.3 with the airflow,
less for dense media, more for open ones. A sheet figure at a smaller airflow flatters the filter.

Look the drop up at the design airflow, and at the highest speed if the unit has several.
"""

from checker import each
from checker.case import Case, gather, given, path_of, quantity
from checker.design.filters import Filter
from checker.physics.devices import HIGHEST_FLOW_RATIO, LOWEST_FLOW_RATIO, drop_from_rating
from checker.quantities.duct_flow import greatest_flow
from checker.quantities.filter_drops import stated_flow, usual_exponent
from checker.quantities.filters import count, filter_flow, movers_served
from checker.rule import Finding, Meets, Num, Rule


def has_a_rated_airflow(case: Case, filter_: Filter) -> bool:
    """Its drop is stated at the airflow that it sees, or not at all."""
    rated = path_of(filter_, "at") in case.design.tbd or filter_.at is not None
    return rated and case.maybe(filter_, "drop_clean") is not None


@quantity()
def flows(case: Case, filter_: Filter) -> tuple[float, float]:
    """(airflow of the stated drop, airflow that the filter sees), at the speed that is nearest."""
    flow, at = gather([lambda: filter_flow(case, filter_), lambda: float(case.get(filter_, "at"))])
    if filter_.airflow is not None:
        return stated_flow(case, filter_, flow), flow
    alike = count(case, filter_)
    speeds = [greatest_flow(setting) / alike for mover in movers_served(case, filter_) for setting in mover.settings.values()]
    nearest = min([flow, *(speed for speed in speeds if speed > 0.0)], key=lambda speed: abs(speed - at))
    return stated_flow(case, filter_, nearest), nearest


@quantity()
def exponent(case: Case, filter_: Filter) -> float:
    """Exponent of the drop over the airflow."""
    return usual_exponent(case, filter_)


def check(
    filter_: Filter, found: tuple[float, float], drop: float, power: float, share: float
) -> Meets | Finding:
    """Compare the two airflows."""
    at, flow = found
    numbers = {"at": Num(at, "airflow"), "flow": Num(flow, "airflow")}
    if abs(at - flow) <= share * flow * (1.0 + 1e-9):
        return Meets(numbers)
    carried = ""
    if at > 0.0 and drop > 0.0 and LOWEST_FLOW_RATIO <= flow / at <= HIGHEST_FLOW_RATIO:
        numbers["carried"] = Num(drop_from_rating(flow, drop, at, power), "pressure")
        carried = "; that is about {carried} here, carried over by a power of {exponent}"
    return Finding(
        f"{filter_.name} states {{drop_clean}} at {{at}} but sees {{flow}}{carried}",
        at="at",
        help="state the clean and final drop at {flow} from the maker's sheet",
        numbers=numbers,
    )


RULE = Rule(
    code="FILT-15", name="drop-at-another-airflow", severity="note", since="0.1",
    over=each.filter, when=has_a_rated_airflow, needs=(flows, given("drop_clean"), exponent),
    limits=("filter-rating-distance",), check=check, nothing="no filter is named",
)  # fmt: skip
