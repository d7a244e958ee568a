"""Plain text on a page: clean of control characters, wrapped with a hanging indent, measured as it is shown."""

from collections.abc import Iterable, Sequence


def clean(text: str) -> str:
    """The text on one line, mark for mark: what no terminal or page shows as it is becomes a space or `?`."""
    if text.isascii() and text.isprintable():
        return text
    return "".join(mark if mark.isprintable() else " " if mark.isspace() else "?" for mark in text)


def width(text: str) -> int:
    """Columns that a text takes on a terminal: wide East Asian marks two, combining marks none."""
    if text.isascii():
        return len(text)
    from unicodedata import category, east_asian_width

    return sum(
        0 if category(mark) in ("Mn", "Me") else 2 if east_asian_width(mark) in "WF" else 1 for mark in text
    )


def wrapped(text: str, first: str = "", rest: str | None = None, columns: int = 100) -> list[str]:
    """The text in lines of at most `columns`; `first` stands before the first line, `rest` before others.

    `rest` is as many spaces as `first` has columns, unless it is given. Words longer than a line stay whole.
    """
    rest = " " * width(first) if rest is None else rest
    lines: list[str] = []
    line, used = first, width(first)
    empty = True
    for word in clean(text).split(" "):
        if not word:
            continue
        wide = width(word)
        if used + (0 if empty else 1) + wide > columns and (not empty or width(rest) < used):
            lines.append(line.rstrip())
            line, used, empty = rest, width(rest), True
        line += word if empty else f" {word}"
        used += wide if empty else wide + 1
        empty = False
    return [*lines, line.rstrip() if empty else line]


def clipped(text: str, columns: int = 100) -> str:
    """The text in one line, cut where it is longer than `columns`."""
    text = clean(text)
    if width(text) <= columns:
        return text
    kept = text[: columns - 3]
    while width(kept) > columns - 3:
        kept = kept[:-1]
    return f"{kept.rstrip()}..."


def columned(rows: Sequence[Sequence[str]], indent: str = "", columns: int = 110) -> list[str]:
    """Rows as a table; the last cell of a row is wrapped where the line would be too long."""
    widths = [max((width(row[place]) for row in rows), default=0) for place in range(len(rows[0]) - 1)]
    lines = []
    for row in rows:
        head = indent
        for cell, wide in zip(row, widths, strict=False):
            head += cell + " " * (wide - width(cell) + 2)
        lines += wrapped(row[-1], head, " " * width(head), columns)
    return [line.rstrip() for line in lines]


def counted(count: int, noun: str, nouns: str = "") -> str:
    """`1 rule`, `2 rules`."""
    return f"{count} {noun if count == 1 else nouns or noun + 's'}"


def quoted_list(words: Iterable[str]) -> str:
    """Words in backticks, split by commas."""
    return ", ".join(f"`{word}`" for word in words)
