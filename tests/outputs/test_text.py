"""The text report, word for word, over sham rules."""

import re

from checker.outputs.layout import width
from checker.outputs.text import report
from checker.read import read_text
from checker.rule import Outcome, Severity
from checker.run import check_reading, numbered, unlocks
from tests.outputs.sham_rules import BREAKS, COTTAGE, DOUBLED, LOW, NOTED, SHAMS, SOUND, checked_text

GOLDEN = """\
== The design file ==

Comment 1  accepted[0]
cottage.yaml:10:5: note: the acceptance of `EXH-90` at `fans.none` matches no finding [FILE-28 acceptance-matches-nothing]
     10 |   - {rule: EXH-90, path: fans.none, reason: r, by: b}
        |     ^
    to change: remove it, or correct its rule or path

== Local exhaust and hoods ==

Comment 2  fans.bath.settings
cottage.yaml:5:35: correction: moves 40 cfm, less than 50 cfm [EXH-90 sham-flow-low]
      5 |   bath: {role: exhaust, settings: {high: 40 cfm}}
        |                                   ^
    to change: raise it by 10 cfm, or choose a fan that moves 50 cfm against the pressure of its own
               duct and of the cap
    see: IRC 2021 Table X2; the locally adopted code and the authority having jurisdiction decide

== Papers ==

Comment 3  house.floor_area
cottage.yaml:3:21: note: the floor area of 1200 ft2 is on no paper [PAPER-90 sham-area-on-no-paper]
      3 | house: {floor_area: 1200 ft2}
        |                     ^^^^^^^^
    see: common practice; the locally adopted code and the authority having jurisdiction decide

== Summary ==
1 design read
1 correction, 0 cautions, 2 notes; 1 item of information missing
  9 checks: 4 met by the figures given, 2 waiting for information, 1 outside what the methods can
  judge
Missing information, the most useful first:
  fans.later.settings.high.airflow  (2 rules)
Outside what the methods can judge; have it worked out another way:
  fans.big: the method ends at 1000 cfm [VENT-90 sham-flow-doubled]
An aid, not a review: the locally adopted code and the authority having jurisdiction decide.
"""


def fan(settings: str, lines: str = "") -> str:
    return (
        "design_format: 1\nproject: {title: Sham cottage, code: irc-2021}\n"
        f"fans:\n  bath: {{role: exhaust, settings: {settings}}}\n{lines}"
    )


def test_whole_report() -> None:
    assert report([checked_text(COTTAGE, SOUND)], "trade", False) == GOLDEN


def test_metric_units() -> None:
    text = report([checked_text(fan("{high: 40 cfm}"), [LOW])], "metric", False)
    assert "correction: moves 19 L/s, less than 24 L/s [EXH-90 sham-flow-low]" in text
    assert "to change: raise it by 4.7 L/s, or choose a fan" in text


def test_colours_are_only_added() -> None:
    checked = [checked_text(COTTAGE)]
    colored = report(checked, "trade", True)
    assert re.sub("\x1b\\[[0-9;]*m", "", colored) == report(checked, "trade", False)
    assert "\x1b[1;31mcorrection\x1b[0m: moves" in colored
    assert "\x1b[1;31m^\x1b[0m" in colored


def test_a_rule_that_broke_is_our_fault() -> None:
    text = report([checked_text(fan("{high: 60 cfm}"), [BREAKS])], "trade", False)
    assert "cottage.yaml:1:1: fault of airtally: the rule broke (ZeroDivisionError: sham) at sham_rules.py:" in text
    assert "1 broke, which is a fault of airtally" in text


def test_carets_stand_under_wide_marks_and_tabs() -> None:
    text = fan("{high: 60 cfm}", "house: {notes: '日本',\tfloor_area: 1200 ft2}\n")
    lines = report([checked_text(text, [NOTED])], "trade", False).split("\n")
    source = next(line for line in lines if "日本" in line)
    carets = lines[lines.index(source) + 1]
    assert "\t" not in source
    assert carets.count("^") == len("1200 ft2")
    assert len(carets.partition("^")[0]) == width(source.partition("1200")[0])


def test_a_long_source_line_is_shown_around_the_place() -> None:
    text = fan("{high: 60 cfm}", f"house: {{notes: {'x' * 300}, floor_area: 1200 ft2, strategy: balanced}}\n")
    lines = report([checked_text(text, [NOTED])], "trade", False).split("\n")
    source = next(line for line in lines if "1200 ft2," in line)
    carets = lines[lines.index(source) + 1]
    assert len(source) <= 120 and source[10:13] == "..."
    assert source[carets.index("^") : carets.rindex("^") + 1] == "1200 ft2"


def test_control_characters_of_the_file_do_not_reach_the_terminal() -> None:
    text = fan("{high: 40 cfm}").replace("bath:", '"ba\\e[31mth":')
    shown = report([checked_text(text)], "trade", False)
    assert "\x1b" not in shown
    assert "ba?[31mth" in shown


def test_an_accepted_finding_is_told_apart() -> None:
    accepted = "accepted:\n  - {rule: EXH-90, path: fans.bath, reason: kept by the owner, by: reviewer, on: 2026-01-02}\n"
    text = report([checked_text(fan("{high: 40 cfm}", accepted), [LOW])], "trade", False)
    assert "Comment" not in text
    assert "0 corrections, 0 cautions, 0 notes" in text
    assert "fans.bath.settings: kept by the owner (accepted by reviewer on 2026-01-02) [EXH-90" in text
    assert "No open finding by the rules that could be judged. This is not an approval." in text


SEVERAL = fan("{high: 40 cfm}", "  shower: {role: exhaust, settings: {high: 40 cfm}}\n"
                                "  toilet: {role: exhaust, settings: {high: 30 cfm}}\n")  # fmt: skip


def test_findings_that_say_the_same_are_one_comment_with_every_place() -> None:
    lines = report([checked_text(SEVERAL, [LOW])], "trade", False).split("\n")
    start = lines.index("Comment 1  fans.bath.settings")
    assert lines[start : lines.index("== Summary ==") - 1] == [
        "Comment 1  fans.bath.settings",
        "           fans.shower.settings",
        "           fans.toilet.settings",
        "cottage.yaml:4:35: correction: moves 40 cfm, less than 50 cfm [EXH-90 sham-flow-low]",
        "      4 |   bath: {role: exhaust, settings: {high: 40 cfm}}",
        "        |                                   ^",
        "    to change: raise it by 10 cfm, or choose a fan that moves 50 cfm against the pressure of its own",
        "               duct and of the cap",
        "cottage.yaml:5:37: correction: moves 40 cfm, less than 50 cfm [EXH-90 sham-flow-low]",
        "cottage.yaml:6:37: correction: moves 30 cfm, less than 50 cfm [EXH-90 sham-flow-low]",
        "    to change: raise it by 20 cfm, or choose a fan that moves 50 cfm against the pressure of its own",
        "               duct and of the cap",
        "    see: IRC 2021 Table X2; the locally adopted code and the authority having jurisdiction decide",
    ]
    assert "3 corrections, 0 cautions, 0 notes" in lines


def test_findings_that_say_the_same_stay_separate_outcomes_with_one_number() -> None:
    findings = [each for each in checked_text(SEVERAL, SOUND).outcomes if each.outcome == "finding"]
    assert [(each.number, each.place[0]) for each in findings] == [(1, 4), (1, 5), (1, 6)]


def test_an_accepted_one_of_several_is_no_part_of_the_comment() -> None:
    accepted = "accepted:\n  - {rule: EXH-90, path: fans.shower, reason: r, by: b}\n"
    text = report([checked_text(SEVERAL + accepted, [LOW])], "trade", False)
    assert "           fans.toilet.settings" in text
    assert "\n           fans.shower.settings" not in text


def test_names_in_a_message_do_not_keep_findings_apart() -> None:
    text = fan("{high: 100 cfm}", "  shower: {role: exhaust, settings: {high: 110 cfm}}\n")
    shown = report([checked_text(text, [DOUBLED])], "trade", False)
    assert "Comment 1  fans.bath\n           fans.shower\n" in shown
    assert "Comment 2" not in shown


def test_faults_of_the_file_are_a_comment_each() -> None:
    text = fan("{high: 60 cfm}, bogus: 1", "  shower: {role: exhaust, settings: {high: 60 cfm}, bogus: 1}\n")
    shown = report([checked_text(text, [LOW])], "trade", False)
    assert "Comment 2  fans.shower.bogus" in shown


def test_several_files_have_a_head_line_each() -> None:
    readings = [read_text(fan("{high: 40 cfm}"), "a.yaml"), read_text(fan("{high: tbd}"), "b.yaml"),
                read_text("a: [", "c.yaml")]  # fmt: skip
    text = report(numbered([check_reading(each, [LOW], "2026-01-01") for each in readings]), "trade", False)
    heads = [line for line in text.split("\n") if line.startswith("### ")]
    assert heads == ["### a.yaml  Sham cottage  (irc-2021)", "### b.yaml  Sham cottage  (irc-2021)", "### c.yaml"]
    assert "2 designs read, 1 file could not be read" in text
    assert "  b.yaml: fans.bath.settings.high.airflow  (1 rule)" in text
    assert "Comment 2\nc.yaml:1:" in text


def test_a_hundred_faults_of_the_file_are_shown() -> None:
    text = fan("{high: 40 cfm}") + "".join(f"bogus{number}: 1\n" for number in range(130))
    shown = report([checked_text(text, [LOW])], "trade", False)
    assert shown.count("[FILE-20 unknown-key]") == 100
    assert "and 30 more faults of the file; `--format json` lists them" in shown
    assert shown.index("and 30 more faults") < shown.index("== Local exhaust and hoods ==")
    assert "131 corrections" in shown


def test_the_summary_fits_a_screen() -> None:
    fans = "".join(f"  f{number}: {{role: exhaust, settings: {{high: tbd}}}}\n" for number in range(40))
    fans += "".join(f"  b{number}: {{role: exhaust, settings: {{high: 3000 cfm}}}}\n" for number in range(40))
    accepted = "accepted:\n  - {rule: PAPER-90, path: house, reason: " + "long " * 50 + ", by: b}\n"
    text = fan("{high: tbd}", fans + "house: {floor_area: 1200 ft2}\n" + accepted)
    whole = report([checked_text(text, SHAMS)], "trade", False)
    summary = whole[whole.index("== Summary ==") :].rstrip("\n").split("\n")
    assert len(summary) <= 24
    assert all(len(line) <= 100 for line in summary)
    assert "Missing information, the most useful first:" in summary
    assert "  fans.bath.settings.high.airflow and 40 more like it  (2 rules)" in summary



def test_what_severe_rules_want_alone_comes_first() -> None:
    def waits(severity: Severity, *missing: str) -> Outcome:
        return Outcome(LOW._replace(code=f"VENT-9{len(missing)}", severity=severity), "needs-info", "", "", missing=missing)

    outcomes = [waits("note", "house.a"), waits("correction", "house.b", "house.c"), waits("caution", "house.d")]
    assert [path for path, _ in unlocks(outcomes)] == ["house.d", "house.b", "house.c", "house.a"]


def test_nothing_found_is_no_approval() -> None:
    text = report([checked_text(fan("{high: 60 cfm}"), [LOW])], "trade", False)
    assert "This is not an approval." in text
    assert not re.search(r"approved|compliant|passes", text)
