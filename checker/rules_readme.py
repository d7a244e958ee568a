"""rules/README.md: the rules by area, and which rule answers which requirement of the project's list."""

import os
import re
from collections.abc import Mapping

from checker.codebook import Entry
from checker.outputs.layout import counted
from checker.outputs.rule_facts import basis_of, file_rules, page_of
from checker.read import read_file
from checker.rule import AREAS, Rule

HEAD = """# The rules

Generated from the rules by `python -m checker.generate`; do not edit. `airtally explain CODE` shows the page
of a rule with its limits, its sections in every edition, and a design that meets it and one that does not.

A *correction* is a published requirement that is not met, or a danger; a *caution* will work badly, or a
reviewer will ask; a *note* is good practice or a detail of the papers. *Basis* says what a rule rests on; in
the end the locally adopted code and the authority having jurisdiction decide.
"""
MIDDLE = """## Requirements

The requirements that the project set out to cover, by their numbers in its list: the rules that answer each,
or why none does.

| Requirement | Answered by |
| --- | --- |"""


class ReasonError(ValueError):
    """A file of unchecked requirements is not a block of `number: reason`."""


def unchecked(folder: str) -> dict[str, str]:
    """Reasons by requirement, from the files `<area>/unchecked*.yaml`. Raises ReasonError."""
    reasons: dict[str, str] = {}
    for path in files_of_reasons(folder):
        reading = read_file(path)
        if reading.faults and reading.faults[0].code == "FILE-06":
            continue
        if reading.faults or not isinstance(reading.data, dict):
            raise ReasonError(f"{path}: {reading.faults[0].message if reading.faults else 'not a block'}")
        for number, reason in reading.data.items():
            known = reasons.get(number)
            reasons[number] = f"{known}; {reason}" if known and known != str(reason) else str(reason)
    return reasons


def files_of_reasons(folder: str) -> list[str]:
    """The files `unchecked*.yaml` of the areas, in order."""
    areas = [os.path.join(folder, area) for area in sorted(os.listdir(folder))]
    return [
        os.path.join(area, name)
        for area in areas
        if os.path.isdir(area)
        for name in sorted(os.listdir(area))
        if name.startswith("unchecked") and name.endswith(".yaml")
    ]


def answered(rules: list[Rule]) -> dict[str, list[Rule]]:
    """Rules by the requirement that they answer."""
    found: dict[str, list[Rule]] = {}
    for rule in rules:
        for number in rule.answers:
            found.setdefault(number, []).append(rule)
    return found


def rules_readme(rules: list[Rule], entries: Mapping[str, Entry], reasons: Mapping[str, str]) -> str:
    """The text of rules/README.md."""
    lines = [HEAD]
    for area, spoken in AREAS.items():
        own = [rule for rule in [*file_rules(), *rules] if rule.area == area]
        if own:
            count = counted(len(own), "check" if area == "FILE" else "rule")
            lines += [f"## {area}: {spoken} ({count})", "", "| Code | Name | Severity | Finds | Basis |",
                      "| --- | --- | --- | --- | --- |"]  # fmt: skip
            lines += [
                row(rule.code, rule.name, rule.severity, page_of(rule)[0], basis_of(rule, entries)) for rule in own
            ]
            lines.append("")
    lines.append(MIDDLE)
    answers = answered(rules)
    for number in sorted({*answers, *reasons}, key=place):
        said = [", ".join(rule.code for rule in answers.get(number, ()))] if number in answers else []
        said += [f"not checked: {reasons[number]}"] if number in reasons and not said else []
        said += [f"in part; {reasons[number]}"] if number in reasons and number in answers else []
        lines.append(row(number, "; ".join(said)))
    return "\n".join(lines) + "\n"


def row(*cells: str) -> str:
    """A row of a table."""
    return "| " + " | ".join(" ".join(cell.split()).replace("|", "\\|") for cell in cells) + " |"


def place(number: str) -> tuple[str, int, str]:
    """Where a requirement stands in the list: letter, then number."""
    match = re.fullmatch(r"([A-Za-z]+)-?(\d+)(.*)", number)
    return (match[1], int(match[2]), match[3]) if match else (number, 0, "")
