"""The outcomes as one JSON object; its schema is schemas/outcomes.schema.json."""

import json
from typing import Any

from checker import __version__
from checker.outputs.numbers import filled, text_of
from checker.rule import Num, Outcome
from checker.run import Checked
from checker.units import DIMENSIONS, shown

FORMAT_VERSION = 1


def report(checked: list[Checked], system: str) -> str:
    """The JSON report of a run."""
    designs = [design(each, system) for each in checked]
    whole = {"format_version": FORMAT_VERSION, "tool_version": __version__, "designs": designs}
    return json.dumps(whole, ensure_ascii=False, indent=1) + "\n"


def design(checked: Checked, system: str) -> dict[str, Any]:
    """One design and its outcomes."""
    project = checked.design.project if checked.design is not None else None
    return {
        "path": checked.reading.name,
        "title": (project.title if project is not None else None) or "",
        "code": (project.code if project is not None else None) or "",
        "outcomes": [outcome(each, system) for each in checked.outcomes],
    }


def outcome(said: Outcome, system: str) -> dict[str, Any]:
    """One outcome; `number` is null unless it is a finding."""
    line, column, end_line, end_column = said.place
    return {
        "number": said.number or None,
        "rule": said.rule.code,
        "name": said.rule.name,
        "area": said.rule.area,
        "severity": said.rule.severity,
        "outcome": said.outcome,
        "path": said.path,
        "line": line,
        "column": column,
        "end_line": end_line,
        "end_column": end_column,
        "message": filled(said.message, said.numbers, system),
        "help": filled(said.help, said.numbers, system),
        "numbers": {name: number(each, system) for name, each in said.numbers.items()},
        "missing": list(said.missing),
        "cites": said.cites,
        "accepted": said.accepted or None,
    }


def number(value: Num, system: str) -> dict[str, Any]:
    """A number in the reader's unit, with its text."""
    if value.dimension in DIMENSIONS:
        shown_value, unit = shown(value.value, value.dimension, system)
        return {"value": shown_value, "unit": unit, "text": text_of(value, system)}
    return {"value": value.value, "unit": "", "text": text_of(value, system)}
