"""Values as a worksheet shows them: numbers in the reader's units, sizes, words, and records line by line."""

import dataclasses
from math import inf
from typing import Any

from checker.design.fields import Node
from checker.outputs.layout import clean
from checker.outputs.record_units import dimension_in
from checker.rule import Num
from checker.sizes import Size, show_size
from checker.units import DIMENSIONS, Airtightness, show_airtightness

MOST_ENTRIES = 12
PLAIN = (bool, int, float, str)


def value_text(value: Any, dimension: str, system: str) -> str:
    """A value on one line; "" for a record, which takes lines of its own."""
    if value is None:
        return "none"
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, Airtightness):
        return show_airtightness(value, system)
    if isinstance(value, Size):
        return show_size(value, system)
    if isinstance(value, Node):
        return str(value.name or value.path) or "the design"
    if isinstance(value, (int, float)):
        return number_text(value, dimension, system)
    if isinstance(value, str):
        return clean(value)
    if isinstance(value, (set, frozenset)):
        value = sorted(value, key=str)
    if isinstance(value, (list, tuple)) and not named_tuple(value):
        parts = [value_text(each, dimension, system) for each in value]
        return ", ".join(parts) if parts and all(parts) else "" if parts else "none"
    if isinstance(value, dict) and not any(record(each) for each in value.values()):
        if any(isinstance(each, Node) for each in value.values()):
            return ", ".join(value)
        between = "; " if any(isinstance(each, (list, set, frozenset)) for each in value.values()) else ", "
        return between.join(f"{key}: {value_text(each, dimension, system)}" for key, each in value.items()) or "none"
    return ""


def number_text(value: float, dimension: str, system: str) -> str:
    """A number in its unit, or as it is."""
    if abs(value) == inf:
        return "without limit"
    if dimension in DIMENSIONS:
        from checker.outputs.numbers import text_of

        return text_of(Num(value, dimension), system)
    return f"{value:.6g}" if isinstance(value, float) else str(value)


def named_tuple(value: Any) -> bool:
    """Whether a value is a record of named fields."""
    return isinstance(value, tuple) and hasattr(value, "_fields")


def record(value: Any) -> bool:
    """Whether a value takes lines of its own."""
    if isinstance(value, (Size, Airtightness, Node)):
        return False
    return hasattr(value, "worksheet_lines") or named_tuple(value) or dataclasses.is_dataclass(value)


def tells_numbers(value: Any) -> bool:
    """Whether a record lays out its own lines, or has numbers among its fields."""
    if hasattr(value, "worksheet_lines"):
        return True
    if not named_tuple(value):
        return bool(value_text(value, "", "trade"))
    return any(isinstance(each, float) for each in value)


def record_lines(value: Any, system: str) -> list[str]:
    """The lines of a record, or of several; a record that knows its units says them itself."""
    if hasattr(value, "worksheet_lines"):
        return [str(line) for line in value.worksheet_lines(system)]
    if isinstance(value, dict):
        return shortened([f"{key}: {line}" for key, each in value.items() for line in lines_of(each, system)])
    if isinstance(value, (list, tuple, set, frozenset)) and not named_tuple(value):
        return shortened([line for each in value for line in lines_of(each, system)])
    names = getattr(value, "_fields", None) or [
        field.name for field in dataclasses.fields(value)
    ] if record(value) else []  # fmt: skip
    plain = {name: getattr(value, name) for name in names if name not in ("path", "dimension")}
    told = {name: dimension_in(value, name) for name in plain}
    shown = [
        f"{name.replace('_', ' ')} {value_text(each, told[name] or '', system)}"
        for name, each in plain.items()
        if isinstance(each, (*PLAIN, Size, Airtightness)) and each != ""
    ]
    unit = " (SI units)" if any(isinstance(each, float) and told[name] is None for name, each in plain.items()) else ""
    return [", ".join(shown) + unit] if shown else [type(value).__name__]


def lines_of(value: Any, system: str) -> list[str]:
    """A value in one line, or the lines of a record."""
    text = value_text(value, "", system)
    return [text] if text else record_lines(value, system)


def shortened(lines: list[str]) -> list[str]:
    """The first lines, and how many more there are."""
    if len(lines) <= MOST_ENTRIES:
        return lines
    return [*lines[:MOST_ENTRIES], f"and {len(lines) - MOST_ENTRIES} more"]
