"""One thing judged by several parts, of which one that is wrong need not wait for the others to be known."""

from collections.abc import Callable, Sequence

from checker.case import Case, Missing
from checker.design.fields import Node


def first_wrong(parts: Sequence[tuple[str, Callable[[], bool]]]) -> str:
    """The first part that is known to be wrong, "" where all are right. Raises Missing where none is and some lack."""
    absent: list[str] = []
    for name, is_wrong in parts:
        try:
            if is_wrong():
                return name
        except Missing as gap:
            absent.extend(gap.paths)
    if absent:
        raise Missing(*absent)
    return ""


def known(case: Case, node: Node | None, path: str, field: str) -> float:
    """A field that one part of a judgement reads, so that another part may do without it. Raises Missing."""
    value = None if node is None else case.maybe(node, field)
    if value is None:
        raise Missing(f"{path}.{field}")
    return float(value)
