"""How quantities are spelled: word-processor marks folded, fractions read, unit text brought to one form.

Nothing here knows a unit. The number forms are those of trade drawings: `80`, `1,200`, `.5`, `1/2`,
`1 1/2`, `1-1/2`. A decimal comma, an improper fraction (`11/2`) and a slash between two settings
(`50/110`) have a second reading and are refused.
"""

import re

from checker.record import Record

LONGEST = 80  # characters; a quantity is short, and hostile text should cost nothing
_DENOMINATORS = frozenset((2, 3, 4, 5, 6, 8, 10, 16, 32, 64))  # fractions of an inch, of a horsepower, of one

_FOLD: dict[int, str] = {
    **dict.fromkeys(map(ord, "\u00a0\u2002\u2003\u2007\u2009\u200a\u202f\u3000"), " "),
    **dict.fromkeys(map(ord, "\u200b\u2060\ufeff"), ""),
    **dict.fromkeys(map(ord, "−‐‑–—"), "-"),
    **dict.fromkeys(map(ord, "′’‘´"), "'"),
    **dict.fromkeys(map(ord, "″”“"), '"'),
    **dict.fromkeys(map(ord, "·⋅∙•"), "*"),
    **dict.fromkeys(map(ord, "Δ∆"), "delta "),
    **dict.fromkeys(map(ord, "Øø⌀∅"), "ø"),
    **dict.fromkeys(map(ord, "µμ"), "u"),
    **{
        ord(mark): f" {part}"
        for mark, part in (
            ("½", "1/2"),
            ("⅓", "1/3"),
            ("⅔", "2/3"),
            ("¼", "1/4"),
            ("¾", "3/4"),
            ("⅕", "1/5"),
            ("⅙", "1/6"),
            ("⅛", "1/8"),
            ("⅜", "3/8"),
            ("⅝", "5/8"),
            ("⅞", "7/8"),
        )
    },
    **{
        ord(mark): plain
        for mark, plain in (
            ("⁄", "/"),
            ("×", "x"),
            ("°", "deg"),
            ("℉", "degF"),
            ("℃", "degC"),
            ("²", "2"),
            ("³", "3"),
            ("□", "sq "),
            ("≤", "<="),
            ("≥", ">="),
            ("≈", "~"),
            ("±", "+/-"),
            ("⁻", "-"),
            ("¹", "1"),
        )
    },
}

_MIXED = r"(?:[0-9]+(?: ?- ?| ))?[0-9]+/[0-9]+(?![0-9/.,])"
NUMBER = rf"(?:{_MIXED}|(?:[0-9][0-9,]*(?:\.[0-9]*)?|\.[0-9]+)(?:[eE][+-]?[0-9]+)?)"
_SIGNED = re.compile(rf"([+-]?) ?({NUMBER}) ?(.*)", re.DOTALL)
_FRACTION = re.compile(r"(?:([0-9]+)(?: ?- ?| ))?([0-9]+)/([0-9]+)")
_THOUSANDS = re.compile(r"[1-9][0-9]{0,2}(?:,[0-9]{3})+(?:\.[0-9]*)?")
_PER = re.compile(r" ?\bper\b ?", re.IGNORECASE)
_JOIN = re.compile(r"(?<=[a-z0-9])-(?=[a-z0-9])")
_DROP = str.maketrans("", "", " .()*^_")


class UnitFault(ValueError):  # noqa: N818 - a fault of the text, not of the program
    """A text that is not the wanted quantity: `problem` states the fact, `remedy` how to write it."""

    def __init__(self, problem: str, remedy: str) -> None:
        super().__init__(f"{problem}; {remedy}")
        self.problem = problem
        self.remedy = remedy


class Written(Record):
    """A text taken apart: the number's value, its own spelling (with sign) and the text after it."""

    value: float
    number: str
    unit: str


def quoted(text: str) -> str:
    """The text in backquotes, cut and with control characters made visible."""
    seen = text if len(text) <= 40 else f"{text[:40]}..."
    return f"`{seen if seen.isprintable() else ascii(seen)[1:-1]}`"


def fold(text: str) -> str:
    """Typographic marks as plain ones (`½`, `″`, `°`, `·`, non-breaking space), runs of spaces as one.

    Raises UnitFault for text longer than a quantity can be.
    """
    if len(text) > LONGEST:
        raise UnitFault(f"{quoted(text)} is {len(text)} characters long", "write one number and its unit")
    return " ".join((text if text.isascii() else text.translate(_FOLD)).split())


def unit_key(unit: str) -> str:
    """One form for unit text: lower case, `per` as `/`, `@` as `at`, no periods, spaces, `*` or brackets.

    `M` alone stays: it may be meters or a thousand.
    """
    if unit == "M":
        return unit
    plain = _PER.sub("/", unit.replace("@", " at ")).lower()
    return _JOIN.sub("", plain).translate(_DROP)


def take_number(folded: str) -> Written | None:
    """Split folded text after its leading number; None when it does not start with one.

    Raises UnitFault for a number with two readings or none (decimal comma, improper fraction, 1e999).
    """
    match = _SIGNED.match(folded)
    if match is None:
        return None
    sign, digits, unit = match.groups()
    if unit[:1] == "-" and unit[1:2].isalpha():
        unit = unit[1:]  # `3-ton`, `6-inch`; a hyphen before a digit is a range
    value = _fraction(digits) if "/" in digits else _decimal(digits)
    return Written(-value if sign == "-" else value, sign + digits, unit)


def _decimal(digits: str) -> float:
    if "," in digits:
        if not _THOUSANDS.fullmatch(digits):
            whole, _, rest = digits.partition(",")
            raise UnitFault(
                f"the comma in `{digits}` may be a decimal mark, {whole}.{rest}, or part {whole} and {rest}",
                f"write a decimal point, `{whole}.{rest}`, or one value",
            )
        digits = digits.replace(",", "")
    value = float(digits)
    if value > 1e300:
        raise UnitFault(f"{quoted(digits)} is too large to be a quantity", "write the number that is meant")
    return value


def _fraction(digits: str) -> float:
    match = _FRACTION.fullmatch(digits)
    assert match is not None  # NUMBER admits a slash in this form only
    whole, upper, lower = int(match[1] or 0), int(match[2]), int(match[3])
    if lower in _DENOMINATORS and upper < lower:
        return whole + upper / lower
    if match[1] is None and len(match[2]) == 2 and lower in _DENOMINATORS and 0 < int(match[2][1]) < lower:
        mixed = f"{match[2][0]} {match[2][1]}/{lower}"
        raise UnitFault(
            f"`{digits}` may be {mixed} or {upper / lower:g}", f"write `{mixed}` or a decimal number"
        )
    raise UnitFault(
        f"`{digits}` may be a fraction or two values",
        "write one value, as a decimal number or as a fraction below one such as `3/8` or `1 1/2`",
    )
