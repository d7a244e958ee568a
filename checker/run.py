"""One run: design files in, outcomes numbered and placed out. No printing here."""

import os
from collections.abc import Callable, Iterable

from checker.accepted import apply_acceptances
from checker.amendments import read_amendments
from checker.case import Case
from checker.codebook import Codebook
from checker.design import Design
from checker.design.build import build
from checker.faults import FAULTS, Fault
from checker.judge import judge
from checker.read import Place, Reading
from checker.record import Record
from checker.rule import AREAS, SEVERITIES, Meets, Outcome, Rule
from checker.rule_index import Waiting


class Checked(Record):
    """One file and what was said about it. `design` is None where it could not be read."""

    reading: Reading
    design: Design | None
    case: Case | None
    outcomes: list[Outcome]
    unreadable: bool


def check_reading(reading: Reading, rules: Iterable[Rule | Waiting], today: str, tracing: bool = False) -> Checked:
    """Judge one reading; `today` is the date (YYYY-MM-DD) for acceptances that end."""
    fatal = any(fault.fatal for fault in reading.faults)
    if fatal:
        return Checked(reading, None, None, [fault_outcome(fault) for fault in reading.faults], True)
    built = build(reading)
    project = built.design.project
    faults = [*reading.faults, *built.faults]
    if built.faults:
        from checker.design.cross_check import unsaid

        faults += unsaid(reading, faults)
    amended = read_amendments(reading, project.amendments if project is not None else [])
    faults += amended.faults
    book = Codebook(
        project.code if project is not None else None,
        project.ventilation_standard if project is not None else None,
        amended.requirements,
        amended.criteria,
    )
    case = Case(built.design, book, tracing)
    judged = judge(case, rules)
    judged, unused = apply_acceptances(built.design, judged, reading, today)
    outcomes = [fault_outcome(fault) for fault in [*faults, *unused]]
    outcomes += [outcome._replace(place=place_of(reading, outcome.path)) for outcome in judged]
    return Checked(reading, built.design, case, outcomes, False)


def numbered(checked: list[Checked]) -> list[Checked]:
    """The same with findings numbered 1...n through the run, file by file, area by area.

    Findings of one rule that say the same of several places of a file are one comment and have one number.
    """
    count = 0
    result = []
    for each in checked:
        outcomes = []
        known: dict[tuple[object, ...], int] = {}
        for outcome in sorted(each.outcomes, key=order):
            if outcome.outcome == "finding":
                number = known.setdefault(said_of_any(outcome), count + 1)
                count = max(count, number)
                outcome = outcome._replace(number=number)
            outcomes.append(outcome)
        result.append(each._replace(outcomes=outcomes))
    return result


def said_of_any(outcome: Outcome) -> tuple[object, ...]:
    """What a finding says but for its place, names and numbers; a fault of the file stands for itself."""
    if outcome.rule.area == "FILE":
        return (outcome.rule.code, outcome.path, outcome.place, outcome.message)
    message = outcome.message
    parts = outcome.path.split(".")
    for before, name in zip(["", *parts], parts, strict=False):
        if before in NAMED:
            message = message.replace(name, "*")
    return (outcome.rule.code, message, outcome.accepted)


AREA_ORDER = {area: place for place, area in enumerate(AREAS)}


def order(outcome: Outcome) -> tuple[int, int, tuple[int, int, int, int], str]:
    """By area, rule number, then place in the file."""
    area, _, number = outcome.rule.code.partition("-")
    return AREA_ORDER[area], int(number), outcome.place, outcome.path


def fault_rule(code: str) -> Rule:
    """The rule that stands for a kind of fault of the file itself."""
    kind = FAULTS[code]
    severity = "note" if code in NOTE_FAULTS else "correction"
    return Rule(code, kind.name, severity, "0.1", lambda _case: [], lambda: Meets())  # type: ignore[arg-type]


NOTE_FAULTS = frozenset({"FILE-27", "FILE-28"})


def fault_outcome(fault: Fault) -> Outcome:
    """A fault of the file as an outcome, so that every output shows it."""
    place = (fault.line, fault.column, fault.end_line, fault.end_column)
    return Outcome(fault_rule(fault.code), "finding", fault.path, fault.message, fault.help, place=place,
                   cites="the format of design files")  # fmt: skip


def place_of(reading: Reading, path: str) -> tuple[int, int, int, int]:
    """Where a path stands: the key's place for a block, the value's for a scalar, else the nearest above it."""
    while path:
        value, key = reading.values.get(path), reading.keys.get(path)
        if value is not None and key is not None and value.line == key.line:
            return tuple(value)  # type: ignore[return-value]
        place: Place | None = key or value
        if place is not None:
            return tuple(place)  # type: ignore[return-value]
        path = above(path)
    first = min(reading.keys.values(), default=Place(1, 1, 1, 1))
    return tuple(first)  # type: ignore[return-value]


def above(path: str) -> str:
    """The path one step up."""
    head, dot, tail = path.rpartition(".")
    if tail.endswith("]"):
        return f"{head}{dot}{tail.rpartition('[')[0]}"
    return head


def exit_status(checked: list[Checked], fail_on: str, complete: bool) -> int:
    """0 nothing at or above `fail_on`; 1 findings; 2 could not judge."""
    outcomes = [outcome for each in checked for outcome in each.outcomes]
    if (
        not checked
        or any(each.unreadable for each in checked)
        or any(o.outcome == "rule-failed" for o in outcomes)
    ):
        return 2
    if complete and any(outcome.outcome == "needs-info" for outcome in outcomes):
        return 1
    if fail_on == "never":
        return 0
    counted = SEVERITIES[: SEVERITIES.index(fail_on) + 1]
    open_findings = (o for o in outcomes if o.outcome == "finding" and not o.accepted)
    return 1 if any(outcome.rule.severity in counted for outcome in open_findings) else 0


def unlocks(outcomes: Iterable[Outcome]) -> list[tuple[str, int]]:
    """Missing inputs with the number of rules that each would help to judge, the most useful first.

    Useful is what lets severe rules be judged, and lets them be judged by itself.
    """
    worth: dict[str, dict[str, float]] = {}
    for outcome in outcomes:
        if outcome.outcome == "needs-info":
            each = WEIGHTS[outcome.rule.severity] / max(len(outcome.missing), 1)
            for path in outcome.missing:
                rules = worth.setdefault(path, {})
                rules[outcome.rule.code] = max(each, rules.get(outcome.rule.code, 0.0))
    ranked = sorted(worth, key=lambda path: (-sum(worth[path].values()), path))
    return [(path, len(worth[path])) for path in ranked]


WEIGHTS = {"correction": 3.0, "caution": 2.0, "note": 1.0}
NAMED = frozenset({"rooms", "fans", "hoods", "dryers", "equipment", "ducts", "runs", "outlets", "filters",
                   "openings", "combustion", "controls", "settings", "tests"})  # fmt: skip


def alike(path: str) -> tuple[str, ...]:
    """A path without the names of things: what the same question about several things has in common."""
    parts = path.split(".")
    return tuple("" if before in NAMED else part for before, part in zip(["", *parts], parts, strict=False))


def design_files(paths: Iterable[str], read: Callable[[str], Reading]) -> list[Reading]:
    """Readings of the files named, and of the design files in the folders named."""
    readings = []
    for path in paths:
        if not os.path.isdir(path):
            readings.append(read(path))
            continue
        for name in files_below(path):
            reading = read(name)
            if not isinstance(reading.data, dict) or "design_format" in reading.data or reading.faults:
                readings.append(reading)
    return readings


def files_below(folder: str) -> list[str]:
    """YAML files in a folder and below it that look like designs, in order of name; hidden ones left out."""
    found = []
    for here, folders, files in os.walk(folder):
        folders[:] = sorted(name for name in folders if not name.startswith("."))
        for name in sorted(files):
            if name.endswith((".yaml", ".yml")) and not name.startswith("."):
                path = os.path.join(here, name)
                if looks_like_a_design(path):
                    found.append(path)
    return found


def looks_like_a_design(path: str) -> bool:
    """Whether `design_format` stands at the start of a line; other YAML in a folder is not ours to judge."""
    try:
        with open(path, "rb") as file:
            return any(line.startswith(b"design_format") for line in file)
    except OSError:
        return True
