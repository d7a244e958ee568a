"""From YAML parser events to plain data with the place of every key and value.

Works on the events of ruamel.yaml's C parser and of its pure parser alike, without recursion, and
refuses on the way what a design file may not hold: anchors, aliases, tags, merge keys, duplicate or
unusable keys, number traps, several documents, and more depth or events than any design has.
"""

import re
from typing import Any

from checker.faults import START, Fault, fault, shown
from checker.record import Record
from checker.scalars import Trap, resolve

MAX_DEPTH = 64
MAX_EVENTS = 300_000
MAX_KEY = 120
MAX_PATH = 600  # every path is kept as text: long keys inside each other would fill the memory

# The parsers take these for line ends or leave them out of columns, and YAML 1.2 does not. They are
# swapped for code points that never stand for a character, and back again in every scalar.
_SWAPPED = {0x85: 0xFDD0, 0x2028: 0xFDD1, 0x2029: 0xFDD2, 0xFEFF: 0xFDD3}
# Between braces the comma of `{elevation: 5,280 ft}` would end the value; it is hidden in the same way.
_COMMA = "\ufdd4"
_THOUSANDS = re.compile(r": \d{1,3}(?:,\d{3})+(?![\d,:])")
_RESTORED = {swap: original for original, swap in _SWAPPED.items()} | {ord(_COMMA): ord(",")}
SWAP_NEEDED = re.compile(r"[\x85\u2028\u2029\ufeff]|: \d{1,3},\d{3}")
NOT_TEXT = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x84\x86-\x9f\ud800-\udfff\ufdd0-\ufdef\ufffe\uffff]")
_NOT_A_NAME = re.compile(r"[.\[\]\r\n]")
_TOKEN = re.compile(r"\S+")


class Place(Record):
    """Where something stands: lines and columns from 1, in code points, the end column exclusive."""

    line: int
    column: int
    end_line: int
    end_column: int


_REFUSED = object()  # stands for a value that is left out of the data because of a fault


class _Frame:
    """An open collection. `child` is the path of the value to come, None while a key is awaited."""

    __slots__ = ("child", "container", "count", "keep", "kept", "key", "near", "path")

    def __init__(self, container: Any, path: str, kept: bool, near: Place) -> None:
        self.container, self.path, self.kept, self.near = container, path, kept, near
        self.key, self.count, self.keep = "", 0, kept
        self.child: str | None = None
        if type(container) is list:
            self.child = f"{path}[0]" if kept else path


def swap(text: str) -> str:
    """Hide from the parsers the characters that they count wrongly; every column stays the same."""
    return _THOUSANDS.sub(lambda found: found[0].replace(",", _COMMA), text.translate(_SWAPPED))


class Builder:
    """Takes events one by one. `stopped` says that no further event may be taken."""

    def __init__(self, lines: list[str], swapped: bool) -> None:
        self.keys: dict[str, Place] = {}
        self.values: dict[str, Place] = {}
        self.sources: dict[str, str] = {}
        self.faults: list[Fault] = []
        self.stopped = False
        self.last = Place(*START)
        self._lines, self._swapped = lines, swapped
        self._events = self._documents = 0
        self._top: list[object] = []
        self._frames = [_Frame(self._top, "", True, self.last)]
        self._frames[0].child = ""

    @property
    def data(self) -> object:
        """What the document says, None if it says nothing."""
        return self._top[0] if self._top else None

    def take(self, event: Any) -> None:
        """Take the next event of either parser. Never raises."""
        kind = type(event).__name__
        if kind in ("MappingEndEvent", "SequenceEndEvent"):
            self._frames.pop()
            return
        start, end = event.start_mark, event.end_mark
        self.last = place = Place(start.line + 1, start.column + 1, end.line + 1, end.column + 1)
        self._events += 1
        if self._events > MAX_EVENTS:
            self._stop("too-large", place, f"more than {MAX_EVENTS} keys and values", "split the file")
        elif kind == "ScalarEvent":
            self._scalar(event, place)
        elif kind == "MappingStartEvent":
            self._open({}, event, place)
        elif kind == "SequenceStartEvent":
            self._open([], event, place)
        elif kind == "AliasEvent":
            self._alias(event.anchor, place)
        elif kind == "DocumentStartEvent":
            self._documents += 1
            if self._documents > 1:
                help = "keep one design in the file; give each other one a file of its own"
                self._stop("several-documents", place, "a second YAML document starts here", help)

    def _refuse(self, name: str, place: Place, message: str, help: str) -> None:
        frame = self._frames[-1]
        path = frame.path if frame.child is None else frame.child
        self.faults.append(fault(name, path, place, message, help))

    def _stop(self, name: str, place: Place, message: str, help: str) -> None:
        self.faults.append(fault(name, self._frames[-1].path, place, message, help, fatal=True))
        self.stopped = True

    def _scalar(self, event: Any, place: Place) -> None:
        frame = self._frames[-1]
        text: str = event.value
        if self._swapped:
            text = text.translate(_RESTORED)
        if frame.child is None:
            self._key(frame, text, event, place)
            return
        if event.anchor or event.tag:
            self._properties(event, place)
        value = _REFUSED if event.tag else self._value(frame, text, event)
        path = frame.child
        if frame.keep:
            if not text and not event.style:
                place = frame.near
            elif event.style in ("|", ">"):
                place = Place(place.line, place.column, place.line, place.column + 1)
            self.values[path] = place
            if type(value) is int or type(value) is float:
                self.sources[path] = text
        self._put(frame, value)

    def _value(self, frame: _Frame, text: str, event: Any) -> object:
        if event.style:
            if event.style == '"' and NOT_TEXT.search(text):
                message = "an escape code in this text stands for a control character"
                self._refuse("not-text", self.last, message, "delete the code")
                return _REFUSED
            return text
        if not text and ":" in frame.key and frame.keep:
            message = f"{shown(frame.key)} is one key without a value"
            self._refuse("bad-key", frame.near, message, "write a space after the colon")
            return _REFUSED
        value = resolve(text)
        if isinstance(value, Trap):
            self._refuse("number-trap", self.last, value.message, value.help)
            return _REFUSED
        return value

    def _put(self, frame: _Frame, value: object) -> None:
        """Store a value in the open collection and make that ready for the next key or item."""
        if type(frame.container) is list:
            if frame.keep:
                frame.container.append(None if value is _REFUSED else value)
                frame.count += 1
                frame.child = f"{frame.path}[{frame.count}]"
            return
        if frame.keep and value is not _REFUSED:
            frame.container[frame.key] = value
        frame.child = None

    def _open(self, container: Any, event: Any, place: Place) -> None:
        if len(self._frames) > MAX_DEPTH:
            message = f"blocks stand inside each other more than {MAX_DEPTH} deep"
            self._stop("too-deep", place, message, "close the brackets that are open")
            return
        frame = self._frames[-1]
        if event.anchor or event.tag:
            self._properties(event, place)
        at = Place(place.line, place.column, place.line, place.column + 1)
        if frame.child is None:
            self._refuse("bad-key", at, "a list or a block stands as a key", "write a plain word as key")
            frame.child, frame.keep, path, kept = frame.path, False, frame.path, False
        else:
            path, kept = frame.child, frame.keep
            if kept:
                self.values[path] = at
            self._put(frame, container)
        self._frames.append(_Frame(container, path, kept, at))

    def _key(self, frame: _Frame, text: str, event: Any, place: Place) -> None:
        if event.anchor or event.tag:
            self._properties(event, place)
        frame.key, frame.near, frame.keep = text, place, False
        path = f"{frame.path}.{text}" if frame.path else text
        if text == "<<" and not event.style:
            help = "write the keys out where they belong"
            self._refuse("merge-key", place, "the merge key `<<` is not read", help)
        elif len(text) > MAX_KEY or len(path) > MAX_PATH or _NOT_A_NAME.search(text) or not text:
            self._refuse("bad-key", place, *_why_bad(text))
        elif event.style == '"' and NOT_TEXT.search(text):
            self._refuse("not-text", place, "a key holds a control character", "delete its escape code")
        elif frame.kept and path in self.keys:
            first = self.keys[path].line
            message = f"{shown(text)} stands twice in this block; the first is on line {first}"
            frame.child = path
            self._refuse("duplicate-key", place, message, "keep one of the two, or rename one")
        elif frame.kept:
            frame.keep = True
            self.keys[path] = place
            # A block starts where its first key does: show that key for the whole block.
            if not frame.count and frame.path and self.values[frame.path][:2] == place[:2]:
                self.values[frame.path] = place
        frame.count += 1
        frame.child = path if frame.keep else frame.path

    def _alias(self, name: str, place: Place) -> None:
        last = self.faults[-1] if self.faults else None
        if last is None or (last.code, last.line) != ("FILE-12", place.line):
            help = "write the value out, or put it in quotes if the text starts with `*`"
            self._refuse("alias-or-anchor", place, f"the alias {shown('*' + name)} is not read", help)
        frame = self._frames[-1]
        if frame.child is None:
            frame.child, frame.keep, frame.key = frame.path, False, ""
            return
        if frame.keep:
            self.values[frame.child] = place
        self._put(frame, _REFUSED)

    def _properties(self, event: Any, place: Place) -> None:
        """Refuse an anchor and a tag. An anchor leaves its value readable, a tag may change it."""
        line, column = place.line, place.column
        token = _TOKEN.match(self._lines[line - 1], column - 1)
        at = Place(line, column, line, (token.end() if token else column) + 1)
        if event.anchor:
            help = "drop it, or put the value in quotes if the text starts with `&`"
            self._refuse("alias-or-anchor", at, f"the anchor {shown('&' + event.anchor)} is not read", help)
        if event.tag:
            help = "drop it, or put the value in quotes if the text starts with `!`"
            word = token.group() if token and token.group().startswith("!") else event.tag
            self._refuse("tag", at, f"the tag {shown(word)} is not read", help)


def _why_bad(key: str) -> tuple[str, str]:
    if not key:
        return "a key is empty", "write a word before the colon"
    instead = re.sub(r"[^\w -]+", "-", key).strip("- ")
    if re.search(r"[.\[\]]", key):
        return f"the key {shown(key)} holds a full stop or a bracket", f"write {shown(instead or 'a-name')}"
    if "\n" in key or "\r" in key:
        return f"the key {shown(key)} goes over several lines", "write a short word as key"
    return f"the key {shown(key)} is too long", f"write at most {MAX_KEY} characters"
