"""The tally as one JSON object; its schema is schemas/tally.schema.json."""

import json
from typing import Any

from checker import __version__
from checker.outputs.numbers import filled
from checker.outputs.tally.cells import KNOWN, Cell, Column, Section, Table
from checker.outputs.tally.looks import alone, decimals_of, unit_in, value_and_unit, value_text
from checker.outputs.tally.page import broke
from checker.outputs.tally.sections import tally
from checker.run import Checked

FORMAT_VERSION = 1
MOST_FAULTS = 1000


def report(checked: list[Checked], chosen: list[str], system: str) -> tuple[str, bool]:
    """The tallies of a run, and whether anything of them broke; `system` is trade or metric."""
    sections = [tally(each.case, chosen) if each.case is not None else [] for each in checked]
    designs = [design(each, own, system) for each, own in zip(checked, sections, strict=True)]
    whole = {"format_version": FORMAT_VERSION, "tool_version": __version__, "units": system, "designs": designs}
    text = json.dumps(whole, ensure_ascii=False, indent=1, allow_nan=False) + "\n"
    return text, any(broke(each) for own in sections for each in own)


def design(checked: Checked, sections: list[Section], system: str) -> dict[str, Any]:
    """One design, with the faults of its file."""
    project = checked.design.project if checked.design is not None else None
    faults = [outcome for outcome in checked.outcomes if outcome.rule.area == "FILE"]
    return {
        "path": checked.reading.name,
        "title": (project.title if project is not None else None) or "",
        "code": (project.code if project is not None else None) or "",
        "readable": not checked.unreadable,
        "faults": [
            {"rule": each.rule.code, "line": each.place[0], "column": each.place[1],
             "message": filled(each.message, each.numbers, system)}
            for each in faults[:MOST_FAULTS]
        ],
        "sections": [section(each, system) for each in sections],
    }  # fmt: skip


def section(found: Section, system: str) -> dict[str, Any]:
    """One section."""
    return {
        "name": found.name,
        "title": found.title,
        "left_out": found.left_out,
        "facts": [
            {"label": fact.label, **cell(fact.cell, Column("", fact.cell.dimension), alone(fact.cell, system), system)}
            for fact in found.facts
        ],
        "tables": [table(each, system) for each in found.tables],
        "notes": list(found.notes),
    }


def table(found: Table, system: str) -> dict[str, Any]:
    """One table: its columns with their units, and a cell for each in every row."""
    decimals = [decimals_of(column, [row.cells[place] for row in found.rows], system)
                for place, column in enumerate(found.columns)]  # fmt: skip
    return {
        "head": found.head,
        "columns": [{"title": column.title, "unit": unit_in(column, system)} for column in found.columns],
        "rows": [
            {
                "name": row.name,
                "sums": row.sums,
                "cells": [
                    cell(each, column, value_text(each, column, places, system), system)
                    for each, column, places in zip(row.cells, found.columns, decimals, strict=True)
                ],
            }
            for row in found.rows
        ],
    }


def cell(found: Cell, column: Column, text: str, system: str) -> dict[str, Any]:
    """A value in its declared unit with the text of the page, or why there is none."""
    value, unit = value_and_unit(found, column, system) if found.state == KNOWN else (None, "")
    return {
        "state": found.state,
        "value": value,
        "unit": unit,
        "text": text if found.state == KNOWN else "",
        "missing": list(found.missing),
        "reason": found.reason,
    }
