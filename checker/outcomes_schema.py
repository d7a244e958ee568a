"""JSON Schemas of what goes out and of amendments files, for programs that read the one or write the other."""

from typing import Any

from checker.amendments import CRITERIA, FORMAT
from checker.codebook import EDITIONS, STANDARDS, Entry
from checker.design.schema import DIALECT
from checker.dimensions import DIMENSIONS
from checker.outputs.json_report import FORMAT_VERSION
from checker.rule import AREAS, SEVERITIES

OUTCOMES = {
    "meets": "the requirement is met by the figures given",
    "finding": "the requirement is not met, or the file is at fault",
    "needs-info": "cannot be judged before what `missing` names is known",
    "cannot-judge": "outside what the method can judge",
    "not-applicable": "the question does not arise",
    "rule-failed": "the rule broke: a fault of the program",
}
TEXT = {"type": "string"}
COUNT = {"type": "integer", "minimum": 0}


def closed(properties: dict[str, Any], **more: Any) -> dict[str, Any]:
    """An object that has exactly these properties."""
    return {
        "type": "object", "properties": properties, "required": list(properties), "additionalProperties": False, **more,
    }  # fmt: skip


def said(schema: dict[str, Any], description: str) -> dict[str, Any]:
    """A schema with its meaning."""
    return {**schema, "description": description}


def outcomes_schema() -> dict[str, Any]:
    """The schema of `airtally check --format json`."""
    design = closed({
        "path": said(TEXT, "name of the file, as it was given"),
        "title": said(TEXT, "`project.title`, empty if absent"),
        "code": said({"enum": ["", *EDITIONS]}, "edition that the design is held against, empty if none is named"),
        "readable": said({"type": "boolean"}, "false where nothing in the file could be judged"),
        "outcomes": {"type": "array", "items": {"$ref": "#/$defs/outcome"}},
        "left_out": said(COUNT, "faults of the file beyond the first thousand"),
        "wanted": said(
            {"type": "array", "items": closed({"path": TEXT, "rules": {"type": "integer", "minimum": 1}})},
            "missing inputs, ranked by how many rules each would help to judge",
        ),
    })  # fmt: skip
    whole = closed({
        "format_version": {"const": FORMAT_VERSION},
        "tool_version": TEXT,
        "units": said({"enum": ["trade", "metric"]}, "units of the numbers"),
        "designs": {"type": "array", "items": {"$ref": "#/$defs/design"}},
    })  # fmt: skip
    return {
        "$schema": DIALECT,
        "title": "airtally outcomes",
        "description": "What was said of each design. The key that stays from run to run is rule and path.",
        **whole,
        "$defs": {"design": design, "outcome": outcome_schema(), "number": number_schema()},
    }


def outcome_schema() -> dict[str, Any]:
    """The schema of one outcome."""
    position = {"type": "integer", "minimum": 0}
    meanings = "; ".join(f"{word}: {meaning}" for word, meaning in OUTCOMES.items())
    return closed({
        "number": said(
            {"type": ["integer", "null"], "minimum": 1},
            "number of the comment; findings that say the same of several places share it; null unless a finding",
        ),
        "rule": said({"type": "string", "pattern": f"^({'|'.join(AREAS)})-[0-9]{{2,}}$"}, "code"),
        "name": said({"type": "string", "pattern": "^[a-z0-9]+(-[a-z0-9]+)*$"}, "what the rule finds wrong"),
        "area": {"enum": list(AREAS)},
        "severity": {"enum": list(SEVERITIES)},
        "outcome": said({"enum": list(OUTCOMES)}, meanings),
        "path": said(TEXT, "place in the design, such as `hoods.range-hood.settings.high`; empty for the whole"),
        "line": said(position, "from 1, in code points; 0 where no line states it"),
        "column": position,
        "end_line": position,
        "end_column": said(position, "one past the last mark"),
        "message": said(TEXT, "the fact, with its numbers"),
        "help": said(TEXT, "a change that would help"),
        "numbers": {"type": "object", "additionalProperties": {"$ref": "#/$defs/number"}},
        "missing": said({"type": "array", "items": TEXT}, "paths of what is needed"),
        "cites": said(TEXT, "edition and section, or what else the rule rests on"),
        "accepted": said({"type": ["string", "null"]}, "reason and name, where a person accepted the finding"),
    })  # fmt: skip


def number_schema() -> dict[str, Any]:
    """The schema of a number: value and unit in the units of the run, and the text that messages show."""
    units = sorted({unit for each in DIMENSIONS.values() for unit in (each.trade, each.metric)})
    return closed({
        "value": {"type": ["number", "string", "boolean", "null"]},
        "unit": said(TEXT, f"empty for a count or a word, else one such as {', '.join(units[:6])}"),
        "text": TEXT,
    })  # fmt: skip


def amendments_schema(entries: dict[str, Entry]) -> dict[str, Any]:
    """The schema of an amendments file: the requirements of the codebook by key, each to be changed."""
    return {
        "$schema": DIALECT,
        "title": "airtally amendments file",
        "description": "What a jurisdiction or a firm overrides or withdraws of the codebook.",
        "type": "object",
        "properties": {
            "amendments_format": {"const": FORMAT},
            "title": said(TEXT, "whose amendments these are"),
            "requirements": {
                "type": "object",
                "properties": {key: amendment(entry) for key, entry in sorted(entries.items())},
                "additionalProperties": False,
            },
            "design_criteria": said(
                {
                    "type": "object",
                    "properties": {key: criterion(of) for key, of in CRITERIA.items()},
                    "additionalProperties": False,
                },
                "design criteria of the jurisdiction, which designs are held against",
            ),
        },
        "required": ["amendments_format"],
        "additionalProperties": False,
        "$defs": {
            "section": said(TEXT, "where the change is written"),
            "withdrawn": said(TEXT, "why the requirement does not hold here"),
            "says": said(TEXT, "the changed requirement in words"),
        },
    }


def criterion(of: str) -> dict[str, Any]:
    """The schema of one design criterion."""
    return said(TEXT, f"such as `{DIMENSIONS[of].example}`") if of in DIMENSIONS else TEXT


def amendment(entry: Entry) -> dict[str, Any]:
    """The schema of one changed requirement."""
    plain: dict[str, Any] = {"type": ["string", "number"]}
    dimension = DIMENSIONS.get(entry.of)
    limit = said(plain, f"{dimension.noun} such as `{dimension.example}`") if dimension is not None else plain
    by_edition = isinstance(entry.limit, dict) and set(entry.limit) <= {*EDITIONS, *STANDARDS}
    anything = isinstance(entry.limit, (list, dict)) and not by_edition
    properties: dict[str, Any] = {
        key: {"$ref": f"#/$defs/{key}"} for key in ("section", "withdrawn", "says")
    }
    if entry.limit is not None:
        properties = {"limit": {} if anything else limit, **properties}
    return {
        "description": entry.says, "type": "object", "properties": properties,
        "additionalProperties": False, "minProperties": 1,
    }  # fmt: skip
