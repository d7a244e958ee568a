"""Reads the case files of the rules: designs beside what a rule must say of them."""

import copy
import io
from pathlib import Path
from typing import Any, NamedTuple

from ruamel.yaml import YAML

from checker.amendments import CRITERIA
from checker.case import Case
from checker.codebook import Codebook, converted
from checker.design.build import build
from checker.judge import judge_rule, modules, rules
from checker.outputs.numbers import filled, text_of
from checker.read import read_text
from checker.rule import Outcome, Rule

HERE = Path(__file__).parent
START = {"design_format": 1, "project": {"title": "a case", "code": "irc-2021"}}
GONE = "(gone)"


class RuleCase(NamedTuple):
    """One case: a design as data, and what is expected."""

    file: Path
    name: str
    design: dict[str, Any]
    expect: dict[str, Any]


def case_file(code: str) -> Path:
    """Where the cases of a rule are."""
    module = dict(modules())[code]
    _, area, stem = module.split(".")
    return HERE / area / f"{stem}.yaml"


def merged(base: Any, change: Any) -> Any:
    """The base with a change laid over it; the text "(gone)" removes a key."""
    if not isinstance(base, dict) or not isinstance(change, dict):
        return copy.deepcopy(change)
    result = copy.deepcopy(base)
    for key, value in change.items():
        if value == GONE:
            result.pop(key, None)
        else:
            result[key] = merged(result.get(key), value)
    return result


def read_cases(file: Path) -> list[RuleCase]:
    """The cases of one file."""
    data = YAML(typ="safe", pure=True).load(file.read_text(encoding="utf-8"))
    base = merged(START, data.get("base") or {})
    cases = []
    for each in data["cases"]:
        expect = {key: value for key, value in each.items() if key not in ("name", "with")}
        cases.append(RuleCase(file, each["name"], merged(base, each.get("with") or {}), expect))
    return cases


def as_text(design: dict[str, Any]) -> str:
    """A design as YAML text."""
    out = io.StringIO()
    yaml = YAML(typ="safe", pure=True)
    yaml.default_flow_style = False
    yaml.width = 4000
    yaml.dump(design, out)
    return out.getvalue()


def case_of(
    design: dict[str, Any], tracing: bool = False, criteria: dict[str, str] | None = None
) -> tuple[Case, list[Any]]:
    """The case of a design under a jurisdiction's design criteria, and the faults of its file."""
    built = build(read_text(as_text(design), "case.yaml"))
    project = built.design.project
    assert project is not None
    stated = {key: converted(text, CRITERIA[key]) for key, text in (criteria or {}).items()}
    book = Codebook(project.code, project.ventilation_standard, criteria=stated)
    return Case(built.design, book, tracing), built.faults


def outcomes_of(rule: Rule, design: dict[str, Any], criteria: dict[str, str] | None = None) -> list[Outcome]:
    """What a rule says of a design, whose file must be without fault."""
    case, faults = case_of(design, criteria=criteria)
    assert not faults, [f"{fault.path}: {fault.message}" for fault in faults]
    return judge_rule(case, rule)


def rule_of(code: str) -> Rule:
    """One rule."""
    return rules(lambda each, _name: each == code)[0]


def said(outcome: Outcome) -> str:
    """The message of an outcome in trade units."""
    return filled(outcome.message, outcome.numbers, "trade")


def number_text(outcome: Outcome, name: str) -> str:
    """A number of an outcome as text."""
    return text_of(outcome.numbers[name], "trade")
