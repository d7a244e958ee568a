"""The code's length table against its printed cells and between them.

Source of the cells: IRC 2021 Table M1504.2 (M1506.2 in the edition of 2015).
"""

from math import inf

import pytest

from checker.case import CannotJudge
from checker.codebook import Codebook
from checker.quantities.exhaust_table import (
    CFM,
    INCH,
    Judged,
    TableRow,
    after_elbows,
    longest_by_table,
    next_size,
)

FOOT = 0.3048
TABLE = Codebook("irc-2021", None).limit("exhaust-duct-length")


def longest(kind: str, inches: float, cfm: float) -> float:
    return longest_by_table(TABLE, TableRow(kind, inches * INCH, cfm * CFM))


@pytest.mark.parametrize(
    ("kind", "inches", "cfm", "feet"),
    [
        ("flexible", 4, 50, 56), ("flexible", 4, 80, 4), ("flexible", 6, 200, 18), ("flexible", 8, 300, 69),
        ("smooth", 3, 50, 5), ("smooth", 4, 80, 31), ("smooth", 6, 150, 112), ("smooth", 8, 250, 198),
        ("smooth", 10, 300, 133),
    ],
)  # fmt: skip
def test_printed_cells(kind: str, inches: float, cfm: float, feet: float) -> None:
    assert longest(kind, inches, cfm) == pytest.approx(feet * FOOT, rel=1e-12)


@pytest.mark.parametrize(("kind", "inches", "cfm"), [("flexible", 4, 100), ("flexible", 3, 50), ("smooth", 2.5, 50)])
def test_not_allowed(kind: str, inches: float, cfm: float) -> None:
    assert longest(kind, inches, cfm) == 0.0


def test_no_limit() -> None:
    assert longest("smooth", 6, 100) == inf
    assert after_elbows(inf, 4, 15 * FOOT) == inf


@pytest.mark.parametrize("cfm", [55, 60, 70, 79])
def test_between_printed_airflows_lies_between_printed_lengths(cfm: float) -> None:
    assert 4 * FOOT <= longest("flexible", 4, cfm) <= 56 * FOOT


@pytest.mark.parametrize("inches", [4.2, 4.5, 4.9])
def test_between_printed_sizes_lies_between_printed_lengths(inches: float) -> None:
    assert 10 * FOOT <= longest("smooth", inches, 100) <= 91 * FOOT


def test_the_table_ends_at_300_cfm() -> None:
    assert longest("smooth", 8, 300) == pytest.approx(133 * FOOT)
    with pytest.raises(CannotJudge, match="ends at 300 cfm"):
        longest("smooth", 8, 301)


def test_next_size_takes_the_duct_with_its_elbows() -> None:
    row = TableRow("flexible", 4 * INCH, 80 * CFM)
    judged = Judged(40 * FOOT, 2, 4 * FOOT, 0.0, row, True, 80 * CFM)
    # 5 in: 81 ft less 2 x 15 ft leaves 51 ft
    assert next_size(TABLE, judged, 15 * FOOT) == pytest.approx(5 * INCH)
    assert next_size(TABLE, judged._replace(length=52 * FOOT), 15 * FOOT) == pytest.approx(6 * INCH)
