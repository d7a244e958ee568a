"""Quantities at the border: text to SI numbers (`parse`) and back (`show`), by one table of spellings.

Every number goes through one path, number * factor + offset rounded to 12 significant digits, so that
`4 in` equals `4 in`, and `120 in` equals `10 ft`, to the bit. Inside the program all values are SI: m, m2,
m3/s, Pa, W, K, s, kg, rad. Conventions of the table: an inch of water is 249.08891 Pa (the conventional
inch, 1000 kg/m3; 248.84 Pa at 60 degF), Btu is the International Table Btu, a ton of cooling is
12,000 Btu/h, `R-` and `U-` are US customary values.
"""

from typing import Literal

from checker.dimensions import DIMENSIONS, Dimension
from checker.record import Record
from checker.spelling import UnitFault, Written, fold, take_number, unit_key
from checker.unit_table import TABLE

__all__ = [
    "DIMENSIONS",
    "Airtightness",
    "Dimension",
    "UnitFault",
    "example",
    "number_in",
    "parse",
    "parse_airtightness",
    "show",
    "show_airtightness",
    "show_pair",
    "shown",
    "unit_of",
]

# shown in the smaller unit when less than one of the larger
_SMALLER = {("length", "ft"): "in", ("length", "m"): "mm", ("time", "h"): "min", ("time", "min"): "s"}
_SMALLER_DIGITS = 4

Kind = Literal["ach50", "flow50", "flow50-per-floor", "flow50-per-envelope"]
BTUH_AT_LEAST = 400.0
"""Below it BTUH may mean thousands of Btu/h, as for `60 BTUH` of a furnace; no burner of a house takes so many thousands."""

_KINDS: tuple[tuple[Kind, str], ...] = (
    ("ach50", "ach50"),
    ("flow50", "leakage_50"),
    ("flow50-per-floor", "flow50_per_floor"),
    ("flow50-per-envelope", "flow50_per_envelope"),
)
_DIMENSION_OF_KIND = dict(_KINDS)


class Airtightness(Record):
    """A house leakage at 50 Pa: 1/h for `ach50`, m3/s for `flow50`, m3/(s*m2) for the flows per area."""

    kind: Kind
    value: float


def parse(text: str, dimension: str) -> float:
    """The SI value of a quantity text. Raises UnitFault, which says what is wrong and how to write it."""
    if dimension == "airtightness":
        raise TypeError("an airtightness has a kind: use parse_airtightness")
    number, _, unit = text.partition(" ")
    scale = TABLE[dimension].get(unit)
    if scale is not None and number.isascii() and "_" not in number:
        try:
            value = _si(float(number), scale)
        except ValueError:
            return _read(text, dimension)
        kind = DIMENSIONS[dimension]
        if kind.least <= value <= kind.most:
            return value
    return _read(text, dimension)


def parse_airtightness(text: str) -> Airtightness:
    """`1.5 ACH50`, `650 cfm50`, `0.25 cfm50/ft2 of envelope` or `... of floor`. Raises UnitFault."""
    folded = fold(text)
    if folded[:1] in ("n", "N"):
        from checker.prefixes import unprefixed

        folded = unprefixed(folded, "airtightness")
    written = take_number(folded)
    if written is not None:
        for kind, dimension in _KINDS:
            scale = _scale(written.unit, dimension)
            if scale is None:
                continue
            value = _si(written.value, scale)
            if 0.0 <= value <= DIMENSIONS[dimension].most:
                return Airtightness(kind, value)
    from checker.refusals import refusal

    raise refusal(text, folded, written, DIMENSIONS["airtightness"])


def _si(number: float, scale: tuple[float, float]) -> float:
    return float(f"{number * scale[0] + scale[1]:.12g}") + 0.0  # + 0.0 makes -0.0 plain zero


def _scale(unit: str, dimension: str) -> tuple[float, float] | None:
    spellings = TABLE[dimension]
    return spellings.get(unit) or spellings.get(unit_key(unit))


def _read(text: str, dimension: str) -> float:
    """The way for all that is not `number unit` as it stands in the table."""
    from checker.prefixes import unprefixed

    kind = DIMENSIONS[dimension]
    folded = unprefixed(fold(text), dimension)
    written = take_number(folded)
    if written is not None:
        value = _value(written, dimension)
        # a percentage of something may pass 100; an hour has only 60 minutes
        many = dimension == "share" and "/" not in unit_key(written.unit)
        if value is not None and kind.least <= value and (value <= kind.most or many):
            return value
    from checker.refusals import refusal

    raise refusal(text, folded, written, kind)


def _value(written: Written, dimension: str) -> float | None:
    scale = _scale(written.unit, dimension)
    if scale is not None:
        return _si(written.value, scale)
    if dimension == "slope" and (scale := _scale(written.unit, "angle")) is not None:
        from math import tan

        return float(f"{tan(written.value * scale[0]):.12g}")
    bare = ("btuh",) if dimension == "power" else ("btuh", "btu", "btus") if dimension == "heat_rate" else ()
    if unit_key(written.unit) in bare and written.value >= BTUH_AT_LEAST:
        return _si(written.value, TABLE[dimension]["Btu/h"])
    return None


def example(dimension: str) -> str:
    """How a quantity of this dimension is written, such as `80 cfm`."""
    return DIMENSIONS[dimension].example


def show(value: float | Airtightness, dimension: str, system: str = "trade") -> str:
    """The SI value as text in the unit of the system, `trade` or `metric`: `55 cfm`, `26 L/s`."""
    if isinstance(value, Airtightness):
        return show_airtightness(value, system)
    kind = DIMENSIONS[dimension]
    return _with_unit(value, kind, _unit(value, kind, system), system, 0)


def show_airtightness(airtightness: Airtightness, system: str = "trade") -> str:
    """The text of an airtightness, of the same kind."""
    return show(airtightness.value, _DIMENSION_OF_KIND[airtightness.kind], system)


def shown(value: float | Airtightness, dimension: str, system: str = "trade") -> tuple[float, str]:
    """(number in the display unit to 9 significant digits, unit), for machine-readable output."""
    if isinstance(value, Airtightness):
        return shown(value.value, _DIMENSION_OF_KIND[value.kind], system)
    kind = DIMENSIONS[dimension]
    unit = _unit(value, kind, system)
    return float(f"{_number(value, kind, unit):.9g}"), unit


def unit_of(dimension: str, system: str = "trade") -> str:
    """The unit that numbers of this dimension are shown in, whatever their size."""
    kind = DIMENSIONS[dimension]
    return {"trade": kind.trade, "metric": kind.metric}[system]


def number_in(value: float, dimension: str, unit: str) -> float:
    """The SI value as a number in one of the units of its dimension."""
    return _number(value, DIMENSIONS[dimension], unit)


def show_pair(a: float, b: float, dimension: str, system: str = "trade") -> tuple[str, str]:
    """Two values in one unit, with digits added until the texts differ.

    Values within 1e-9 of each other count as equal and may look so.
    """
    kind = DIMENSIONS[dimension]
    larger = max(abs(a), abs(b))
    unit = _unit(larger, kind, system)
    texts = _with_unit(a, kind, unit, system, 0), _with_unit(b, kind, unit, system, 0)
    more = 1
    while texts[0] == texts[1] and abs(a - b) > 1e-9 * larger and more < 13:
        texts = _with_unit(a, kind, unit, system, more), _with_unit(b, kind, unit, system, more)
        more += 1
    return texts


def _unit(value: float, kind: Dimension, system: str) -> str:
    unit = {"trade": kind.trade, "metric": kind.metric}[system]
    while value and (smaller := _SMALLER.get((kind.name, unit))):
        if abs(value) >= TABLE[kind.name][unit][0] * (1 - 1e-9):
            break
        unit = smaller
    return unit


def _number(value: float, kind: Dimension, unit: str) -> float:
    spellings = TABLE["ach50" if kind.name == "airtightness" else kind.name]
    factor, offset = spellings[unit]
    return round((value - offset) / factor, 8) + 0.0  # 8 places drop the noise of offsets, + 0.0 a minus


def _with_unit(value: float, kind: Dimension, unit: str, system: str, more: int) -> str:
    """The text with at least the dimension's significant digits, plus `more` decimals."""
    number = _number(value, kind, unit)
    digits, places = kind.digits, kind.places
    if unit not in (kind.trade, kind.metric):
        digits = places = _SMALLER_DIGITS
    exponent = int(f"{number:.{digits - 1}e}".partition("e")[2])
    decimals = max(0, min(places, digits - 1 - exponent)) + more
    text = f"{number:.{decimals}f}"
    if number and not float(text):
        text = f"{number:.{digits}g}"
    if "." in text and "e" not in text:
        text = text.rstrip("0").rstrip(".")
    return kind.write(text, system) if unit in (kind.trade, kind.metric) else f"{text} {unit}"
