"""Sizes of ducts, pipes, grilles and filters: `6 in`, `10x6 in`, `12x6 in oval`, `20x25x1 in`.

The first figure of two is the width, the second the height. All values are meters.
"""

import re
from math import pi
from typing import Literal

from checker.record import Record
from checker.spelling import NUMBER, UnitFault, fold, quoted
from checker.units import parse, shown

Shape = Literal["round", "rectangular", "oval"]

# Patterns stay text until used (re keeps the compiled ones): most sizes are `6 in` or `10x6 in`.
_UNIT = r"(?:inches|inch|in\b\.?|mm\b|cm\b|m\b|ft\b|\"|'')"
_ROUND_WORD = r"(?:ø|round|rnd\.?|rd\.?|dia\.?|diameter)"
_SIDE = rf"(?P<number>{NUMBER}) ?(?P<unit>{_UNIT})?"
_SIDED = rf"{NUMBER} ?{_UNIT}?(?: ?x ?{NUMBER} ?{_UNIT}?)+"
_FEET_SIDE = rf"[0-9]+ ?'(?!')(?: ?-? ?{NUMBER} ?(?:\"|''))?"
_FEET_SIDED = rf"{_FEET_SIDE} ?x ?{_FEET_SIDE}"
_ROUND = rf"(?:ø ?)?(?P<side>{NUMBER} ?{_UNIT})(?: ?{_ROUND_WORD})?"
_OVAL = r" ?(?:flat )?oval$"
_BARE = rf"(?:ø ?)?(?P<figures>{NUMBER}(?: ?[x/] ?{NUMBER})*) ?(?:r|{_ROUND_WORD})?"
_LIMIT = r"(?:max\.?|min\.?|maximum|minimum|[<>]=?|~|about) ?(.*)"


class Size(Record):
    """A cross-section (a round one has its diameter as width and height); `depth` is a filter's."""

    shape: Shape
    width: float
    height: float
    depth: float | None = None

    @property
    def area(self) -> float:
        """Cross-section, m2. A flat oval is a rectangle with half circles at both ends."""
        if self.shape == "round":
            return pi * self.width**2 / 4.0
        if self.shape == "oval":
            minor = min(self.width, self.height)
            return pi * minor**2 / 4.0 + minor * (max(self.width, self.height) - minor)
        return self.width * self.height

    @property
    def perimeter(self) -> float:
        """Perimeter, m."""
        if self.shape == "round":
            return pi * self.width
        if self.shape == "oval":
            minor = min(self.width, self.height)
            return pi * minor + 2.0 * (max(self.width, self.height) - minor)
        return 2.0 * (self.width + self.height)

    @property
    def hydraulic_diameter(self) -> float:
        """Four times the area over the perimeter, m."""
        return 4.0 * self.area / self.perimeter


def parse_size(text: str) -> Size:
    """A cross-section. Raises UnitFault, which says what is wrong and how to write it."""
    figures, _, unit = text.rpartition(" ")
    whole = figures.split("x")
    if (
        unit in ("in", "mm")
        and len(whole) <= 2
        and all(side.isascii() and side.isdecimal() for side in whole)
    ):
        return _size([f"{side} {unit}" for side in whole], text)
    folded = fold(text)
    if match := re.fullmatch(_ROUND, folded, re.IGNORECASE):
        return _size([match["side"].strip()], text)
    plain, ovals = re.subn(_OVAL, "", folded, flags=re.IGNORECASE)
    sides = _sides(plain)
    if not sides:
        raise _no_size(text, folded)
    if len(sides) != 2:
        raise UnitFault(f"{quoted(text)} has {len(sides)} sides; a cross-section has two", "write `10x6 in`")
    size = _size(sides, text)
    return size._replace(shape="oval") if ovals else size


def parse_filter_size(text: str) -> Size:
    """A filter's width, height and depth; without a unit they are inches. Raises UnitFault."""
    folded = fold(text)
    sides = _sides(f"{folded} in" if folded[-1:].isdigit() else folded)
    if len(sides) != 3:
        raise UnitFault(f"{quoted(text)} is not a filter size", "write width, height and depth, `20x25x1 in`")
    return _size(sides, text)


def show_size(size: Size, system: str = "trade") -> str:
    """The size as it is written in a design file: `6 in`, `10x6 in`, `12x6 in oval`, `250x150 mm`."""
    figures = [size.width] if size.shape == "round" else [size.width, size.height]
    if size.depth is not None:
        figures.append(size.depth)
    unit = "mm" if system == "metric" else "in"
    numbers = "x".join(_figure(shown(figure, "diameter", system)[0], unit) for figure in figures)
    return f"{numbers} {unit}{' oval' if size.shape == 'oval' else ''}"


def _figure(number: float, unit: str) -> str:
    places = 3 if unit == "in" else 0 if number >= 100.0 else 1
    return f"{round(number, places):g}"


def equivalent_diameter(size: Size) -> float:
    """Diameter (m) of the round duct with equal friction at equal airflow.

    Rectangular 1.30 (ab)^0.625 / (a + b)^0.25 (Huebscher), flat oval 1.55 A^0.625 / P^0.25 (Heyt and Diaz),
    as in the ASHRAE Handbook, Fundamentals, chapter Duct Design.
    """
    if size.shape == "round":
        return size.width
    if size.shape == "oval":
        return float(1.55 * size.area**0.625 / size.perimeter**0.25)
    return float(1.30 * (size.width * size.height) ** 0.625 / (size.width + size.height) ** 0.25)


def _sides(folded: str) -> list[str]:
    """Each side with its unit; that of the last serves those without. Empty if it is no size."""
    if re.fullmatch(_FEET_SIDED, folded, re.IGNORECASE):
        return re.split(r" ?x ?", folded, flags=re.IGNORECASE)
    if not re.fullmatch(_SIDED, folded, re.IGNORECASE):
        return []
    sides = [(match["number"], match["unit"]) for match in re.finditer(_SIDE, folded, re.IGNORECASE)]
    last = sides[-1][1]
    return [f"{number} {unit or last}" for number, unit in sides] if last else []


def _size(sides: list[str], text: str) -> Size:
    values = [parse(side, "diameter") for side in sides]
    if min(values) <= 0.0:
        raise UnitFault(f"{quoted(text)} has a side of zero", "write the size, for example `6 in`")
    if len(values) == 1:
        return Size("round", values[0], values[0])
    return Size("rectangular", values[0], values[1], values[2] if len(values) == 3 else None)


def _no_size(text: str, folded: str) -> UnitFault:
    bare = re.fullmatch(_BARE, folded, re.IGNORECASE)
    if bare:
        plain = bare["figures"].lower().replace(" x ", "x")
        if re.fullmatch(r"[0-9]+/[0-9]+", plain):
            plain = plain.replace("/", "x")
        if match := re.fullmatch(r"([2-9])([0-9])([2-9])([0-9])", plain):
            wide, high = int(match[1]) * 12 + int(match[2]), int(match[3]) * 12 + int(match[4])
            return UnitFault(f"{quoted(text)} has no unit", f"write `{wide}x{high} in` if feet and inches are meant")
        return UnitFault(f"{quoted(text)} has no unit", f"write `{plain} in`, or the size in mm")
    if limit := re.fullmatch(_LIMIT, folded, re.IGNORECASE):
        return UnitFault(
            f"{quoted(text)} is a limit, not one size", f"write the size to judge by, `{limit[1]}`"
        )
    return UnitFault(
        f"{quoted(text)} is not a size", "write a diameter, `6 in`, or width and height, `10x6 in`"
    )
