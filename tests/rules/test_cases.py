"""Every case of every rule: outcome, place, words, numbers and what is missing."""

import pytest

from checker.judge import modules
from tests.rules.case_files import RuleCase, case_file, number_text, outcomes_of, read_cases, rule_of, said

CASES = [
    (code, case) for code, _ in modules() if case_file(code).exists() for case in read_cases(case_file(code))
]
KNOWN = {"outcome", "at", "says", "numbers", "missing", "help", "count", "criteria"}


@pytest.mark.parametrize(("code", "case"), CASES, ids=[f"{code}: {case.name}" for code, case in CASES])
def test_case(code: str, case: RuleCase) -> None:
    expect = case.expect
    assert set(expect) <= KNOWN, set(expect) - KNOWN
    outcomes = outcomes_of(rule_of(code), case.design, expect.get("criteria"))
    shown = [(each.outcome, each.path, said(each), each.missing) for each in outcomes]
    if "at" in expect:
        outcomes = [each for each in outcomes if each.path == expect["at"]]
    if "count" in expect:
        assert len([each for each in outcomes if each.outcome == expect["outcome"]]) == expect["count"], shown
    matching = [each for each in outcomes if each.outcome == expect["outcome"]]
    assert matching, shown
    if "at" in expect or "count" not in expect:
        assert all(each.outcome == expect["outcome"] for each in outcomes) or "at" in expect, shown
    outcome = matching[0]
    for words in [expect["says"]] if isinstance(expect.get("says"), str) else expect.get("says", []):
        assert words in said(outcome), shown
    for name, text in expect.get("numbers", {}).items():
        assert number_text(outcome, name) == str(text), outcome.numbers
    if "missing" in expect:
        assert sorted(outcome.missing) == sorted(expect["missing"]), shown


def test_every_rule_has_cases_that_trip_pass_and_lack() -> None:
    lacking = {}
    for code, _ in modules():
        file = case_file(code)
        outcomes = {case.expect["outcome"] for case in read_cases(file)} if file.exists() else set()
        absent = {"finding", "meets", "needs-info"} - outcomes
        if absent:
            lacking[code] = absent
    assert lacking == {}
