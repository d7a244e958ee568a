"""The rule set itself: every rule has its page, its citation, its place, and an honest severity."""

import ast
import re
from importlib import import_module
from pathlib import Path

import pytest

from checker.codebook_table import ENTRIES
from checker.judge import modules
from checker.rule import AREAS, SEVERITIES, Rule

ROOT = Path(__file__).parents[2]
RULES = [(code, module) for code, module in modules()]
PUBLISHED = ("code", "standard", "guideline")


def load(module: str) -> tuple[Rule, str]:
    loaded = import_module(module)
    return loaded.RULE, loaded.__doc__ or ""


@pytest.mark.parametrize(("code", "module"), RULES, ids=[code for code, _ in RULES])
def test_rule(code: str, module: str) -> None:
    rule, page = load(module)
    stem = module.rpartition(".")[2]

    assert rule.code == code
    assert rule.area in AREAS
    assert rule.name == stem.split("_", 2)[2].replace("_", "-")
    assert re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)+", rule.name)
    assert rule.severity in SEVERITIES
    assert re.fullmatch(r"\d+\.\d+", rule.since)
    for key in (*rule.limits, *rule.cites):
        assert key in ENTRIES, key

    title, _, rest = page.partition("\n")
    assert title.endswith(".") and len(title) <= 110, title
    assert len(rest.split()) >= 25, "the page says too little"


@pytest.mark.parametrize(("code", "module"), RULES, ids=[code for code, _ in RULES])
def test_a_correction_rests_on_something_published(code: str, module: str) -> None:
    rule, _ = load(module)
    bases = [ENTRIES[key].basis for key in (*rule.limits, *rule.cites)]
    if rule.severity == "correction":
        assert bases and bases[0] in PUBLISHED, bases
    assert bases, "every rule cites at least one entry of the codebook"


def test_numbers_and_names_are_used_once() -> None:
    names = [load(module)[0].name for _, module in RULES]
    codes = [code for code, _ in RULES]
    assert len(set(codes)) == len(codes)
    assert len(set(names)) == len(names)


def test_every_entry_of_the_codebook_is_used() -> None:
    text = "\n".join(path.read_text() for folder in ("rules", "checker/quantities") for path in (ROOT / folder).rglob("*.py"))
    unused = [key for key in ENTRIES if f'"{key}"' not in text and f"'{key}'" not in text]
    assert unused == []


LONG = {"engine": 250, "rule": 130}


def test_modules_stay_short() -> None:
    long = {}
    for path in [*(ROOT / "checker").rglob("*.py"), *(ROOT / "rules").rglob("*.py")]:
        lines = path.read_text().count("\n")
        most = LONG["rule"] if path.is_relative_to(ROOT / "rules") else LONG["engine"]
        if lines > most and path.name not in ("codebook_table.py", "unit_table.py"):
            long[str(path.relative_to(ROOT))] = lines
    assert long == {}


def test_functions_stay_short() -> None:
    long = {}
    for path in [*(ROOT / "checker").rglob("*.py"), *(ROOT / "rules").rglob("*.py")]:
        for node in ast.walk(ast.parse(path.read_text())):
            if isinstance(node, ast.FunctionDef):
                length = (node.end_lineno or 0) - node.lineno + 1
                if length > 45:
                    long[f"{path.relative_to(ROOT)}:{node.name}"] = length
    assert long == {}
