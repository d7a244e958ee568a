"""rules/examples.json: of each rule the first design that meets it and the first that does not, as YAML text."""

import io
import os
from typing import Any

from checker.judge import modules
from checker.read import Reading, read_file

ROOT = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
SHOWN = ("meets", "finding")


class CasesError(ValueError):
    """A case file cannot be read."""


def examples() -> dict[str, dict[str, str]]:
    """Example designs by code and outcome, from the case files of the tests. Raises CasesError."""
    found: dict[str, dict[str, str]] = {}
    for code, module in modules():
        _, area, stem = module.split(".")
        path = os.path.join(ROOT, "tests", "rules", area, f"{stem}.yaml")
        if os.path.exists(path):
            found[code] = first_of_each(path, read_file(path))
    return found


def first_of_each(path: str, reading: Reading) -> dict[str, str]:
    """The first design of each outcome that is shown."""
    from tests.rules.case_files import START, merged

    if reading.faults or not isinstance(reading.data, dict):
        raise CasesError(f"{path}: {reading.faults[0].message if reading.faults else 'not a block'}")
    base = merged(START, reading.data.get("base") or {})
    designs: dict[str, str] = {}
    for case in reading.data.get("cases") or []:
        outcome = case.get("outcome")
        if outcome in SHOWN and outcome not in designs:
            designs[outcome] = under(case.get("criteria")) + as_text(merged(base, case.get("with") or {}))
    return designs


def under(criteria: dict[str, str] | None) -> str:
    """A comment that tells the design criteria of the jurisdiction, where an example depends on them."""
    if not criteria:
        return ""
    return f"# design criteria of the jurisdiction: {', '.join(f'{key} {value}' for key, value in criteria.items())}\n"


def as_text(design: dict[str, Any]) -> str:
    """A design as YAML, in the order in which it was written."""
    from ruamel.yaml import YAML

    out = io.StringIO()
    yaml = YAML()
    yaml.default_flow_style = False
    yaml.width = 4000
    yaml.dump(design, out)
    return out.getvalue()
