"""What the README shows is what the program prints; its two commands are those that CI runs."""

import re
from pathlib import Path

import pytest

from tests.shown import ROOT, shown

README = ROOT / "README.md"
BLOCK = re.compile(
    r"<!-- prints: airtally (?P<arguments>[^;\n]+?)(?:; (?P<part>first|last) (?P<count>\d+) lines)? -->\n"
    r"```\w*\n(?P<text>.*?)```\n",
    re.S,
)


def printed(match: re.Match[str]) -> str:
    """What the command of a block prints, cut as the block says."""
    _, out, error = shown(*match["arguments"].split())
    lines = (out or error).splitlines(keepends=True)
    if match["part"] == "first":
        lines = [*lines[: int(match["count"])], "...\n"]
    elif match["part"] == "last":
        lines = ["...\n", *lines[-int(match["count"]) :]]
    return "".join(lines)


def test_shown_output_is_real(request: pytest.FixtureRequest) -> None:
    for page in (README, ROOT / "DEVELOPERS.md"):
        text = page.read_text(encoding="utf-8")

        def anew(match: re.Match[str]) -> str:
            return match.group(0).replace(f"\n{match['text']}```\n", f"\n{printed(match)}```\n")

        fresh = BLOCK.sub(anew, text)
        if request.config.getoption("--update-expected"):
            page.write_text(fresh, encoding="utf-8")
        assert fresh == page.read_text(encoding="utf-8")


def test_there_are_shown_outputs() -> None:
    assert len(BLOCK.findall(README.read_text(encoding="utf-8"))) >= 5


def test_ci_runs_the_two_commands() -> None:
    commands = [line for line in README.read_text(encoding="utf-8").splitlines() if line.startswith("pip install ")]

    assert len(commands) == 2
    assert "airtally check" in commands[0]
    assert "pytest" in commands[1]
    assert "README.md" in (ROOT / ".ci" / "run").read_text(encoding="utf-8")


def test_files_named_in_the_pages_exist() -> None:
    for page in (README, ROOT / "DEVELOPERS.md"):
        for name in re.findall(r"`((?:samples|schemas|rules|checker|tests)/[\w./-]+)`", page.read_text(encoding="utf-8")):
            assert Path(ROOT / name).exists(), name
