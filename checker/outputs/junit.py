"""The outcomes as JUnit XML, for build servers: a suite for each design, a case for each check."""

import re
from xml.etree.ElementTree import Element, SubElement, indent, tostring

from checker.outputs.json_report import kept
from checker.outputs.numbers import filled
from checker.outputs.summary import DEFERS
from checker.outputs.text import position
from checker.rule import Outcome
from checker.run import Checked

NOT_XML = re.compile("[^\t\n\r\x20-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")  # XML 1.0, production 2
SKIPPED = {
    "needs-info": "needs information", "cannot-judge": "cannot be judged", "not-applicable": "does not apply",
}  # fmt: skip


def report(checked: list[Checked], system: str) -> str:
    """The XML document of a run; `system` is trade or metric."""
    suites = Element("testsuites", name="airtally")
    for each in checked:
        suites.append(suite(each, system))
    for count in ("tests", "failures", "errors"):
        suites.set(count, str(sum(int(each.get(count, "0")) for each in suites)))
    indent(suites)
    return '<?xml version="1.0" encoding="UTF-8"?>\n' + tostring(suites, encoding="unicode") + "\n"


def suite(checked: Checked, system: str) -> Element:
    """One design."""
    made = Element("testsuite", name=legal(checked.reading.name))
    project = checked.design.project if checked.design is not None else None
    if project is not None:
        properties = SubElement(made, "properties")
        for name, value in (("title", project.title), ("code", project.code)):
            if value:
                SubElement(properties, "property", name=name, value=legal(value))
        if not len(properties):
            made.remove(properties)
    for outcome in kept(checked)[0]:
        made.append(case(checked, outcome, system))
    for count, tag in (("tests", "testcase"), ("failures", "failure"), ("errors", "error"), ("skipped", "skipped")):
        made.set(count, str(sum(1 for _ in made.iter(tag))))
    return made


def case(checked: Checked, outcome: Outcome, system: str) -> Element:
    """One check; a note does not fail, it is said in the output of the case."""
    name = f"{outcome.rule.code} {outcome.rule.name} {outcome.path}".rstrip()
    made = Element("testcase", classname=outcome.rule.area, name=legal(name))
    message = legal(filled(outcome.message, outcome.numbers, system))
    if outcome.outcome == "rule-failed":
        SubElement(made, "error", message=message, type="rule-failed")
    elif outcome.outcome in SKIPPED:
        SubElement(made, "skipped", message=f"{SKIPPED[outcome.outcome]}: {message}")
    elif outcome.accepted:
        SubElement(made, "skipped", message=legal(f"accepted: {outcome.accepted}"))
    elif outcome.outcome == "finding" and outcome.rule.severity != "note":
        failure = SubElement(made, "failure", message=message, type=outcome.rule.severity)
        failure.text = details(checked, outcome, system)
    elif outcome.outcome == "finding":
        SubElement(made, "system-out").text = details(checked, outcome, system)
    return made


def details(checked: Checked, outcome: Outcome, system: str) -> str:
    """A finding in three lines: place and fact, change, section."""
    lines = [f"{position(checked, outcome)}{outcome.rule.severity}: {filled(outcome.message, outcome.numbers, system)}"]
    if outcome.help:
        lines.append(f"to change: {filled(outcome.help, outcome.numbers, system)}")
    if outcome.rule.area != "FILE":
        lines.append(f"see: {outcome.cites or 'common practice'}; {DEFERS}")
    return legal("\n".join(lines))


def legal(text: str) -> str:
    """The text without what XML 1.0 cannot hold."""
    return NOT_XML.sub("\ufffd", text)
