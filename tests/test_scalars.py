"""Expected values: YAML 1.2.2, section 10.3.2 (core schema), except where a spelling is a trap."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checker.scalars import Trap, resolve


@pytest.mark.parametrize("text", ["", "~", "null", "Null", "NULL"])
def test_null(text: str) -> None:
    assert resolve(text) is None


@pytest.mark.parametrize(
    ("text", "value"),
    [("true", True), ("True", True), ("TRUE", True), ("false", False), ("False", False), ("FALSE", False)],
)
def test_truth_values(text: str, value: bool) -> None:
    assert resolve(text) is value


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("0", 0),
        ("80", 80),
        ("-4", -4),
        ("+5", 5),
        ("-0", 0),
        ("123456789012345678901", 123456789012345678901),
    ],
)
def test_integers(text: str, value: int) -> None:
    result = resolve(text)
    assert type(result) is int
    assert result == value


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("0.5", 0.5), (".5", 0.5), ("5.", 5.0), ("-0.25", -0.25), ("+1.5", 1.5), ("1e3", 1000.0),
        ("1E5", 100000.0), ("12e03", 12000.0), ("1.5e-3", 0.0015), ("0e5", 0.0), ("0.0", 0.0), ("0.05", 0.05),
    ],
)  # fmt: skip
def test_floats(text: str, value: float) -> None:
    result = resolve(text)
    assert type(result) is float
    assert result == value


@pytest.mark.parametrize(
    "text",
    [
        "no", "yes", "on", "off", "No", "y", "n", "tRUE", "nULL", "none", "12:30", "1:2.5", "190:20:30",
        "2024-01-05", "1_000", "0b101", "80 cfm", "-", "+", ".", "..", "1e", "e3", "1.2.3", "-0x1F", "0xZZ",
        "0x", "0o8", "=", "1,5", "1/4", "7'-6\"", "tbd", "-inf", "nan", "inf", "٣", "1 ", "½", "--1",
    ],
)  # fmt: skip
def test_everything_else_stays_text(text: str) -> None:
    assert resolve(text) == text


@pytest.mark.parametrize(
    ("text", "instead"),
    [
        ("012", "write 12,"), ("-007", "write -7,"), ("+08", "write 8,"), ("00", "write 0,"),
        ("00.5", "write 0.5,"), ("01e2", "write 1e2,"), ("0x1F", "write 31,"), ("0o17", "write 15,"),
    ],
)  # fmt: skip
def test_traps_say_what_to_write(text: str, instead: str) -> None:
    result = resolve(text)
    assert isinstance(result, Trap)
    assert text in result.message
    assert result.help.startswith(instead)
    assert f'"{text}"' in result.help


@pytest.mark.parametrize(
    "text",
    ["1e999", "-1e999", ".inf", "-.INF", "+.Inf", ".nan", ".NaN", "1e-999", "9" * 400, "0x" + "F" * 5000],
)
def test_numbers_that_no_design_can_have(text: str) -> None:
    result = resolve(text)
    assert isinstance(result, Trap)
    assert len(result.message) < 120
    assert "ordinary decimal number" in result.help


@given(st.text())
def test_any_text_gives_a_plain_value_or_a_trap(text: str) -> None:
    assert isinstance(resolve(text), Trap | str | int | float | bool | None)


@given(st.text("0123456789+-.eExo", max_size=12))
def test_no_number_is_infinite_or_altered(text: str) -> None:
    result = resolve(text)
    if type(result) is float or type(result) is int:
        assert math.isfinite(result)
        assert result == float(text)
    elif isinstance(result, str):
        assert result == text
