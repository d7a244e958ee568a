"""The findings as a reviewer's comments: numbered, each with its place, source line, help and section."""

from collections.abc import Callable

from checker.outputs.layout import clean, clipped, counted, width, wrapped
from checker.outputs.numbers import filled
from checker.outputs.summary import DEFERS, summary
from checker.rule import AREAS, Outcome
from checker.run import Checked

COLORS = {"correction": "1;31", "caution": "1;33", "note": "1;36", "head": "1", "quiet": "2"}
MOST_FILE_FAULTS = 100
SOURCE_COLUMNS = 100
Ink = Callable[[str, str], str]


def report(checked: list[Checked], system: str, color: bool) -> str:
    """The whole text report of a run; `system` is trade or metric."""
    ink: Ink = colored if color else plain
    lines: list[str] = []
    for each in checked:
        if len(checked) > 1:
            lines += [ink(heading(each), "head"), ""]
        lines += comments(each, system, ink)
    lines += summary(checked, ink, system)
    return "\n".join(lines) + "\n"


def colored(text: str, kind: str) -> str:
    """The text in the color of a kind."""
    return f"\x1b[{COLORS[kind]}m{text}\x1b[0m" if text else text


def plain(text: str, kind: str) -> str:
    """The text as it is."""
    return text


def heading(checked: Checked) -> str:
    """The head line of a design: file, title, edition."""
    project = checked.design.project if checked.design is not None else None
    parts = [checked.reading.name]
    if project is not None:
        parts += [project.title or "", f"({project.code})" if project.code else ""]
    return clipped(f"### {'  '.join(part for part in parts if part)}")


def comments(checked: Checked, system: str, ink: Ink) -> list[str]:
    """The findings of one file under the headings of their areas, and rules that broke."""
    lines: list[str] = []
    area = ""
    source = checked.reading.text.split("\n")
    faults = 0
    told: dict[str, tuple[int, str]] = {}
    alike: dict[int, list[Outcome]] = {}
    for outcome in checked.outcomes:
        if outcome.outcome == "finding" and not outcome.accepted:
            alike.setdefault(outcome.number, []).append(outcome)
    for outcome in checked.outcomes:
        if outcome.outcome == "rule-failed":
            lines += [position(checked, outcome) + f"fault of airtally: {clean(outcome.message)} {tag(outcome)}", ""]
        if outcome.outcome != "finding" or outcome.accepted or outcome is not alike[outcome.number][0]:
            continue
        faults += outcome.rule.area == "FILE"
        if outcome.rule.area == "FILE" and faults > MOST_FILE_FAULTS:
            continue
        if outcome.rule.area != area:
            lines += unshown(faults, area, outcome.rule.area)
            area = outcome.rule.area
            lines += [ink(f"== {AREAS[area]} ==", "head"), ""]
        lines += comment(checked, alike[outcome.number], source, system, ink, told)
    return lines + unshown(faults, area, "")


def unshown(faults: int, area: str, next_area: str) -> list[str]:
    """How many faults of the file are not shown, where its area ends."""
    if faults <= MOST_FILE_FAULTS or area != "FILE" or next_area == "FILE":
        return []
    more = counted(faults - MOST_FILE_FAULTS, "more fault", "more faults")
    return [f"and {more} of the file; `--format json` lists them", ""]


def comment(
    checked: Checked, alike: list[Outcome], source: list[str], system: str, ink: Ink, told: dict[str, tuple[int, str]]
) -> list[str]:
    """One numbered comment on all the places that it is made of; a help and a section are not told again."""
    outcome = alike[0]
    title = f"Comment {outcome.number}"
    lines = [ink(title, "head") + (f"  {clean(outcome.path)}" if outcome.path else "")]
    lines += [f"{' ' * len(title)}  {clean(other.path)}" for other in alike[1:]]
    lines.append(head_line(checked, outcome, system, ink))
    lines += excerpt(outcome, source, ink)
    help = filled(outcome.help, outcome.numbers, system)
    first, first_help = told.setdefault(outcome.rule.code, (outcome.number, help))
    again = first != outcome.number
    if help and not (again and help == first_help):
        lines += wrapped(help, "    to change: ")
    for other in alike[1:]:
        lines.append(head_line(checked, other, system, ink))
        its = filled(other.help, other.numbers, system)
        if its and its != help:
            lines += wrapped(its, "    to change: ")
    if outcome.rule.area != "FILE":
        see = f"as for comment {first}" if again else f"{outcome.cites or 'common practice'}; {DEFERS}"
        lines += [ink(line, "quiet") for line in wrapped(see, "    see: ")]
    lines.append("")
    return lines


def head_line(checked: Checked, outcome: Outcome, system: str, ink: Ink) -> str:
    """The place of a finding and what it says, on one line."""
    severity = outcome.rule.severity
    message = clean(filled(outcome.message, outcome.numbers, system))
    return f"{position(checked, outcome)}{ink(severity, severity)}: {message} {tag(outcome)}"


def position(checked: Checked, outcome: Outcome) -> str:
    """`file:line:column: ` at the head of a line."""
    line, column = outcome.place[0] or 1, outcome.place[1] or 1
    return f"{clean(checked.reading.name)}:{line}:{column}: "


def tag(outcome: Outcome) -> str:
    """`[CODE name]` at the end of a line."""
    return f"[{outcome.rule.code} {outcome.rule.name}]"


def excerpt(outcome: Outcome, source: list[str], ink: Ink) -> list[str]:
    """The source line with carets under the place; of a long line, the part around it."""
    line, column, end_line, end_column = outcome.place
    if not 1 <= line <= len(source):
        return []
    text = clean(source[line - 1].rstrip("\r"))
    if not text.strip():
        return []
    start = min(column - 1, len(text))
    end = max(start + 1, end_column - 1 if end_line == line else len(text))
    before, after = "", ""
    if len(text) > SOURCE_COLUMNS:
        first = max(0, min(start - 30, len(text) - SOURCE_COLUMNS))
        last = first + SOURCE_COLUMNS
        before, after = "..." if first else "", "..." if last < len(text) else ""
        text, start, end = text[first:last], start - first, min(end, last) - first
    carets = "^" * max(1, width(text[start:end]))
    return [
        f"  {line:>5} | {before}{text}{after}",
        " " * 8 + "| " + " " * width(before + text[:start]) + ink(carets, outcome.rule.severity),
    ]
