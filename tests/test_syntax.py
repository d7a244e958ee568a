"""Complaints of the YAML parsers in plain words: message, help and place, counted by hand."""

import pytest

from checker.faults import CODES
from checker.read import read_text
from checker.syntax import explain


@pytest.mark.parametrize(
    ("text", "message", "place"),
    [
        ("a: b: c\n", "a second `: ` stands on one line", (1, 5)),
        ("a: 1\n b: 2\n", "this key does not fit the line above it", (2, 3)),
        ("a:1\nb: 2\n", "this key does not fit the line above it", (2, 2)),
        ('a: "12" duct\nb: 1\n', "the quote ends before the value does", (1, 9)),
        ("a: '7'-6\"'\n", "the quote ends before the value does", (1, 7)),
        ('a: 1\nb: "12\nc: 1\n', "the quote that opens here is never closed", (2, 4)),
        ("a: 'x\n--- y\n", "a line of three hyphens or dots stands inside the quote", (1, 4)),
        ("a: [1, 2\nb: 1\n", "the bracket that opens here is not closed", (1, 4)),
        ("a: {b: 2\n", "the bracket that opens here is not closed", (1, 4)),
        ("a: [1, 2}\n", "the bracket that opens here is not closed", (1, 4)),
        ("a: @noon\n", "a value cannot start with `@`", (1, 4)),
        ("a: `b`\n", "a value cannot start with a backtick", (1, 4)),
        ("a: %5\n", "a value cannot start with `%`", (1, 4)),
        ("a: * b\n", "a value cannot start with `*`", (1, 4)),
        ("a: *see sheet\n", "a value cannot start with `*`", (1, 9)),
        ("a: & b\n", "a value cannot start with `&`", (1, 4)),
        ("a: !<b\n", "a value cannot start with `!`", (1, 4)),
        ("a: !e!b 1\n", "a value cannot start with `!`", (1, 4)),
        ("a: > 5\n", "a value cannot start with `>` or `|`", (1, 4)),
        ("a: ? b\n", "a value cannot start with `? `", (1, 4)),
        ("a: ]\n", "`]` stands where a value is expected", (1, 4)),
        ("a: 1\nb\n", "this line is neither a key with its value nor an item of a list", (2, 1)),
        ("a: - b\n", "an item of a list cannot start here", (1, 4)),
        ("- a\nb: 1\n", "a line among the items of a list is not an item", (2, 1)),
        ("a:\n  b: 1\n c: 2\n", "this does not fit the lines above it", (3, 2)),
        ('a: "C:\\pq"\n', "a backslash inside double quotes", (1, 8)),
        ('a: "\\UFFFFFFFF"\n', "a backslash inside double quotes", (1, 7)),
        ("[a] b\n", "text follows after the end of the design", (1, 5)),
    ],
)  # fmt: skip
def test_complaints(text: str, message: str, place: tuple[int, int]) -> None:
    reading = read_text(text, "")
    assert [one.code for one in reading.faults] == [CODES["yaml-syntax"]], reading.faults
    fault = reading.faults[0]
    assert fault.message.startswith(message)
    assert tuple(fault[4:6]) == place
    assert fault.fatal
    assert fault.help


@pytest.mark.parametrize(
    ("text", "message", "place"),
    [
        ("a:\n\tb: 1\n", "a tab is used for indentation", (2, 1)),
        ("a: 1\n\tb: 1\n", "a tab is used for indentation", (2, 1)),
        ("a:\n  \tb: 1\n", "a tab is used for indentation", (2, 3)),
        ("a:\n  b: 1\n\tc: 1\n", "a tab is used for indentation", (3, 1)),
    ],
)
def test_tabs(text: str, message: str, place: tuple[int, int]) -> None:
    reading = read_text(text, "")
    assert [one.code for one in reading.faults] == [CODES["tab-character"]], reading.faults
    assert reading.faults[0].message == message
    assert tuple(reading.faults[0][4:6]) == place


@pytest.mark.parametrize("scale", ["'1:50'", "1:50"])  # the second needs the pure parser
def test_tabs_that_set_no_indentation_are_read_as_spaces(scale: str) -> None:
    # YAML 1.2.2, section 6.2: separation inside a line may be tabs.
    text = f"a:\t1\t# x\n\t\n\t# y\nb: {{scale:\t{scale}}}\t\r\n-x: 80\tcfm\n"
    reading = read_text(text, "")
    assert reading.faults == []
    assert reading.data == {"a": 1, "b": {"scale": "1:50"}, "-x": "80 cfm"}
    assert reading.values["-x"] == (5, 5, 5, 11)


def test_a_complaint_that_is_not_known_is_passed_on_in_one_line() -> None:
    explanation = explain("something\n  odd", "", "a: b", 3)
    assert explanation.message == "the YAML cannot be read here: something odd"
    assert explain("", "", "", 0).message.endswith("the parser gives no reason")
