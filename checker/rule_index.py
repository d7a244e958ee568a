"""Which rules can be left unread: most designs lack most sections, and a rule about an absent one has nothing to judge.

Every rule is asked once, when the index is made, for its nodes in an empty design, and the sections that it looks at
are noted. What it answers there it answers for every design that lacks those sections, whatever else it holds. Such a
rule is not even loaded.
"""

from collections.abc import Iterable
from typing import Any

from checker.bundle import module_of
from checker.case import Case
from checker.design import Design
from checker.rule import Finding, Rule, Severity

Entry = tuple[str, str, str, Severity, str, tuple[str, ...], tuple[str, ...], str, tuple[str, ...]]


class Watched:
    """An empty design that notes what is read of it."""

    def __init__(self, empty: Design) -> None:
        self.empty = empty
        self.read: set[str] = set()

    def __getattr__(self, name: str) -> Any:
        self.read.add(name)
        return getattr(self.empty, name)


def looked_at(rule: Rule) -> tuple[str, ...]:
    """Sections whose absence leaves the rule without nodes; empty where that can't be told."""
    from checker.each import blank

    design = Watched(blank(Design, ""))
    case = Case(design, None)  # type: ignore[arg-type]  # a rule that asks the codebook for its nodes breaks here
    try:
        nodes = list(rule.over(case))
    except Exception:
        return ()
    return () if nodes else tuple(sorted(design.read))


def entry_of(rule: Rule, module: str) -> Entry:
    """What the index keeps of a rule."""
    return (
        rule.code, module, rule.name, rule.severity, rule.since, rule.limits, rule.cites, rule.nothing, looked_at(rule),
    )  # fmt: skip


class Waiting:
    """A rule that is loaded only when a design has something for it."""

    def __init__(self, entry: Entry) -> None:
        self.entry = entry
        self.code, self.module, self.name, *_, self.sections = entry

    def idle(self, design: Design) -> bool:
        """Whether the design lacks all that the rule looks at for its nodes."""
        return bool(self.sections) and not any(getattr(design, section) for section in self.sections)

    def rule(self, design: Design) -> Rule:
        """The rule, whole; where the design has nothing for it, only what an outcome shows of it."""
        if not self.idle(design):
            return module_of(self.module).RULE  # type: ignore[no-any-return]
        code, _, name, severity, since, limits, cites, nothing, _ = self.entry
        return Rule(code, name, severity, since, no_nodes, never, limits=limits, cites=cites, nothing=nothing)


def no_nodes(_case: Case) -> Iterable[Any]:
    """The nodes of a rule that a design has nothing for."""
    return ()


def never(*_: Any) -> Finding:
    """Stands for the function of a rule that has no nodes."""
    raise AssertionError("a rule without nodes was asked")
