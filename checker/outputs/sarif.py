"""The outcomes as a SARIF 2.1.0 log (OASIS, Static Analysis Results Interchange Format), for code hosts."""

import json
import os
from typing import Any

from checker import __version__
from checker.codebook_table import ENTRIES
from checker.outputs.json_report import kept
from checker.outputs.numbers import filled
from checker.outputs.rule_facts import basis_of, page_of
from checker.outputs.summary import DEFERS
from checker.rule import Outcome, Rule
from checker.run import Checked, order

SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
LEVELS = {"correction": "error", "caution": "warning", "note": "note"}
KINDS = {"finding": "fail", "needs-info": "open", "cannot-judge": "review"}


def report(checked: list[Checked], system: str) -> str:
    """The log of a run; `system` is trade or metric."""
    said = [outcome for each in checked for outcome in each.outcomes]
    rules = list({outcome.rule.code: outcome.rule for outcome in sorted(said, key=order)}.values())
    index = {rule.code: place for place, rule in enumerate(rules)}
    broken = [
        notification(each, outcome, index)
        for each in checked
        for outcome in each.outcomes
        if outcome.outcome == "rule-failed"
    ]
    invocation: dict[str, Any] = {
        "executionSuccessful": not broken and not any(each.unreadable for each in checked)
    }
    if broken:
        invocation["toolExecutionNotifications"] = broken
    driver = {
        "name": "airtally", "semanticVersion": __version__,
        "rules": [descriptor(rule) for rule in rules],
    }  # fmt: skip
    run = {
        "tool": {"driver": driver},
        "invocations": [invocation],
        "columnKind": "unicodeCodePoints",
        "results": [result for each in checked for result in results(each, system, index)],
    }
    log = {"$schema": SCHEMA, "version": "2.1.0", "runs": [run]}
    return json.dumps(log, ensure_ascii=False, separators=(",", ":")) + "\n"


def descriptor(rule: Rule) -> dict[str, Any]:
    """A rule as a reporting descriptor."""
    title, paragraphs = page_of(rule)
    page = "\n\n".join([*paragraphs, f"In the end {DEFERS}."])
    return {
        "id": rule.code,
        "name": rule.name,
        "shortDescription": message(title),
        "fullDescription": message(f"{title} {paragraphs[0]}" if paragraphs else title),
        "help": message(page),
        "defaultConfiguration": {"level": LEVELS[rule.severity]},
        "properties": {"area": rule.area, "basis": basis_of(rule, ENTRIES)},
    }


def message(text: str) -> dict[str, str]:
    """A message; braces are doubled because single ones stand for arguments (SARIF 2.1.0, 3.11.5)."""
    return {"text": text.replace("{", "{{").replace("}", "}}")}


def results(checked: Checked, system: str, index: dict[str, int]) -> list[dict[str, Any]]:
    """The findings, open questions and reviews of one file."""
    found = []
    times: dict[tuple[str, str], int] = {}
    for outcome in kept(checked)[0]:
        if outcome.outcome not in KINDS:
            continue
        key = (outcome.rule.code, outcome.path)
        times[key] = times.get(key, 0) + 1
        found.append(result(checked, outcome, system, index[outcome.rule.code], times[key]))
    return found


def result(checked: Checked, outcome: Outcome, system: str, index: int, time: int) -> dict[str, Any]:
    """One outcome; `time` counts outcomes of the same rule at the same path."""
    finding = outcome.outcome == "finding"
    text = filled(outcome.message, outcome.numbers, system)
    if outcome.help:
        text += f". To change: {filled(outcome.help, outcome.numbers, system)}"
    properties: dict[str, Any] = {"path": outcome.path, "cites": outcome.cites}
    if finding:
        properties["comment"] = outcome.number
    if outcome.missing:
        properties["missing"] = list(outcome.missing)
    made: dict[str, Any] = {
        "ruleId": outcome.rule.code, "ruleIndex": index, "kind": KINDS[outcome.outcome],
        "level": LEVELS[outcome.rule.severity] if finding else "none",
        "message": message(text),
        "locations": [location(checked, outcome)],
        "partialFingerprints": {"ruleAndPath/v1": fingerprint(outcome, time)},
        "properties": properties,
    }  # fmt: skip
    if outcome.accepted:
        made["suppressions"] = [
            {"kind": "external", "status": "accepted", "justification": outcome.accepted}
        ]
    return made


def location(checked: Checked, outcome: Outcome) -> dict[str, Any]:
    """File, region and path of an outcome; end columns stand one past the last mark, as ours do."""
    line, column, end_line, end_column = outcome.place
    physical: dict[str, Any] = {"artifactLocation": {"uri": uri(checked.reading.name)}}
    if line > 0:
        physical["region"] = {
            "startLine": line, "startColumn": column, "endLine": end_line, "endColumn": end_column,
        }  # fmt: skip
    made: dict[str, Any] = {"physicalLocation": physical}
    if outcome.path:
        made["logicalLocations"] = [{"fullyQualifiedName": outcome.path}]
    return made


def uri(path: str) -> str:
    """A path as a URI relative to the working folder, percent-encoded; absolute only on another drive."""
    from urllib.parse import quote

    if os.path.isabs(path):
        try:
            path = os.path.relpath(path)
        except ValueError:
            return "file:///" + quote(path.replace(os.sep, "/").lstrip("/"), errors="surrogateescape")
    relative = os.path.normpath(path).replace(os.sep, "/")
    return quote(relative, errors="surrogateescape")


def fingerprint(outcome: Outcome, time: int) -> str:
    """A stable key by rule and path, never by line."""
    from hashlib import sha256

    again = f"\0{time}" if time > 1 else ""
    return sha256(f"{outcome.rule.code}\0{outcome.path}{again}".encode("utf-8", "surrogatepass")).hexdigest()[:32]


def notification(checked: Checked, outcome: Outcome, index: dict[str, int]) -> dict[str, Any]:
    """A rule that broke."""
    return {
        "level": "error",
        "message": message(outcome.message),
        "associatedRule": {"id": outcome.rule.code, "index": index[outcome.rule.code]},
        "locations": [location(checked, outcome)],
    }
