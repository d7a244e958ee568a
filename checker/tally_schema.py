"""JSON Schema of `airtally tally --format json`, for programs that read it."""

from typing import Any

from checker.codebook import EDITIONS
from checker.design.schema import DIALECT
from checker.outcomes_schema import COUNT, TEXT, closed, said
from checker.outputs.tally.as_json import FORMAT_VERSION
from checker.outputs.tally.cells import BLANK, BROKE, CANNOT, IDLE, KNOWN, NEEDS
from checker.outputs.tally.sections import SECTIONS

STATES = {
    KNOWN: "there is a value",
    BLANK: "nothing stands here",
    NEEDS: "not known before what `missing` names is",
    CANNOT: "outside what the method can judge, for `reason`",
    IDLE: "the question does not arise, for `reason`",
    BROKE: "a fault of the program",
}


def tally_schema() -> dict[str, Any]:
    """The schema of the tally."""
    design = closed({
        "path": said(TEXT, "name of the file, as it was given"),
        "title": said(TEXT, "`project.title`, empty if absent"),
        "code": said({"enum": ["", *EDITIONS]}, "edition that the design is held against, empty if none is named"),
        "readable": said({"type": "boolean"}, "false where nothing in the file could be read"),
        "faults": said({"type": "array", "items": fault_schema()}, "faults of the file; what they touch counts as missing"),
        "sections": {"type": "array", "items": {"$ref": "#/$defs/section"}},
    })  # fmt: skip
    whole = closed({
        "format_version": {"const": FORMAT_VERSION},
        "tool_version": TEXT,
        "units": said({"enum": ["trade", "metric"]}, "units of the numbers"),
        "designs": {"type": "array", "items": {"$ref": "#/$defs/design"}},
    })  # fmt: skip
    return {
        "$schema": DIALECT,
        "title": "airtally tally",
        "description": "The figures of each house. Numbers are in the unit that stands beside them.",
        **whole,
        "$defs": {"design": design, "section": section_schema(), "table": table_schema(), "cell": closed(cell_fields())},
    }


def fault_schema() -> dict[str, Any]:
    """The schema of a fault of the file."""
    return closed({"rule": said(TEXT, "code"), "line": COUNT, "column": COUNT, "message": TEXT})


def section_schema() -> dict[str, Any]:
    """The schema of one section."""
    return closed({
        "name": said({"enum": list(SECTIONS)}, "the word that `--only` takes"),
        "title": TEXT,
        "left_out": said(TEXT, "why the section has nothing to show; empty where it has"),
        "facts": {"type": "array", "items": closed({"label": TEXT, **cell_fields()})},
        "tables": {"type": "array", "items": {"$ref": "#/$defs/table"}},
        "notes": {"type": "array", "items": TEXT},
    })  # fmt: skip


def table_schema() -> dict[str, Any]:
    """The schema of one table: as many cells in every row as there are columns."""
    row = closed({
        "name": TEXT,
        "sums": said({"type": "boolean"}, "whether the row stands below the line"),
        "cells": {"type": "array", "items": {"$ref": "#/$defs/cell"}},
    })  # fmt: skip
    return closed({
        "head": said(TEXT, "what the rows are"),
        "columns": {"type": "array", "items": closed({"title": TEXT, "unit": TEXT})},
        "rows": {"type": "array", "items": row},
    })  # fmt: skip


def cell_fields() -> dict[str, Any]:
    """The keys of a cell."""
    meanings = "; ".join(f"{word}: {meaning}" for word, meaning in STATES.items())
    return {
        "state": said({"enum": list(STATES)}, meanings),
        "value": said({"type": ["number", "string", "boolean", "null"]}, "null where there is none, or no finite number"),
        "unit": said(TEXT, "empty for a plain number or a word"),
        "text": said(TEXT, "as the page shows it; a sign of less or more where the value lies further out"),
        "missing": said({"type": "array", "items": TEXT}, "paths of what is needed"),
        "reason": said(TEXT, "why there is no value, or in what way it is a bound"),
    }
