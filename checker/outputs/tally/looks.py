"""Numbers of the tally as a reader sees them: one unit and one count of decimals for each column."""

from collections.abc import Iterable
from math import isfinite
from typing import Any

from checker.outputs.tally.cells import KNOWN, Cell, Column
from checker.sizes import Size, show_size
from checker.units import DIMENSIONS, number_in, unit_of

DECIMALS = {
    "heat_rate": (0, 2), "heat_flux": (1, 1), "airflow": (0, 1), "house_pressure": (1, 1), "pressure": (3, 1),
    "friction_rate": (3, 2), "velocity": (0, 2), "length": (0, 1), "temperature": (0, 1), "temperature_difference": (0, 1),
    "relative_humidity": (0, 0), "energy": (0, 0), "money": (0, 0), "share": (0, 0),
}  # fmt: skip
"""Decimals in trade and in metric units; two for a plain number."""
BEYOND_HOUSES = 1e8
FINE = frozenset({"airflow"})
SMALL = 10.0
"""Columns of these dimensions get one decimal more where a number in them is smaller than this."""


def unit_in(column: Column, system: str) -> str:
    """The unit of a column; nothing for sizes, words and plain numbers."""
    if column.dimension not in DIMENSIONS:
        return ""
    return column.metric if system == "metric" and column.metric else unit_of(column.dimension, system)


def decimals_of(column: Column, found: Iterable[Cell], system: str) -> int:
    """How many decimals the numbers of a column are shown with."""
    unit = unit_in(column, system)
    places = DECIMALS.get(column.dimension, (2, 2))[system == "metric"]
    if column.metric and unit == column.metric:
        return 0
    if column.dimension in FINE and not places:
        numbers = [abs(number_in(each.value, column.dimension, unit)) for each in found if is_number(each)]
        return 1 if any(0.0 < number < SMALL for number in numbers) else 0
    return places


def is_number(found: Cell) -> bool:
    """Whether a cell holds a number."""
    return found.state == KNOWN and isinstance(found.value, (int, float)) and not isinstance(found.value, bool)


def value_text(found: Cell, column: Column, decimals: int, system: str) -> str:
    """A known value without its unit, which the head of the column tells; with it where it is of another kind.

    A known value with a reason lies further out than itself.
    """
    if isinstance(found.value, Size):
        return show_size(found.value, system)
    if not is_number(found):
        return str(found.value)
    if found.dimension != column.dimension:
        return alone(found, system)
    unit = unit_in(column, system)
    text = plain(number_in(found.value, column.dimension, unit) if unit else found.value, decimals)
    return f"{'<' if found.value < 0 else '>'} {text}" if found.reason else text


def alone(found: Cell, system: str) -> str:
    """A value with its unit, standing by itself."""
    column = Column("", found.dimension)
    decimals = decimals_of(column, [found], system) + (found.dimension == "share")
    unit = unit_in(column, system)
    text = value_text(found, column, decimals, system)
    return f"{text} {unit}".rstrip() if is_number(found) else text


def plain(number: float, decimals: int) -> str:
    """A number with so many decimals, with commas for thousands; one that would vanish keeps a digit."""
    if not isfinite(number):
        return "no bound"
    if abs(number) >= BEYOND_HOUSES:
        return f"{number:.3g}"
    text = f"{number:,.{decimals}f}"
    if not number or any(mark in "123456789" for mark in text):
        return text
    return f"{number:.1g}" if abs(number) >= 1e-6 else f"{0.0:.{decimals}f}"


def value_and_unit(found: Cell, column: Column, system: str) -> tuple[Any, str]:
    """A value in its declared unit to nine digits, for programs; null for what is no finite number or word."""
    if isinstance(found.value, Size):
        return show_size(found.value, system), ""
    if not is_number(found):
        return found.value, ""
    unit = unit_in(column if found.dimension == column.dimension else Column("", found.dimension), system)
    number = number_in(found.value, found.dimension, unit) if unit else float(found.value)
    return (float(f"{number:.9g}") if isfinite(number) else None), unit
