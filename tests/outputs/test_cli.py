"""The command line: every command and option, exit statuses, and never a traceback."""

import json
import os
import re
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any, NamedTuple

import pytest

from checker import cli, judge
from checker.rule import Rule
from tests.outputs.sham_rules import BREAKS, COTTAGE, DOUBLED, LOW, NOTED, SOUND

ROOT = Path(__file__).parents[2]
FINE = """\
design_format: 1
project: {title: Sham cottage, code: irc-2021}
fans:
  bath: {role: exhaust, settings: {high: 60 cfm}}
"""
Chooser = Callable[[str, str], bool] | None


class Ran(NamedTuple):
    """How a command ended."""

    status: int
    out: str
    err: str


@pytest.fixture
def run(capsysbinary: pytest.CaptureFixture[bytes], monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Any:
    """Runs a command with sham rules in an empty folder; a traceback would fail the test."""
    chosen = list(SOUND)

    def rules(wanted: Chooser = None) -> list[Rule]:
        return [rule for rule in chosen if wanted is None or wanted(rule.code, rule.name)]

    monkeypatch.setattr(judge, "rules", rules)
    monkeypatch.setattr(judge, "waiting", rules)
    monkeypatch.setattr(
        judge, "modules",
        lambda: [(rule.code, f"rules.sham.sham_{rule.code[-2:]}_{rule.name.replace('-', '_')}") for rule in chosen],
    )  # fmt: skip
    monkeypatch.setenv("AIRTALLY_TODAY", "2026-01-01")
    monkeypatch.delenv("NO_COLOR", raising=False)
    monkeypatch.chdir(tmp_path)

    def command(*words: str, rules: list[Rule] | None = None) -> Ran:
        chosen[:] = rules if rules is not None else SOUND
        try:
            status = cli.main(list(words))
        except SystemExit as end:
            status = int(str(end.code))
        out, err = capsysbinary.readouterr()
        assert b"Traceback" not in err + out
        return Ran(status, out.decode("utf-8"), err.decode("utf-8"))

    return command


def wrote(name: str, text: str | bytes) -> str:
    path = Path(name)
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(text if isinstance(text, bytes) else text.encode())
    return name


def program(*words: str, cwd: Path, input: bytes = b"", **more: Any) -> subprocess.CompletedProcess[bytes]:
    env = {**os.environ, "PYTHONPATH": str(ROOT), **more}
    return subprocess.run(
        [sys.executable, "-m", "checker", *words], cwd=cwd, input=input, capture_output=True, env=env, check=False
    )


# check: exit statuses


def test_status_0_where_nothing_is_found(run: Any) -> None:
    ran = run("check", wrote("a.yaml", FINE))
    assert (ran.status, ran.err) == (0, "")
    assert "This is not an approval." in ran.out


def test_status_1_where_a_correction_is_found(run: Any) -> None:
    ran = run("check", wrote("a.yaml", COTTAGE))
    assert ran.status == 1
    assert "a.yaml:5:35: correction: moves 40 cfm, less than 50 cfm [EXH-90 sham-flow-low]" in ran.out


@pytest.mark.parametrize(
    ("least", "rules", "status"),
    [
        ("correction", [NOTED], 0), ("caution", [NOTED], 0), ("note", [NOTED], 1), ("never", [LOW], 0),
        ("correction", [LOW], 1), ("caution", [LOW], 1), ("note", [LOW], 1),
    ],
)  # fmt: skip
def test_fail_on(run: Any, least: str, rules: list[Rule], status: int) -> None:
    text = COTTAGE.partition("accepted:")[0]
    assert run("check", wrote("a.yaml", text), "--fail-on", least, rules=rules).status == status


def test_complete_counts_what_is_missing(run: Any) -> None:
    path = wrote("a.yaml", FINE.replace("60 cfm", "tbd"))
    assert run("check", path).status == 0
    assert run("check", path, "--complete").status == 1


def test_an_accepted_finding_does_not_fail(run: Any) -> None:
    path = wrote("a.yaml", COTTAGE.replace("fans.none", "fans.bath"))
    assert run("check", path, rules=[LOW]).status == 0


@pytest.mark.parametrize(
    ("content", "code"),
    [
        (b"", "FILE-06"),
        (b"# only a comment\n", "FILE-06"),
        (b"\x89PNG\r\n\x1a\n\0\0", "FILE-04"),
        ("title: é".encode("latin-1"), "FILE-05"),
        ("title: a".encode("utf-16"), "FILE-05"),
        (b"a: [", "FILE-08"),
        (b"- a\n", "FILE-19"),
        (b"x" * (2 * 1024 * 1024 + 1), "FILE-07"),
    ],
)
@pytest.mark.parametrize("format", ["text", "json", "sarif", "junit"])
def test_status_2_where_the_file_cannot_be_read(run: Any, content: bytes, code: str, format: str) -> None:
    ran = run("check", wrote("a.yaml", content), "--format", format)
    assert ran.status == 2
    assert code in ran.out


def test_a_missing_file(run: Any) -> None:
    ran = run("check", "none.yaml", wrote("a.yaml", FINE))
    assert ran.status == 2
    assert "none.yaml:1:1: correction: there is no such file [FILE-01 missing-file]" in ran.out
    assert "1 design read, 1 file could not be read" in ran.out


def test_an_unreadable_file(run: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    import builtins

    path = wrote("a.yaml", FINE)
    opened = builtins.open

    def refuse(file: Any, *words: Any, **more: Any) -> Any:
        if file == path:
            raise PermissionError(13, "Permission denied")
        return opened(file, *words, **more)

    monkeypatch.setattr(builtins, "open", refuse)
    ran = run("check", path)
    assert ran.status == 2
    assert "FILE-03" in ran.out


# check: folders and standard input


def test_a_folder_is_walked(run: Any) -> None:
    for name in ("d/b.yaml", "d/a/deep.yml", "d/.hidden/c.yaml"):
        wrote(name, COTTAGE)
    wrote("d/other.yaml", "services: {}\n")
    wrote("d/notes.txt", COTTAGE)
    ran = run("check", "d")
    heads = [line.split()[1] for line in ran.out.split("\n") if line.startswith("### ")]
    assert heads == [os.path.join("d", "b.yaml"), os.path.join("d", "a", "deep.yml")]


def test_a_folder_without_designs(run: Any) -> None:
    os.mkdir("d")
    wrote("d/other.yaml", "services: {}\n")
    ran = run("check", "d")
    assert ran.status == 2
    assert ran.out == ""
    assert ran.err.startswith("airtally: no design file found in d: ")


def test_standard_input(tmp_path: Path) -> None:
    ended = program("check", "-", "--name", "sketch.yaml", cwd=tmp_path, input=b"a: [")
    assert ended.returncode == 2
    assert b"sketch.yaml:1:" in ended.stdout
    assert program("check", "-", cwd=tmp_path, input=b"\xff\xfea").returncode == 2
    latin = program("check", "-", cwd=tmp_path, input=b"\xe9")
    assert (latin.returncode, latin.stdout) == (2, b"")
    assert b"standard input is not UTF-8 text (byte 1)" in latin.stderr
    assert b"Traceback" not in ended.stderr + latin.stderr


# check: choice of rules


@pytest.mark.parametrize(
    ("words", "codes"),
    [
        ((), {"VENT-90", "EXH-90", "PAPER-90"}),
        (("--only", "EXH-90"), {"EXH-90"}),
        (("--only", "exh"), {"EXH-90"}),
        (("--only", "Sham-Flow-Low,PAPER"), {"EXH-90", "PAPER-90"}),
        (("--only", "EXH", "--only", "VENT-90"), {"EXH-90", "VENT-90"}),
        (("--without", "EXH"), {"VENT-90", "PAPER-90"}),
        (("--only", "EXH,VENT", "--without", "sham-flow-low"), {"VENT-90"}),
    ],
)
def test_choice_of_rules(run: Any, words: tuple[str, ...], codes: set[str]) -> None:
    ran = run("check", wrote("a.yaml", COTTAGE), "--format", "json", *words)
    said = json.loads(ran.out)["designs"][0]["outcomes"]
    assert {each["rule"] for each in said if each["area"] != "FILE"} == codes


@pytest.mark.parametrize("option", ["--only", "--without"])
def test_an_unknown_rule_is_refused(run: Any, option: str) -> None:
    ran = run("check", wrote("a.yaml", COTTAGE), option, "sham-flow-lo")
    assert (ran.status, ran.out) == (2, "")
    assert "`sham-flow-lo` is no area, code or name of a rule: the nearest spelling is `sham-flow-low`" in ran.err


# check: formats and looks


def test_each_format(run: Any) -> None:
    path = wrote("a b.yaml", COTTAGE)
    assert json.loads(run("check", path, "--format", "json").out)["designs"][0]["path"] == path
    assert json.loads(run("check", path, "--format", "sarif").out)["version"] == "2.1.0"
    assert run("check", path, "--format", "junit").out.startswith("<?xml")
    assert "== Summary ==" in run("check", path, "--format", "text").out


def test_units_and_colour(run: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    path = wrote("a.yaml", COTTAGE)
    assert "moves 19 L/s, less than 24 L/s" in run("check", path, "--units", "metric").out
    assert "\x1b[1;31mcorrection\x1b[0m" in run("check", path, "--color", "always").out
    assert "\x1b" not in run("check", path).out
    assert "\x1b" not in run("check", path, "--color", "never").out
    monkeypatch.setattr(cli.sys.stdout, "isatty", lambda: True)
    assert cli.colored("auto") is True
    monkeypatch.setenv("NO_COLOR", "1")
    assert cli.colored("auto") is False
    assert cli.colored("always") is True


# faults of ours


@pytest.mark.parametrize("format", ["text", "json", "sarif", "junit"])
def test_a_rule_that_raises_leaves_the_others_their_turn(run: Any, format: str) -> None:
    ran = run("check", wrote("a.yaml", COTTAGE), "--format", format, rules=[BREAKS, LOW])
    assert ran.status == 2
    assert "ZeroDivisionError: sham" in ran.out
    assert "moves 40 cfm, less than 50 cfm" in ran.out


def test_whatever_else_breaks_is_told_in_a_line(run: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    import checker.run

    monkeypatch.setattr(checker.run, "check_reading", lambda *_: 1 / 0)
    ran = run("check", wrote("a.yaml", COTTAGE))
    assert ran.status == 2
    assert "airtally: ZeroDivisionError: division by zero at test_cli.py:" in ran.err
    assert ran.err.count("\n") == 1


def test_output_that_nobody_reads(tmp_path: Path) -> None:
    (tmp_path / "a.yaml").write_text(COTTAGE + "".join(f"bogus{number}: 1\n" for number in range(2000)))
    reading, writing = os.pipe()
    os.close(reading)
    with os.fdopen(writing, "wb") as closed:
        ended = subprocess.run(
            [sys.executable, "-m", "checker", "check", "a.yaml", "--format", "json"], cwd=tmp_path, check=False,
            stdout=closed, stderr=subprocess.PIPE, env={**os.environ, "PYTHONPATH": str(ROOT)},
        )  # fmt: skip
    assert ended.stderr == b""
    assert ended.returncode == 0


@pytest.mark.skipif(os.name == "nt", reason="names of files are text there")
def test_a_file_name_that_is_not_utf_8(tmp_path: Path) -> None:
    name = os.path.join(os.fsencode(tmp_path), b"caf\xe9.yaml")
    with open(name, "w") as file:
        file.write(FINE.replace("fans:", "bogus: 1\nfans:"))
    for format in ("text", "json", "sarif", "junit"):
        ended = program("check", ".", "--format", format, "--only", "VENT", cwd=tmp_path)
        assert b"Traceback" not in ended.stderr
        assert ended.returncode == 1
        assert b"FILE-20" in ended.stdout


def test_a_terminal_of_another_encoding(tmp_path: Path) -> None:
    (tmp_path / "a.yaml").write_text(FINE.replace("fans:", "日本: 1\nfans:"), encoding="utf-8")
    ended = program("check", "a.yaml", cwd=tmp_path, PYTHONIOENCODING="ascii", LC_ALL="C")
    assert "日本" in ended.stdout.decode("utf-8")


# the other commands


def test_worksheet(run: Any) -> None:
    ran = run("worksheet", wrote("a.yaml", COTTAGE), "--units", "metric", "--only", "EXH", "--color", "never")
    assert ran.status == 0
    assert "EXH-90 sham-flow-low  fans.bath.settings: finding" in ran.out
    assert "19 L/s" in ran.out
    assert run("worksheet", wrote("b.yaml", "a: [")).status == 2
    assert run("worksheet", "none.yaml").status == 2


def test_worksheets_of_a_folder(run: Any) -> None:
    wrote("d/a.yaml", COTTAGE)
    wrote("d/b.yaml", COTTAGE)
    assert run("worksheet", "d").out.count("WORKSHEET  Sham cottage") == 2


def test_explain(run: Any) -> None:
    assert run("explain", "exh-90").out.startswith("EXH-90 sham-flow-low\n")
    assert run("explain", "fans.settings").status == 0
    ran = run("explain", "fans.setings")
    assert (ran.status, ran.out) == (2, "")
    assert ran.err.startswith("airtally: nothing is called `fans.setings`: the nearest spelling is `fans.settings`")


def test_catalogue(run: Any) -> None:
    assert re.search(r"^EXH-90 +correction  sham-flow-low ", run("catalogue", rules=[LOW, DOUBLED]).out, re.MULTILINE)
    listed = json.loads(run("catalogue", "--format", "json", rules=[LOW]).out)
    assert listed[-1]["code"] == "EXH-90"


def test_version_and_help(run: Any) -> None:
    assert run("--version").out.startswith("airtally 0.")
    text = run("--help").out
    assert "exit status: 0" in text and "Gas, carbon monoxide" in text
    for command in ("check", "worksheet", "explain", "catalogue"):
        assert run(command, "--help").status == 0


@pytest.mark.parametrize(
    "words", [(), ("chek",), ("check",), ("check", "a.yaml", "--format", "xml"), ("explain",), ("catalogue", "x")]
)
def test_wrong_words_are_refused(run: Any, words: tuple[str, ...]) -> None:
    ran = run(*words)
    assert ran.status == 2
    assert ran.err.startswith("usage: airtally")
