"""The bundle of compiled modules: used when fresh, made anew when stale, done without when it can't be written."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tests.shown import ROOT

SHOWS = (
    "import sys; sys.path.insert(0, {root!r})\n"
    "from checker import bundle\nbundle.use()\nimport checker.judge\n"
    "print(type(checker.judge.__spec__.loader).__name__, len(checker.judge.rules()))"
)


@pytest.fixture
def copy(tmp_path: Path) -> Path:
    for package in ("checker", "rules"):
        shutil.copytree(ROOT / package, tmp_path / package, ignore=shutil.ignore_patterns("__pycache__"))
    return tmp_path


def run(code: str, root: Path) -> str:
    environment = {key: value for key, value in os.environ.items() if key != "PYTHONDONTWRITEBYTECODE"}
    command = [sys.executable, "-c", code.format(root=str(root))]
    result = subprocess.run(command, cwd=root, env=environment, capture_output=True, text=True, check=True)
    return result.stdout.strip()


def bundle_of(root: Path) -> Path:
    return root / "checker" / "__pycache__" / f"bundle.{sys.implementation.cache_tag}"


def test_first_run_makes_it_and_later_ones_use_it(copy: Path) -> None:
    first = run(SHOWS, copy)
    made = bundle_of(copy).stat().st_mtime_ns
    second = run(SHOWS, copy)

    assert first == second
    assert first.startswith("Bundle ")
    assert bundle_of(copy).stat().st_mtime_ns == made


def test_a_new_rule_is_seen_at_once(copy: Path) -> None:
    before = int(run(SHOWS, copy).split()[1])
    (rule,) = (copy / "rules" / "ventilation").glob("vent_12_*.py")
    text = rule.read_text().replace("VENT-12", "VENT-98").replace("supply-and-exhaust-differ", "another-rule")
    (rule.parent / "vent_98_another_rule.py").write_text(text)

    assert int(run(SHOWS, copy).split()[1]) == before + 1


def test_a_spoilt_bundle_is_made_anew(copy: Path) -> None:
    expected = run(SHOWS, copy)
    bundle_of(copy).write_bytes(b"spoilt")

    assert run(SHOWS, copy) == expected
    assert bundle_of(copy).stat().st_size > 1000
