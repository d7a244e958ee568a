"""The tally as text: what fits a page."""

from checker.outputs.layout import clean, counted, wrapped
from checker.outputs.summary import DEFERS
from checker.outputs.tally.cells import BROKE, KNOWN, Fact, Section, reason
from checker.outputs.tally.grid import COLUMNS, Below, Grid
from checker.outputs.tally.looks import alone
from checker.outputs.tally.sections import tally
from checker.outputs.text import comments, plain
from checker.run import Checked

ROUNDING = "Numbers are rounded; `airtally worksheet` shows how each was worked out. `-`: the question does not arise."

NAMED = 6


def report(checked: Checked, chosen: list[str], system: str) -> tuple[str, bool]:
    """The tally of one design, and whether anything of it broke; `system` is trade or metric."""
    if checked.case is None:
        return "\n".join(comments(checked, system, plain)), False
    sections = tally(checked.case, chosen)
    lines = head(checked)
    for section in sections:
        lines += [*section_lines(section, system), ""]
    lines += wrapped(f"{ROUNDING} An aid, not a review: {DEFERS}.", columns=COLUMNS)
    return "\n".join(lines) + "\n", any(map(broke, sections))


def head(checked: Checked) -> list[str]:
    """Title, file, edition, and a word on faults of the file."""
    project = checked.design.project if checked.design is not None else None
    title = (project.title if project is not None else None) or checked.reading.name
    code = project.code if project is not None else None
    lines = wrapped(clean(title), "TALLY  ", columns=COLUMNS)
    lines += wrapped(", ".join([checked.reading.name, *([code] if code else [])]), columns=COLUMNS)
    faults = [outcome for outcome in checked.outcomes if outcome.rule.area == "FILE"]
    if faults:
        said = f"{counted(len(faults), 'fault')} of the file, which `airtally check` shows; what they touch counts as missing"
        lines += wrapped(said, columns=COLUMNS)
    return [*lines, ""]


def section_lines(section: Section, system: str) -> list[str]:
    """One section; one that is left out takes one line."""
    if section.left_out:
        return wrapped(section.left_out, f"{section.title}: left out, ", "  ", COLUMNS)
    marked = Below()
    lines = [f"== {section.title} =="]
    if section.facts:
        lines += wrapped("; ".join(fact_text(fact, system) for fact in section.facts), columns=COLUMNS)
    for table in section.tables:
        lines += ["", *Grid(table, system, marked).lines()]
    below = marked.lines() + [line for note in section.notes for line in wrapped(note, "", "  ", COLUMNS)]
    return [*lines, *([""] if below else []), *below]


def fact_text(fact: Fact, system: str) -> str:
    """A figure with its label, or why there is none."""
    if fact.cell.state == KNOWN:
        return f"{fact.label} {alone(fact.cell, system)}"
    return f"{fact.label}: {reason(fact.cell, NAMED)}"


def broke(section: Section) -> bool:
    """Whether a cell of a section broke."""
    cells = [fact.cell for fact in section.facts]
    cells += [each for table in section.tables for row in table.rows for each in row.cells]
    return any(each.state == BROKE for each in cells)
