"""Text on a page: cleaned, measured, wrapped, cut."""

import pytest

from checker.outputs.layout import clean, clipped, columned, width, wrapped


def test_what_a_terminal_would_obey_is_not_passed_on() -> None:
    assert clean("a\x1b[31mb\tc\nd\u202ee") == "a?[31mb c d?e"


@pytest.mark.parametrize(("text", "columns"), [("abc", 3), ("日本", 4), ("é", 1), ("e\u0301", 1), ("２", 2)])
def test_width_is_in_columns_of_a_terminal(text: str, columns: int) -> None:
    # Unicode Standard Annex 11: wide and fullwidth marks take two columns; combining marks take none.
    assert width(text) == columns


def test_wrapped_lines_hang_under_the_first_word() -> None:
    assert wrapped("one two three four", "  - ", columns=12) == ["  - one two", "    three", "    four"]
    assert wrapped("", "  x: ") == ["  x:"]


def test_a_long_word_stays_whole() -> None:
    assert wrapped("a " + "b" * 30 + " c", columns=10) == ["a", "b" * 30, "c"]


def test_a_word_that_does_not_fit_behind_a_long_head_goes_below() -> None:
    assert wrapped("second", "a long head: ", "  ", columns=16) == ["a long head:", "  second"]


def test_clipped_text_ends_with_three_points() -> None:
    assert clipped("x" * 100) == "x" * 100
    assert clipped("x" * 101) == "x" * 97 + "..."
    assert width(clipped("日" * 80)) <= 100


def test_last_column_wraps() -> None:
    assert columned([["a", "bb", "long text"], ["aaa", "b", "c"]], columns=16) == [
        "a    bb  long", "         text", "aaa  b   c",
    ]  # fmt: skip
