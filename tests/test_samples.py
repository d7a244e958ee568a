"""Whole samples beside their expected output; `--update-expected` writes it anew, to be read in review."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.shown import ROOT, shown

SAMPLES = sorted(path.relative_to(ROOT).as_posix() for path in (ROOT / "samples").glob("*.yaml"))


@pytest.mark.parametrize("sample", SAMPLES)
def test_sample(sample: str, request: pytest.FixtureRequest) -> None:
    status, text, error = shown("check", sample)
    expected = ROOT / sample.replace(".yaml", ".txt")
    if request.config.getoption("--update-expected"):
        expected.write_text(text, encoding="utf-8")

    assert error == ""
    assert status in (0, 1)
    assert text == expected.read_text(encoding="utf-8")


@pytest.mark.parametrize("sample", SAMPLES)
def test_no_fault_of_form_and_no_rule_that_broke(sample: str) -> None:
    _, text, _ = shown("check", sample, "--format", "json")
    outcomes = json.loads(text)["designs"][0]["outcomes"]

    assert not [each for each in outcomes if each["outcome"] == "rule-failed"]
    assert not [each for each in outcomes if each["area"] == "FILE"]


@pytest.mark.parametrize("sample", SAMPLES)
def test_worksheet_of_a_sample(sample: str) -> None:
    status, text, error = shown("worksheet", sample)

    assert (status, error) == (0, "")
    assert len(text.splitlines()) > 100


def test_the_same_bytes_whatever_the_hash_seed() -> None:
    outputs = set()
    for seed in ("0", "1", "4242"):
        environment = {**os.environ, "PYTHONHASHSEED": seed, "AIRTALLY_TODAY": "2026-11-24"}
        command = [sys.executable, "-m", "checker", "check", *SAMPLES, "--format", "json", "--fail-on", "never"]
        outputs.add(subprocess.run(command, cwd=ROOT, env=environment, capture_output=True, check=True).stdout)

    assert len(outputs) == 1


def test_the_three_revisions_get_better() -> None:
    counts = {}
    for revision in ("b-sketch", "c-permit"):
        _, text, _ = shown("check", f"samples/cottage-{revision}.yaml", "--format", "json")
        outcomes = json.loads(text)["designs"][0]["outcomes"]
        counts[revision] = sum(each["outcome"] == "finding" and each["severity"] != "note" for each in outcomes)

    assert counts["b-sketch"] >= 20
    assert counts["c-permit"] == 0


def test_the_napkin_is_mostly_questions() -> None:
    _, text, _ = shown("check", "samples/cottage-a-napkin.yaml", "--format", "json")
    outcomes = json.loads(text)["designs"][0]["outcomes"]

    assert sum(each["outcome"] == "needs-info" for each in outcomes) > 20


def test_samples_are_of_a_house_s_length() -> None:
    lengths = {sample: len(Path(ROOT / sample).read_text(encoding="utf-8").splitlines()) for sample in SAMPLES}

    assert all(100 <= length <= 350 for length in lengths.values()), lengths
