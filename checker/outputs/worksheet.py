"""How every number was worked out, step by step, so that a reviewer can follow by hand."""

from typing import Any

from checker.case import GIVEN, Case, Evaluation, Missing, Read
from checker.design.fields import Node
from checker.outputs.layout import clean, width, wrapped
from checker.outputs.numbers import filled, text_of
from checker.outputs.rule_facts import worked_by
from checker.outputs.summary import DEFERS
from checker.outputs.worksheet_absent import absent_words
from checker.outputs.worksheet_values import record_lines, tells_numbers, value_text
from checker.rule import AREAS, Outcome
from checker.run import Checked, order, place_of

COLUMNS = 110
SHOWN = ("meets", "finding", "cannot-judge")
ROUNDING = "Numbers are shown rounded; the program keeps all digits."


def report(checked: Checked, system: str) -> str:
    """The worksheet of one design, judged with tracing; `system` is trade or metric."""
    lines = head(checked)
    if checked.case is not None:
        sheet = Sheet(checked, checked.case, system)
        area = ""
        for outcome in sorted(checked.outcomes, key=order):
            if outcome.outcome not in SHOWN or outcome.rule.area == "FILE":
                continue
            if outcome.rule.area != area:
                area = outcome.rule.area
                lines += [f"== {AREAS[area]} ==", ""]
            lines += [*sheet.entry(outcome), ""]
        lines += rest(checked)
    lines += wrapped(f"{ROUNDING} An aid, not a review: {DEFERS}.", columns=COLUMNS)
    return "\n".join(lines) + "\n"


def head(checked: Checked) -> list[str]:
    """Title, file, edition, and the faults of the file."""
    project = checked.design.project if checked.design is not None else None
    title = (project.title if project is not None else None) or checked.reading.name
    lines = wrapped(title, "WORKSHEET  ", columns=COLUMNS)
    held = [project.code, project.ventilation_standard] if project is not None else []
    lines += wrapped(", ".join([checked.reading.name, *(each for each in held if each)]), columns=COLUMNS)
    lines += [*wrapped("Steps are numbered through the sheet; one that was worked out before is named `as above`.",
                       columns=COLUMNS), ""]  # fmt: skip
    faults = [outcome for outcome in checked.outcomes if outcome.rule.area == "FILE"]
    if faults:
        lines += ["Faults of the file; what they touch is left out here:"]
        for fault in sorted(faults, key=order)[:10]:
            lines += wrapped(f"line {fault.place[0]}: {fault.message} [{fault.rule.code}]", "  ", "    ", COLUMNS)
        lines += [*([f"  and {len(faults) - 10} more"] if len(faults) > 10 else []), ""]
    return lines


def rest(checked: Checked) -> list[str]:
    """What was not worked out: for want of information, because it does not apply, or by our fault."""
    lines: list[str] = []
    outcomes = sorted(checked.outcomes, key=order)
    lacking = [outcome for outcome in outcomes if outcome.outcome == "needs-info"]
    if lacking:
        lines += ["== Waiting for information ==", ""]
        for each in lacking:
            lines += wrapped(", ".join(each.missing), f"{heading(each)} needs ", "    ", COLUMNS)
        lines.append("")
    broke = [outcome for outcome in outcomes if outcome.outcome == "rule-failed"]
    for each in broke:
        lines += [*wrapped(each.message, f"{heading(each)} ", "    ", COLUMNS), ""]
    idle = dict.fromkeys(outcome.rule.code for outcome in outcomes if outcome.outcome == "not-applicable")
    if idle:
        lines += [*wrapped(", ".join(idle), "Not applicable, here or in part: ", "    ", COLUMNS), ""]
    return lines


def heading(outcome: Outcome) -> str:
    """Code, name and place of a check."""
    return clean(f"{outcome.rule.code} {outcome.rule.name}  {outcome.path or 'the design'}:")


class Sheet:
    """A worksheet under way: which steps have been shown, by number."""

    def __init__(self, checked: Checked, case: Case, system: str) -> None:
        self.checked = checked
        self.case = case
        self.system = system
        self.steps: dict[int, int] = {}
        self.limits: set[str] = set()
        self.count = 0

    def entry(self, outcome: Outcome) -> list[str]:
        """One check: its steps, what it took, its limits, its conclusion."""
        word = f"{outcome.outcome}, accepted" if outcome.accepted else outcome.outcome
        code, _, where = f"{heading(outcome)} {word}".partition("  ")
        lines = wrapped(where, f"{code}  ", "    ", COLUMNS)
        evaluation = self.evaluation(outcome)
        if evaluation is not None:
            known = set(self.steps)
            for asked in evaluation.asked:
                lines += self.step(asked)
            lines += [
                line for asked in evaluation.asked if id(asked) in known and self.steps[id(asked)]
                for line in wrapped(f"{self.named(asked)}, as above", "  ", "      ", COLUMNS)
            ]  # fmt: skip
            lines += self.taken([*evaluation.reads, *given_reads(evaluation)], "  ")
        return lines + self.conclusion(outcome)

    def evaluation(self, outcome: Outcome) -> Evaluation | None:
        """What the rule asked where the outcome stands: at its path or the nearest above it."""
        found = [
            (len(path), evaluation)
            for (key, path), evaluation in self.case.evaluations.items()
            if key == outcome.rule.code
            and (not path or outcome.path == path or outcome.path.startswith((f"{path}.", f"{path}[")))
        ]
        return max(found, key=lambda each: each[0])[1] if found else None

    def step(self, evaluation: Evaluation) -> list[str]:
        """A quantity and, before it, those it asked for; nothing where it was shown or is only given."""
        if id(evaluation) in self.steps or evaluation.quantity.source == GIVEN:
            return []
        self.steps[id(evaluation)] = 0
        lines = [line for asked in evaluation.asked for line in self.step(asked)]
        if is_wiring(evaluation):
            return lines
        self.count += 1
        self.steps[id(evaluation)] = self.count
        lines += wrapped(self.named(evaluation), "  ", "      ", COLUMNS)
        quantity = evaluation.quantity
        if formula := worked_by(quantity):
            lines += wrapped(formula, "      formula  ", columns=COLUMNS)
        for asked in evaluation.asked:
            if self.steps.get(id(asked)):
                lines += wrapped(self.named(asked), "      with     ", columns=COLUMNS)
        lines += self.taken([*evaluation.reads, *given_reads(evaluation)], "      ")
        if not evaluation.problem and not value_text(evaluation.result, "", self.system):
            twin = next((asked for asked in evaluation.asked if asked.result is evaluation.result), None)
            if twin is not None and self.steps.get(id(twin)):
                lines.append(f"      result   that of ({self.steps[id(twin)]})")
            else:
                lines += result_lines(evaluation.result, self.system)
        if quantity.source:
            lines += wrapped(quantity.source, "      source   ", columns=COLUMNS)
        return lines

    def named(self, evaluation: Evaluation) -> str:
        """`(3) all day supply, house = 56 cfm`, without the result where that takes lines of its own."""
        quantity = evaluation.quantity
        where = f", {evaluation.path}" if evaluation.path else ""
        name = f"({self.steps[id(evaluation)]}) {quantity.name.replace('_', ' ')}{where}"
        if evaluation.problem:
            known = self.case.known.get((quantity, evaluation.path))
            fact = "not known, needs" if isinstance(known, Missing) else "no answer:"
            return f"{name}: {fact} {evaluation.problem}"
        text = value_text(evaluation.result, quantity.dimension, self.system)
        return f"{name} = {text}" if text else name

    def taken(self, reads: list[Read], indent: str) -> list[str]:
        """The values put in, each once, with its place; what the file could say and does not, in one line."""
        lines: list[str] = []
        absent: list[str] = []
        done: set[tuple[str, str]] = set()
        for read in reads:
            key = (read.path, read.label)
            if key in done or (isinstance(read.value, Node) and read.value.path == read.path):
                continue  # a block is only the way to its values
            if read.dimension == "Reference" and read.label in ("from", "to"):
                continue  # how ducts are joined stands in the file
            done.add(key)
            if read.path.startswith("codebook: "):
                lines += self.limit(read, indent)
            elif read.optional and read.value in (None, {}, []):
                absent.append(read.path)
            else:
                text = value_text(read.value, read.dimension, self.system) or "(see the file)"
                lines += wrapped(f"{read.path} = {text}{self.place(read.path)}", f"{indent}given    ", columns=COLUMNS)
        if absent:
            lines += wrapped(absent_words(self.case.design, absent), f"{indent}absent   ", columns=COLUMNS)
        return lines

    def place(self, path: str) -> str:
        """File and line of a path; nothing for a value that no line of the file states."""
        reading = self.checked.reading
        if path not in reading.values and path not in reading.keys:
            return ""
        return f"  ({reading.name}:{place_of(reading, path)[0]})"

    def limit(self, read: Read, indent: str) -> list[str]:
        """A limit of the codebook with what it says, its section and its basis."""
        entry = self.case.codebook.entry(read.label)
        if entry.of == "table":
            text = f"a table, which `airtally explain {read.label}` shows"
        else:
            text = value_text(read.value, read.dimension, self.system)
        if read.label in self.limits:
            return wrapped(f"{read.label} = {text}, as above", f"{indent}limit    ", columns=COLUMNS)
        self.limits.add(read.label)
        why = f"{read.path.removeprefix('codebook: ')}; basis: {entry.basis}"
        return wrapped(f"{read.label} = {text} ({entry.says}; {why})", f"{indent}limit    ", columns=COLUMNS)

    def conclusion(self, outcome: Outcome) -> list[str]:
        """What follows."""
        needs = {need.name for need in outcome.rule.needs} | {"limit"}
        more = [
            f"{name.replace('_', ' ')} = {text_of(number, self.system)}"
            for name, number in outcome.numbers.items()
            if name not in needs and name.replace("_", "-") not in outcome.rule.limits
        ]
        met = outcome.outcome == "meets"
        said = "the requirement is met" if met else filled(outcome.message, outcome.numbers, self.system)
        if outcome.accepted:
            more.append(outcome.accepted)
        text = f"{said} ({', '.join(more)})" if more else said
        return [
            *wrapped(text, "  so       ", columns=COLUMNS),
            *wrapped(outcome.cites or "common practice", "  see      ", columns=COLUMNS),
        ]


def is_wiring(evaluation: Evaluation) -> bool:
    """Whether a step only joins things, and holds no number that a reader could follow."""
    result = evaluation.result
    if evaluation.problem or value_text(result, "", "trade"):
        return False
    parts = list(result.values()) if isinstance(result, dict) else result
    several = isinstance(parts, (list, set, frozenset)) or type(parts) is tuple
    return not any(tells_numbers(each) for each in (parts if several else [parts]))


def result_lines(result: Any, system: str) -> list[str]:
    """A record; one that lays out its own lines keeps their columns."""
    lines = record_lines(result, system)
    if hasattr(result, "worksheet_lines") and len(lines) > 1:
        return ["      result", *(part for line in lines for part in in_columns(f"        {line}".rstrip()))]
    return [part for line in lines for part in wrapped(line, "      result   ", columns=COLUMNS)]


def in_columns(line: str) -> list[str]:
    """A line as it is; where it is too long, in several that lose their columns and nothing else."""
    if width(line) <= COLUMNS:
        return [clean(line)]
    indent = " " * (len(line) - len(line.lstrip()))
    return wrapped(line.lstrip(), indent, f"{indent}    ", COLUMNS)


def given_reads(evaluation: Evaluation) -> list[Read]:
    """What plain fields among the quantities asked for took from the file."""
    return [read for asked in evaluation.asked if asked.quantity.source == GIVEN for read in asked.reads]
