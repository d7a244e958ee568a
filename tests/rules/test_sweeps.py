"""What must hold of every rule at once: absence is answered, order does not matter, words are words."""

import copy
import re
from collections.abc import Iterator
from typing import Any

import pytest

from checker.case import Evaluation
from checker.judge import judge_rule, modules
from checker.rule import Outcome
from tests.rules.case_files import RuleCase, case_file, case_of, read_cases, rule_of, said

JUDGED = [
    (code, case)
    for code, _ in modules()
    if case_file(code).exists()
    for case in read_cases(case_file(code))
    if case.expect["outcome"] in ("meets", "finding")
]
IDS = [f"{code}: {case.name}" for code, case in JUDGED]


def below(evaluation: Evaluation) -> Iterator[Evaluation]:
    """An evaluation and all that it asked, each once."""
    seen = {}
    stack = [evaluation]
    while stack:
        one = stack.pop()
        if id(one) not in seen:
            seen[id(one)] = one
            stack.extend(one.asked)
    return iter(seen.values())


def holder_of(design: dict[str, Any], path: str) -> tuple[Any, Any] | None:
    """The map or list that holds a path's value, and the key in it; None where a short form hides it."""
    here: Any = design
    parts = [int(part) if part.isdigit() else part for part in re.findall(r"[^.\[\]]+", path)]
    for part in parts[:-1]:
        if (isinstance(here, dict) and part in here) or (isinstance(here, list) and isinstance(part, int) and part < len(here)):
            here = here[part]
        else:
            return None
    last = parts[-1]
    if isinstance(here, dict) and last in here and not isinstance(here[last], (dict, list)):
        return here, last
    return None


@pytest.mark.parametrize(("code", "case"), JUDGED, ids=IDS)
def test_what_is_to_be_decided_is_asked_for(code: str, case: RuleCase) -> None:
    rule = rule_of(code)
    traced, faults = case_of(case.design, tracing=True)
    assert not faults
    judged = [o for o in judge_rule(traced, rule) if o.outcome in ("meets", "finding")]
    for node_path in {key[1] for key in traced.evaluations if key[0] == code}:
        answer = answer_at(judged, node_path)
        if answer is None:
            continue
        reads = [read for one in below(traced.evaluations[(code, node_path)]) for read in one.reads]
        optional = {read.path for read in reads if read.optional}
        for path in sorted({read.path for read in reads if not read.optional} - optional):
            blanked = copy.deepcopy(case.design)
            place = holder_of(blanked, path)
            if place is None or path.startswith("project."):
                continue
            place[0][place[1]] = "tbd"
            again, _ = case_of(blanked)
            outcomes = judge_rule(again, rule)
            assert not [o for o in outcomes if o.outcome == "rule-failed"], (path, outcomes)
            assert any(path in o.missing for o in outcomes), (path, [(o.outcome, o.path, o.missing) for o in outcomes])


def answer_at(outcomes: list[Outcome], node_path: str) -> Outcome | None:
    """The judged outcome of a node."""
    return next((o for o in outcomes if o.path == node_path or o.path.startswith(node_path)), None)


@pytest.mark.parametrize(("code", "case"), JUDGED, ids=IDS)
def test_order_in_the_file_does_not_matter(code: str, case: RuleCase) -> None:
    rule = rule_of(code)
    first, _ = case_of(case.design)
    second, _ = case_of(turned(case.design))

    assert sorted(told(first, rule)) == sorted(told(second, rule))


def told(case: Any, rule: Any) -> list[tuple[str, str]]:
    return [(outcome.outcome, outcome.path) for outcome in judge_rule(case, rule)]


def turned(data: Any) -> Any:
    """The same design with every map of named things in reverse order."""
    if isinstance(data, dict):
        return {key: turned(value) for key, value in reversed(data.items())}
    return data


@pytest.mark.parametrize(("code", "case"), JUDGED, ids=IDS)
def test_words(code: str, case: RuleCase) -> None:
    rule = rule_of(code)
    built, _ = case_of(case.design)
    for outcome in judge_rule(built, rule):
        assert outcome.outcome != "rule-failed", outcome.message
        if outcome.outcome != "finding":
            continue
        message = said(outcome)
        assert "{" not in message and "{" not in filled_help(outcome), (message, outcome.help)
        assert "?" not in message and not message.endswith("."), message
        assert message[0].islower() or message[0].isdigit() or message[0] == "`", message
        assert len(message) <= 260, len(message)
        assert outcome.help, "a finding says what to change"
        assert not re.search(r"\b(approved|compliant|passes code)\b", message + outcome.help)


def filled_help(outcome: Outcome) -> str:
    return said(outcome._replace(message=outcome.help))
