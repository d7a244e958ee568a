"""Whole-house ventilation rates by the residential code: what is required, what the fans provide."""


from checker.case import CannotJudge, Case, Missing, NotApplicable, gather, quantity
from checker.codebook import converted
from checker.design.fields import Airflow, Area
from checker.physics.validity import OutOfRange
from checker.physics.ventilation_rate import RateRow, counted_flow, rate_from_table, run_time_factor
from checker.quantities.airtightness import house_of
from checker.quantities.whole_house import Running, exhaust_of, needed, run_share, running, supply_of
from checker.record import Record

SLACK = 1e-9


class Dwelling(Record):
    """What the rates go by: conditioned floor area in m2 and bedrooms."""

    floor_area: Area
    bedrooms: int


def dwelling(case: Case) -> Dwelling:
    """Floor area and bedrooms of the dwelling. CannotJudge for several dwellings in one file."""
    house = house_of(case)
    if (case.maybe(house, "dwelling_units") or 1) > 1:
        raise CannotJudge(
            f"{house.dwelling_units} dwelling units: the rate goes by each one's floor area and bedrooms; "
            "write `dwelling_units: 1` where this file draws one of them"
        )
    area, bedrooms = case.all(house, "floor_area", "bedrooms")
    if area <= 0:
        raise CannotJudge("a house without any floor area is outside the range of the rates")
    return Dwelling(float(area), int(bedrooms))


@quantity("airflow", "row by floor area, column by bedrooms", "IRC 2015 Table M1507.3.3(1), 2018 and later Table M1505.4.3(1)")
def table_rate(case: Case, _node: object) -> float:
    """Continuous whole-house rate by the code's table."""
    table = case.limit("whole-house-rate-table")
    area, bedrooms = dwelling(case)
    rows = [
        RateRow(edge(row["to"], "area"), converted(row["rates"], "airflow")) for row in table["rows"]
    ]
    return rate_from_table(area, bedrooms, rows, [edge(most, "count") for most in table["bedrooms"]])


def edge(text: object, dimension: str) -> float:
    """The upper edge of a row, a column or a band of a table; the last has none."""
    return float("inf") if text == "more" else float(converted(text, dimension))


@quantity("airflow", "0.01 cfm/ft2 x floor area + 7.5 cfm x (bedrooms + 1)", "IRC 2018 and later M1505.4.3, equation 15-1")
def equation_rate(case: Case, _node: object) -> float:
    """Continuous whole-house rate by the code's equation. NotApplicable where the edition has none."""
    terms = case.limit("whole-house-rate-equation")
    area, bedrooms = dwelling(case)
    per_area = converted(terms["per_area"], "airflow_per_area")
    return float(per_area * area + converted(terms["per_person"], "airflow") * (bedrooms + 1))


@quantity("airflow", "the less of table and equation, where the edition has both")
def code_rate(case: Case, node: object) -> float:
    """Continuous whole-house rate that the code takes."""
    by_table = table_rate(case, node)
    try:
        return min(by_table, equation_rate(case, node))
    except NotApplicable:
        return by_table


@quantity()
def moves_both_ways(case: Case, node: object) -> bool:
    """Whether fans that run all day or by a timer both bring air in and take air out."""
    parts = running(case, node)
    return any(part.supplies for part in parts) and any(part.exhausts for part in parts)


@quantity()
def reduction(case: Case, node: object) -> float:
    """The least factor that the edition grants a house of this kind of ventilation; 1 where it grants none."""
    if not moves_both_ways(case, node):
        return 1.0
    try:
        return float(case.limit("balanced-distributed-factor"))
    except NotApplicable:
        return 1.0


@quantity("airflow", "code rate x 0.70 where supply and exhaust both run and the edition grants it")
def least_rate(case: Case, node: object) -> float:
    """The least continuous rate that could do for this kind of ventilation."""
    return code_rate(case, node) * reduction(case, node)


@quantity("airflow", "code rate; the least that could do where the fans do not reach it")
def required_rate(case: Case, node: object) -> float:
    """Continuous rate that the fans are held against."""
    full = code_rate(case, node)
    return full if provided_rate(case, node) >= full * (1 - SLACK) else least_rate(case, node)


def run_factor(case: Case, part: Running) -> float:
    """How many times the continuous rate a cycled part moves. CannotJudge below the table's least share."""
    share = run_share(case, part)
    if share >= 1.0:
        return 1.0
    points = [
        (float(converted(fraction, "share")), float(factor)) for fraction, factor in case.limit("cycled-rate-factors")
    ]
    try:
        return run_time_factor(share, points)
    except OutOfRange:
        least = f"{points[0][0]:.0%}"
        raise CannotJudge(f"{part.name} runs {share:.0%} of the time: the table of factors begins at {least}") from None


@quantity("airflow", "larger of supply and exhaust; a cycled flow over its run-time factor", "IRC M1505.4.3")
def provided_rate(case: Case, node: object) -> float:
    """Continuous rate that the whole-house fans are worth."""
    parts = needed(case, node)

    def worth(part: Running) -> tuple[float, float]:
        supply, exhaust = supply_of(case, part), exhaust_of(case, part)
        factor = run_factor(case, part)
        return supply / factor, exhaust / factor

    flows = gather([lambda part=part: worth(part) for part in parts])  # type: ignore[misc]
    return counted_flow(sum(supply for supply, _ in flows), sum(exhaust for _, exhaust in flows))


@quantity()
def strongest(case: Case, node: object) -> Running:
    """The part that moves the most of the whole-house air: where a rate that is too low would be changed."""
    return max(needed(case, node), key=lambda part: max(supply_of(case, part), exhaust_of(case, part)))


class MeanFlows(Record):
    """Flows averaged over time, m3/s."""

    supply: Airflow
    exhaust: Airflow


@quantity()
def mean_flows(case: Case, node: object) -> MeanFlows:
    """Supply and exhaust of everything that runs all day or by a timer, averaged over time."""

    def mean(part: Running) -> tuple[float, float]:
        share = run_share(case, part)
        return share * supply_of(case, part), share * exhaust_of(case, part)

    flows = gather([lambda part=part: mean(part) for part in running(case, node)])  # type: ignore[misc]
    return MeanFlows(sum(supply for supply, _ in flows), sum(exhaust for _, exhaust in flows))


@quantity("airflow", "run share x flow, summed")
def mean_supply(case: Case, node: object) -> float:
    """Outdoor air that fans bring in, averaged over time."""
    return mean_flows(case, node).supply


@quantity("airflow", "run share x flow, summed")
def mean_exhaust(case: Case, node: object) -> float:
    """Indoor air that fans take out, averaged over time."""
    return mean_flows(case, node).exhaust


def is_balanced(case: Case, node: object) -> bool:
    """Whether supply and exhaust, averaged over time, are within the tolerance of each other."""
    supply, exhaust = mean_flows(case, node)
    tolerance = float(case.limit("balance-tolerance"))
    larger = max(supply, exhaust)
    return larger > 0 and abs(supply - exhaust) <= tolerance * larger * (1 + SLACK)


@quantity()
def ventilation_required(case: Case, node: object) -> bool:
    """Whether the edition asks for whole-house ventilation; the earlier ones only of a tight dwelling."""
    from checker.quantities.airtightness import air_changes_at_50

    case.codebook.require("whole-house-ventilation")
    try:
        limit = case.limit("tight-dwelling")
    except NotApplicable:
        return True
    except Missing:
        raise Missing("project.code") from None
    return air_changes_at_50(case, node) <= float(limit) * (1 + SLACK)
