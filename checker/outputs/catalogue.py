"""The list of every rule, as a table or as JSON."""

import json
from collections.abc import Callable, Mapping
from typing import Any

from checker.codebook import Entry
from checker.outputs.layout import columned, counted
from checker.outputs.rule_facts import basis_of, file_rules, page_of, sections_of
from checker.rule import AREAS, Rule

COLUMNS = 120


def catalogue(format: str) -> str:
    """Every rule and every kind of fault of a design file; `format` is text or json."""
    from checker.codebook_table import ENTRIES
    from checker.judge import rules

    listed: Callable[[list[Rule], Mapping[str, Entry]], str] = as_json if format == "json" else as_text
    return listed([*file_rules(), *rules()], ENTRIES)


def as_text(rules: list[Rule], entries: Mapping[str, Entry]) -> str:
    """A table grouped by area: code, severity, name, title."""
    rows = [[rule.code, rule.severity, rule.name, page_of(rule)[0]] for rule in rules]
    lines = columned(rows, columns=COLUMNS)
    starts = [place for place, line in enumerate(lines) if not line.startswith(" ")]
    text: list[str] = []
    area = ""
    for number, start in enumerate(starts):
        rule = rules[number]
        if rule.area != area:
            area = rule.area
            count = sum(each.area == area for each in rules)
            text += ["", f"== {AREAS[area]}: {counted(count, 'check' if area == 'FILE' else 'rule')} =="]
        text += lines[start : starts[number + 1] if number + 1 < len(starts) else None]
    judging = [rule for rule in rules if rule.area != "FILE"]
    areas = len({rule.area for rule in judging})
    file_kinds = counted(len(rules) - len(judging), "check of the file itself", "checks of the file itself")
    text += ["", f"{counted(len(judging), 'rule')} in {counted(areas, 'area')}, and {file_kinds}."]
    return "\n".join([*text, "`airtally explain CODE` shows the page of each."]).lstrip("\n") + "\n"


def as_json(rules: list[Rule], entries: Mapping[str, Entry]) -> str:
    """A list of objects."""
    return json.dumps([entry_of(rule, entries) for rule in rules], ensure_ascii=False, indent=1) + "\n"


def entry_of(rule: Rule, entries: Mapping[str, Entry]) -> dict[str, Any]:
    """One rule as data; `cites` gives sections by edition, `any` where no edition counts."""
    return {
        "code": rule.code,
        "name": rule.name,
        "area": rule.area,
        "severity": rule.severity,
        "title": page_of(rule)[0],
        "cites": sections_of(rule, entries),
        "needs": [need.name for need in rule.needs],
        "since": rule.since,
        "basis": basis_of(rule, entries),
    }
