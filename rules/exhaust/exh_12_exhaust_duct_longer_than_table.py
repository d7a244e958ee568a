"""An exhaust duct is longer than the code's table allows for its size and airflow.

The table gives for each diameter and airflow the length through which a fan rated at 0.25 in. of water still
moves its air. Each elbow takes 15 ft off. Small ducts run out quickly: a 4 in flexible duct takes 80 cfm through
4 ft and 100 cfm not at all.

The usual cause is a duct as small as the fan's collar on a long way to the gable. Use the next larger size or
smooth duct, take out elbows, or shorten the way. The table does not hold where the fan maker's own design
criteria are followed, or where the airflow of the finished work is measured; say so with `basis`.
"""

from math import inf
from typing import NamedTuple

from checker.case import Case, NotApplicable, quantity
from checker.design.fans import Fan
from checker.physics.exhaust_length import length_after_elbows
from checker.quantities.exhaust_duct import (
    INCH,
    TableRow,
    elbow_count,
    exhaust_line,
    longest_by_table,
    straight_length,
    table_row,
)
from checker.quantities.exhaust_end import exhausts
from checker.quantities.fan_ratings import flow_rated_at, rated_points
from checker.quantities.local_exhaust import Exhauster
from checker.rule import Finding, Meets, Num, Rule

ESCAPES = {"maker": "its duct follows the fan maker's design", "measured": "its airflow is measured"}


class Judged(NamedTuple):
    """A duct against the table: straight and allowed length in m (inf: no limit), elbows, row."""

    length: float
    elbows: int
    base: float
    allowed: float
    row: TableRow


def ducted(case: Case) -> list[Exhauster]:
    """Exhaust fans; hoods only where their duct is said to be judged by the table."""
    return [
        each
        for each in exhausts(case)
        if (isinstance(each, Fan) and each.role == "exhaust")
        or (not isinstance(each, Fan) and each.duct is not None and each.duct.basis == "table")
    ]


@quantity()
def against_table(case: Case, device: Exhauster) -> Judged:
    """The duct and the length that the table leaves it. Raises NotApplicable for its two exceptions."""
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
    rated = flow_rated_at(rated_points(case, device), case.limit("exhaust-duct-rating"))
    row = table_row(case, line, rated.airflow)
    base = longest_by_table(case.limit("exhaust-duct-length"), row)
    length, elbows = straight_length(case, device), 0
    if base not in (0.0, inf):
        elbows = elbow_count(case, device)
    return Judged(length, elbows, base, length_after_elbows(base, elbows), row)


def next_size(table: object, judged: Judged) -> float | None:
    """The smallest printed diameter, m, that takes the duct as it is drawn."""
    assert isinstance(table, dict)
    for inches in table[judged.row.kind]:
        larger = judged.row._replace(diameter=inches * INCH)
        allowed = length_after_elbows(longest_by_table(table, larger), judged.elbows)
        if judged.length <= allowed > 0.0:
            return float(inches * INCH)
    return None


def check(device: Exhauster, judged: Judged, table: object, elbow: float, _rating: float) -> Meets | Finding:
    """Compare the straight length with what the table leaves after the elbows."""
    row = judged.row
    numbers = {
        "name": Num(device.name), "length": Num(judged.length, "length"), "kind": Num(row.kind),
        "size": Num(row.diameter, "diameter"), "flow": Num(row.airflow, "airflow"), "elbows": Num(judged.elbows),
    }  # fmt: skip
    if judged.allowed != inf:
        numbers["allowed"] = Num(judged.allowed, "length")
    if judged.length <= judged.allowed * (1 + 1e-9) and judged.allowed > 0.0:
        return Meets(numbers)
    larger = next_size(table, judged)
    change = "take out elbows, or follow the fan maker's design or have the airflow measured, and say so as `basis`"
    if larger is not None:
        numbers["larger"] = Num(larger, "diameter")
        change = f"use {{larger}} duct, {change}"
    if judged.base == 0.0:
        message = "{name}: {size} {kind} duct takes {flow} through no length at all by the code's table"
    else:
        message = (
            "{name}: {length} of {size} {kind} duct with {elbows} elbows at {exhaust_duct_elbow} each; "
            "the table leaves {allowed} for {flow}"
        )
    return Finding(message, help=change, numbers=numbers)


RULE = Rule(
    code="EXH-12", name="exhaust-duct-longer-than-table", severity="correction", since="0.1",
    over=ducted, needs=(against_table,),
    limits=("exhaust-duct-length", "exhaust-duct-elbow", "exhaust-duct-rating"), check=check,
    nothing="the design has no exhaust fan with a duct", answers=("B08", "B09", "B10", "B11"),
)  # fmt: skip
