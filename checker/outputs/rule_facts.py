"""What is known of a rule without a design: its page, its basis, its sections by edition."""

import re
import sys
from collections.abc import Mapping
from typing import Any

from checker.case import Worked
from checker.codebook import Entry
from checker.faults import FAULTS
from checker.rule import Rule
from checker.run import fault_rule

OF_THE_FORMAT = "standard"  # YAML 1.2 and the published schema of design files
UNWRITTEN = "common practice"
RAISES = re.compile(r"\s*\b(?:Raises|NotApplicable|CannotJudge|Missing)\b.*")


def page_of(rule: Rule) -> tuple[str, list[str]]:
    """Title (one sentence) and paragraphs of a rule's page."""
    if rule.area == "FILE":
        kind = FAULTS[rule.code]
        return kind.title, [kind.page]
    text = getattr(sys.modules.get(rule.check.__module__), "__doc__", None) or ""
    title, *paragraphs = [" ".join(part.split()) for part in text.strip().split("\n\n")]
    return title or rule.name.replace("-", " "), paragraphs


def keys_of(rule: Rule) -> tuple[str, ...]:
    """Codebook keys of a rule, limits first."""
    return (*rule.limits, *rule.cites)


def basis_of(rule: Rule, entries: Mapping[str, Entry]) -> str:
    """What a rule rests on: the basis of its first codebook entry."""
    if rule.area == "FILE":
        return OF_THE_FORMAT
    keys = keys_of(rule)
    basis = entries[keys[0]].basis if keys else UNWRITTEN
    return UNWRITTEN if basis == "guideline" else basis  # published advice binds nobody


def sections_of(rule: Rule, entries: Mapping[str, Entry]) -> dict[str, str]:
    """Sections by edition, joined where a rule has several; `any` where no edition counts."""
    found: dict[str, list[str]] = {}
    for key in keys_of(rule):
        section = entries[key].section
        by_edition = section if isinstance(section, dict) else {"any": section} if section else {}
        for edition, text in by_edition.items():
            if text not in found.setdefault(edition, []):
                found[edition].append(str(text))
    return {edition: "; ".join(texts) for edition, texts in found.items()}


def file_rules() -> list[Rule]:
    """The kinds of fault of a design file, as rules."""
    return [fault_rule(code) for code in FAULTS]


def worked_by(quantity: Worked[Any, Any]) -> str:
    """How a quantity is worked out: its formula, else what its docstring says of the value."""
    text = quantity.formula or (quantity.function.__doc__ or "").strip().partition("\n")[0]
    return RAISES.sub("", text).rstrip(".")
