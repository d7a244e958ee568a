"""The code's table of exhaust duct lengths: how a duct enters it and what it allows."""

from math import inf
from typing import Any

from checker.case import CannotJudge, Case, Missing, NotApplicable, quantity
from checker.design.fans import Fan
from checker.design.fields import Airflow, Diameter, Length
from checker.physics.exhaust_length import FLEX_ROUGHNESS, FOOT, SMOOTH_ROUGHNESS, tabulated_length
from checker.physics.validity import OutOfRange
from checker.quantities.exhaust_duct import (
    Line,
    elbow_count,
    exhaust_line,
    highest_flow,
    kind_of,
    straight_length,
)
from checker.quantities.fan_ratings import SLACK, flow_rated_at, rated_points
from checker.quantities.local_exhaust import Exhauster
from checker.record import Record

INCH = 0.0254
CFM = FOOT**3 / 60.0
CLOSE = 1e-6
ESCAPES = {"maker": "its duct follows the fan maker's design", "measured": "its airflow is measured"}


class TableRow(Record):
    """With what a duct enters the code's length table: column, diameter in m, airflow in m3/s."""

    kind: str
    diameter: Diameter
    airflow: Airflow


def longest_by_table(table: dict[str, Any], row: TableRow) -> float:
    """Greatest length in m before elbows, inf for no limit, 0 for not allowed.

    A printed cell where diameter and airflow are printed; between them the equation behind the table, which
    gives its cells to the foot. Raises CannotJudge above the last airflow.
    """
    inches, cfm = row.diameter / INCH, row.airflow / CFM
    airflows = table["airflows"]
    if cfm > airflows[-1] + CLOSE:
        raise CannotJudge(
            f"the length table ends at {airflows[-1]} cfm; above that the maker's instructions or a measured "
            "airflow decide"
        )
    cells = table[row.kind]
    largest = max(cells)
    if inches < min(cells) - CLOSE:
        return 0.0
    size = next((each for each in cells if abs(each - min(inches, largest)) < CLOSE), None)
    column = next((place for place, each in enumerate(airflows) if abs(each - cfm) < CLOSE), None)
    if size is not None and column is not None:
        cell = cells[size][column]
        return inf if cell < 0 else cell * FOOT
    roughness = FLEX_ROUGHNESS if row.kind == "flexible" else SMOOTH_ROUGHNESS
    try:
        return tabulated_length(row.airflow, min(row.diameter, largest * INCH), roughness)
    except OutOfRange as problem:
        raise CannotJudge(str(problem)) from None


def table_row(case: Case, line: Line, airflow: float) -> TableRow:
    """One row for the whole duct. Raises CannotJudge where sections differ: the table knows one duct."""
    rows = set()
    for section in line.sections:
        size = case.get(section, "size")
        rows.add(TableRow(kind_of(case, section), size.hydraulic_diameter, airflow))
    if len(rows) > 1:
        raise CannotJudge("the length table is for one size and kind of duct, and this one changes on its way")
    return rows.pop()


class Judged(Record):
    """A duct against the table: lengths in m (inf: no limit), elbows, row, whether the fan is rated for it.

    `stated` is the airflow that a suggestion has to carry, m3/s, rated for it or not.
    """

    length: Length
    elbows: int
    base: Length
    allowed: Length
    row: TableRow
    rated: bool
    stated: Airflow


@quantity()
def against_table(case: Case, device: Exhauster) -> Judged:
    """The duct and the length that the table leaves it. Raises NotApplicable for its two exceptions."""
    if isinstance(device, Fan):
        case.get(device, "role")
    line = exhaust_line(case, device)
    for section in line.sections:
        basis = case.maybe(section, "basis")
        if basis in ESCAPES:
            raise NotApplicable(f"{ESCAPES[basis]}, so the length table does not hold")
    maker = device.by_maker
    if maker is not None and maker.greatest_length is not None:
        raise NotApplicable("its maker states the greatest length, which another rule looks at")
    if any(each.measured is not None and each.measured.airflow for each in device.settings.values()):
        raise NotApplicable("its airflow is measured, so the length table does not hold")
    try:
        points = rated_points(case, device)
    except Missing as gap:
        return against_its_airflow(case, device, line, gap)
    point = flow_rated_at(points, case.limit("exhaust-duct-rating"))
    table = case.limit("exhaust-duct-length")
    rated = point.static >= case.limit("exhaust-duct-rating") * (1 - SLACK)
    # A rating at less pressure says nothing of the airflow there; the table's least airflow still must pass.
    airflow = point.airflow if rated else min(point.airflow, table["airflows"][0] * CFM)
    return entered(case, device, table_row(case, line, airflow), rated, point.airflow)


def against_its_airflow(case: Case, device: Exhauster, line: Line, gap: Missing) -> Judged:
    """The duct of a fan without a rating, at the airflow it is to move. Only too long a duct is told so; else `gap`."""
    if any(path in case.design.tbd for path in gap.paths):
        raise gap
    airflow = highest_flow(case, device)
    if airflow > case.limit("exhaust-duct-length")["airflows"][-1] * CFM * (1 + SLACK):
        raise gap
    judged = entered(case, device, table_row(case, line, airflow), True, airflow)
    if judged.length <= judged.allowed * (1 + SLACK) and judged.allowed > 0.0:
        raise gap
    return judged


def entered(case: Case, device: Exhauster, row: TableRow, rated: bool, stated: float) -> Judged:
    """The duct beside what the table leaves it in this row, after its elbows."""
    table = case.limit("exhaust-duct-length")
    base = longest_by_table(table, row)
    length, elbows = straight_length(case, device), 0
    if base != inf:
        try:
            elbows = elbow_count(case, device)
        except Missing:
            if base > 0.0:
                raise
    left = after_elbows(base, elbows, case.limit("exhaust-duct-elbow"))
    return Judged(length, elbows, base, left, row, rated, min(stated, table["airflows"][-1] * CFM))


def after_elbows(base: float, elbows: int, elbow: float) -> float:
    """Length in m that is left of an allowed one; inf stays inf."""
    return max(0.0, base - elbows * elbow)


def next_size(table: dict[str, Any], judged: Judged, elbow: float) -> float | None:
    """The smallest printed diameter, m, that takes the duct as it is drawn, at `elbow` m for each elbow."""
    for inches in table[judged.row.kind]:
        larger = judged.row._replace(diameter=inches * INCH, airflow=judged.stated)
        allowed = after_elbows(longest_by_table(table, larger), judged.elbows, elbow)
        if judged.length <= allowed > 0.0:
            return float(inches * INCH)
    return None
