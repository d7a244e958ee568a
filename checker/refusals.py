"""Why a text is not the wanted quantity, and how to write it. Imported only when one is refused.

The order goes from the particular to the general: limits and ranges, spellings with two readings, a number
without a unit, a unit of another dimension, a value out of bounds, the nearest spelling.
"""

import re

from checker.dimensions import DIMENSIONS, Dimension
from checker.open_spellings import OPEN_SPELLINGS
from checker.spelling import UnitFault, Written, quoted, unit_key
from checker.unit_table import TABLE

_LIMIT_WORD = (
    r"max\b|min\b|maximum|minimum|no more than|up to|at least|at most|under|over|less than|more than"
)
_LIMIT = re.compile(
    rf"(?:{_LIMIT_WORD}|<=?|>=?)[.: ]*(.*)|(.*[^ ]) ?(?:max|maximum|minimum|or more|or less)\.?",
    re.IGNORECASE,
)
_ABOUT_WORD = r"about|approx\b|approximately|circa|ca\b|nominal|nom\b"
_ABOUT = re.compile(
    rf"(?:{_ABOUT_WORD}|~|\+/-)[.: ]*(.*)|(.*[^ ]) ?(?:approx|nominal|nom|\+/-)\.?", re.IGNORECASE
)
_ALIKE = 0.6  # least likeness, by the ratio of difflib, of a spelling that is suggested
_RANGE = re.compile(r"(?:-|to\b|/|\.\.) ?[0-9.]")
_SPACED = re.compile(r"([0-9]{3})\b *(.*)")
_WORDS = re.compile(r" ?[@,;=] ?| ")


def refusal(text: str, folded: str, written: Written | None, wanted: Dimension) -> UnitFault:
    """The fault of a text that is not the wanted quantity; `written` is the folded text taken apart."""
    name = quoted(text)
    if qualified := _qualified(name, folded, wanted):
        return qualified
    if written is None:
        return _without_number(name, folded, wanted)
    return (
        _open(name, written, wanted)
        or _several(name, written, wanted)
        or _without_unit(name, written, wanted)
        or _out_of_bounds(name, written, wanted)
        or _other_dimension(name, written, wanted)
        or _unknown(name, written, wanted)
    )


def _for_example(wanted: Dimension) -> str:
    return f"write {wanted.noun}, for example `{wanted.example}`"


def _choices(forms: tuple[str, ...], number: str = "") -> str:
    return "write " + " or ".join(f"`{form.replace('{n}', number)}`" for form in forms)


def _qualified(name: str, folded: str, wanted: Dimension) -> UnitFault | None:
    for pattern, fact in ((_LIMIT, "is a limit, not one value"), (_ABOUT, "is an approximate value")):
        if match := pattern.fullmatch(folded):
            plain = (match[1] or match[2] or "").strip()
            exact = f"`{plain}`" if plain[:1].isdigit() else f"for example `{wanted.example}`"
            return UnitFault(f"{name} {fact}", f"write the one value to judge by, {exact}")
    return None


def _without_number(name: str, folded: str, wanted: Dimension) -> UnitFault:
    if wanted.name == "resistance" and re.match(r"r[- ]?[0-9.]+ ?[+/]", folded, re.IGNORECASE):
        return UnitFault(
            f"{name} gives two resistances", "write one, such as `R-19`, and the other layer on its own"
        )
    if wanted.name == "resistance" and (more := re.match(r"(r[- ]?[0-9.]+) +[^0-9]", folded, re.IGNORECASE)):
        return UnitFault(f"{name} says more than {wanted.noun}", f"write `{more[1]}` here and the rest under its own key")
    if wanted.name == "u_value" and re.match(r"(r[- ]?|rsi ?)[0-9.]+", folded, re.IGNORECASE):
        return UnitFault(
            f"{name} is a resistance; {wanted.noun} is wanted",
            f"{_for_example(wanted)}; of an assembly write `{{r: R-20}}` for the whole or `{{cavity: R-20}}` for its insulation",
        )
    return UnitFault(f"{name} does not start with a number; {wanted.noun} is wanted", _for_example(wanted))


def _open(name: str, written: Written, wanted: Dimension) -> UnitFault | None:
    key = unit_key(written.unit)
    for dimensions, keys, fact, forms in OPEN_SPELLINGS:
        if key and wanted.name in dimensions.split() and key in keys.split():
            return UnitFault(f"{name}: {fact}", _choices(forms, written.number))
    return None


def _several(name: str, written: Written, wanted: Dimension) -> UnitFault | None:
    unit = written.unit
    if re.match(r"x ?[0-9]", unit, re.IGNORECASE):
        return UnitFault(f"{name} has two sides; {wanted.noun} is wanted", _for_example(wanted))
    if wanted.name in ("length", "diameter") and (match := re.fullmatch(r"' ?-? ?([0-9]+)", unit)):
        return UnitFault(f"{name} lacks the mark of inches", f"write `{written.number} ft {match[1]} in`")
    if _RANGE.match(unit):
        if wanted.name in ("length", "diameter") and re.fullmatch(r"- ?[0-9]+", unit):
            inches = unit.lstrip("- ")
            return UnitFault(
                f"{name} may be {written.number} ft {inches} in or a range",
                f"write `{written.number} ft {inches} in`, or one value",
            )
        return UnitFault(
            f"{name} gives more than one value", f"write one value, for example `{wanted.example}`"
        )
    if (match := _SPACED.fullmatch(unit)) and len(written.number.lstrip("+-")) <= 3:
        joined = f"{written.number}{match[1]} {match[2] or wanted.trade}"
        return UnitFault(
            f"{name} has a space within the number, or two numbers", f"write `{joined}`, or one value"
        )
    if unit[:1].isdigit() and not _known(unit, _spellings(wanted)):
        return UnitFault(f"{name} gives two numbers", _for_example(wanted))
    return None


def _without_unit(name: str, written: Written, wanted: Dimension) -> UnitFault | None:
    if written.unit:
        return None
    forms = [wanted.write(written.number), wanted.write(written.number, "metric")]
    if wanted.name in ("share", "relative_humidity") and 0.0 < written.value < 1.0:
        forms = [f"{written.value * 100:g} %"]
    if wanted.name == "airtightness":
        forms = [f"{written.number} ACH50", f"{written.number} cfm50"]
    return UnitFault(f"{name} has no unit; {wanted.noun} is wanted", _choices(tuple(dict.fromkeys(forms))))


def _spellings(wanted: Dimension) -> dict[str, tuple[float, float]]:
    kinds = ("ach50", "leakage_50", "flow50_per_floor", "flow50_per_envelope")
    if wanted.name != "airtightness":
        return TABLE[wanted.name]
    return {spelling: scale for kind in kinds for spelling, scale in TABLE[kind].items()}


def _known(unit: str, spellings: dict[str, tuple[float, float]]) -> bool:
    return unit in spellings or unit_key(unit) in spellings


def _out_of_bounds(name: str, written: Written, wanted: Dimension) -> UnitFault | None:
    if not _known(written.unit, _spellings(wanted)):
        return None
    if wanted.name == "temperature":
        return UnitFault(f"{name} is colder than anything in a house", _for_example(wanted))
    if written.value < 0.0:
        return UnitFault(f"{name} is negative; {wanted.noun} is zero or more", _for_example(wanted))
    if wanted.name in ("share", "relative_humidity"):
        return UnitFault(f"{name} is more than the whole", _for_example(wanted))
    return UnitFault(f"{name} is too large for {wanted.noun}", _for_example(wanted))


def _other_dimension(name: str, written: Written, wanted: Dimension) -> UnitFault | None:
    for other in DIMENSIONS.values():
        if _known(written.unit, TABLE.get(other.name, {})):
            return UnitFault(f"{name} is {other.noun}; {wanted.noun} is wanted", _for_example(wanted))
    return None


def _unknown(name: str, written: Written, wanted: Dimension) -> UnitFault:
    spellings = _spellings(wanted)
    words = _WORDS.split(written.unit)
    for count in range(len(words) - 1, 0, -1):
        unit = " ".join(words[:count])
        if _known(unit, spellings):
            return UnitFault(
                f"{name} says more than {wanted.noun}",
                f"write `{_joined(written.number, unit)}` here and the rest under its own key",
            )
    near = _nearest(unit_key(written.unit), spellings, wanted) if written.unit[:1].isalpha() else None
    remedy = f"write `{written.number} {near}`" if near else _for_example(wanted)
    return UnitFault(f"{quoted(written.unit)} is not a known unit; {wanted.noun} is wanted", remedy)


def _nearest(key: str, spellings: dict[str, tuple[float, float]], wanted: Dimension) -> str | None:
    """The spelling most like the key; of equals, the one with the same letters, then a display unit."""
    from difflib import SequenceMatcher

    by_key: dict[str, str] = {}
    for spelling in spellings:  # a spelling as it is written comes before its key
        by_key.setdefault(unit_key(spelling), spelling)

    def likeness(known: str) -> tuple[float, bool, bool]:
        same_letters = sorted(known) == sorted(key)
        return (
            SequenceMatcher(None, key, known).ratio(),
            same_letters,
            by_key[known] in (wanted.trade, wanted.metric),
        )

    best = max(by_key, key=likeness)
    return by_key[best] if likeness(best)[0] >= _ALIKE else None


def _joined(number: str, unit: str) -> str:
    return f"{number}{unit}" if unit[:1] in ('"', "'") else f"{number} {unit}"
