"""Plain values in place of a section: one figure, several of them in one line, pieces counted in words.

`70 cfm at 0.2 in w.c.` fills the fields of the section's `short`. Where that is no reading, the words of the text are
taken one after the other by the fields in its `spoken` that can read them: `70 cfm, 14 W, 0.3 sone, continuous`.
"""

import re

from checker.design.fields import Choice, Node, Whole, fold
from checker.design.shape import Shape, fields_of
from checker.design.values import NUMBER_WORDS, REFUSED, YES, scalar

TWO_FACTS = re.compile(r"\s*(?:@|\bat\b)\s*")
JOINING = frozenset({"at", "@", "for", "and", "with", "/", "in", "of", "through"})
LONGEST = 120  # characters; a longer text is no line of a schedule
ONE = ("a", "an")
BETWEEN = re.compile(r"\s*(?:[,;+]|\band\b)\s*")


def spelled(section: type[Node], data: object) -> dict[str, object] | None:
    """The map that a plain value stands for: nothing but its being there for `yes`; None where it stands for none."""
    if data is True or (isinstance(data, str) and fold(data) in YES and not reads(section, section.short[:1], [data])):
        return {}
    if not section.short or not isinstance(data, (str, int, float)) or isinstance(data, bool):
        return None
    parts: list[object] = [data]
    if isinstance(data, str) and len(section.short) > 1:
        parts = list(TWO_FACTS.split(data, maxsplit=1))
    if isinstance(data, str) and section.spoken and not reads(section, section.short, parts):
        return spoken(section, data) or dict(zip(section.short, parts, strict=False))
    return dict(zip(section.short, parts, strict=False))


def reads(section: type[Node], keys: tuple[str, ...], parts: list[object]) -> bool:
    """Whether each of these fields can read its part of a text."""
    kinds = [fields_of(section)[key].shape.kind for key in keys]
    return bool(kinds) and all(
        kind is not None and scalar(kind, part, None).__class__ is not REFUSED
        for kind, part in zip(kinds, parts, strict=False)
    )


def spoken(section: type[Node], text: str) -> dict[str, object] | None:
    """The facts of a longer text, each the longest run of words that one of the fields left can read; else None."""
    words = [] if len(text) > LONGEST else [word.strip(",;") for word in text.replace("@", " @ ").split()]
    left = list(section.spoken)
    found: dict[str, object] = {}
    while words:
        taken = next(
            ((key, count) for count in range(len(words), 0, -1) for key in left
             if reads(section, (key,), [" ".join(words[:count])])), None,
        )  # fmt: skip
        if taken is None:
            if fold(words[0]) not in JOINING and words[0]:
                return None
            words = words[1:]
            continue
        key, count = taken
        found[key] = " ".join(words[:count])
        left.remove(key)
        words = words[count:]
    return found or None


def counted(shape: Shape, value: object) -> dict[str, object] | None:
    """Things of a list of words told in one text or list, `2 elbows and a boot`, by their words; None where it is not.

    For maps whose keys are such words and whose things are a count.
    """
    section = shape.of.section if shape.of is not None else None
    if not isinstance(shape.keys, Choice) or section is None or not section.short:
        return None
    if not isinstance(fields_of(section)[section.short[0]].shape.kind, Whole):
        return None
    parts = value if isinstance(value, list) else BETWEEN.split(value) if isinstance(value, str) else []
    found: dict[str, int] = {}
    for part in parts:
        told = one_kind(shape.keys, part)
        if told is None or told[0] in found:
            return None
        found[told[0]] = told[1]
    return dict(found) or None


def one_kind(kinds: Choice, part: object) -> tuple[str, int] | None:
    """`2 elbows` or `a boot` as the word of the list and its count; a word alone is one of them."""
    if not isinstance(part, str) or len(part) > LONGEST:
        return None
    first, _, rest = part.strip().partition(" ")
    number = first.removesuffix("x")
    count = int(number) if number.isdecimal() else 1 if first.lower() in ONE else NUMBER_WORDS.get(first.lower())
    for words, many in ((rest, count), (part.strip(), 1)):
        if words and many is not None:
            read = scalar(kinds, words, None)
            if read.__class__ is not REFUSED:
                return str(read), many
    return None
