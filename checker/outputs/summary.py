"""The close of the text report: what fits a screen."""

from collections import Counter
from collections.abc import Callable

from checker.outputs.layout import clipped, counted, wrapped
from checker.outputs.numbers import filled
from checker.rule import SEVERITIES, Outcome
from checker.run import Checked, alike, unlocks

DEFERS = "the locally adopted code and the authority having jurisdiction decide"
MOST_WANTED = 6
MOST_LISTED = 3
Ink = Callable[[str, str], str]


def summary(checked: list[Checked], ink: Ink, system: str) -> list[str]:
    """Counts, the inputs that would let most rules be judged, what is outside the methods, what is accepted."""
    outcomes = [outcome for each in checked for outcome in each.outcomes]
    unread = sum(each.unreadable for each in checked)
    read = f"{counted(len(checked) - unread, 'design')} read" if len(checked) > unread else ""
    closed = f"{counted(unread, 'file')} could not be read" if unread else ""
    lines = [ink("== Summary ==", "head"), ", ".join(part for part in (read, closed) if part)]
    lines.append(findings_line(outcomes))
    if checks := checks_line(outcomes):
        lines += wrapped(checks, "  ", "  ")
    several = len(checked) > 1
    lines += wanted(checked, ink)
    outside = [
        f"{where(each, several)}{outcome.path or 'the design'}: {filled(outcome.message, outcome.numbers, system)} "
        f"[{outcome.rule.code} {outcome.rule.name}]"
        for each in checked
        for outcome in each.outcomes
        if outcome.outcome == "cannot-judge"
    ]
    lines += listing("Outside what the methods can judge; have it worked out another way", outside, ink)
    accepted = [
        f"{where(each, several)}{outcome.path or 'the design'}: {outcome.accepted} "
        f"[{outcome.rule.code} {outcome.rule.name}]"
        for each in checked
        for outcome in each.outcomes
        if outcome.accepted
    ]
    lines += listing("Accepted", accepted, ink)
    if not unread and not any(outcome.outcome == "finding" and not outcome.accepted for outcome in outcomes):
        lines.append("No open finding by the rules that could be judged. This is not an approval.")
    lines.append(ink(f"An aid, not a review: {DEFERS}.", "quiet"))
    return lines


def where(checked: Checked, several: bool) -> str:
    """The file before a path, where there are several."""
    return f"{checked.reading.name}: " if several else ""


def findings_line(outcomes: list[Outcome]) -> str:
    """`3 corrections, 4 cautions, 1 note`, accepted ones left out."""
    found = Counter(o.rule.severity for o in outcomes if o.outcome == "finding" and not o.accepted)
    line = ", ".join(counted(found[severity], severity) for severity in SEVERITIES)
    missing = {path for outcome in outcomes for path in outcome.missing}
    return f"{line}; {counted(len(missing), 'item')} of information missing" if missing else line


def checks_line(outcomes: list[Outcome]) -> str:
    """How many checks came out how; nothing where no rule was judged."""
    counts: Counter[str] = Counter(outcome.outcome for outcome in outcomes)
    meanings = (
        ("meets", "met by the figures given"), ("needs-info", "waiting for information"),
        ("cannot-judge", "outside what the methods can judge"), ("not-applicable", "not applicable"),
        ("rule-failed", "broke, which is a fault of airtally"),
    )  # fmt: skip
    parts = [f"{counts[word]} {meaning}" for word, meaning in meanings if counts[word]]
    judged = sum(counts[word] for word, _ in meanings)
    judged += len([o for o in outcomes if o.outcome == "finding" and o.rule.area != "FILE"])
    return f"{counted(judged, 'check')}: {', '.join(parts)}" if parts else ""


def wanted(checked: list[Checked], ink: Ink) -> list[str]:
    """The missing inputs, the most useful first; the same question about several things is asked once."""
    several = len(checked) > 1
    asked: dict[tuple[str, ...], tuple[str, list[int]]] = {}
    for each in checked:
        for path, count in unlocks(each.outcomes):
            shown = where(each, several)
            asked.setdefault((shown, *alike(path)), (shown + path, []))[1].append(count)
    if not asked:
        return []
    left = f" (first {MOST_WANTED} of {len(asked)})" if len(asked) > MOST_WANTED else ""
    lines = [ink(f"Missing information, the most useful first{left}:", "head")]
    for path, counts in list(asked.values())[:MOST_WANTED]:
        more = f" and {len(counts) - 1} more like it" if len(counts) > 1 else ""
        lines.append(clipped(f"  {path}{more}  ({counted(max(counts), 'rule')})"))
    return lines


def listing(title: str, entries: list[str], ink: Ink) -> list[str]:
    """A few entries under a title, each on one line."""
    if not entries:
        return []
    left = f" (first {MOST_LISTED} of {len(entries)})" if len(entries) > MOST_LISTED else ""
    return [ink(f"{title}{left}:", "head"), *(clipped(f"  {entry}") for entry in entries[:MOST_LISTED])]
