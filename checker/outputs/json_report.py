"""The outcomes as one JSON object; its schema is schemas/outcomes.schema.json."""

import json
from math import isfinite
from typing import Any

from checker import __version__
from checker.outputs.numbers import filled, text_of
from checker.rule import Num, Outcome
from checker.run import Checked, unlocks
from checker.units import DIMENSIONS, Airtightness, shown

FORMAT_VERSION = 1
MOST_FILE_FAULTS = 1000


def report(checked: list[Checked], system: str) -> str:
    """The JSON report of a run; `system` is trade or metric."""
    designs = [design(each, system) for each in checked]
    whole = {"format_version": FORMAT_VERSION, "tool_version": __version__, "units": system, "designs": designs}
    return json.dumps(whole, ensure_ascii=False, indent=1, allow_nan=False) + "\n"


def design(checked: Checked, system: str) -> dict[str, Any]:
    """One design and its outcomes; `wanted` ranks what is missing by how many rules it would help to judge."""
    project = checked.design.project if checked.design is not None else None
    outcomes, left_out = kept(checked)
    return {
        "path": checked.reading.name,
        "title": (project.title if project is not None else None) or "",
        "code": (project.code if project is not None else None) or "",
        "readable": not checked.unreadable,
        "outcomes": [outcome(each, system) for each in outcomes],
        "left_out": left_out,
        "wanted": [{"path": path, "rules": rules} for path, rules in unlocks(checked.outcomes)],
    }


def kept(checked: Checked) -> tuple[list[Outcome], int]:
    """The outcomes less the faults of the file beyond a thousand, and how many those are."""
    kept: list[Outcome] = []
    faults = 0
    for each in checked.outcomes:
        faults += each.rule.area == "FILE"
        if each.rule.area != "FILE" or faults <= MOST_FILE_FAULTS:
            kept.append(each)
    return kept, len(checked.outcomes) - len(kept)


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
    """A number in the reader's unit, with its text; null where it is no finite number or word."""
    amount, unit = value.value, ""
    if value.dimension in DIMENSIONS and isinstance(amount, (int, float, Airtightness)):
        amount, unit = shown(value.value, value.dimension, system)
    if isinstance(amount, float) and not isfinite(amount):
        amount = None
    elif amount is not None and not isinstance(amount, (int, float, str)):
        amount = text_of(value, system)
    return {"value": amount, "unit": unit, "text": text_of(value, system)}
