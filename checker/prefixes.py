"""Quantities that are not `number unit`: `R-8`, `U-0.28`, `$0.15/kWh`, `6:12`, `n50 = 1.5`, `7'-6"`.

`unprefixed` writes them as `number unit`; what it does not know it leaves as it is.
"""

import re
from collections.abc import Callable

from checker.spelling import NUMBER, UnitFault, quoted, take_number

# Patterns stay text until used (re keeps the compiled ones): most files need one or two of them.
_RESISTANCE = rf"R(?P<si> ?SI)? ?[-=]? ?(?P<number>{NUMBER})(?P<after> ?RSI)?"
_U_VALUE = rf"U ?[-=]? ?(?P<number>{NUMBER})(?P<unit>.*)"
_PRICE = rf"\$ ?(?P<number>{NUMBER}) ?(?P<per>/.*| per .*|)"
_PITCH = r"([0-9]+(?:\.[0-9]+)?)(?: ?/ ?| in )12"
_RATIO = r"([0-9]+(?:\.[0-9]+)?) ?: ?([0-9]+(?:\.[0-9]+)?)"
_BASE = r"(?P<base>65|18|50|10)(?:\.0)?(?:(?: ?(?:deg|degrees?))? ?(?P<scale>[FC]?)(?:ahrenheit|elsius)?)"
_DAYS_BEFORE = rf"[HC]DD ?{_BASE}(?: ?[:=] ?| )(?P<number>{NUMBER})"
_DAYS_AFTER = (
    rf"(?P<number>{NUMBER}) ?(?:[HC]DD|(?:heating |cooling )?degree[ -]days?),? ?\(?(?:base|at|to)? ?{_BASE}(?: base)?\)?"
)
_N50 = rf"n ?50 ?=? ?(?P<number>{NUMBER})(?: ?(?:1/h|/h|h-1|ACH))?"

# dimension -> (larger unit, smaller unit, as what the sum is written, how many make one)
_FEET = (r"ft\b\.?|ft(?=[0-9])|feet|foot|'(?!')", r"inches|inch|in\b\.?|''|\"", "ft", 12.0)
_COMPOUNDS = {
    "length": _FEET,
    "diameter": _FEET,
    "mass": (r"lbs?\b\.?|lb(?=[0-9])|pounds?", r"ounces?|oz\b\.?", "lb", 16.0),
    "time": (r"hrs?\b\.?|h\b|h(?=[0-9])|hours?", r"minutes?|mins?\b\.?", "h", 60.0),
}


def unprefixed(folded: str, dimension: str) -> str:
    """Folded text as `number unit` where the dimension has another form. Raises UnitFault."""
    if dimension in _COMPOUNDS:
        return _compound(folded, *_COMPOUNDS[dimension])
    rewrite = _FORMS.get(dimension)
    return folded if rewrite is None else rewrite(folded)


def _match(pattern: str, folded: str) -> re.Match[str] | None:
    return re.fullmatch(pattern, folded, re.IGNORECASE)


def _compound(folded: str, larger: str, smaller: str, unit: str, ratio: float) -> str:
    match = _match(
        rf"(?P<sign>[+-]?)(?P<major>{NUMBER}) ?(?:{larger}) ?[-,]? ?(?P<minor>{NUMBER}) ?(?:{smaller})",
        folded,
    )
    if match is None:
        return folded
    major, minor = take_number(match["major"]), take_number(match["minor"])
    assert major is not None and minor is not None  # both matched NUMBER
    if not major.value.is_integer():
        raise UnitFault(
            f"{quoted(folded)} has a fraction before its second part",
            "write a whole number in the first part, or all in one unit",
        )
    if minor.value >= ratio:
        raise UnitFault(
            f"the second part of {quoted(folded)} is {minor.number}, which is not below {ratio:g}",
            f"write the whole in one unit or keep the second part below {ratio:g}",
        )
    return f"{match['sign']}{major.value + minor.value / ratio!r} {unit}"


def _resistance(folded: str) -> str:
    match = _match(_RESISTANCE, folded)
    if match is None:
        return folded
    return f"{match['number']} {'RSI' if match['si'] or match['after'] else 'h*ft2*degF/Btu'}"


def _u_value(folded: str) -> str:
    match = _match(_U_VALUE, folded)
    if match is None:
        return folded
    unit = match["unit"].strip()
    written = take_number(match["number"])
    if not unit and written is not None and written.value >= 3.0:
        raise UnitFault(
            f"{quoted(folded)} is above any U-value in Btu/h*ft2*degF",
            "write a US value such as `U-0.28`, or the unit, `1.6 W/m2*K`",
        )
    return f"{match['number']} {unit or 'Btu/h*ft2*degF'}"


def _price(folded: str) -> str:
    match = _match(_PRICE, folded)
    return folded if match is None else f"{match['number']} ${match['per']}"


def _slope(folded: str) -> str:
    if match := _match(_PITCH, folded):
        return f"{match[1]} in/12 in"
    if (match := _match(_RATIO, folded)) and float(match[2]):
        return f"{float(match[1]) / float(match[2])!r} ft/ft"
    return folded


def _airtightness(folded: str) -> str:
    match = _match(_N50, folded)
    return folded if match is None else f"{match['number']} ACH50"


def _degree_days(folded: str) -> str:
    """With the base in words, `6200 degree days base 65 F`, in front, `HDD65: 6200`, or with `d` for days."""
    before, after = _match(_DAYS_BEFORE, folded), _match(_DAYS_AFTER, folded)
    match = before or after
    if match is None:
        short = _match(rf"(?P<number>{NUMBER}) ?(?:deg)? ?(?P<scale>[FCK]) ?[*.-]? ?d", folded)
        if short is None:
            return folded
        return f"{short['number']} {'degF' if short['scale'].upper() == 'F' else 'degC'}*day"
    base, scale = match["base"], match["scale"].upper()
    known = {"65": "F", "18": "C", "50": "F", "10": "C"}[base]
    if scale and scale != known:
        return folded
    return f"{match['number']} deg{known}*day"


_FORMS: dict[str, Callable[[str], str]] = {
    "resistance": _resistance,
    "u_value": _u_value,
    "electricity_price": _price,
    "fuel_price": _price,
    "money": _price,
    "yearly_cost": _price,
    "slope": _slope,
    "airtightness": _airtightness,
    "degree_days": _degree_days,
}
