"""Pages: a rule, an area, a requirement of the codebook, or what the design file may say at a place."""

import json
import os
from collections.abc import Mapping
from typing import Any

from checker.codebook import EDITIONS, STANDARDS, Entry, converted, spoken
from checker.faults import CODES, FAULTS
from checker.outputs.layout import columned, wrapped
from checker.outputs.numbers import text_of
from checker.outputs.rule_facts import keys_of, page_of, worked_by
from checker.outputs.summary import DEFERS
from checker.rule import AREAS, Num, Rule
from checker.run import fault_rule
from checker.units import DIMENSIONS

EXAMPLES = os.path.join(
    os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__)))), "rules", "examples.json"
)
REMINDER = f"In the end {DEFERS}."


def explain(topic: str) -> str:
    """The page of a topic, in any case of letters; "" where nothing is called so."""
    from checker.codebook_table import ENTRIES
    from checker.outputs.format_page import format_page

    word = topic.strip().lower()
    lines: list[str] = []
    if rule := rule_called(word):
        lines = rule_page(rule, ENTRIES)
    elif word.upper() in AREAS:
        lines = area_page(word.upper())
    elif word in ENTRIES:
        entry = ENTRIES[word]
        lines = [word, "", *wrapped(entry.says), *facts(entry), "", *used_by(word), "", REMINDER]
    else:
        lines = format_page(word)
    return "\n".join(lines) + "\n" if lines else ""


def unknown(topic: str) -> str:
    """Why a topic has no page, with the names nearest to it."""
    from checker.codebook_table import ENTRIES
    from checker.design.nearest import nearest
    from checker.outputs.format_page import topics

    rules = [name for code, name in rule_names() for name in (code, name)]
    known = [*rules, *topics(), *ENTRIES, *CODES, *FAULTS]
    near = nearest(topic.lower(), known, "topics")
    if near.startswith("the topics are"):
        near = "`airtally catalogue` lists the rules, `airtally explain design` the sections of the file"
    return f"nothing is called `{topic}`: {near}"


def rule_names() -> list[tuple[str, str]]:
    """Code and name of every rule, without loading the rules."""
    from checker.judge import modules

    return [(code, module.rpartition(".")[2].split("_", 2)[2].replace("_", "-")) for code, module in modules()]


def rule_called(word: str) -> Rule | None:
    """The rule of a code or name in lower case."""
    from checker.judge import rules

    if word in CODES or word.upper() in FAULTS:
        return fault_rule(CODES.get(word, word.upper()))
    found = rules(lambda code, name: word in (code.lower(), name))
    return found[0] if found else None


def rule_page(rule: Rule, entries: Mapping[str, Entry]) -> list[str]:
    """All that is known of a rule."""
    title, paragraphs = page_of(rule)
    lines = [f"{rule.code} {rule.name}", f"{rule.severity}; {AREAS[rule.area].lower()}; since {rule.since}", ""]
    lines += wrapped(title)
    for paragraph in paragraphs:
        lines += ["", *wrapped(paragraph)]
    if rule.needs:
        lines += ["", "It reads:"]
        for need in rule.needs:
            lines += reads(need)
    if keys_of(rule):
        lines += ["", "It rests on:"]
        for key in keys_of(rule):
            lines += requirement(key, entries[key])
    lines += examples(rule.code)
    return [*lines, "", REMINDER] if rule.area != "FILE" else lines


def reads(need: Any) -> list[str]:
    """A quantity that a rule reads, with how it is worked out."""
    name = need.name.replace("_", " ")
    how = worked_by(need)
    kind = f" ({DIMENSIONS[need.dimension].noun})" if need.dimension in DIMENSIONS else ""
    source = f"; {need.source}" if need.source else ""
    return wrapped(f"{name}{kind}{': ' if how else ''}{how}{source}", "  ", "      ")


def requirement(key: str, entry: Entry) -> list[str]:
    """A requirement of the codebook: what it says, its sections and limits in all editions, its basis."""
    return [*wrapped(f"{key}: {entry.says}", "  ", "      "), *facts(entry)]


def facts(entry: Entry) -> list[str]:
    """Sections and limits of a requirement by edition, or once where no edition counts."""
    lines: list[str] = []
    named = covered(entry)
    if named:
        whole = STANDARDS if named & set(STANDARDS) else EDITIONS
        rows = [["edition", "section", "limit"] if by_edition(entry.limit) else ["edition", "section"]]
        for edition in whole:
            row = [spoken(edition), cell(entry.section, edition)]
            if by_edition(entry.limit):
                row.append(limit_text(entry.limit[edition], entry.of) if edition in entry.limit else "-")
            rows.append(row)
        lines += columned(rows, "      ", 100)
    elif entry.section and entry.section != entry.basis:
        lines += wrapped(str(entry.section), "      section: ")
    if entry.limit is not None and not by_edition(entry.limit):
        lines += limit_lines(entry)
    source = f"; {entry.source}" if entry.source else ""
    return lines + wrapped(f"{entry.basis}{source}", "      basis: ")


def covered(entry: Entry) -> set[str]:
    """Editions that an entry names."""
    named = set(entry.section) if isinstance(entry.section, dict) else set()
    return named | (set(entry.limit) if by_edition(entry.limit) else set())


def by_edition(limit: Any) -> bool:
    """Whether a limit differs by edition."""
    return isinstance(limit, dict) and bool(limit) and set(limit) <= {*EDITIONS, *STANDARDS}


def cell(section: Any, edition: str) -> str:
    """A section in the table; `-` where the edition lacks the requirement."""
    return str(section.get(edition, "-")) if isinstance(section, dict) else str(section)


def limit_lines(entry: Entry) -> list[str]:
    """A limit that holds for all editions."""
    if entry.of == "table" and isinstance(entry.limit, dict):
        return ["      table:", *table_lines(entry.limit, "        ")]
    text = flat(entry.limit) if entry.of in ("table", "text") else limit_text(entry.limit, entry.of)
    text += f"; {entry.also}, as printed beside it, meets it as well" if entry.also else ""
    return wrapped(text, "      limit: ")


def table_lines(table: Mapping[str, Any], indent: str) -> list[str]:
    """A table as indented lines."""
    lines: list[str] = []
    for key, value in table.items():
        if isinstance(value, dict):
            lines += [f"{indent}{key}:", *table_lines(value, f"{indent}  ")]
        else:
            lines += wrapped(flat(value), f"{indent}{key}: ", f"{indent}    ")
    return lines


def limit_text(limit: Any, of: str) -> str:
    """A limit in trade and metric units."""
    if limit is None:
        return "none"
    if isinstance(limit, list):
        return ", ".join(limit_text(each, of) for each in limit)
    if of not in DIMENSIONS:
        return flat(limit)
    number = Num(converted(limit, of), of)
    trade, metric = text_of(number, "trade"), text_of(number, "metric")
    return trade if trade == metric else f"{trade} ({metric})"


def flat(value: Any) -> str:
    """Data of a table as text."""
    if isinstance(value, dict):
        return ", ".join(f"{key}: {flat(each)}" for key, each in value.items())
    if isinstance(value, list):
        return "[" + ", ".join(flat(each) for each in value) + "]"
    return str(value)


def examples(code: str) -> list[str]:
    """The design that passes and the one that trips, where the examples are installed."""
    try:
        with open(EXAMPLES, encoding="utf-8") as file:
            found = json.load(file).get(code, {})
    except (OSError, ValueError):
        return []
    lines: list[str] = []
    for outcome, head in (("meets", "A design that meets it:"), ("finding", "A design that does not:")):
        if outcome in found:
            lines += ["", head, *(f"    {line}" for line in found[outcome].rstrip("\n").split("\n"))]
    return lines


def area_page(area: str) -> list[str]:
    """The rules of an area."""
    from checker.judge import rules

    own = list(rules(lambda code, _: code.startswith(f"{area}-")))
    if area == "FILE":
        own = [fault_rule(code) for code in FAULTS]
    rows = [[rule.code, rule.severity, rule.name, page_of(rule)[0]] for rule in own]
    return [f"{area}: {AREAS[area]}", "", *(columned(rows, columns=120) if rows else ["no rules yet"])]


def used_by(key: str) -> list[str]:
    """The rules that rest on a requirement."""
    from checker.judge import rules

    users = [f"{rule.code} {rule.name}" for rule in rules() if key in keys_of(rule)]
    return wrapped(", ".join(users) or "quantities that rules read", "Used by ", "    ")
