"""The duct of an exhaust or supply fan is longer than the code's table allows for its size and airflow.

The table gives for each diameter and airflow the length through which a fan rated at 0.25 in. of water still
moves its air; it holds for exhaust and for supply ducts of ventilation. Each elbow takes 15 ft off. Small ducts run
out quickly: a 4 in flexible duct takes 80 cfm through 4 ft and 100 cfm not at all.

The usual cause is a duct as small as the fan's collar on a long way to the gable. Use the next larger size or
smooth duct, take out elbows, or shorten the way. The table does not hold where the fan maker's own design
criteria are followed, or where the airflow of the finished work is measured; say so with `basis`.
"""

from math import inf
from typing import Any

from checker.case import CannotJudge, Case, path_of
from checker.design.fans import Fan
from checker.quantities.exhaust_end import exhausts
from checker.quantities.exhaust_table import Judged, against_table, next_size
from checker.quantities.fan_ratings import SLACK
from checker.quantities.local_exhaust import Exhauster
from checker.rule import Finding, Meets, Num, Rule


def ducted(case: Case) -> list[Exhauster]:
    """Exhaust fans, and supply fans with one duct; hoods and recovery units where their duct is said to follow the table."""
    undecided: list[Exhauster] = [each for each in case.design.fans.values() if path_of(each, "role") in case.design.tbd]
    return undecided + [
        each
        for each in exhausts(case)
        if (isinstance(each, Fan) and each.role == "exhaust") or follows_the_table(each)
    ] + [each for each in case.design.fans.values() if each.role == "supply" and case.speaks_of(each, "duct")]


def follows_the_table(device: Exhauster) -> bool:
    """Whether the duct of a hood, or the outgoing duct of a recovery unit, is said to be judged by the table."""
    duct = device.exhaust_duct if isinstance(device, Fan) else device.duct
    return duct is not None and duct.basis == "table"


def check(device: Exhauster, judged: Judged, table: dict[str, Any], elbow: float, _rating: float) -> Meets | Finding:
    """Compare the straight length with what the table leaves after the elbows."""
    row = judged.row
    numbers = {
        "name": Num(device.name), "length": Num(judged.length, "length"), "kind": Num(row.kind),
        "size": Num(row.diameter, "diameter"), "flow": Num(row.airflow, "airflow"), "elbows": Num(judged.elbows),
    }  # fmt: skip
    if judged.allowed != inf:
        numbers["allowed"] = Num(judged.allowed, "length")
    if judged.base != inf:
        numbers["base"] = Num(judged.base, "length")
    if judged.length <= judged.allowed * (1 + SLACK) and judged.allowed > 0.0:
        if not judged.rated:
            raise CannotJudge("the length table is for airflow rated at 0.25 in w.c., which is not stated")
        return Meets(numbers)
    larger = next_size(table, judged, elbow)
    change = "take out elbows, or follow the fan maker's design or have the airflow measured, and say so as `basis`"
    if larger is not None:
        numbers["larger"] = Num(larger, "diameter")
        change = f"use {{larger}} duct, {change}"
    return Finding(worded(judged), help=change, numbers=numbers)


def worded(judged: Judged) -> str:
    """The fact, with the elbows only where there are any."""
    if judged.base == 0.0 and not judged.rated:
        return "the code's table allows no length of {size} {kind} duct even for {flow}, its least airflow"
    if judged.base == 0.0:
        return "the code's table allows no length of {size} {kind} duct for the {flow} of {name}"
    elbows = "without elbows"
    if judged.elbows:
        elbows = f"with {{elbows}} elbow{'s' if judged.elbows > 1 else ''}"
    message = f"{{name}} has {{length}} of {{size}} {{kind}} duct {elbows}; the code's table gives {{base}} for {{flow}}"
    if judged.elbows:
        message += " less {exhaust_duct_elbow} an elbow, which leaves {allowed}"
    return message


RULE = Rule(
    code="EXH-12", name="exhaust-duct-longer-than-table", severity="correction", since="0.1",
    over=ducted, needs=(against_table,),
    limits=("exhaust-duct-length", "exhaust-duct-elbow", "exhaust-duct-rating"), check=check,
    nothing="the design has no exhaust or supply fan with a duct", answers=("B08", "B09", "B10", "B11"),
)  # fmt: skip
