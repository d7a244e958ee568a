"""`python -m tests.published.agreement` prints how our figures agree with published ones, and what the tool rests on.

`--write` writes README.md beside this file, `--check` tells whether it is as it would be written.
"""

import sys
from collections.abc import Iterable, Sequence
from itertools import groupby
from statistics import median
from typing import NamedTuple

from tests.published.basis import basis_tables
from tests.published.left_out import LEFT_OUT
from tests.published.reach import unreached
from tests.published.register import FOLDER, Check, checks, registers

PAGE = FOLDER / "README.md"
LONG = 12
HEAD = """# Published values beside ours

Written by `python -m tests.published.agreement --write`; do not edit. The values are in the YAML files of this folder,
one for each subject; `test_register.py` asserts every one of them within the tolerance shown, and that misprints are not
reproduced. *Worked out* values come from a formula of ours; *held* ones stand in a table of ours as they are printed.
"""


class Compared(NamedTuple):
    """A check with our value."""

    check: Check
    value: float

    @property
    def off(self) -> float:
        """How far ours is from the print, SI; nothing where neither has a limit."""
        return 0.0 if self.value == self.check.published.value else self.value - self.check.published.value

    @property
    def percent(self) -> float | None:
        """The same in percent, where that means anything."""
        published = self.check.published
        return 100.0 * self.off / abs(published.value) if published.is_ratio else None

    @property
    def share(self) -> float:
        """The difference as a share of the tolerance."""
        return abs(self.off) / self.check.allowed if self.check.allowed else 0.0

    @property
    def shown(self) -> str:
        """The difference as text: percent, or in the printed unit."""
        if self.percent is not None:
            return percent_text(self.percent)
        unit = self.check.published
        return f"{self.off / unit.factor:+.2f} {unit.unit}".strip() if abs(self.off) > 1e-12 else "0"


def percent_text(value: float) -> str:
    """A difference in percent; noise of the last bits is none."""
    return "0" if abs(value) < 5e-4 else f"{value:+.2f} %"


def compared() -> list[Compared]:
    """Every check of the register with our value, in the order of the files."""
    return [Compared(check, check.ours()) for file in registers() for check in checks(file)]


def table(heads: Sequence[str], rows: Iterable[Sequence[str]]) -> list[str]:
    """A Markdown table."""
    body = [f"| {' | '.join(cell.replace('|', '/') for cell in row)} |" for row in rows]
    return [f"| {' | '.join(heads)} |", f"|{'---|' * len(heads)}", *body, ""]


def summary(found: Sequence[Compared]) -> list[str]:
    """Counts and differences by subject."""
    subjects = list(dict.fromkeys(each.check.subject for each in found))
    rows = [summary_row(name, [each for each in found if each.check.subject == name]) for name in subjects]
    heads = ("subject", "values", "worked out", "held", "median difference", "largest difference", "largest share of tolerance")
    return table(heads, [*rows, summary_row("all", found)])


def summary_row(name: str, found: Sequence[Compared]) -> list[str]:
    """One subject: differences are those of worked out values."""
    worked = [each for each in found if not each.check.held]
    percents = [abs(each.percent) for each in worked if each.percent is not None]
    return [
        name, str(len(found)), str(len(worked)), str(len(found) - len(worked)),
        f"{median(percents):.2f} %" if percents else "", f"{max(percents):.2f} %" if percents else "",
        f"{max(each.share for each in worked):.0%}" if worked else "",
    ]  # fmt: skip


def read_row(found: Sequence[Compared]) -> list[str]:
    """How the values came to be known."""
    words = {
        "inputs and result": "inputs and result read in a public copy", "inputs": "inputs read, result worked out apart",
        "equation": "equation read, numbers worked out apart", "recalled": "recalled, not read",
    }  # fmt: skip
    counts = {word: sum(each.check.read == word for each in found) for word in words}
    return [f"- {words[word]}: {count} ({count / len(found):.0%})" for word, count in counts.items()]


def subject_table(found: Sequence[Compared]) -> list[str]:
    """The entries of a subject, long tables in one line."""
    rows: list[list[str]] = []
    for _, group in groupby(found, key=lambda each: each.check.what):
        entry = list(group)
        if len(entry) > LONG or (entry[0].check.held and len(entry) > 2):
            rows.append(long_row(entry))
        else:
            rows += [row_of(each, place > 0) for place, each in enumerate(entry)]
    return table(("what", "published", "ours", "difference", "tolerance", "source"), rows)


def row_of(each: Compared, follows: bool) -> list[str]:
    """One value; one that follows another of its entry does not say again what it is and where it is from."""
    check = each.check
    what = f"... {check.row}" if follows else f"{check.what}: {check.row}" if check.row else check.what
    if check.misprint is not None:
        what += f" (misprinted as {check.misprint.text(check.misprint.value)}: {check.why})"
    ours = check.published.text(each.value, 0 if check.held else 1)
    source = "as above" if follows else f"{check.source}{recalled(check)}"
    return [what, check.as_printed, ours, each.shown, check.within, source]


def long_row(entry: Sequence[Compared]) -> list[str]:
    """Many values in one line: the one that is furthest off."""
    worst = max(entry, key=lambda each: each.share)
    check = worst.check
    if all(each.shown == "0" for each in entry):
        return [check.what, f"{len(entry)} values", "as printed", "0", check.within, f"{check.source}{recalled(check)}"]
    what = f"{check.what}: {len(entry)} values, furthest off at {check.row}"
    return [what, check.as_printed, check.published.text(worst.value, 1), worst.shown, check.within,
            f"{check.source}{recalled(check)}"]  # fmt: skip


def recalled(check: Check) -> str:
    """A mark on what was not read."""
    return " (recalled)" if check.read == "recalled" else ""


def unused_lines(found: Sequence[Compared]) -> list[str]:
    """Values whose formula nothing that a user sees rests on."""
    idle = {f"checker.physics.{name}" for name in unreached()}
    by = [each for each in found if idle & set(each.check.functions)]
    names = sorted({name.removeprefix("checker.physics.") for each in by for name in idle & set(each.check.functions)})
    listed = ", ".join(f"`{name}`" for name in names)
    return [f"{len(by)} of these are of formulas that no rule and no quantity uses as they are: {listed}.", ""] if by else []


def page() -> str:
    """The whole page."""
    found = compared()
    wrong = sum(each.check.misprint is not None for each in found)
    furthest = max((each for each in found if each.percent is not None), key=lambda each: abs(each.percent or 0.0))
    worst = f"Furthest off: {furthest.check.what}, {furthest.shown} ({furthest.check.within} allowed)."
    lines = [HEAD, "## By subject", "", *summary(found), worst, "", f"Of {len(found)} values:", "", *read_row(found)]
    lines += [f"- printed wrong at their source, and not reproduced: {wrong}", ""]
    lines += [*unused_lines(found), "Not used, and why:", "", *(f"- {what}: {why}" for what, why in LEFT_OUT), ""]
    lines += ["## What the tool rests on", "", *basis_tables(table)]
    for subject, group in groupby(found, key=lambda each: each.check.subject):
        lines += [f"## {subject}", "", *subject_table(list(group))]
    return "\n".join(lines)


def main() -> int:
    """Print the page; write or check it where asked."""
    text = page()
    if "--write" in sys.argv:
        PAGE.write_text(text, encoding="utf-8")
    elif "--check" in sys.argv:
        return 0 if PAGE.exists() and PAGE.read_text(encoding="utf-8") == text else 1
    else:
        sys.stdout.write(text)
    return 0


if __name__ == "__main__":
    sys.exit(main())
