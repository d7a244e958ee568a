"""One scalar of the file, read by its kind."""

from typing import Any, NamedTuple

from checker.design.fields import (
    AirtightnessKind,
    Choice,
    Kind,
    Number,
    Quantity,
    Reference,
    SizeKind,
    Whole,
    YesNo,
    fold,
)
from checker.units import DIMENSIONS, UnitFault, parse, parse_airtightness

YES = frozenset({"yes", "y", "true", "x", "✓"})
NO = frozenset({"no", "n", "false"})


class REFUSED(NamedTuple):
    """Why a scalar is refused: code of the fault, the fact, and how to write it."""

    code: str
    problem: str
    remedy: str


def words_of(kind: Kind) -> str:
    """What a kind wants, for a message."""
    if isinstance(kind, Quantity):
        return f"{a(kind.dimension.replace('_', ' '))} such as `{DIMENSIONS[kind.dimension].example}`"
    if isinstance(kind, SizeKind):
        return "a size such as " + ("`16x20x1 in`" if kind.of_filter else "`6 in` or `10x6 in`")
    if isinstance(kind, AirtightnessKind):
        return "an airtightness such as `1.5 ACH50` or `650 cfm50`"
    if isinstance(kind, YesNo):
        return "yes or no"
    if isinstance(kind, Whole):
        return "a whole number"
    if isinstance(kind, Number):
        return "a number without a unit"
    if isinstance(kind, Choice):
        return "one word of its list"
    return "a name" if isinstance(kind, Reference) else "text"


def a(noun: str) -> str:
    """The noun with its article."""
    return f"{'an' if noun[0] in 'aeiou' else 'a'} {noun}"


def scalar(kind: Kind, value: Any, source: str | None) -> Any:
    """Read a scalar: its SI value, word, name or truth value, or REFUSED with the reason.

    `source` is the text of a number as it stands in the file.
    """
    written = source if source is not None else str(value)
    if isinstance(kind, YesNo):
        return yes_or_no(value, written)
    if isinstance(value, bool) and not isinstance(kind, Choice):
        if isinstance(kind, Quantity) and value is False and kind.none_is is not None:
            return kind.none_is
        return REFUSED(
            "FILE-21", f"`{written}` stands where {words_of(kind)} is wanted", f"write {words_of(kind)}"
        )
    if isinstance(kind, (Quantity, SizeKind, AirtightnessKind)):
        return with_unit(kind, written)
    if isinstance(kind, (Whole, Number)):
        return number(kind, value, written)
    if isinstance(kind, Choice):
        return choice(kind, "yes" if value is True else "no" if value is False else written)
    return written


def yes_or_no(value: Any, written: str) -> Any:
    """A truth value."""
    if isinstance(value, bool):
        return value
    word = fold(written)
    if word in YES or word in NO:
        return word in YES
    return REFUSED("FILE-21", f"`{written}` stands where yes or no is wanted", "write `yes`, `no` or `tbd`")


def with_unit(kind: Kind, written: str) -> Any:
    """A quantity, size or airtightness."""
    if isinstance(kind, Quantity) and kind.none_is is not None and fold(written) in ("none", "no"):
        return kind.none_is
    try:
        if isinstance(kind, Quantity):
            value = parse(written, kind.dimension)
            if value < 0 and not kind.signed:
                return REFUSED("FILE-22", f"`{written}` is negative", f"write {words_of(kind)}")
            return value
        if isinstance(kind, AirtightnessKind):
            return parse_airtightness(written)
        from checker.sizes import parse_filter_size, parse_size

        return parse_filter_size(written) if kind.of_filter else parse_size(written)  # type: ignore[attr-defined]
    except UnitFault as fault:
        return REFUSED("FILE-22", fault.problem, fault.remedy)


def number(kind: Kind, value: Any, written: str) -> Any:
    """A count or a plain number."""
    if isinstance(kind, Number) and isinstance(value, str):
        value = labelled(value)
    if not isinstance(value, (int, float)):
        return REFUSED("FILE-21", f"`{written}` stands where {words_of(kind)} is wanted", "write digits only")
    if isinstance(kind, Whole):
        if value != int(value) or value < 0:
            return REFUSED(
                "FILE-21", f"`{written}` stands where a whole number is wanted", "write a count such as `2`"
            )
        return int(value)
    assert isinstance(kind, Number)
    low, high = kind.least, kind.most
    if (low is not None and value < low) or (high is not None and value > high):
        return REFUSED("FILE-21", f"`{written}` is outside {low} to {high}", "write a number in that range")
    return float(value)


def labelled(text: str) -> Any:
    """`MERV 13` and `7 1/2` style texts as a number, if they are one."""
    word, _, rest = text.replace("-", " ").partition(" ")
    digits = rest if word.lower() in ("merv", "zone") else text.lower().removeprefix("merv")
    try:
        return float(digits)
    except ValueError:
        return text


def choice(kind: Choice, written: str) -> Any:
    """One word of a list, in its usual spelling."""
    word = kind.spellings.get(fold(written))
    if word is None:
        word = kind.spellings.get(fold(written).removesuffix("s"))
    if word is not None:
        return word
    from checker.design.nearest import nearest

    spellings = list(dict.fromkeys([*kind.words, *kind.spellings]))
    remedy = nearest(written, spellings, "words") if len(kind.words) > 8 else (
        "write " + ", ".join(f"`{each}`" for each in kind.words) + " or `tbd`"
    )  # fmt: skip
    return REFUSED("FILE-23", f"`{written}` is not a word that is known here", remedy)
