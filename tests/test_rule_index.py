"""Rules left unread for want of their sections say the same as when they are asked."""

from itertools import combinations

import pytest

from checker.case import Case
from checker.codebook import Codebook
from checker.design.build import build
from checker.judge import indexed, judge, rules
from checker.read import read_text
from checker.rule_index import Waiting
from checker.run import check_reading
from tests.shown import ROOT

SAMPLES = sorted(path for path in (ROOT / "samples").glob("*.yaml"))
SECTIONS = {
    "rooms": "rooms: {bath: {use: bathroom}}",
    "equipment": "equipment: {heater: {kind: furnace}}",
    "fans": "fans: {bath-fan: {role: exhaust, settings: {high: 50 cfm}}}",
    "hoods": "hoods: {hood: {settings: {high: 300 cfm}}}",
    "dryers": "dryers: {dryer: {kind: vented}}",
    "openings": "openings: {intake: {kind: outdoor air intake}}",
    "combustion": "combustion: none",
    "house": "house: {bedrooms: 2}",
    "site": "site: {climate_zone: 5A}",
}


def said(text: str, name: str) -> tuple[list[object], list[object]]:
    reading = read_text(text, name)
    plain, waiting = (
        [
            (
                outcome.rule.code,
                outcome.outcome,
                outcome.path,
                outcome.message,
                outcome.cites,
                outcome.missing,
            )
            for outcome in check_reading(reading, chosen, "2026-11-24").outcomes
        ]
        for chosen in (rules(), [Waiting(entry) for entry in ENTRIES])
    )
    return plain, waiting


ENTRIES = indexed()


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_a_sample_is_judged_alike(path: object) -> None:
    plain, waiting = said(path.read_text(), str(path))  # type: ignore[attr-defined]

    assert waiting == plain


@pytest.mark.parametrize("pair", [(), *combinations(SECTIONS, 1), *combinations(SECTIONS, 2)], ids="+".join)
def test_small_designs_are_judged_alike(pair: tuple[str, ...]) -> None:
    lines = [
        "design_format: 1",
        "project: {title: small, code: irc-2021}",
        *(SECTIONS[section] for section in pair),
    ]
    plain, waiting = said("\n".join(lines), "small.yaml")

    assert waiting == plain


def test_most_rules_wait() -> None:
    design = build(read_text("design_format: 1\nproject: {title: bare}\n", "bare.yaml")).design
    idle = [entry[0] for entry in ENTRIES if Waiting(entry).idle(design)]

    assert len(idle) > 0.8 * len(ENTRIES)


def test_an_idle_rule_has_no_nodes() -> None:
    design = build(read_text("design_format: 1\nproject: {title: bare}\n", "bare.yaml")).design
    waiting = Waiting(next(entry for entry in ENTRIES if entry[0] == "DRY-01"))
    (outcome,) = judge(Case(design, Codebook(None, None)), [waiting])

    assert outcome.outcome == "not-applicable"
    assert not list(outcome.rule.over(Case(design, Codebook(None, None))))
