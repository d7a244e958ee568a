"""Reads a design file: text to plain data and the place of every key and value, in one pass.

ruamel.yaml's C parser supplies the events. Where it refuses a text, or is not installed, its pure
parser reads again and has the last word, because the C parser refuses some valid YAML 1.2.
"""

import os
import re
from collections.abc import Iterator
from functools import lru_cache
from typing import Any

from checker.faults import START, Fault, fault
from checker.record import Record
from checker.yaml_events import NOT_TEXT, SWAP_NEEDED, Builder, swap
from checker.yaml_events import Place as Place

MAX_SIZE = 2 * 1024 * 1024

_HEAD = re.compile(r"(?:%.*\n?|[ \t\r]*(?:#.*)?\n)*")
_DIRECTIVE = re.compile(r"^%", re.MULTILINE)
_LONE_RETURN = re.compile(r"\r(?!\n)")
_LONG_TAG = re.compile(r"!\S{256}")  # the pure parser takes time by the square of a tag's length


class Reading(Record):
    """What a file says. `data` is {} if a fault is fatal.

    Tables are by path (`hoods.range-hood.settings.high`, `accepted[0].rule`): `keys` and `values`
    give places, `sources` the text of numbers as written. A value that was refused by a fault is
    absent from its block in `data`, and None in a list; its place is kept. An empty value has the
    place of its key, a block that of its first key or opening mark. A tab within a line reads as a
    space.
    """

    name: str
    text: str
    data: object
    keys: dict[str, Place]
    values: dict[str, Place]
    faults: list[Fault]
    sources: dict[str, str]


def read_file(path: str) -> Reading:
    """Read a design file. Whatever goes wrong becomes a fault; never raises."""
    try:
        with open(path, "rb") as stream:
            raw = stream.read(MAX_SIZE + 1)
    except (OSError, ValueError) as error:
        return _unread(path, "", _system_fault(error, path))
    if len(raw) > MAX_SIZE:
        return _unread(path, "", _too_large())
    if raw[:2] in (b"\xff\xfe", b"\xfe\xff"):
        message = "the file is UTF-16 text, not UTF-8"
        return _unread(path, "", fault("not-utf-8", "", START, message, "save it as UTF-8", fatal=True))
    zero = raw.find(b"\0")
    if zero >= 0:
        message = f"byte {zero + 1} of the file is zero, so this is no text file"
        place = _byte_place(raw, zero)
        return _unread(path, "", fault("not-text", "", place, message, "name a YAML file", fatal=True))
    try:
        text = raw.decode("utf-8")
    except UnicodeDecodeError as error:
        message = f"byte {error.start + 1} of the file (0x{raw[error.start]:02X}) is not UTF-8"
        place = _byte_place(raw, error.start)
        return _unread(path, "", fault("not-utf-8", "", place, message, "save it as UTF-8", fatal=True))
    return read_text(text, path)


def read_text(text: str, name: str) -> Reading:
    """Read a design from text. A byte order mark is dropped; never raises."""
    text = text.removeprefix("\ufeff")
    if len(text) > MAX_SIZE:
        return _unread(name, text, _too_large())
    odd = NOT_TEXT.search(text) or (_LONE_RETURN.search(text) if "\r" in text else None)
    if odd:
        return _unread(name, text, _odd_character(text, odd.start()))
    faults, body = _without_directives(text)
    if "\t" in body:
        body = "\n".join(map(_without_inner_tabs, body.split("\n")))
    swapped = SWAP_NEEDED.search(body) is not None
    builder, error = _build(swap(body) if swapped else body, text, swapped)
    faults += builder.faults
    if error is not None:
        complaint = _syntax_fault(error, builder.last, text)
        # The parser stops at the rest of a value that starts with `*`: one fault is enough.
        faults = [one for one in faults if (one.code, one.line) != ("FILE-10", complaint.line)]
        faults.append(complaint)
    elif not builder.stopped:
        faults += _top_faults(builder)
    faults.sort(key=lambda one: (one.line, one.column))
    data = {} if any(one.fatal for one in faults) else builder.data
    return Reading(name, text, data, builder.keys, builder.values, faults, builder.sources)


def source_line(reading: Reading, line: int) -> str:
    """Give a line of the text (from 1) without its line end, "" if there is no such line."""
    lines = _lines(reading.text)
    return lines[line - 1].removesuffix("\r") if 0 < line <= len(lines) else ""


@lru_cache(maxsize=2)
def _lines(text: str) -> list[str]:
    return text.split("\n")  # not splitlines(), which also splits at characters inside of texts


def _build(body: str, text: str, swapped: bool) -> tuple[Builder, Exception | None]:
    try:
        from _ruamel_yaml import CParser
    except ImportError:
        return _run(_pure_events(body), Builder(_lines(text), swapped))
    builder, error = _run(iter(CParser(body).get_event, None), Builder(_lines(text), swapped))
    if error is None or _LONG_TAG.search(body):
        return builder, error
    second, verdict = _run(_pure_events(body), Builder(_lines(text), swapped))
    # Where the pure parser fails without a place, the C parser's complaint says more.
    return second, verdict if verdict is None or hasattr(verdict, "problem_mark") else error


def _pure_events(body: str) -> Iterator[Any]:
    from ruamel.yaml import YAML

    yield from YAML(typ="safe", pure=True).parse(body)


def _run(events: Iterator[Any], builder: Builder) -> tuple[Builder, Exception | None]:
    while not builder.stopped:
        try:
            event = next(events, None)
        except Exception as error:  # the pure parser also raises ValueError and the like on odd text
            return builder, error
        if event is None:
            break
        builder.take(event)
    return builder, None


def _without_directives(text: str) -> tuple[list[Fault], str]:
    """Report `%YAML` and `%TAG` lines, and make comments of them so that the rest can be read."""
    head = _HEAD.match(text)
    end = head.end() if head else 0
    faults = []
    for line, words in enumerate(text[:end].split("\n"), 1):
        if words.startswith("%"):
            place = Place(line, 1, line, len(words.rstrip("\r")) + 1)
            faults.append(fault("directive", "", place, "a YAML directive is not read", "delete the line"))
    return faults, _DIRECTIVE.sub("#", text[:end]) + text[end:]


def _without_inner_tabs(line: str) -> str:
    """Turn tabs into spaces wherever they set no indentation: the pure parser takes them nowhere."""
    rest = line.lstrip(" \t")
    indent = "" if rest[:1] in ("", "#", "\r") else line[: len(line) - len(rest)]
    return indent + line[len(indent) :].replace("\t", " ")


def _syntax_fault(error: Exception, last: Place, text: str) -> Fault:
    from checker.syntax import explain

    mark = getattr(error, "problem_mark", None) or getattr(error, "context_mark", None)
    line, column = (mark.line, mark.column) if mark else (last.end_line - 1, last.end_column - 1)
    problem = str(getattr(error, "problem", None) or error)
    context = str(getattr(error, "context", None) or "")
    lines = _lines(text)
    explanation = explain(problem, context, lines[line] if line < len(lines) else "", column)
    opening = getattr(error, "context_mark", None)
    if explanation.at_opening and opening:
        line, column = opening.line, opening.column
    elif explanation.name == "tab-character" and "\t" in lines[line]:
        column = lines[line].index("\t")
    place = Place(line + 1, column + 1, line + 1, column + 2)
    return fault(explanation.name, "", place, explanation.message, explanation.help, fatal=True)


def _top_faults(builder: Builder) -> list[Fault]:
    if isinstance(builder.data, dict):
        return []
    help = "write at least `design_format: 1`, a title and one section"
    if builder.data is None:
        return [fault("empty-file", "", START, "the file says nothing", help, fatal=True)]
    place = builder.values.get("", Place(*START))
    help = "write sections such as `house:`, with a space after each colon that a value follows"
    return [fault("not-a-mapping", "", place, "the file is no block of keys with values", help, fatal=True)]


def _system_fault(error: Exception, path: str) -> Fault:
    # Windows answers a folder with a refused permission.
    if isinstance(error, PermissionError | IsADirectoryError) and os.path.isdir(path):
        return fault("is-a-directory", "", START, "this is a folder", "name a file inside it", fatal=True)
    if isinstance(error, FileNotFoundError | NotADirectoryError | ValueError):
        return fault("missing-file", "", START, "there is no such file", "check the name", fatal=True)
    if isinstance(error, PermissionError):
        message = "there is no permission to read this file"
        return fault("unreadable-file", "", START, message, "ask its owner", fatal=True)
    reason = str(getattr(error, "strerror", None) or error).lower()
    return fault("unreadable-file", "", START, f"the system cannot read this file: {reason}", fatal=True)


def _too_large() -> Fault:
    message = f"the file is larger than {MAX_SIZE // 1024 // 1024} MiB"
    return fault("too-large", "", START, message, "put each house in a file of its own", fatal=True)


def _odd_character(text: str, index: int) -> Fault:
    line = text.count("\n", 0, index) + 1
    column = index - text.rfind("\n", 0, index)
    message = f"the character U+{ord(text[index]):04X} cannot stand in a design file"
    help = "end lines with a line feed" if text[index] == "\r" else "delete it"
    return fault("not-text", "", Place(line, column, line, column + 1), message, help, fatal=True)


def _byte_place(raw: bytes, index: int) -> Place:
    start = raw.rfind(b"\n", 0, index) + 1
    line = raw.count(b"\n", 0, index) + 1
    column = len(raw[start:index].decode("utf-8", "replace").removeprefix("\ufeff")) + 1
    return Place(line, column, line, column + 1)


def _unread(name: str, text: str, reason: Fault) -> Reading:
    return Reading(name, text, {}, {}, {}, [reason], {})
