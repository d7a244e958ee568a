"""What a design need not say yet: on a sketch, the details that belong on the permit drawing."""

from collections.abc import Callable
from typing import Any

from checker.case import Case


def is_sketch(case: Case) -> bool:
    """Whether the design calls itself a sketch; one that does not say its stage is taken for a drawing."""
    project = case.design.project
    return project is not None and project.stage == "sketch"


Condition = Callable[[Case, Any], bool]


def due(*fields: str, when: Condition | None = None, early: Condition | None = None) -> Condition:
    """A condition for a rule: on a sketch these fields are only judged where one of them is spoken of.

    The node may be a system of several `lines`: then any of them may speak. `when`: a further condition of the rule.
    `early`: what makes the question matter on a sketch already.
    """

    def is_due(case: Case, node: Any) -> bool:
        """It is a sketch, which need not say this yet."""
        speakers = getattr(node, "lines", (node,))
        spoken = any(case.speaks_of(each, field) for each in speakers for field in fields)
        if is_sketch(case) and not spoken and not (early is not None and early(case, node)):
            return False
        return when is None or when(case, node)

    if when is not None:
        is_due.__doc__ = f"{(when.__doc__ or '').strip().rstrip('.')}, or it is a sketch, which need not say this yet."
    return is_due
