"""What an unquoted YAML scalar means: the core schema of YAML 1.2.2, section 10.3.2.

The parser's own resolution is not used, because it differs between its C and its pure form and
turns `2024-01-05` into a date. Spellings that readers of YAML disagree on are refused as traps.
"""

import math
import re

from checker.record import Record

Scalar = str | int | float | bool | None


class Trap(Record):
    """A spelling that looks like a number but is refused: the fact, and what to write instead."""

    message: str
    help: str


_WORDS: dict[str, bool | None] = {
    "": None, "~": None, "null": None, "Null": None, "NULL": None,
    "true": True, "True": True, "TRUE": True, "false": False, "False": False, "FALSE": False,
}  # fmt: skip
_INTEGER = re.compile(r"[-+]?[0-9]+")
_NUMBER = re.compile(r"[-+]?(?:\.[0-9]+|[0-9]+(?:\.[0-9]*)?)(?:[eE][-+]?[0-9]+)?")
_LEADING_ZERO = re.compile(r"([-+]?)0+(?=[0-9])")
_OTHER_RADIX = re.compile(r"0(?:x[0-9a-fA-F]+|o[0-7]+)")
_NOT_FINITE = re.compile(r"[-+]?\.(?:inf|Inf|INF)|\.(?:nan|NaN|NAN)")
_LONGEST_ECHO = 24


def resolve(text: str) -> Scalar | Trap:
    """Give an unquoted scalar its value by the core schema of YAML 1.2.2, or say why it is a trap.

    `no`, `yes`, `on`, `off`, `12:30`, `2024-01-05` and `1_000` stay text. Never raises.
    """
    if text in _WORDS:
        return _WORDS[text]
    if text[0] not in "+-.0123456789":
        return text
    if _NUMBER.fullmatch(text):
        return _number(text)
    if _OTHER_RADIX.fullmatch(text):
        radix = "hexadecimal" if text[1] == "x" else "octal"
        return _trap(text, f"is a number in {radix} notation", _radix_value(text))
    if _NOT_FINITE.fullmatch(text):
        return _trap(text, "is not a number that a design can have", "")
    return text


def _number(text: str) -> int | float | Trap:
    zero = _LEADING_ZERO.match(text)
    if zero:
        plain = zero[1].replace("+", "") + text[zero.end() :]
        return _trap(text, "starts with a zero, so programs differ on which number it is", plain)
    value = float(text)
    if math.isinf(value):
        return _trap(text, "is too large for a number", "")
    if value == 0.0 and any(digit in "123456789" for digit in re.split("[eE]", text)[0]):
        return _trap(text, "is too small for a number", "")
    return int(text) if _INTEGER.fullmatch(text) else value


def _radix_value(text: str) -> str:
    # Python refuses to print an integer of thousands of digits, and nobody would read it.
    return str(int(text, 0)) if len(text) <= _LONGEST_ECHO else ""


def _trap(text: str, fact: str, instead: str) -> Trap:
    echo = text if len(text) <= _LONGEST_ECHO else text[:_LONGEST_ECHO] + "..."
    quoted = f'"{echo}" in quotes if it is a name'
    if instead and len(instead) <= _LONGEST_ECHO:
        return Trap(f"`{echo}` {fact}", f"write {instead}, or {quoted}")
    return Trap(f"`{echo}` {fact}", f"write an ordinary decimal number, or {quoted}")
