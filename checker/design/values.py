"""One scalar of the file, read by its kind."""

from typing import Any

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
from checker.record import Record
from checker.units import DIMENSIONS, UnitFault, parse, parse_airtightness

YES = frozenset({"yes", "y", "true", "x", "✓"})
NO = frozenset({"no", "n", "false", "none"})


_COUNTED = "zero one two three four five six seven eight nine ten eleven twelve"
NUMBER_WORDS = {word: number for number, word in enumerate(_COUNTED.split())}

class REFUSED(Record):
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
    if written in ("0", "0.0") and isinstance(kind, Quantity) and kind.dimension != "temperature":
        return 0.0  # nothing is nothing in every unit but the degrees
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
        if fold(written) in YES:
            return REFUSED("FILE-22", f"`{written}` says that there is one; {words_of(kind)} is wanted", fault.remedy)
        return REFUSED("FILE-22", fault.problem, fault.remedy)


def number(kind: Kind, value: Any, written: str) -> Any:
    """A count or a plain number."""
    if isinstance(kind, Number) and isinstance(value, str):
        value = labelled(value)
    if isinstance(kind, Whole) and isinstance(value, str):
        word = value.strip().lower()
        value = int(word) if word.isdecimal() and len(word) < 6 else NUMBER_WORDS.get(word, value)
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
        word = kind.spellings.get(fold(written).removesuffix("s")) or kind.spellings.get(fold(written.replace(".", "")))
    if word is not None:
        return word
    from checker.design.nearest import nearest
    from checker.design.other_words import open_word

    spellings = list(dict.fromkeys([*kind.words, *kind.spellings]))
    word = fold(written)
    remedy = open_word(kind.words[0], word) or part_of(kind, word)
    if not remedy and len(kind.words) > 8:
        remedy = nearest(written, spellings, "words")
    if not remedy:
        remedy = "write " + ", ".join(f"`{each}`" for each in kind.words) + " or `tbd`"
    return REFUSED("FILE-23", f"`{written}` is not a word that is known here", remedy)


def part_of(kind: Choice, written: str) -> str:
    """Help for a text that says more than a word of the list, which it contains; "" where it contains none."""
    held = [each for each in kind.spellings if len(each) > 2 and f" {each} " in f" {written} "]
    return f"write `{kind.spellings[max(held, key=len)]}` here and the rest under its own key" if held else ""
