"""Other words for a key that can mean nothing else, taken for that key: read only when a section has a key it lacks.

`Floor Area` is `floor_area`, `area` of a room its `floor_area`, `sones: 0.3` is `sound: 0.3 sone`. The places of the
reading move along, so that every finding names the key as the format spells it.
"""

from collections.abc import Iterator
from typing import TYPE_CHECKING

from checker.design.fields import Choice, Node, fold
from checker.design.other_words import WORDS
from checker.design.shape import Field, fields_of
from checker.design.values import REFUSED, scalar

if TYPE_CHECKING:
    from checker.design.builder import Builder

UNITS = {
    "cfm": "cfm", "watts": "W", "wattage": "W", "sone": "sone", "sones": "sone", "sqft": "ft2", "square feet": "ft2",
    "ach50": "ACH50", "cfm50": "cfm50", "btu": "Btu/h", "btuh": "Btu/h",
}  # fmt: skip
"""Words that are the unit of the number behind them."""

OPEN = {
    "Project": "by", "Site": "electricity price | fuel price", "House": "tested | garage | infiltration | leakage",
    "Room": "floor | ventilation | fan", "Window": "area | opening",
    "Fan": "merv | standard | rated | certified | hvi | timer | thermostat | switch | listed | ul | closes",
    "Hood": "timer | thermostat | switch | listed | ul | closes | height",
    "Setting": "continuous | always on | mode | minutes", "Rating": "hvi | test | certified by | certified | listed",
    "Recovery": "efficiency | effectiveness | temperature", "Capacity": "nominal", "Control": "setpoint",
    "OutdoorAirDuct": "timer", "RefrigerantLine": "type", "LoadsPaper": "cooling", "Burner": "rating",
    "Filter": "drop | pressure drop", "Opening": "elevation", "Airway": "runs", "DuctSystem": "return",
}  # fmt: skip
"""Words that lead to a key and yet may mean something else: they are refused with that key as help."""

EITHER = {("Fan", "type"): ("role", "kind")}
"""Words that stand for the first of several keys whose list has the word that is written."""

AXES = {"x": "east", "y": "north", "z": "up"}
"""Axes of a position; without all three of them `y` may be the height."""


def canonical(builder: "Builder", section: type[Node], data: dict[str, object], path: str) -> dict[str, object]:
    """The data of a section with its keys as the format spells them; the map of a file itself is changed."""
    known = fields_of(section)
    taken = set(data)
    words = AXES if section.__name__ == "Position" and AXES.keys() <= taken else {}
    found: dict[str, object] = {}
    for written, value in data.items():
        key = words.get(written) or (written if written in known else meant(section, written, value))
        if key == written or not key or key in taken:
            found[written] = value
            continue
        taken.add(key)
        before, after = (f"{path}.{each}" if path else each for each in (written, key))
        found[key] = with_unit(builder, known[key], written, value, before)
        move(builder, before, after, value)
    if builder.reading.keys:  # what programs hand over stays as it is
        data.clear()
        data.update(found)
    return found


def meant(section: type[Node], written: str, value: object) -> str:
    """The key that a word stands for without doubt; "" where there is none."""
    word = fold(written)
    known = fields_of(section)
    for key in known:
        if fold(key) == word:
            return key
    for each in section.__mro__:
        for key in EITHER.get((each.__name__, word), ()):
            kind = known[key].shape.kind
            if isinstance(kind, Choice) and isinstance(value, str) and scalar(kind, value, None).__class__ is not REFUSED:
                return key
        if word in OPEN.get(each.__name__, "").split(" | "):
            return ""
        for words, key in WORDS.get(each.__name__, {}).items():
            if word in words.split(" | ") and key in known:
                return key
    return ""


def with_unit(builder: "Builder", field: Field, written: str, value: object, path: str) -> object:
    """The value with what the word itself says of it: its unit, or that elbows are counted."""
    plain = isinstance(value, (int, float)) and not isinstance(value, bool)
    if plain and fold(written) in UNITS:
        return f"{builder.reading.sources.pop(path, value)} {UNITS[fold(written)]}"
    if field.key == "pieces" and fold(written) == "elbows" and plain:
        return {"elbow-90": value}  # the turn that costs most; a gentler one is written out
    return value


def move(builder: "Builder", before: str, after: str, value: object) -> None:
    """Move the places of a key and of all below it."""
    reading = builder.reading
    for below in within(value):
        for table in (reading.keys, reading.values):
            if before + below in table:
                table[after + below] = table.pop(before + below)
        if before + below in reading.sources:
            reading.sources[after + below] = reading.sources.pop(before + below)


def within(value: object, below: str = "") -> Iterator[str]:
    """The paths of a value and of what it holds, from the value on."""
    yield below
    if isinstance(value, dict):
        for key, item in value.items():
            yield from within(item, f"{below}.{key}")
    elif isinstance(value, list):
        for number, item in enumerate(value):
            yield from within(item, f"{below}[{number}]")
