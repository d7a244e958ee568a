"""The findings as a reviewer's comments: numbered, each with its place, source line, help and section."""

from collections import Counter
from collections.abc import Iterable

from checker.outputs.numbers import filled
from checker.rule import AREAS, Outcome
from checker.run import Checked, unlocks

DEFERS = "the locally adopted code and the authority having jurisdiction decide"
COLORS = {"correction": "1;31", "caution": "1;33", "note": "1;36", "head": "1", "quiet": "2"}


def report(checked: list[Checked], system: str, color: bool) -> str:
    """The whole text report of a run."""
    ink = Ink(color)
    lines: list[str] = []
    for each in checked:
        lines += comments(each, system, ink)
    lines += summary(checked, ink)
    return "\n".join(lines) + "\n"


class Ink:
    """Colour, or none."""

    def __init__(self, color: bool) -> None:
        self.color = color

    def __call__(self, text: str, kind: str) -> str:
        """The text in the colour of a kind."""
        return f"\x1b[{COLORS[kind]}m{text}\x1b[0m" if self.color and text else text


def comments(checked: Checked, system: str, ink: Ink) -> list[str]:
    """The findings of one file under the headings of their areas, and rules that broke."""
    lines: list[str] = []
    area = ""
    source = checked.reading.text.split("\n")
    for outcome in checked.outcomes:
        if outcome.outcome == "rule-failed":
            lines += [position(checked, outcome) + f"fault of airtally: {outcome.message} {tag(outcome)}", ""]
        if outcome.outcome != "finding" or outcome.accepted:
            continue
        if outcome.rule.area != area:
            area = outcome.rule.area
            lines += [ink(f"== {AREAS[area]} ==", "head"), ""]
        lines += comment(checked, outcome, source, system, ink)
    return lines


def comment(checked: Checked, outcome: Outcome, source: list[str], system: str, ink: Ink) -> list[str]:
    """One numbered comment."""
    severity = ink(outcome.rule.severity, outcome.rule.severity)
    message = filled(outcome.message, outcome.numbers, system)
    lines = [ink(f"Comment {outcome.number}", "head") + (f"  {outcome.path}" if outcome.path else "")]
    lines.append(f"{position(checked, outcome)}{severity}: {message} {tag(outcome)}")
    lines += excerpt(outcome, source)
    if outcome.help:
        lines.append(f"    to change: {filled(outcome.help, outcome.numbers, system)}")
    if outcome.rule.area != "FILE":
        lines.append(ink(f"    see: {outcome.cites or 'common practice'}; {DEFERS}", "quiet"))
    lines.append("")
    return lines


def position(checked: Checked, outcome: Outcome) -> str:
    """`file:line:column: ` at the head of a line."""
    line, column = outcome.place[0] or 1, outcome.place[1] or 1
    return f"{checked.reading.name}:{line}:{column}: "


def tag(outcome: Outcome) -> str:
    """`[CODE name]` at the end of a line."""
    return f"[{outcome.rule.code} {outcome.rule.name}]"


def excerpt(outcome: Outcome, source: list[str]) -> list[str]:
    """The source line with carets under the place."""
    line, column, end_line, end_column = outcome.place
    if not 1 <= line <= len(source):
        return []
    text = source[line - 1].rstrip("\r").expandtabs(1)
    width = (end_column if end_line == line else len(text) + 1) - column
    gutter = f"  {line:>5} | "
    return [gutter + text, " " * 8 + "| " + " " * (column - 1) + "^" * max(1, min(width, len(text) - column + 1))]


def summary(checked: list[Checked], ink: Ink) -> list[str]:
    """What fits a screen: counts, the inputs that would unlock most, what is accepted."""
    outcomes = [outcome for each in checked for outcome in each.outcomes]
    files = len(checked)
    lines = [ink("== Summary ==", "head"), f"{files} design{'s' if files != 1 else ''} read"]
    lines.append(f"  {findings_line(outcomes)}")
    places: Counter[str] = Counter(outcome.outcome for outcome in outcomes)
    rules = {word: len({o.rule.code for o in outcomes if o.outcome == word}) for word in places}
    for word, meaning in (
        ("meets", "met by the figures given"), ("needs-info", "wait for information"),
        ("cannot-judge", "are outside what the methods can judge"), ("not-applicable", "do not apply"),
        ("rule-failed", "broke: our fault"),
    ):  # fmt: skip
        if places[word]:
            count = places[word]
            many = f"{count} check{'s' if count != 1 else ''}"
            lines.append(f"  {many} by {rules[word]} rule{'s' if rules[word] != 1 else ''} {meaning}")
    accepted = [outcome for outcome in outcomes if outcome.accepted]
    lines += [f"  accepted: {tag(outcome)} {outcome.path}: {outcome.accepted}" for outcome in accepted]
    lines += wanted(outcomes, ink)
    lines += [outside(outcome) for outcome in outcomes if outcome.outcome == "cannot-judge"][:5]
    if not any(outcome.outcome == "finding" for outcome in outcomes):
        lines.append("No finding by the rules that could be judged. This is not an approval.")
    lines.append(ink(f"An aid, not a review: {DEFERS}.", "quiet"))
    return lines


def findings_line(outcomes: Iterable[Outcome]) -> str:
    """`3 corrections, 4 cautions, 1 note`, accepted ones apart."""
    found = Counter(o.rule.severity for o in outcomes if o.outcome == "finding" and not o.accepted)
    parts = [f"{found[s]} {s}{'s' if found[s] != 1 else ''}" for s in ("correction", "caution", "note")]
    return ", ".join(parts)


def wanted(outcomes: list[Outcome], ink: Ink) -> list[str]:
    """The missing inputs, ranked by how many rules each would help to judge."""
    ranked = unlocks(outcomes)
    if not ranked:
        return []
    lines = [ink("Information that would let most rules be judged:", "head")]
    lines += [f"  {path}  ({count} rule{'s' if count != 1 else ''})" for path, count in ranked[:8]]
    if len(ranked) > 8:
        lines.append(f"  and {len(ranked) - 8} more; `--format json` lists them all")
    return lines


def outside(outcome: Outcome) -> str:
    """A rule that could not judge, in a line."""
    return f"  cannot judge {tag(outcome)} {outcome.path}: {outcome.message}"
