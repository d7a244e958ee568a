"""What a design need not say yet: on a sketch, the details that belong on the permit drawing."""

from collections.abc import Callable
from typing import Any

from checker.case import Case


def is_sketch(case: Case) -> bool:
    """Whether the design calls itself a sketch; one that does not say its stage is taken for a drawing."""
    project = case.design.project
    return project is not None and project.stage == "sketch"


def is_built(case: Case) -> bool:
    """Whether the design is that of the finished work."""
    project = case.design.project
    return project is not None and project.stage == "as-built"


Condition = Callable[[Case, Any], bool]


def due(
    *fields: str, when: Condition | None = None, early: Condition | None = None, on_site: bool = False
) -> Condition:
    """A condition for a rule: on a sketch these fields are only judged where one of them is spoken of.

    The node may be a system of several `lines`: then any of them may speak. `when`: a further condition of the rule.
    `early`: what makes the question matter on a sketch already. `on_site`: what is settled by who installs it, so that
    a permit drawing need not say it either.
    """

    def is_due(case: Case, node: Any) -> bool:
        """It is a sketch, which need not say this yet."""
        speakers = getattr(node, "lines", (node,))
        spoken = any(case.speaks_of(each, field) for each in speakers for field in fields)
        soon = is_sketch(case) or (on_site and not is_built(case))
        if soon and not spoken and not (early is not None and early(case, node)):
            return False
        return when is None or when(case, node)

    reason = "it is settled on site, and no drawing need say it" if on_site else "it is a sketch, which need not say this yet"
    is_due.__doc__ = f"{reason[0].upper()}{reason[1:]}."
    if when is not None:
        is_due.__doc__ = f"{(when.__doc__ or '').strip().rstrip('.')}, or {reason}."
    return is_due


def is_alteration(case: Case) -> bool:
    """Whether an existing house is altered; false where nobody says so."""
    project = case.design.project
    return project is not None and case.maybe(project, "work") == "alteration"
