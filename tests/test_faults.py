"""The kinds of fault: codes, names and pages."""

import re

import pytest

from checker.faults import CODES, FAULTS, START, fault, shown


@pytest.mark.parametrize("code", FAULTS)
def test_each_kind_has_a_name_a_sentence_and_a_page(code: str) -> None:
    kind = FAULTS[code]
    assert re.fullmatch(r"FILE-(0[1-9]|[1-3][0-9])", code)
    assert re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", kind.name)
    assert re.fullmatch(r"[A-Z].*\.", kind.title)
    assert len(kind.page) > 100
    assert "\n" not in kind.page


def test_names_are_as_many_as_codes() -> None:
    assert len(CODES) == len(FAULTS)


def test_fault_is_made_by_name() -> None:
    made = fault("tag", "a.b", (2, 3, 2, 5), "the tag `!x` is not read", "drop it")
    assert made == ("FILE-11", "a.b", "the tag `!x` is not read", "drop it", 2, 3, 2, 5, False)
    with pytest.raises(KeyError):
        fault("no-such-kind", "", START, "x")


def test_shown_text_stays_on_one_short_line() -> None:
    assert shown("a\nb\x1b[31m\u2028") == "`a?b?[31m?`"
    assert shown("x" * 60) == "`" + "x" * 60 + "`"
    assert shown("x" * 61) == "`" + "x" * 60 + "...`"
